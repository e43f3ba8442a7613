import type { Book } from "../../src/hosts/engine/book";
import { breakerStudy } from "./breaker-study";
import { lessons } from "./lessons";
import { motorStarts } from "./motor-starts";
import { panelEstimate } from "./panel-estimate";
import { testLog } from "./test-log";

/** The example workbooks by file name. */
export const books: Readonly<Record<string, Book>> = {
  "test-log.xlsx": testLog,
  "motor-starts.xlsx": motorStarts,
  "panel-estimate.xlsx": panelEstimate,
  "breaker-study.xlsx": breakerStudy,
  "lessons.xlsx": lessons,
};
