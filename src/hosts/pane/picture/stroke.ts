import type { Line } from "../../../definition/plot";

const strokes = 3;

/** The class of a line's stroke: limits and courses each differ from the one before, so that they are told apart without colour. */
export const strokeOf = (lines: readonly Line[], place: number): string => {
  const { role } = lines[place] as Line;
  const nth = lines.slice(0, place).filter((line) => line.role === role).length;
  if (role === "limit") return nth % 2 === 0 ? "pane-line-limit" : "pane-line-limit pane-line-limit-1";
  return `pane-line-course pane-line-course-${nth % strokes}`;
};
