import type { AnyDefinition } from "../../definition/define";
import type { Memory } from "../../definition/memory";
import { type Mounted, mountPane } from "../pane/mount";
import { excelPort } from "./port";
import { followTheme } from "./theme";

/** Opens the pane in its place on Excel's page; undefined where this Excel is too old for it. `memory`: what the functions write. */
export const openPane = (
  place: HTMLElement,
  memory: Memory,
  catalogue: readonly AnyDefinition[],
): Mounted | undefined => {
  followTheme();
  place.replaceChildren();
  // Spills can be asked about since this set (Excel 2021). The manifest asks for it too, but not every way in reads that.
  if (Office.context.requirements.isSetSupported("ExcelApi", "1.12"))
    return mountPane(place, excelPort(memory), catalogue);
  place.append("This Excel is too old for the pane, which needs Excel 2021 or Microsoft 365. The functions may work.");
  return undefined;
};
