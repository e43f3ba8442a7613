import type { Plot } from "../../../definition/plot";
import { strokeOf } from "./stroke";

/** What each stroke of a picture stands for. */
export const Key = ({ plot }: { plot: Plot }) => (
  <ul class="pane-key">
    {plot.bands?.map(({ name }) => (
      <Entry key={name} name={name} stroke={<path class="pane-key-band" d="M 0 1 H 22 V 11 H 0 Z" />} />
    ))}
    {plot.lines?.map(({ name }, i, lines) => (
      <Entry key={name} name={name} stroke={<path class={strokeOf(lines, i)} d="M 0 6 H 22" />} />
    ))}
    {roles
      .map((role) => ({ role, names: namesOf(plot.points, role) }))
      .filter(({ names }) => names !== "")
      .map(({ role, names }) => (
        <Entry key={role} name={names} stroke={<PointStroke role={role} />} />
      ))}
  </ul>
);

const Entry = ({ name, stroke }: { name: string; stroke: preact.JSX.Element }) => (
  <li class="pane-key-entry">
    <svg class="pane-key-stroke" viewBox="0 0 22 12" aria-hidden="true">
      {stroke}
    </svg>
    {name}
  </li>
);

const PointStroke = ({ role }: { role: (typeof roles)[number] }) =>
  role === "asked" ? (
    <path class="pane-diamond" d="M 11 0 l 6 6 l -6 6 l -6 -6 Z" />
  ) : (
    <g class={`pane-point-${role}`}>
      <circle class={`pane-point-${role}`} cx="11" cy="6" r="3.5" />
    </g>
  );

const roles = ["asked", "tripped", "held"] as const;

/** Two points are named, many are called what they are. */
const namesOf = (points: Plot["points"] = [], role: (typeof roles)[number]): string => {
  const names = new Set(points.filter((point) => point.role === role).map(({ name }) => name));
  if (names.size <= 2) return [...names].join(", ");
  return role === "asked" ? `${names.size} points, named in the table` : `${role}, ${names.size} points`;
};
