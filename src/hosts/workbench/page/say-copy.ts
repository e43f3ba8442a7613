import type { OpenedWorkbook } from "../../engine/xlsx/open-workbook";
import { beyondGrid, leftBehind } from "./left-behind";
import type { Copy } from "./save-copy";

/** A workbook that is written anew holds no macros, and under the name of one that does no spreadsheet would open it. */
export const nameOfCopy = (name: string, how: Copy["how"]): string =>
  "anew" in how ? name.replace(/\.xlsm$/i, ".xlsx") : name;

/** What became of what a page with a grid does not show, and of what points at cells. */
export const sayCopy = (opened: OpenedWorkbook, how: Copy["how"]): string => {
  if ("moved" in how) {
    const [more, moved] = [beyondGrid(opened), how.moved];
    const kept = more.length > 0 ? `, with what is not shown here: ${more.join(", ")}` : "";
    const points =
      moved.length > 0
        ? ` Cells of ${moved.join(", ")} were moved: what points at them from outside the cells (a chart, a rule) points where they were.`
        : "";
    return `saved as a copy${kept}.${points}`;
  }
  const lost = leftBehind(opened);
  return lost.length === 0
    ? "saved as a copy."
    : `saved as a copy, written anew because ${how.anew}, without what stays in the original only: ${lost.join(", ")}.`;
};
