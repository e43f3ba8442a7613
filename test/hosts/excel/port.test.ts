import { Memory } from "../../../src/definition/memory";
import contactWatts from "../../../src/functions/contact.watts";
import { excelPort } from "../../../src/hosts/excel/port";
import type { Port, Selection } from "../../../src/hosts/pane/port";
import { type ExcelRuntime, startExcelRuntime } from "./runtime";
import { ScriptedWorkbook } from "./scripted-workbook";

// The port through Microsoft's own Excel.run: what it asks the host for, and what it makes of the answers.

const cell = (Address: string, formula: string, value: unknown, type = "Double", [row, column] = [1, 5]) => ({
  Address,
  Formulas: [[formula]],
  Values: [[value]],
  ValueTypes: [[type]],
  RowIndex: row,
  ColumnIndex: column,
});
const column = (values: unknown[], types: string[], RowIndex = 1) => ({
  Values: values.map((value) => [value]),
  ValueTypes: types.map((type) => [type]),
  RowIndex,
});
const active = "GetActiveCell()";
const parent = `${active}.GetSpillParentOrNullObject()`;
const spill = `${active}.GetSpillingToRangeOrNullObject()`;

let runtime: ExcelRuntime | undefined;
const open = (objects: Record<string, object | null>): { workbook: ScriptedWorkbook; port: Port; memory: Memory } => {
  const workbook = new ScriptedWorkbook({ Worksheets: {}, ...objects });
  runtime = startExcelRuntime(workbook);
  const { Excel, Office } = runtime.globals;
  Object.assign(globalThis, { Excel, Office });
  const memory = new Memory();
  return { workbook, port: excelPort(memory), memory };
};
afterEach(() => runtime?.close());

const until = async (isSo: () => boolean): Promise<void> => {
  for (let tries = 0; tries < 300 && !isSo(); tries++) await new Promise((r) => setTimeout(r, 10));
  expect(isSo()).toBe(true);
};
const firstSelection = (port: Port): Promise<Selection | undefined> =>
  new Promise((resolve) => {
    port.onSelection(resolve);
  });

describe("the selected cell", () => {
  test("is told with its formula and value, in one round trip", async () => {
    const { port, workbook } = open({
      [active]: cell("Log!F2", "=BIMETAL.CONTACT.WATTS(B2,C2)", 3.2),
      [parent]: null,
      [spill]: null,
    });
    const stop = port.onSelection((selection) => {
      expect(selection).toEqual({ address: "Log!F2", formula: "=BIMETAL.CONTACT.WATTS(B2,C2)", value: 3.2 });
    });
    await until(() => workbook.done.includes("Worksheets._RegisterCalculatedEvent()"));
    // One to read the cell, one to add the event handlers, and Excel's own release of what was read.
    expect(workbook.batches).toBeLessThanOrEqual(3);
    stop();
    await until(() => workbook.done.includes("Worksheets._UnregisterCalculatedEvent()"));
  });

  test("inside a spill has the formula of the spill's first cell and its place from there", async () => {
    const { port } = open({
      [active]: cell("Log!G4", "", "no limit", "String", [3, 6]),
      [parent]: cell("Log!F2", "=BIMETAL.TRIP.RANGE(B2:B9,C2,D2)", 1, "Double", [1, 5]),
      [spill]: null,
    });
    expect(await firstSelection(port)).toEqual({
      address: "Log!G4",
      formula: "=BIMETAL.TRIP.RANGE(B2:B9,C2,D2)",
      value: "no limit",
      spill: { anchor: "Log!F2", row: 2, column: 1 },
    });
  });

  test("that starts a spill is its first cell", async () => {
    const { port } = open({
      [active]: cell("Log!F2", "=BIMETAL.TRIP.RANGE(B2:B9,C2,D2)", 1),
      [parent]: null,
      [spill]: { Address: "Log!F2:G9" },
    });
    expect((await firstSelection(port))?.spill).toEqual({ anchor: "Log!F2", row: 0, column: 0 });
  });

  test("without a formula has none, and a blank or an error is told as such", async () => {
    const nothing = { [parent]: null, [spill]: null };
    const blank = open({ [active]: cell("Log!A1", "", "", "Empty"), ...nothing });
    expect(await firstSelection(blank.port)).toEqual({ address: "Log!A1", formula: "", value: null });
    const broken = open({ [active]: cell("Log!A1", "=1/0", "#DIV/0!", "Error"), ...nothing });
    expect((await firstSelection(broken.port))?.value).toEqual({ code: "#DIV/0!" });
    const typed = open({ [active]: cell("Log!A1", "breaker", "breaker", "String"), ...nothing });
    expect(await firstSelection(typed.port)).toEqual({ address: "Log!A1", formula: "", value: "breaker" });
  });

  test("is told again when another is selected and when the sheet has been calculated", async () => {
    const { port, workbook } = open({ [active]: cell("Log!F2", "", 1), [parent]: null, [spill]: null });
    let told = 0;
    let calculated = 0;
    port.onSelection(() => told++);
    port.onCalculated(() => calculated++);
    await until(() => workbook.done.filter((one) => one.includes("_RegisterCalculated")).length === 2);
    await until(() => told > 0);
    expect(told).toBe(1);
    runtime?.host.tell("selectionChanged");
    await until(() => told === 2);
    runtime?.host.tell("calculated");
    await until(() => told === 3 && calculated === 1);
  });

  test("another cell is told in the same way, by its address; one that is not there is refused with a sentence", async () => {
    const other = "Worksheets[Bench log].GetRange(F1)";
    const { port } = open({
      [other]: cell("'Bench log'!F1", "=BIMETAL.CONTACT.WATTS(B1,C1)", 3.2),
      [`${other}.GetSpillParentOrNullObject()`]: null,
      [`${other}.GetSpillingToRangeOrNullObject()`]: null,
    });
    expect(await port.selectionAt("'Bench log'!F1")).toEqual({
      address: "'Bench log'!F1",
      formula: "=BIMETAL.CONTACT.WATTS(B1,C1)",
      value: 3.2,
    });
    await expect(port.selectionAt("Log!F1")).rejects.toThrow("is not in this workbook");
  });

  test("is none while a chart or a picture is selected", async () => {
    // The script has no active cell, which Excel answers with an error.
    const { port } = open({});
    expect(await firstSelection(port)).toBeUndefined();
  });
});

describe("the values of a reference", () => {
  const sheet = "Worksheets[Bench log]";

  test("are those of the cells, a blank as null and an error as an error", async () => {
    const { port } = open({
      [`${sheet}.GetRange(B2:B5)`]: column([20, "", "#N/A", true], ["Double", "Empty", "Error", "Boolean"]),
    });
    expect(await port.valuesAt("B2:B5", "'Bench log'")).toEqual([[20], [null], [{ code: "#N/A" }], [true]]);
  });

  test("of a spill are those of its whole range", async () => {
    const { port } = open({
      [`${sheet}.GetRange(B2)`]: {},
      [`${sheet}.GetRange(B2).GetSpillingToRangeOrNullObject()`]: column([1, 2], ["Double", "Double"]),
    });
    expect(await port.valuesAt("B2#", "Bench log")).toEqual([[1], [2]]);
  });

  test("of a cell that does not spill are refused with a sentence", async () => {
    const { port } = open({
      [`${sheet}.GetRange(B2)`]: {},
      [`${sheet}.GetRange(B2).GetSpillingToRangeOrNullObject()`]: null,
    });
    await expect(port.valuesAt("B2#", "Bench log")).rejects.toThrow("B2# holds no cells.");
  });

  test("of a name are looked up on its sheet, then in the workbook", async () => {
    const { port } = open({
      [`${sheet}.Names.GetItemOrNullObject(Rating)`]: null,
      "Names.GetItemOrNullObject(Rating)": { Name: "Rating" },
      "Names.GetItemOrNullObject(Rating).GetRangeOrNullObject()": column([20], ["Double"]),
      "Tables.GetItemOrNullObject(Rating)": null,
    });
    expect(await port.valuesAt("Rating", "Bench log")).toEqual([[20]]);
  });

  test("of a name that nobody has given are refused with a sentence", async () => {
    const { port } = open({
      [`${sheet}.Names.GetItemOrNullObject(Rating)`]: null,
      "Names.GetItemOrNullObject(Rating)": null,
      "Tables.GetItemOrNullObject(Rating)": null,
    });
    await expect(port.valuesAt("Rating", "Bench log")).rejects.toThrow(
      "There is no name and no table Rating in this workbook.",
    );
  });

  const trials = {
    "Tables[Trials]": {},
    "Tables[Trials].Columns[current]": {},
    "Tables[Trials].Columns[current].GetDataBodyRange()": column([51, 40, 24], ["Double", "Double", "Double"], 4),
    [active]: cell("Log!F6", "", 1, "Double", [5, 5]),
  };

  test("of a table's column are its data", async () => {
    const { port } = open({ ...trials, [parent]: null });
    expect(await port.valuesAt("Trials[current]", "Log")).toEqual([[51], [40], [24]]);
  });

  test("of a table's column in this row are those beside the formula", async () => {
    const beside = open({ ...trials, [parent]: null });
    expect(await beside.port.valuesAt("Trials[@current]", "Log")).toEqual([[40]]);
    const spilled = open({ ...trials, [parent]: cell("Log!F5", "", 1, "Double", [4, 5]) });
    expect(await spilled.port.valuesAt("Trials[@current]", "Log")).toEqual([[51]]);
    const below = open({ ...trials, [parent]: cell("Log!F30", "", 1, "Double", [29, 5]) });
    await expect(below.port.valuesAt("Trials[@current]", "Log")).rejects.toThrow(/not beside a row of the table/);
  });
});

describe("what a person asks for", () => {
  test("a formula goes into the selected cell if that is empty or holds one of ours", async () => {
    const empty = open({ [active]: cell("Log!F2", "", "", "Empty") });
    await empty.port.insertFormula("=BIMETAL.CONTACT.WATTS(20,0.16)");
    expect(empty.workbook.done).toContain(`${active}.Formulas = [["=BIMETAL.CONTACT.WATTS(20,0.16)"]]`);
    const ours = open({ [active]: cell("Log!F2", "=bimetal.contact.watts(1,1)", 1) });
    await ours.port.insertFormula("=BIMETAL.CONTACT.WATTS(20,0.16)");
    expect(ours.workbook.done).toHaveLength(1);
  });

  test("a formula never overwrites what somebody has typed", async () => {
    const { port, workbook } = open({ [active]: cell("Log!F2", "20", 20) });
    await expect(port.insertFormula("=BIMETAL.CONTACT.WATTS(20,0.16)")).rejects.toThrow(
      "Log!F2 is not empty: select an empty cell for the formula.",
    );
    expect(workbook.done).toEqual([]);
  });

  test("recalculating asks for everything anew", async () => {
    const { port, workbook } = open({ Application: {} });
    await port.recalculate();
    expect(workbook.done).toEqual(['Application.Calculate("Full")']);
  });

  test("going to a cell shows its sheet and selects it", async () => {
    const { port, workbook } = open({ "Worksheets[Bench log]": {}, "Worksheets[Bench log].GetRange(F2)": {} });
    await port.goTo("'Bench log'!F2");
    expect(workbook.done).toEqual(["Worksheets[Bench log].Activate()", "Worksheets[Bench log].GetRange(F2).Select()"]);
  });

  test.each([
    ["InvalidOperationInCellEditMode", "A cell is being edited: press Enter or Esc in the sheet, then try again."],
    ["AccessDenied", "The workbook or the sheet is protected: unprotect it, then try again."],
    ["SomethingNew", "Excel refused: refused with SomethingNew"],
  ])("what Excel refuses with %s is told in a sentence", async (code, sentence) => {
    const { port, workbook } = open({ Application: {} });
    workbook.refusal = code;
    await expect(port.recalculate()).rejects.toThrow(sentence);
  });
});

test("the last call of a cell is found by the address that the selection has", () => {
  const { port, memory } = open({});
  memory.remember("Bench log!F2", contactWatts, [20, 0.16]);
  expect(port.lastCallAt("'Bench log'!F2", contactWatts)?.args).toEqual([20, 0.16]);
  expect(port.lastCallAt("'Bench log'!F3", contactWatts)).toBeUndefined();
});
