import type ExcelJS from "exceljs";
import { type Cell, CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { faultsIn } from "../../../src/hosts/engine/calculate";
import { isIn, sayCellOf, sayPlace } from "../../../src/hosts/engine/place";
import { Spelling } from "../../../src/hosts/engine/spelling";
import { openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { changedSince } from "../../../src/hosts/workbench/page/kept-file";
import { readByExceljs } from "../../support/read-by-exceljs";
import { bytesOf, corpusWorkbooks, notByExceljs } from "../engine/corpus-workbooks";
import { Chance } from "../workbook/fuzz/chance";
import { differing, malformed } from "./differing";
import { type GridInNode, gridInNode } from "./grid-in-node";

// Random edits in the grid over workbooks of other writers, saved: what is read again by this program and by another is what the grid held.
// More of them: FROM=1000 SEEDS=300 npx jest test/hosts/workbench/random-edits

const values = [0, -1.5, 1e-300, 51, 0.0625, true, false];
const words = ["held", " blanks ", 'a <b> & "c"', "two\nlines", "'quoted", "_x0041_", "Ω"];
const typed = [...values, ...words];
const formulas = [
  '=BIMETAL.TRIP.RANGE(51,20,"C")',
  "=BIMETAL.CONTACT.WATTS(A2:A4,0.1)",
  "=bimetal.contact.watts(-1,1)",
  "=A2*2",
  "=SUM(A1:B9)",
  "=SEQUENCE(3,2)",
  "=LET(x,A2,x+1)",
  '=IF(A2>1,"over","not")',
  "=A2:A4+1",
  "=SORT(A2:A4)",
  "=1/0",
  "=NOSUCH(1)",
  '=B2&"<"',
  "=TRUE",
];

/** Does one thing to the grid that a person might do. */
const act = ({ api }: GridInNode, chance: Chance): void => {
  const workbook = api.getActiveWorkbook();
  const sheet = workbook && chance.pick(workbook.getSheets());
  if (!workbook || !sheet) throw new Error("Nothing is open.");
  const range = sheet.getRange(chance.below(9), chance.below(9));
  chance.pick([
    () => range.setValue(chance.pick(typed)),
    () => range.setValue(chance.pick(typed)),
    () => range.setFormula(chance.pick(formulas)),
    () => range.setFormula(chance.pick(formulas)),
    () => range.clearContent(),
    () => range.clear(),
    () => range.setFontWeight(chance.pick(["bold", "normal"])),
    () => range.setBackgroundColor(chance.pick(["#FFEE00", "#112233"])),
    () => range.setValue({ v: 0.5, s: { n: { pattern: chance.pick(["0.00%", '0" A"', "General"]) } } }),
    () => sheet.setColumnWidth(chance.below(9), 40 + chance.below(200)),
    () => sheet.setRowHeight(chance.below(12), 20 + chance.below(60)),
    () => workbook.create(`Sheet & ${workbook.getSheets().length}`, 20, 20),
    () => void workbook.undo(),
    () => void workbook.redo(),
  ])();
};

/** As files spell it: an error that they cannot is #VALUE!, and nothing is the same as a text of no letters. */
const plain = (value: Cell | undefined): unknown => {
  if (value instanceof CellError)
    return /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)$/.test(value.code) ? value.code : "#VALUE!";
  return value === "" || value === undefined ? null : value === 0 ? 0 : value;
};

/** That reader leaves out a formula's answer that is 0 or FALSE, and leaves characters as a file spells them. */
const byExceljs = (value: ExcelJS.CellValue): unknown => {
  if (typeof value === "string") return plain(value.replaceAll("_x005F_", "_"));
  if (value === null || typeof value !== "object") return plain(value as Cell);
  if (value instanceof Date) return value;
  if ("richText" in value) return value.richText.map(({ text }) => text).join("");
  if ("error" in value) return value.error;
  if ("hyperlink" in value) return byExceljs(value.text);
  return "result" in value ? byExceljs(value.result as ExcelJS.CellValue) : null;
};

/** Differences between what the grid holds and what is read from the file that it was saved as. */
const differences = async (grid: GridInNode, after: Uint8Array, isForExceljs: boolean): Promise<string[]> => {
  const state = grid.state();
  const { book } = openWorkbook(after, catalogue);
  const { kept } = changedSince(grid.opened.book, state);
  const left = new Set([...kept, ...faultsIn(book, state.view, new Spelling(catalogue)).map(([place]) => place)]);
  const found: string[] = [];
  const readByOther = isForExceljs ? await readByExceljs(after) : undefined;
  for (const sheet of book.sheets) {
    const cells = new Map(sheet.cells.map((cell) => [sayCellOf(cell), cell]));
    const unsaid = state.view
      .spillsOn(sheet.name)
      .filter((block) => left.has(sayPlace({ sheet: sheet.name, ...block })));
    for (let row = 0; row < 20; row++)
      for (let column = 0; column < 20; column++) {
        const place = { sheet: sheet.name, row, column };
        const said = sayCellOf(place);
        if (left.has(sayPlace(place)) || unsaid.some((block) => isIn(block, place))) continue;
        const holds = plain(state.view.valueAt(place));
        const read = plain(cells.get(said)?.value);
        if (read !== holds) found.push(`${sayPlace(place)} holds ${holds} and is read as ${read}`);
        const cell = readByOther?.getWorksheet(sheet.name)?.getCell(said);
        // Of merged cells that reader tells the first one's value in each.
        const other = !readByOther || cell?.isMerged ? holds : byExceljs(cell?.value ?? null);
        if (other !== holds && !(other instanceof Date) && !(other === null && (holds === 0 || holds === false)))
          found.push(`${sayPlace(place)} holds ${holds} and exceljs reads ${other}`);
      }
  }
  return found;
};

const mayDiffer =
  /^(\[Content_Types\]\.xml|xl\/(_rels\/)?workbook\.xml(\.rels)?|xl\/worksheets\/sheet\d*\.xml|xl\/(metadata|styles|calcChain)\.xml)$/;

const seeds = Array.from({ length: Number(process.env.SEEDS ?? 30) }, (_, i) => Number(process.env.FROM ?? 0) + i);
test.each(seeds)("random edits, saved and read again, seed %i", async (seed) => {
  const chance = new Chance(seed);
  const name = corpusWorkbooks[seed % corpusWorkbooks.length] as string;
  const bytes = bytesOf(name);
  const grid = await gridInNode(bytes);
  const acts = 1 + chance.below(12);
  for (let i = 0; i < acts; i++) act(grid, chance);
  await grid.settle();
  const { bytes: after, how } = grid.saved();
  const others = differing(bytes, after).filter((part) => !mayDiffer.test(part));
  if ("anew" in how) expect(how.anew).toMatch(/^a heading of the table|metadata/);
  expect(malformed(after)).toEqual(malformed(bytes));
  if (!("anew" in how)) expect([others, await differences(grid, after, !(name in notByExceljs))]).toEqual([[], []]);
  grid.close();
});
