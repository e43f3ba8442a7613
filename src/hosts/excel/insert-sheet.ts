import { freeName } from "../pane/sheets/free-name";
import type { ReadySheet } from "../pane/sheets/ready-sheet";
import { drawChart } from "./draw-chart";
import { inExcel } from "./in-excel";
import { writeSheet } from "./write-sheet";

/** Puts a ready sheet into the open workbook under a free name, which it tells. A sheet that Excel refuses halfway is taken away again. */
export const insertSheet = (ready: ReadySheet): Promise<string> =>
  inExcel(async (context) => {
    const { worksheets, tables, names } = context.workbook;
    for (const known of [worksheets, tables, names]) known.load("items/name");
    await context.sync();
    const namesOf = (known: { items: readonly { name: string }[] }) => known.items.map(({ name }) => name);
    const name = freeName(ready.name, namesOf(worksheets));
    const sheet = worksheets.add(name);
    sheet.load("id");
    await context.sync();
    const { id } = sheet;
    try {
      writeSheet(sheet, ready, [...namesOf(tables), ...namesOf(names)]);
      sheet.activate();
      sheet.getRange("A1").select();
      await context.sync();
    } catch (refusal) {
      await takeAway(id);
      throw refusal;
    }
    const { chart } = ready;
    if (chart)
      try {
        drawChart(sheet, chart);
        await context.sync();
      } catch (refusal) {
        const why = (refusal as Error).message;
        throw new Error(`The sheet “${name}” is there, but Excel refused its chart: ${why}`, { cause: refusal });
      }
    return name;
  });

/** By its id, so that it can be no other's sheet. What went wrong before is told, not what goes wrong here. */
const takeAway = (id: string): Promise<void> =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(id);
    sheet.load("id");
    await context.sync();
    if (!sheet.isNullObject) sheet.delete();
    await context.sync();
  }).catch(() => {});
