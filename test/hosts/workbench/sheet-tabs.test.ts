import { catalogue } from "../../../src/functions";
import { readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { type Visit, visits } from "./visits";

// Sheets taken, renamed and deleted in the built workbench, by keyboard and by mouse.

const visit = visits();
let person: Visit;
beforeEach(async () => {
  person = await visit();
});

const sheets = () => person.page.$$eval("#sheets .shop-sheet", (tabs) => tabs.map((tab) => tab.textContent));
/** A fresh sheet with the sum of the first two trials' numbers, 1 and 2. */
const sumOfLog = async () => {
  await person.takeFreshSheet();
  await person.type("=SUM(Log!A2:A3)");
  await person.press("ArrowUp");
  await person.shows("said", "'Scratch 1'!A1: 3; formula =SUM(Log!A2:A3)");
};
const openSheet = (name: string) => person.page.locator(`::-p-xpath(//nav//button[.='${name}'])`).click();

test("F2 on a tab renames its sheet; what cannot be a name is refused in a sentence; formulas follow", async () => {
  const { page } = person;
  await sumOfLog();
  await openSheet("Log");
  await person.shows("said", "Log!A1");
  await page.focus(".shop-sheet[aria-current]");
  await person.press("F2");
  await page.keyboard.type("breakers");
  await person.press("Enter");
  await person.shows("sheets-said", "There is a sheet Breakers already.");
  expect(await person.faults()).toEqual([]);
  await page.$eval(".shop-sheet-name", (field) => (field as HTMLInputElement).select());
  await page.keyboard.type("Bench log");
  await person.press("Enter");
  await person.shows("sheets", "Bench log");
  expect(await person.text("sheets-said")).toBe("");
  await openSheet("Scratch 1");
  await person.shows("said", "'Scratch 1'!A1: 3; formula =SUM('Bench log'!A2:A3)");
});

test("Esc and a press elsewhere leave a name that will not do as it was", async () => {
  const { page } = person;
  await page.click('[aria-label="Rename sheet Log"]');
  await page.keyboard.type("x:y");
  await person.press("Escape");
  expect(await sheets()).toContain("Log");
  await page.click('[aria-label="Rename sheet Log"]');
  await page.keyboard.type("x:y");
  await page.click("#formula");
  await person.shows("sheets-said", "The sheet keeps its name Log.");
  expect(await sheets()).toContain("Log");
});

test("a sheet is deleted after a question only; what read it says #REF!, and undo brings all back", async () => {
  const { page } = person;
  await sumOfLog();
  await openSheet("Log");
  await person.shows("said", "Log!A1");
  await page.focus(".shop-sheet[aria-current]");
  await person.press("Delete");
  await page.waitForSelector(".shop-question");
  expect(await page.$eval(".shop-question", (question) => question.textContent)).toMatch(
    /^Delete the sheet Log\? \d+ filled cells go with it\. Formulas elsewhere that read it will show #REF!\./,
  );
  expect(await person.faults()).toEqual([]);
  // Keep it has the keyboard.
  await person.press("Enter");
  expect(await sheets()).toContain("Log");
  await page.click('[aria-label="Delete sheet Log"]');
  await page.locator("::-p-xpath(//dialog//button[.='Delete Log'])").click();
  await page.waitForFunction(() => !document.getElementById("sheets")?.textContent?.startsWith("Log"));
  expect(await sheets()).not.toContain("Log");
  await openSheet("Scratch 1");
  await person.shows("said", "'Scratch 1'!A1: #REF!");
  await page.keyboard.down("Control");
  await person.press("KeyZ");
  await page.keyboard.up("Control");
  await person.shows("sheets", "Log");
  await openSheet("Scratch 1");
  await person.shows("said", "'Scratch 1'!A1: 3; formula =SUM(Log!A2:A3)");
});

test("a renamed sheet is saved under its new name, with its lists of words, and its formulas follow", async () => {
  const { page } = person;
  await page.click('[aria-label="Rename sheet Log"]');
  await page.keyboard.type("Evenings");
  await person.press("Enter");
  await person.shows("sheets", "Evenings");
  const saved = readWorkbook(await person.save(), catalogue);
  const evenings = saved.sheets.find(({ name }) => name === "Evenings");
  expect(evenings?.choices?.length).toBeGreaterThan(0);
  const formulas = saved.sheets.flatMap(({ cells }) => cells.map(({ formula = "" }) => formula));
  expect(formulas.filter((formula) => /\bLog!/.test(formula))).toEqual([]);
  expect(formulas.some((formula) => /\bEvenings!/.test(formula))).toBe(true);
});
