import { area, line } from "d3-shape";
import { useId } from "preact/hooks";
import type { Band, Line, Plot } from "../../../definition/plot";
import { AxisMarks } from "./axis-marks";
import { frame } from "./frame";
import { PointMark } from "./point-mark";
import { type Laid, lay } from "./scale";
import { strokeOf } from "./stroke";

/** The picture itself. What it says stands in the sentence, the crosshair's line and the table beside it too. */
export const Drawing = ({ plot, crosshair, onPoint }: DrawingProps) => {
  const id = useId();
  const x = lay(plot.x, [frame.left, frame.right]);
  const y = lay(plot.y, [frame.bottom, frame.top]);
  const follow = (event: MouseEvent) => {
    const box = (event.currentTarget as SVGSVGElement).getBoundingClientRect();
    onPoint?.(x.value(((event.clientX - box.left) / box.width) * frame.width));
  };
  return (
    <svg
      class="pane-drawing"
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="img"
      aria-label={plot.sentence}
      onMouseMove={follow}
    >
      <defs>
        <pattern id={`${id}-slats`} width="4" height="4" patternUnits="userSpaceOnUse">
          <path d="M 1 0 V 4" class="pane-slat" />
        </pattern>
        <clipPath id={`${id}-window`}>
          <rect x={frame.left} y={frame.top} width={frame.right - frame.left} height={frame.bottom - frame.top} />
        </clipPath>
      </defs>
      <AxisMarks x={x} y={y} plot={plot} />
      <g clip-path={`url(#${id}-window)`}>
        {plot.bands?.map((band) => (
          <BandShape key={band.name} band={band} x={x} y={y} slats={`url(#${id}-slats)`} />
        ))}
        {plot.lines?.map((course, i) => (
          <Course key={course.name} course={course} stroke={strokeOf(plot.lines ?? [], i)} x={x} y={y} />
        ))}
      </g>
      {crosshair !== undefined && (
        <path class="pane-crosshair" d={`M ${x.at(crosshair)} ${frame.top} V ${frame.bottom}`} />
      )}
      {plot.points?.map((point) => (
        <PointMark key={`${point.name} ${point.x} ${point.y}`} point={point} x={x} y={y} />
      ))}
    </svg>
  );
};

interface DrawingProps {
  readonly plot: Plot;
  /** In the x axis' unit. */
  readonly crosshair?: number;
  readonly onPoint?: (x: number) => void;
}

/** A band is drawn as standing slats between a full lower and a dashed upper edge. */
const BandShape = ({ band, x, y, slats }: { band: Band; x: Laid; y: Laid; slats: string }) => {
  const { samples } = band;
  const shape = area<(typeof samples)[number]>(
    ({ x: at }) => x.at(at),
    ({ low }) => y.at(low),
    ({ high }) => y.at(high),
  );
  const edge = (value: (sample: (typeof samples)[number]) => number) =>
    line<(typeof samples)[number]>(
      ({ x: at }) => x.at(at),
      (sample) => y.at(value(sample)),
    )(samples) ?? "";
  return (
    <g>
      <path class="pane-band" d={shape(samples) ?? ""} />
      <path d={shape(samples) ?? ""} fill={slats} />
      <path class="pane-edge-low" d={edge(({ low }) => low)} />
      <path class="pane-edge-high" d={edge(({ high }) => high)} />
    </g>
  );
};

const Course = ({ course, stroke, x, y }: { course: Line; stroke: string; x: Laid; y: Laid }) => {
  const path = line<(typeof course.samples)[number]>(
    (sample) => x.at(sample.x),
    (sample) => y.at(sample.y),
  );
  return <path class={stroke} d={path(course.samples) ?? ""} />;
};
