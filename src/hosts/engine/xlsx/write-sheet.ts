import type { Sheet, SheetCell, Style } from "../book";
import { sayBlock, sayCellOf } from "../place";
import type { Spelling } from "../spelling";
import { isDynamic, storedFormula } from "../stored-formula";
import { tag, valueText } from "./cell-text";
import { MAIN, OFFICE } from "./namespaces";
import { escapeText, HEAD } from "./xml";

// On paper all columns of a log stand side by side, over as many pages down as it takes.
const asWideAsPaper = '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>';
const landscape = '<pageSetup orientation="landscape" fitToHeight="0"/>';

/** How a sheet's part says what stands elsewhere in the package. */
export interface Wording {
  readonly spelling: Spelling;
  /** The number for `s`; undefined for a cell without any look of its own. */
  numberOf(style: Style | undefined): string | undefined;
  /** A text that is typed: the cell's type and the element that holds or finds it. */
  textOf(text: string): { readonly type: string; readonly element: string };
  /** What `cm` marks a dynamic array. */
  mark(): number;
}

/** A sheet's part. */
export const sheetXml = (sheet: Sheet, isFirst: boolean, wording: Wording): string => {
  const rows = new Map<number, SheetCell[]>();
  let lastRow = 0;
  let lastColumn = 0;
  for (const cell of sheet.cells) {
    const row = rows.get(cell.row);
    if (row) row.push(cell);
    else rows.set(cell.row, [cell]);
    lastRow = Math.max(lastRow, cell.row);
    lastColumn = Math.max(lastColumn, cell.column);
  }
  const data = [...rows]
    .sort(([a], [b]) => a - b)
    .map(([row, cells]) => {
      const written = [...cells].sort((a, b) => a.column - b.column).map((cell) => cellXml(cell, wording));
      return `${tag("row", { r: String(row + 1) })}${written.join("")}</row>`;
    });
  const dimension = sayBlock({ row: 0, column: 0, rows: lastRow + 1, columns: lastColumn + 1 });
  return (
    `${HEAD}${tag("worksheet", { xmlns: MAIN, "xmlns:r": OFFICE })}${asWideAsPaper}${tag("dimension", { ref: dimension }, "/>")}` +
    `<sheetViews>${tag("sheetView", { tabSelected: isFirst ? "1" : undefined, workbookViewId: "0" })}${pane(sheet)}</sheetView></sheetViews>` +
    `<sheetFormatPr defaultRowHeight="15"/>${columns(sheet)}<sheetData>${data.join("")}</sheetData>${choices(sheet)}` +
    `<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/>${landscape}${tableParts(sheet)}</worksheet>`
  );
};

const cellXml = (cell: SheetCell, wording: Wording): string => {
  const { value, formula } = cell;
  const attributes = { r: sayCellOf(cell), s: wording.numberOf(cell.style) };
  if (formula === undefined) {
    const { type, element } = typeof value === "string" ? wording.textOf(value) : valueText(value);
    return element === "" ? tag("c", attributes, "/>") : `${tag("c", { ...attributes, t: type })}${element}</c>`;
  }
  const { type, element } = valueText(value);
  const { cm, text } = formulaText({ ...cell, formula }, wording);
  return `${tag("c", { ...attributes, t: type, cm })}${text}${element}</c>`;
};

/** A formula's element, and what marks its cell when it is a dynamic array. */
export const formulaText = (
  cell: SheetCell & { readonly formula: string },
  { spelling, mark }: Pick<Wording, "spelling" | "mark">,
): { readonly cm: string | undefined; readonly text: string } => {
  const { row, column, formula, spill = { rows: 1, columns: 1 } } = cell;
  const dynamic = cell.stored === undefined && isDynamic(cell, spelling);
  const ref = sayBlock({ row, column, ...spill });
  const array = dynamic || cell.stored === "fixed" ? { t: "array", ref } : {};
  return {
    cm: dynamic ? String(mark()) : undefined,
    text: `${tag("f", array)}${escapeText(storedFormula(formula, spelling))}</f>`,
  };
};

export const textsXml = (texts: ReadonlyMap<string, number>): string =>
  `${HEAD}${tag("sst", { xmlns: MAIN, uniqueCount: String(texts.size) })}${[...texts.keys()]
    .map((text) => `<si><t xml:space="preserve">${escapeText(text)}</t></si>`)
    .join("")}</sst>`;

/** What says which rows and columns stay while the rest is scrolled. */
export const pane = ({ frozen }: Pick<Sheet, "frozen">): string => {
  const { rows = 0, columns = 0 } = frozen ?? {};
  if (rows === 0 && columns === 0) return "";
  const part = rows && columns ? "bottomRight" : rows ? "bottomLeft" : "topRight";
  const attributes = {
    xSplit: columns ? String(columns) : undefined,
    ySplit: rows ? String(rows) : undefined,
    topLeftCell: sayCellOf({ row: rows, column: columns }),
    activePane: part,
    state: "frozen",
  };
  return `${tag("pane", attributes, "/>")}${tag("selection", { pane: part }, "/>")}`;
};

const columns = ({ widths }: Sheet): string => {
  const written = [...(widths ?? [])]
    .sort(([a], [b]) => a - b)
    .map(([column, width]) => {
      const number = String(column + 1);
      return tag("col", { min: number, max: number, width: String(width), customWidth: "1" }, "/>");
    });
  return written.length > 0 ? `<cols>${written.join("")}</cols>` : "";
};

const choices = (sheet: Sheet): string => {
  const written = (sheet.choices ?? []).map(({ block, words }) => {
    const attributes = { type: "list", allowBlank: "1", showErrorMessage: "1", sqref: sayBlock(block) };
    return `${tag("dataValidation", attributes)}<formula1>"${escapeText(words.join(",").replaceAll('"', '""'))}"</formula1></dataValidation>`;
  });
  return written.length > 0
    ? `${tag("dataValidations", { count: String(written.length) })}${written.join("")}</dataValidations>`
    : "";
};

const tableParts = ({ tables = [] }: Sheet): string =>
  tables.length === 0
    ? ""
    : `${tag("tableParts", { count: String(tables.length) })}${tables
        .map((_, place) => tag("tablePart", { "r:id": `rId${place + 1}` }, "/>"))
        .join("")}</tableParts>`;
