import type { Line } from "../../../definition/plot";

const strokes = 3;

/** The class of a line's stroke: limits are alike, courses differ from the one before, so that they are told apart without colour. */
export const strokeOf = (lines: readonly Line[], place: number): string => {
  const { role } = lines[place] as Line;
  if (role === "limit") return "pane-line-limit";
  const nth = lines.slice(0, place).filter((line) => line.role === "course").length;
  return `pane-line-course pane-line-course-${nth % strokes}`;
};
