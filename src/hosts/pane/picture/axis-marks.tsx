import type { Axis, Plot } from "../../../definition/plot";
import { frame } from "./frame";
import type { Laid } from "./scale";

/** Rules across the window, the values at its edge, and what each axis counts. */
export const AxisMarks = ({ x, y, plot }: { x: Laid; y: Laid; plot: Plot }) => (
  <g>
    <path
      class="pane-rule-fine"
      d={x.between.map((value) => `M ${x.at(value)} ${frame.top} V ${frame.bottom}`).join("")}
    />
    <path
      class="pane-rule-fine"
      d={y.between.map((value) => `M ${frame.left} ${y.at(value)} H ${frame.right}`).join("")}
    />
    <path
      class="pane-rule"
      d={x.ticks.map(({ value }) => `M ${x.at(value)} ${frame.top} V ${frame.bottom + 4}`).join("")}
    />
    <path
      class="pane-rule"
      d={y.ticks.map(({ value }) => `M ${frame.left - 4} ${y.at(value)} H ${frame.right}`).join("")}
    />
    {x.ticks.map(({ value, label }) => (
      <text key={value} class="pane-tick" x={x.at(value)} y={frame.bottom + 16} text-anchor="middle">
        {label}
      </text>
    ))}
    {y.ticks.map(({ value, label }) => (
      <text key={value} class="pane-tick" x={frame.left - 7} y={y.at(value) + 3.5} text-anchor="end">
        {label}
      </text>
    ))}
    <text class="pane-axis" x={(frame.left + frame.right) / 2} y={frame.height - 8} text-anchor="middle">
      {axisName(plot.x)}
    </text>
    <text
      class="pane-axis"
      text-anchor="middle"
      transform={`translate(10 ${(frame.top + frame.bottom) / 2}) rotate(-90)`}
    >
      {axisName(plot.y)}
    </text>
  </g>
);

const axisName = ({ quantity, unit }: Axis): string => (unit === "" ? quantity : `${quantity}, ${unit}`);
