import type { AnyDefinition } from "../../../definition/define";
import type { Book, DefinedName, Sheet, Table } from "../book";
import { readBlock } from "../place";
import { Spelling } from "../spelling";
import { typedFormula } from "../stored-formula";
import { dynamicMarks } from "./metadata";
import { checkRoot, Package, relationsOf } from "./parts";
import { readSharedStrings } from "./shared-strings";
import { MOST_FORMULA, readSheet } from "./sheet-read";
import { readStyles } from "./styles";
import { UnreadableWorkbook } from "./unreadable";
import { readXml } from "./xml";

/** A workbook as read, with the package it came from, so that it can be patched. */
export interface OpenedWorkbook {
  readonly book: Book;
  readonly pack: Package;
  /** The path of each sheet's part, in the order of `book.sheets`. */
  readonly sheetParts: readonly string[];
  readonly dynamicMarks: ReadonlySet<number>;
  /** The largest `cm` of any cell, also of those that no metadata explain. */
  readonly largestMark: number;
  readonly workbookPart: string;
}

/** Reads an .xlsx or .xlsm workbook. Throws UnreadableWorkbook with one sentence. */
export const openWorkbook = (bytes: Uint8Array, catalogue: readonly AnyDefinition[]): OpenedWorkbook => {
  const pack = new Package(bytes);
  const spelling = new Spelling(catalogue);
  const workbookPart = relationsOf(pack, "").find(({ type }) => type === "officeDocument")?.target;
  if (!workbookPart || !/\.xml$/i.test(workbookPart))
    throw new UnreadableWorkbook("This is a zip package, but no .xlsx workbook.");
  const relations = relationsOf(pack, workbookPart);
  const partOf = (type: string) =>
    relations.find((relation) => relation.type === type && pack.has(relation.target))?.target;
  const read = <T>(type: string, reader: (xml: string) => T, otherwise: T): T => {
    const part = partOf(type);
    return part ? reader(pack.text(part)) : otherwise;
  };
  const { listed, names, countsFrom1904 } = readWorkbookPart(pack.text(workbookPart), workbookPart);
  const marks = read("sheetMetadata", dynamicMarks, new Set<number>());
  let largestMark = 0;
  const shelf = {
    onMark: (mark: number) => {
      largestMark = Math.max(largestMark, mark || 0);
    },
    texts: read("sharedStrings", readSharedStrings, []),
    styles: read("styles", readStyles, []),
    dynamicMarks: marks,
    spelling,
  };
  const sheets: Sheet[] = [];
  const sheetParts: string[] = [];
  for (const { name, relation } of listed) {
    const found = relations.find(({ id }) => id === relation);
    if (found?.type !== "worksheet") continue;
    const isTwice = sheetParts.includes(found.target) || sheets.some((sheet) => isAlike(sheet.name, name));
    if (isTwice) throw new UnreadableWorkbook(`This workbook lists the sheet "${name}" twice.`);
    const tables = relationsOf(pack, found.target)
      .filter(({ type }) => type === "table")
      .flatMap(({ target }) => readTable(pack.text(target), target));
    sheets.push({ ...readSheet(name, pack.text(found.target), found.target, shelf), tables });
    sheetParts.push(found.target);
  }
  if (sheets.length === 0) throw new UnreadableWorkbook("This workbook has no sheet with cells.");
  const book = {
    sheets,
    countsFrom1904,
    names: names.map(
      ({ sheet, formula, ...name }): DefinedName => ({
        ...name,
        formula: typedFormula(formula, spelling).slice(1),
        ...(sheet !== undefined && { sheet: listed[sheet]?.name }),
      }),
    ),
  };
  return { book, pack, sheetParts, dynamicMarks: marks, largestMark, workbookPart };
};

const isAlike = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** A workbook's sheets, formulas and names, for those who will not patch it. Throws UnreadableWorkbook with one sentence. */
export const readWorkbook = (bytes: Uint8Array, catalogue: readonly AnyDefinition[]): Book =>
  openWorkbook(bytes, catalogue).book;

const readWorkbookPart = (xml: string, part: string) => {
  const listed: { name: string; relation: string }[] = [];
  const names: { name: string; formula: string; sheet?: number }[] = [];
  let countsFrom1904 = false;
  let isRoot = true;
  let name: { name: string; formula: string; sheet?: number } | undefined;
  readXml(xml, part, {
    open: ({ name: element, attributes }) => {
      if (isRoot) checkRoot(element, attributes, part);
      isRoot = false;
      if (element === "sheet") {
        const relation = Object.entries(attributes).find(([key]) => key.endsWith(":id"))?.[1];
        if (attributes.name && relation) listed.push({ name: attributes.name, relation });
      }
      if (element === "workbookPr") countsFrom1904 = attributes.date1904 === "1" || attributes.date1904 === "true";
      // Names that begin so are the spreadsheet's own: print areas, filters.
      if (element === "definedName" && attributes.name && !attributes.name.startsWith("_xlnm."))
        name = {
          name: attributes.name,
          formula: "",
          ...(attributes.localSheetId !== undefined && { sheet: Number(attributes.localSheetId) }),
        };
    },
    text: (text) => {
      if (name) name.formula += text;
    },
    close: (element) => {
      if ((name?.formula.length ?? 0) > MOST_FORMULA)
        throw new UnreadableWorkbook(`${part} has a name that stands for more characters than any spreadsheet takes.`);
      if (element === "definedName" && name) names.push(name);
      if (element === "definedName") name = undefined;
    },
  });
  return { listed, names, countsFrom1904 };
};

const readTable = (xml: string, part: string): Table[] => {
  let table: Omit<Table, "columns"> | undefined;
  const columns: string[] = [];
  readXml(xml, part, {
    open: ({ name, attributes }) => {
      if (name === "table") {
        const block = readBlock(attributes.ref ?? "");
        const named = attributes.displayName ?? attributes.name;
        if (block && named)
          table = {
            name: named,
            block,
            heading: attributes.headerRowCount !== "0",
            totals: Number(attributes.totalsRowCount ?? 0) > 0,
          };
      }
      if (name === "tableColumn") columns.push((attributes.name ?? "").replace(/_x000a_/gi, "\n"));
    },
  });
  return table ? [{ ...table, columns }] : [];
};
