import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { ElementHandle } from "puppeteer-core";
import { catalogue } from "../../../src/functions";
import type { Book } from "../../../src/hosts/engine/book";
import { readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { writeWorkbook } from "../../../src/hosts/engine/xlsx/write-workbook";
import { cellsFrom } from "../engine/cells-from";
import { type Visit, visits } from "./visits";

// The built workbench in a real browser, driven by keyboard and mouse as a person would.

const visit = visits();
let person: Visit;
beforeEach(async () => {
  person = await visit();
});

test("it opens the example log on a verdict, which the pane explains", async () => {
  await person.shows("file", "test-log.xlsx");
  await person.shows("pane", "BIMETAL.TRIP.VERDICT");
  expect(await person.faults()).toEqual([]);
});

test("a first formula typed into a fresh sheet spills, and the pane tells the multiple, both edges, the source and the cautions", async () => {
  await person.takeFreshSheet();
  await person.type('=BIMETAL.TRIP.RANGE(51,20,"C")');
  await person.shows("said", "A2");
  // Nobody has to know that the formula's own cell is the one above.
  await person.shows("pane", "Cell A1, above the selected one");
  await person.shows("pane", "At 51 A a sound breaker trips not before 1 s and within 60 s.");
  await person.press("ArrowUp", "ArrowRight");
  await person.shows("said", `'Scratch 1'!B1: 60; formula =BIMETAL.TRIP.RANGE(51,20,"C")`);
  await person.shows("pane", "Cell B1");
  const pane = await person.text("pane");
  // IEC 60898-1 Table 7, test c: at 2.55 × not within 1 s, within 60 s up to 32 A. 51 A ÷ 20 A = 2.55, by hand.
  expect(pane).toContain("51 A");
  await person.page.waitForSelector(".pane-mathematics math");
  expect(await person.text("pane")).toContain("2.55");
  expect(pane).toMatch(/shortest\s?1 s/);
  expect(pane).toMatch(/longest\s?\(this cell\)\s?60 s/);
  expect(pane).toMatch(/IEC 60898-1 \(2015 \+ A1:2019\), Table 7/);
  expect(pane).toMatch(/Cautions.*r\.m\.s\. sine/);
  expect(await person.faults()).toEqual([]);
});

test("how a number is typed changes neither a list nor the words behind it; names and cells are written in capitals", async () => {
  await person.takeFreshSheet();
  await person.type('=if(.50+3.20<1E1,"yes","no")');
  await person.press("ArrowUp");
  await person.shows("said", `'Scratch 1'!A1: yes; formula =IF(0.5+3.2<10,"yes","no")`);
  await person.press("ArrowDown");
  await person.type('=IF(1.5%+true>b1,"yes","no")');
  await person.press("ArrowUp");
  await person.shows("said", `'Scratch 1'!A2: yes; formula =IF(1.5%+TRUE>B1,"yes","no")`);
  await person.press("ArrowDown");
  // 20 A × 0.160 V = 3.2 W and 30 A × 0.150 V = 4.5 W.
  await person.type("=BIMETAL.CONTACT.WATTS({20.0;30},{0.160;0.150})");
  await person.press("ArrowUp");
  await person.shows("said", "'Scratch 1'!A3: 3.2;");
  await person.press("ArrowDown");
  await person.shows("said", "'Scratch 1'!A4: 4.5;");
});

test("a formula that no sheet would read stays text, and the pane says how formulas are written", async () => {
  await person.takeFreshSheet();
  await person.type('=BIMETAL.TRIP.RANGE(51;20;"C")');
  await person.press("ArrowUp");
  await person.shows("said", `'Scratch 1'!A1: =BIMETAL.TRIP.RANGE(51;20;"C")`);
  expect(await person.text("said")).not.toContain("formula");
  await person.shows("pane", "This formula cannot be read. Arguments are parted by commas");
});

test("a refusal shows its sentence above the grid, in the pane, and beside the pointer", async () => {
  await person.takeFreshSheet();
  await person.type('=BIMETAL.TRIP.RANGE("x",20,"C")');
  await person.press("ArrowUp");
  const sentence = 'current: a number in A is wanted, not the text "x".';
  await person.shows("note", sentence);
  await person.shows("pane", sentence);
  const grid = await (await person.page.$("#grid"))?.boundingBox();
  if (!grid) throw new Error("There is no grid.");
  await person.page.mouse.move(grid.x + 90, grid.y + 30);
  await person.page.mouse.move(grid.x + 92, grid.y + 31);
  await person.page.waitForSelector(".shop-tip:not([hidden])", { timeout: 5000 });
  expect(await person.page.$eval(".shop-tip", (tip) => tip.textContent)).toBe(sentence);
});

test("the formula line completes a name and helps with its arguments", async () => {
  const { page } = person;
  await person.takeFreshSheet();
  await person.press("F6");
  await page.keyboard.type("=contact.wa");
  await person.shows("options", "BIMETAL.CONTACT.WATTS");
  expect(await person.faults()).toEqual([]);
  await person.press("Enter");
  await page.keyboard.type("20,");
  await person.shows("help", "drop: the voltage drop across the pole");
  await page.keyboard.type("0.16)");
  await person.press("Enter");
  // 20 A × 0.16 V = 3.2 W, by hand.
  await person.shows("said", "'Scratch 1'!A1: 3.2; formula =BIMETAL.CONTACT.WATTS(20,0.16)");
});

test("the grid helps while a formula is typed into a cell", async () => {
  const { page } = person;
  await person.takeFreshSheet();
  await page.keyboard.type("=BIMETAL.CONTACT.WA", { delay: 5 });
  const isOffered = () => document.body.textContent?.includes("The heat a pole makes");
  await page.waitForFunction(isOffered, { timeout: 5000 });
  await person.press("Escape", "Escape");
});

test("copying, pasting, undoing and the cell's menu break no rule of the page", async () => {
  const { page } = person;
  await page.browserContext().setPermission(new URL(page.url()).origin, ...permissions);
  await person.takeFreshSheet();
  await person.type("=BIMETAL.CONTACT.WATTS(20,0.16)");
  await person.press("ArrowUp");
  await person.shows("said", "'Scratch 1'!A1: 3.2");
  await person.holding("Control", "KeyC");
  await page.waitForFunction(async () => (await navigator.clipboard.readText()) === "3.2");
  await person.press("ArrowRight");
  await person.shows("said", "'Scratch 1'!B1: blank");
  await person.holding("Control", "KeyV");
  await person.shows("said", "'Scratch 1'!B1: 3.2");
  await person.holding("Control", "KeyZ");
  await person.shows("said", "'Scratch 1'!B1: blank");
  const grid = await (await page.$("#grid"))?.boundingBox();
  await page.mouse.click((grid?.x ?? 0) + 90, (grid?.y ?? 0) + 30, { button: "right" });
  await page.waitForFunction(() => document.body.textContent?.includes("Paste"), { timeout: 5000 });
  await person.press("Escape");
});

const permissions = (["clipboard-read", "clipboard-write"] as const).map((name) => ({
  permission: { name },
  state: "granted" as const,
}));

test("F6 goes round the parts of the page, so the grid is no trap", async () => {
  await person.takeFreshSheet();
  const focus = () =>
    person.page.evaluate(() => document.activeElement?.closest("#grid, #pane, #sheets, #formula")?.id);
  const went = [await focus()];
  for (let i = 0; i < 4; i++) {
    await person.press("F6");
    went.push(await focus());
  }
  expect(went).toEqual(["grid", "formula", "sheets", "pane", "grid"]);
});

test("a function is found by a word, filled in, answered and inserted", async () => {
  const { page } = person;
  await person.takeFreshSheet();
  await page.click("#pane-tab-Functions");
  await page.type("#pane-find", "power loss limit");
  await person.shows("pane", "CONTACT.LIMIT");
  await page.$$eval(".pane-function", (buttons) =>
    (buttons as HTMLElement[]).find((button) => button.textContent?.startsWith("CONTACT.LIMIT"))?.click(),
  );
  await page.waitForSelector("#pane-field-rating");
  await page.type("#pane-field-rating", "20");
  // IEC 60898-1 (from memory): 4.5 W up to 25 A.
  await person.shows("pane", "4.5 W");
  expect(await person.faults()).toEqual([]);
  await page.click(".pane-insert");
  await person.shows("said", "'Scratch 1'!A1: 4.5; formula =BIMETAL.CONTACT.LIMIT(20)");
});

test("a saved copy holds what was read and what was typed", async () => {
  await person.takeFreshSheet();
  await person.type('=BIMETAL.TRIP.RANGE(51,20,"C")');
  await person.press("ArrowUp");
  await person.shows("said", "A1: 1;");
  const saved = readWorkbook(await person.save(), catalogue);
  const scratch = saved.sheets.find(({ name }) => name === "Scratch 1");
  expect(scratch?.cells).toEqual([
    expect.objectContaining({ row: 0, column: 0, value: 1, formula: '=BIMETAL.TRIP.RANGE(51,20,"C")' }),
    expect.objectContaining({ row: 0, column: 1, value: 60 }),
  ]);
  expect(saved.sheets.map(({ name }) => name)).toContain("Log");
  // The example was written by the same writer, so nothing of it is lost.
  await person.shows("file", "test-log.xlsx: saved as a copy.");
});

test("another workbook is opened; its names and tables are followed, and what the grid cannot calculate keeps its value and is told", async () => {
  const { page } = person;
  const folder = await mkdtemp(join(tmpdir(), "bimetal-open-"));
  const file = join(folder, "other.xlsx");
  await writeFile(file, writeWorkbook(otherBook, catalogue));
  const input = (await page.$("#chosen")) as ElementHandle<HTMLInputElement> | null;
  await input?.uploadFile(file);
  await person.shows(
    "file",
    "other.xlsx: one formula is not calculated here and keeps its value: It refers to another workbook",
  );
  await rm(folder, { recursive: true });
  await person.shows("said", "Ways!D2: 6; formula");
  // 20 A × 0.3 V = 6 W, by hand.
  await person.shows("pane", "The pole makes 6 W of heat at 20 A.");
  expect(await person.text("pane")).toMatch(/current20 A.*from Load/);
  await page.$$eval(".pane-input-from .pane-go", (buttons) => (buttons as HTMLElement[])[0]?.click());
  await person.shows("said", "Ways!A2: 20");
  // A table's column in a formula that is typed: the file's words stand in the line, the grid's in the grid.
  await person.press("ArrowRight", "ArrowRight", "ArrowRight");
  await person.shows("said", "Ways!D2: 6; formula =BIMETAL.CONTACT.WATTS(Load,Ways[drop])");
  await person.press("F6");
  await page.$eval("#formula", (line) => (line as HTMLInputElement).select());
  await page.keyboard.type("=BIMETAL.CONTACT.WATTS(2*Load,Ways[drop])");
  await person.press("Enter");
  // 40 A × 0.3 V, by hand.
  await person.shows("said", "Ways!D2: 12");
});

/** A table of one way, a name for its load, and a formula that asks another workbook. */
const otherBook: Book = {
  sheets: [
    {
      name: "Ways",
      cells: cellsFrom([
        ["load", "drop", "elsewhere", "heat"],
        [20, 0.3, null, "=BIMETAL.CONTACT.WATTS(Load,Ways[drop])"],
      ]).concat({ row: 1, column: 2, value: 7, formula: "=[Book2.xlsx]Sheet1!$A$1" }),
      tables: [
        { name: "Ways", block: { row: 0, column: 0, rows: 2, columns: 3 }, columns: ["load", "drop", "elsewhere"] },
      ],
    },
  ],
  names: [{ name: "Load", formula: "Ways!$A$2" }],
};

test("on a narrow page the pane stands below the grid and nothing runs out of it", async () => {
  const { page } = person;
  await page.setViewport({ width: 320, height: 700 });
  const excess = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(excess).toBeLessThanOrEqual(0);
  const [grid, pane] = await Promise.all(
    ["#grid", "#pane"].map((id) => page.$eval(id, (element) => element.getBoundingClientRect().toJSON())),
  );
  expect(pane.top).toBeGreaterThanOrEqual(grid.bottom);
  expect(await person.faults()).toEqual([]);
});

test("in the dark the page and the grid are dark, and still legible to axe", async () => {
  const { page } = person;
  await page.emulateMediaFeatures([{ name: "prefers-color-scheme", value: "dark" }]);
  await page.reload();
  await person.shows("pane", "BIMETAL.TRIP.VERDICT");
  expect(await page.$eval("body", (body) => getComputedStyle(body).backgroundColor)).toBe("rgb(24, 23, 20)");
  expect(await person.faults()).toEqual([]);
});
