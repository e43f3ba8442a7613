import { ExcelHost } from "./excel-host";
import { type OfficePage, openOfficePage } from "./office-page";
import type { ScriptedWorkbook } from "./scripted-workbook";

/**
 * Microsoft's own runtime between Excel and an add-in, run in Node: functions and port are tried against the real code between
 * them and Excel without an Excel.
 */
export interface ExcelRuntime {
  readonly globals: OfficePage["globals"];
  readonly host: ExcelHost;
  close(): void;
}

export const startExcelRuntime = (workbook?: ScriptedWorkbook): ExcelRuntime => {
  const page = openOfficePage((text) => host.receive(text));
  const host = new ExcelHost(page.send, workbook);
  return { globals: page.globals, host, close: page.close };
};
