import { Memory } from "../../../src/definition/memory";
import { excelPort } from "../../../src/hosts/excel/port";
import type { Port } from "../../../src/hosts/pane/port";
import type { ReadySheet } from "../../../src/hosts/pane/sheets/ready-sheet";
import { shelves } from "../../../src/hosts/pane/sheets/shelf";
import { type ExcelRuntime, startExcelRuntime } from "./runtime";
import { ScriptedWorkbook } from "./scripted-workbook";

// A ready sheet through Microsoft's own Excel.run: what it asks the host to do.

const listed = (...names: string[]) => ({ _Items: names.map((Name) => ({ Name })) });
const present = { Worksheets: listed("Log"), Tables: listed(), Names: listed() };

const added = Object.fromEntries(
  ["Small log", "Small log 3"].map((name) => [`Worksheets.Add(${name})`, { Id: "{9}" }]),
);

let runtime: ExcelRuntime | undefined;
const open = (objects: Record<string, object | null> = {}): { workbook: ScriptedWorkbook; port: Port } => {
  const workbook = new ScriptedWorkbook({ ...present, ...added, ...objects });
  runtime = startExcelRuntime(workbook);
  const { Excel, Office } = runtime.globals;
  Object.assign(globalThis, { Excel, Office });
  return { workbook, port: excelPort(new Memory()) };
};
afterEach(() => runtime?.close());

const heading = { bold: true, fill: "CFE0D4" };
const answer = { fill: "FBF5E6", format: "0.00" };
const ready: ReadySheet = {
  name: "Small log",
  cells: [
    { row: 0, column: 0, value: "Current, A", style: heading },
    { row: 0, column: 1, value: "Drop, V", style: heading },
    { row: 0, column: 2, value: "Heat, W", style: { bold: true, italic: true, color: "5A5A5A" } },
    { row: 1, column: 0, value: 20 },
    { row: 1, column: 2, value: null, formula: "=BIMETAL.CONTACT.WATTS(A2:A3,B2:B3)", style: answer },
    { row: 2, column: 2, value: null, style: answer },
  ],
  widths: new Map([
    [0, 12],
    [2, 9],
  ]),
  frozen: { rows: 1, columns: 1 },
  tables: [{ name: "Trials", block: { row: 0, column: 0, rows: 3, columns: 2 }, columns: ["Current, A", "Drop, V"] }],
  choices: [{ block: { row: 1, column: 0, rows: 2, columns: 1 }, words: ["10", "20"] }],
};
const sheet = "Worksheets.Add(Small log)";

test("a ready sheet is a new worksheet with its values, formulas and looks, written in blocks", async () => {
  const { port, workbook } = open();
  expect(await port.insertSheet(ready)).toBe("Small log");
  expect(workbook.done.filter((one) => /Values|Formulas|Format/.test(one))).toEqual([
    `${sheet}.GetRange(A1:C1).Values = [["Current, A","Drop, V","Heat, W"]]`,
    `${sheet}.GetRange(A2).Values = [[20]]`,
    `${sheet}.GetRange(C2).Formulas = [["=BIMETAL.CONTACT.WATTS(A2:A3,B2:B3)"]]`,
    `${sheet}.GetRange(A1:B1).Format.Font.Bold = true`,
    `${sheet}.GetRange(A1:B1).Format.Fill.Color = "#CFE0D4"`,
    `${sheet}.GetRange(C1).Format.Font.Bold = true`,
    `${sheet}.GetRange(C1).Format.Font.Italic = true`,
    `${sheet}.GetRange(C1).Format.Font.Color = "#5A5A5A"`,
    `${sheet}.GetRange(C2:C3).NumberFormat = [["0.00"],["0.00"]]`,
    `${sheet}.GetRange(C2:C3).Format.Fill.Color = "#FBF5E6"`,
    // 12 characters and 3 for the button of a table's heading: 15 × 7 + 5 pixels of ¾ point; 9 × 7 + 5, by hand.
    `${sheet}.GetRange(A1).GetEntireColumn().Format.ColumnWidth = 82.5`,
    `${sheet}.GetRange(C1).GetEntireColumn().Format.ColumnWidth = 51`,
  ]);
  // One to read the names that are taken, one for the sheet, one to write, and Excel's own release of what was read.
  expect(workbook.batches).toBeLessThanOrEqual(4);
});

test("it brings its table, its lists of words and its frozen edges, and is shown", async () => {
  const { port, workbook } = open();
  await port.insertSheet(ready);
  expect(workbook.done).toEqual(
    expect.arrayContaining([
      `${sheet}.Tables.Add(A1:B3,true).Name = "Trials"`,
      `${sheet}.Tables.Add(A1:B3,true).Style = "TableStyleLight1"`,
      `${sheet}.GetRange(A2:A3).DataValidation.Rule = {"list":{"inCellDropDown":true,"source":"10,20"}}`,
      `${sheet}.FreezePanes.FreezeAt(${sheet}.GetRange(A1))`,
      `${sheet}.Activate()`,
      `${sheet}.GetRange(A1).Select()`,
    ]),
  );
});

test("nothing that is there is written over: a name that is taken gets a number, in whatever case, and so does a table's", async () => {
  const { port, workbook } = open({
    Worksheets: listed("Log", "SMALL LOG", "Small log 2"),
    Tables: listed("Trials"),
    Names: listed("trials2"),
  });
  expect(await port.insertSheet(ready)).toBe("Small log 3");
  expect(workbook.done).toContain('Worksheets.Add(Small log 3).Tables.Add(A1:B3,true).Name = "Trials3"');
  expect(workbook.done.every((one) => one.startsWith("Worksheets.Add(Small log 3)."))).toBe(true);
});

const column = (at: number) => ({ row: 1, column: at, rows: 9, columns: 1 });
const charted: ReadySheet = {
  name: "Small log",
  cells: [],
  chart: {
    kind: "scatter",
    title: "Times",
    x: { title: "Current, A", scale: "log" },
    y: { title: "Time, s", scale: "log", from: 0.001, to: 10000 },
    series: [
      { name: "longest", x: column(3), y: column(4), drawn: "line", color: "79325A" },
      { name: "tripped", x: column(3), y: column(5), drawn: "points", color: "14645B" },
    ],
    at: { row: 9, column: 6, rows: 20, columns: 7 },
    cells: [{ row: 1, column: 3, value: null, formula: '=BIMETAL.TRIP.CURVE(20,"C")' }],
  },
};

test("a chart is one of Excel's own, with the cells it reads, each series told its values, and logarithmic axes", async () => {
  const { port, workbook } = open();
  await port.insertSheet(charted);
  const range = (cells: string) => `${sheet}.GetRange(${cells})`;
  const chart = `${sheet}.Charts.Add(XYScatterLinesNoMarkers,${range("E2:E10")},Columns)`;
  expect(workbook.done).toEqual(
    expect.arrayContaining([
      `${sheet}.GetRange(D2).Formulas = [["=BIMETAL.TRIP.CURVE(20,\\"C\\")"]]`,
      `${chart}.Title.Text = "Times"`,
      `${chart}.SetPosition("G10","M29")`,
      `${chart}.Series.GetItemAt(0).SetXAxisValues(${range("D2:D10")})`,
      `${chart}.Series.GetItemAt(0).SetValues(${range("E2:E10")})`,
      `${chart}.Series.Add(tripped,).SetValues(${range("F2:F10")})`,
      `${chart}.Series.Add(tripped,).ChartType = "XYScatter"`,
      `${chart}.Axes.CategoryAxis.ScaleType = "Logarithmic"`,
      `${chart}.Axes.ValueAxis.ScaleType = "Logarithmic"`,
      `${chart}.Axes.ValueAxis.LogBase = 10`,
      `${chart}.Axes.ValueAxis.Minimum = 0.001`,
      `${chart}.Axes.ValueAxis.Maximum = 10000`,
    ]),
  );
});

test("every ready sheet of the pane is taken whole: each value, formula and list of words is asked for", async () => {
  for (const { sheet } of shelves.flatMap((shelf) => shelf.sheets)) {
    const { port, workbook } = open({ [`Worksheets.Add(${sheet.name})`]: { Id: "{9}" } });
    expect(await port.insertSheet(sheet)).toBe(sheet.name);
    const asked = workbook.done.join("\n");
    for (const { formula, value } of [...sheet.cells, ...(sheet.chart?.cells ?? [])]) {
      if (formula) expect(asked).toContain(`.Formulas = [[${JSON.stringify(formula)}]]`);
      else if (value !== null) expect(asked).toContain(JSON.stringify(value));
    }
    for (const { words } of sheet.choices ?? []) expect(asked).toContain(JSON.stringify(words.join(",")));
    runtime?.close();
  }
});

describe("what Excel refuses", () => {
  test("is told in a sentence, and nothing is there", async () => {
    const { port, workbook } = open();
    workbook.refusal = "AccessDenied";
    await expect(port.insertSheet(ready)).rejects.toThrow("The workbook or the sheet is protected");
    expect(workbook.done).toEqual([]);
  });

  test("halfway leaves no half of a sheet: it is taken away by its own id", async () => {
    const { port, workbook } = open({ [sheet]: { Id: "{7}" }, "Worksheets.GetItemOrNullObject({7})": { Id: "{7}" } });
    workbook.stumbles = /Formulas/;
    await expect(port.insertSheet(ready)).rejects.toThrow("Excel cannot take this formula or address.");
    expect(workbook.done.filter((one) => one.includes("Delete"))).toEqual([
      "Worksheets.GetItemOrNullObject({7}).Delete()",
    ]);
  });

  test("of a chart leaves the sheet, and says so", async () => {
    const { port, workbook } = open({ [sheet]: { Id: "{7}" } });
    workbook.stumbles = /ScaleType/;
    await expect(port.insertSheet(charted)).rejects.toThrow(
      "The sheet “Small log” is there, but Excel refused its chart",
    );
    expect(workbook.done.filter((one) => one.includes("Delete"))).toEqual([]);
  });
});
