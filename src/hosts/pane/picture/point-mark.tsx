import type { Point } from "../../../definition/plot";
import { frame } from "./frame";
import type { Laid } from "./scale";

/** What is asked about stands as a diamond with leads to both axes; a trial that tripped as a full dot, one that held as a ring with a stem upwards. */
export const PointMark = ({ point, x, y }: { point: Point; x: Laid; y: Laid }) => {
  const [left, top] = [x.at(point.x), y.at(point.y)];
  if (point.role === "tripped") return <circle class="pane-point-tripped" cx={left} cy={top} r="4.5" />;
  if (point.role === "held")
    return (
      <g class="pane-point-held">
        <circle cx={left} cy={top} r="4.5" />
        <path d={`M ${left} ${top - 4.5} v -9 m -3 3 l 3 -3 l 3 3`} />
      </g>
    );
  return (
    <g class="pane-point-asked">
      <path class="pane-lead" d={`M ${frame.left} ${top} H ${left} V ${frame.bottom}`} />
      <path class="pane-diamond" d={`M ${left} ${top - 6} l 6 6 l -6 6 l -6 -6 Z`} />
    </g>
  );
};
