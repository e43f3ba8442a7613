import { readFile } from "node:fs/promises";
import { catalogue } from "../../../src/functions";
import type { Book } from "../../../src/hosts/engine/book";
import { readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { type Visit, visits } from "./visits";

// Ready sheets put into the grid from the pane, in a real browser.

const visit = visits();
let person: Visit;
beforeEach(async () => {
  person = await visit();
});

const openSheets = async () => {
  await person.page.click("#pane-tab-Sheets");
  await person.page.waitForSelector(".pane-sheet");
};
const insert = async (name: string, as = name) => {
  await person.page.click(`[aria-label="Insert ${name}"]`);
  await person.shows("pane", `It stands in the new sheet “${as}”. Nothing else was touched.`);
};
const saved = async (): Promise<Book> => readWorkbook(await person.save(), catalogue);
const cellOf = (book: Book, sheet: string, row: number, column: number) =>
  book.sheets.find(({ name }) => name === sheet)?.cells.find((cell) => cell.row === row && cell.column === column);

test("by keyboard alone a ready sheet is found, put in, and the keyboard stays where it was", async () => {
  const { page } = person;
  await page.focus("#pane-tab-Explain");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await page.waitForSelector(".pane-sheet");
  await page.keyboard.press("Tab");
  const focus = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
  expect(await focus()).toBe("Insert Test log");
  await page.keyboard.press("Enter");
  await person.shows("pane", "It stands in the new sheet “Test log”. Nothing else was touched.");
  await person.shows("said", "'Test log'!A1: Trial");
  expect(await focus()).toBe("Insert Test log");
  expect(await person.faults()).toEqual([]);
});

test("the same sheet once more has a name of its own, and what was there before is as it was", async () => {
  const { page } = person;
  await openSheets();
  await insert("Test log");
  await page.keyboard.press("F6");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.type("mine");
  await page.keyboard.press("Enter");
  await person.shows("said", "'Test log'!A3: blank");
  await insert("Test log", "Test log 2");
  const tabs = await page.$$eval(".shop-sheet", (all) => all.map((tab) => tab.textContent));
  expect(tabs).toEqual(["Log", "Breakers", "Read me", "Try it", "Test log", "Test log 2"]);
  const book = await saved();
  expect(cellOf(book, "Test log", 1, 0)?.value).toBe("mine");
  expect(cellOf(book, "Test log 2", 1, 0)).toBeUndefined();
  const tables = book.sheets.flatMap((sheet) => sheet.tables ?? []).map(({ name }) => name);
  expect(tables).toEqual(["Trials", "Trials2"]);
  const before = readWorkbook(await readFile("examples/test-log.xlsx"), catalogue);
  const typedIn = (sheet: string, { sheets }: typeof before) =>
    sheets
      .find(({ name }) => name === sheet)
      ?.cells.flatMap(({ row, column, value, formula, spill }) =>
        value === null || spill ? [] : [{ row, column, value, formula }],
      );
  for (const { name } of before.sheets) expect(typedIn(name, book)).toEqual(typedIn(name, before));
});

test("a line typed into a new log is judged at once; a saved copy keeps formulas, tables and lists of words", async () => {
  const { page } = person;
  await openSheets();
  await insert("Test log");
  // From the pane F6 leads on to the grid.
  await page.keyboard.press("F6");
  const line: readonly (readonly [to: number, typed: string])[] = [
    [3, "20"],
    [1, "C"],
    [3, "51"],
    [2, "14"],
    [1, "tripped"],
    [3, "30"],
  ];
  await page.keyboard.press("ArrowDown");
  for (const [right, typed] of line) {
    for (let i = 0; i < right; i++) await page.keyboard.press("ArrowRight");
    await page.keyboard.type(typed, { delay: 5 });
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
  }
  for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight");
  // IEC 60898-1 Table 7, test c, at 30 °C: 51 A ÷ 20 A = 2.55, from 1 s to 60 s.
  await person.shows("said", "'Test log'!S2: in range; formula =BIMETAL.TRIP.VERDICT(");
  const book = await saved();
  expect(cellOf(book, "Test log", 1, 16)).toMatchObject({ value: 1, spill: { rows: 200, columns: 2 } });
  const log = book.sheets.find(({ name }) => name === "Test log");
  expect(log?.tables?.map(({ name }) => name)).toEqual(["Trials"]);
  expect(log?.choices?.map(({ words }) => words)).toContainEqual(["tripped", "held"]);
  expect(log?.frozen).toEqual({ rows: 1, columns: 3 });
});

test("a lesson answers as soon as it is there", async () => {
  await openSheets();
  await insert("1 Two mechanisms");
  const book = await saved();
  // IEC 60898-1 Table 7, test c, and the multiple by hand: at 51 A a C20 trips from 1 s to 60 s.
  const row = Array.from({ length: 5 }, (_, column) => cellOf(book, "1 Two mechanisms", 11, column)?.value);
  expect(row).toEqual([51, 2.55, 1, 60, "trips, thermal"]);
});

test("what the grid cannot draw is told beforehand", async () => {
  await openSheets();
  expect(await person.text("pane")).toMatch(/Breaker study.*its chart needs Excel and is left out here/);
  await insert("Breaker study");
  expect(await person.faults()).toEqual([]);
});

test("the list of ready sheets keeps within a narrow pane, light and dark", async () => {
  const { page } = person;
  await openSheets();
  await page.setViewport({ width: 320, height: 700 });
  for (const value of ["light", "dark"]) {
    await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value }]);
    const excess = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(excess).toBeLessThanOrEqual(0);
    expect(await person.faults()).toEqual([]);
  }
});
