import type { AnyDefinition } from "../../../definition/define";
import type { Book, Sheet, Style, Table } from "../book";
import { sayBlock } from "../place";
import { Spelling } from "../spelling";
import { storedFormula } from "../stored-formula";
import { tag } from "./cell-text";
import { METADATA_RELATION, METADATA_TYPE, metadataPart } from "./metadata";
import { MAIN, OFFICE, PACKAGE } from "./namespaces";
import { sheetXml, textsXml } from "./write-sheet";
import { StyleSheet } from "./write-styles";
import { escapeText, HEAD } from "./xml";
import { pack, writeEntries } from "./zip-write";

export const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/**
 * A new workbook, byte for byte the same for the same book. Formulas of ours, and others that may fill several cells, are written as
 * dynamic arrays in the spelling that spreadsheets bind. Give calculated values with the formulas: see `withValues`.
 */
export const writeWorkbook = (book: Book, catalogue: readonly AnyDefinition[]): Uint8Array<ArrayBuffer> => {
  checkNames(book.sheets);
  const spelling = new Spelling(catalogue);
  const styles = new StyleSheet();
  const texts = new Map<string, number>();
  const textOf = (text: string) => {
    const number = texts.get(text) ?? texts.size;
    texts.set(text, number);
    return { type: "s", element: `<v>${number}</v>` };
  };
  const wording = { spelling, textOf, numberOf: (style?: Style) => styles.numberOf(style), mark: () => 1 };
  const parts = new Map<string, string>();
  const overrides: [part: string, type: string][] = [["xl/workbook.xml", `${SHEET_TYPE}.sheet.main+xml`]];
  const relations: [type: string, target: string][] = [];
  let tableNumber = 0;
  book.sheets.forEach((sheet, place) => {
    const name = `sheet${place + 1}.xml`;
    parts.set(`xl/worksheets/${name}`, sheetXml(sheet, place === 0, wording));
    overrides.push([`xl/worksheets/${name}`, `${SHEET_TYPE}.worksheet+xml`]);
    relations.push([`${OFFICE}/worksheet`, `worksheets/${name}`]);
    const tables = (sheet.tables ?? []).map((table): [string, string] => {
      tableNumber += 1;
      parts.set(`xl/tables/table${tableNumber}.xml`, tableXml(table, tableNumber));
      overrides.push([`xl/tables/table${tableNumber}.xml`, `${SHEET_TYPE}.table+xml`]);
      return [`${OFFICE}/table`, `../tables/table${tableNumber}.xml`];
    });
    if (tables.length > 0) parts.set(`xl/worksheets/_rels/${name}.rels`, relationsXml(tables));
  });
  const own: [part: string, type: string, relation: string, xml: string][] = [
    ["styles.xml", `${SHEET_TYPE}.styles+xml`, `${OFFICE}/styles`, styles.xml()],
    ["sharedStrings.xml", `${SHEET_TYPE}.sharedStrings+xml`, `${OFFICE}/sharedStrings`, textsXml(texts)],
    ["metadata.xml", METADATA_TYPE, METADATA_RELATION, metadataPart],
  ];
  for (const [name, type, relation, xml] of own) {
    parts.set(`xl/${name}`, xml);
    overrides.push([`xl/${name}`, type]);
    relations.push([relation, name]);
  }
  const all = new Map([
    ["[Content_Types].xml", typesXml(overrides)],
    ["_rels/.rels", relationsXml([[`${OFFICE}/officeDocument`, "xl/workbook.xml"]])],
    ["xl/workbook.xml", workbookXml(book, spelling)],
    ["xl/_rels/workbook.xml.rels", relationsXml(relations)],
    ...parts,
  ]);
  return writeEntries([...all].map(([name, xml]) => pack(name, new TextEncoder().encode(xml))));
};

const typesXml = (overrides: readonly [part: string, type: string][]): string =>
  `${HEAD}${tag("Types", { xmlns: `${PACKAGE}/content-types` })}` +
  `${tag("Default", { Extension: "rels", ContentType: "application/vnd.openxmlformats-package.relationships+xml" }, "/>")}` +
  `${tag("Default", { Extension: "xml", ContentType: "application/xml" }, "/>")}` +
  `${overrides.map(([part, type]) => tag("Override", { PartName: `/${part}`, ContentType: type }, "/>")).join("")}</Types>`;

export const relationsXml = (relations: readonly [type: string, target: string][]): string =>
  `${HEAD}${tag("Relationships", { xmlns: `${PACKAGE}/relationships` })}${relations
    .map(([type, target], place) => tag("Relationship", { Id: `rId${place + 1}`, Type: type, Target: target }, "/>"))
    .join("")}</Relationships>`;

const workbookXml = ({ sheets, names = [], countsFrom1904 }: Book, spelling: Spelling): string => {
  const listed = sheets.map(({ name }, place) =>
    tag("sheet", { name, sheetId: String(place + 1), "r:id": `rId${place + 1}` }, "/>"),
  );
  const defined = names.map(({ name, formula, sheet }) => {
    const place = sheets.findIndex((candidate) => candidate.name === sheet);
    const attributes = { name, localSheetId: place < 0 ? undefined : String(place) };
    return `${tag("definedName", attributes)}${escapeText(storedFormula(`=${formula}`, spelling))}</definedName>`;
  });
  const uncalculated = sheets.some(({ cells }) =>
    cells.some(({ formula, value }) => formula !== undefined && value === null),
  );
  return (
    `${HEAD}${tag("workbook", { xmlns: MAIN, "xmlns:r": OFFICE })}` +
    `${tag("workbookPr", { date1904: countsFrom1904 ? "1" : undefined }, "/>")}<bookViews><workbookView/></bookViews>` +
    `<sheets>${listed.join("")}</sheets>${defined.length > 0 ? `<definedNames>${defined.join("")}</definedNames>` : ""}` +
    `${tag("calcPr", { calcId: "191029", fullCalcOnLoad: uncalculated ? "1" : undefined }, "/>")}</workbook>`
  );
};

export const tableXml = ({ name, block, columns, heading = true, totals = false }: Table, number: number): string => {
  const id = String(number);
  const ref = sayBlock(block);
  const filtered = sayBlock({ ...block, rows: block.rows - (totals ? 1 : 0) });
  const attributes = {
    xmlns: MAIN,
    id,
    name,
    displayName: name,
    ref,
    headerRowCount: heading ? undefined : "0",
    totalsRowCount: totals ? "1" : undefined,
    totalsRowShown: totals ? undefined : "0",
  };
  const listed = columns.map((column, place) => tag("tableColumn", { id: String(place + 1), name: column }, "/>"));
  const look = {
    name: "TableStyleLight1",
    showFirstColumn: "0",
    showLastColumn: "0",
    showRowStripes: "1",
    showColumnStripes: "0",
  };
  return (
    `${HEAD}${tag("table", attributes)}${heading ? tag("autoFilter", { ref: filtered }, "/>") : ""}` +
    `${tag("tableColumns", { count: String(columns.length) })}${listed.join("")}</tableColumns>${tag("tableStyleInfo", look, "/>")}</table>`
  );
};

/** What a spreadsheet demands of the names of sheets. */
const checkNames = (sheets: readonly Sheet[]): void => {
  const seen = new Set<string>();
  for (const { name } of sheets) {
    const fits =
      name.length > 0 && name.length <= 31 && !/[[\]:*?/\\]|^'|'$/.test(name) && !seen.has(name.toLowerCase());
    if (!fits) throw new Error(`A sheet cannot be called "${name}".`);
    seen.add(name.toLowerCase());
  }
};
