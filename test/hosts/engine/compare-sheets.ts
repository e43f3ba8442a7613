import { readBlock } from "../../../src/hosts/engine/place";
import { attribute, attributesOf, isClosing, isEmptyTag, isOpening, piecesOf, tagName, tokensOf } from "./xml-tokens";

export interface WrittenCell {
  readonly raw: string;
  readonly open: string;
  readonly children: readonly string[][];
}

interface WrittenRow {
  readonly open: string;
  /** What stands between the cells. */
  readonly between: string;
  readonly cells: ReadonlyMap<string, WrittenCell>;
}

interface WrittenSheet {
  readonly around: string;
  readonly rows: ReadonlyMap<number, WrittenRow>;
  /** The formulas' elements by cell. */
  readonly formulas: ReadonlyMap<string, readonly string[]>;
}

const inner = (tokens: readonly string[]): string[] => (isEmptyTag(tokens[0] ?? "") ? [] : tokens.slice(1, -1));

const columnName = (number: number): string =>
  number < 26 ? String.fromCharCode(65 + number) : columnName(Math.floor(number / 26) - 1) + columnName(number % 26);
const columnNumber = (name: string): number =>
  [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** A sheet's part as rows and cells; where a row or cell does not say where it is, it follows the one before. */
export const readSheet = (xml: string): WrittenSheet => {
  const tokens = tokensOf(xml);
  const start = tokens.findIndex((token) => isOpening(token) && tagName(token) === "sheetData");
  const end = tokens.findIndex((token) => isClosing(token) && tagName(token) === "sheetData");
  const rows = new Map<number, WrittenRow>();
  const formulas = new Map<string, readonly string[]>();
  let around = tokens.slice(0, start + 1).join("") + tokens.slice(Math.max(end, start + 1)).join("");
  let number = 0;
  for (const piece of piecesOf(end < 0 ? [] : tokens.slice(start + 1, end))) {
    const open = piece[0] ?? "";
    if (tagName(open) !== "row") {
      around += piece.join("");
      continue;
    }
    number = Number(attribute(open, "r") ?? number + 1);
    const cells = new Map<string, WrittenCell>();
    let column = -1;
    let between = "";
    for (const cell of piecesOf(inner(piece))) {
      const opening = cell[0] ?? "";
      if (tagName(opening) !== "c") {
        between += cell.join("");
        continue;
      }
      const named = attribute(opening, "r")?.replace(/[$\d]/g, "").toUpperCase();
      column = named ? columnNumber(named) : column + 1;
      const address = `${columnName(column)}${number}`;
      const children = piecesOf(inner(cell));
      cells.set(address, { raw: cell.join(""), open: opening, children });
      const formula = children.find(([tag]) => tagName(tag ?? "") === "f");
      if (formula) formulas.set(address, formula);
    }
    rows.set(number, { open, between, cells });
  }
  return { around, rows, formulas };
};

/** The blocks that array formulas fill. */
const blocksOf = ({ formulas }: WrittenSheet) =>
  [...formulas.values()].flatMap(([open = ""]) => {
    const block = attribute(open, "t") === "array" ? readBlock(attribute(open, "ref") ?? "") : undefined;
    return block ? [block] : [];
  });

const isWithin = (blocks: ReturnType<typeof blocksOf>, address: string): boolean => {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const [row, column] = [Number(digits) - 1, columnNumber(letters)];
  return blocks.some(
    (block) =>
      row >= block.row &&
      row < block.row + block.rows &&
      column >= block.column &&
      column < block.column + block.columns,
  );
};

export const without = (tag: string, ...names: string[]): string =>
  attributesOf(tag)
    .filter(([name]) => !names.includes(name))
    .map(([name, value]) => `${name}=${value}`)
    .join(" ");

/** What a sheet's part may tell after a recalculation. */
interface SheetComparison {
  /** Differences that no recalculation makes, each in words. */
  readonly surprises: readonly string[];
  /** How many formulas of ours are written anew as dynamic arrays. */
  readonly marked: number;
}

/** Compares a sheet's part before and after. `kept` are the cells whose formulas were not calculated. */
export const compareSheets = (beforeXml: string, afterXml: string, kept: ReadonlySet<string>): SheetComparison => {
  const [before, after] = [readSheet(beforeXml), readSheet(afterXml)];
  const surprises: string[] = [];
  const surprise = (what: string) => void surprises.push(what);
  const [oldBlocks, newBlocks] = [blocksOf(before), blocksOf(after)];
  let marked = 0;
  if (before.around !== after.around) surprise("something outside the rows");
  const mayDiffer = (address: string) =>
    !kept.has(address) &&
    (before.formulas.has(address) || isWithin(oldBlocks, address) || isWithin(newBlocks, address));

  for (const [number, row] of before.rows) {
    const now = after.rows.get(number);
    if (!now) surprise(`row ${number} is gone`);
    if (!now) continue;
    const hasMore = [...now.cells.keys()].some((address) => !row.cells.has(address));
    const sameTag = hasMore ? without(row.open, "spans") === without(now.open, "spans") : row.open === now.open;
    if (!sameTag) surprise(`the tag of row ${number}: ${row.open} → ${now.open}`);
    if (row.between !== now.between) surprise(`something between the cells of row ${number}`);
    for (const [address, cell] of row.cells) {
      const written = now.cells.get(address);
      if (!written) surprise(`${address} is gone`);
      else if (written.raw === cell.raw) continue;
      else if (!mayDiffer(address)) surprise(`${address} is not calculated: ${cell.raw} → ${written.raw}`);
      else {
        const { what, isMarked } = compareCells(cell, written);
        if (what) surprise(`${address}, ${what}: ${cell.raw} → ${written.raw}`);
        marked += isMarked ? 1 : 0;
      }
    }
  }
  for (const [number, { cells, between, open }] of after.rows)
    for (const [address, cell] of cells) {
      if (before.rows.get(number)?.cells.has(address)) continue;
      const isPlain =
        isWithin(newBlocks, address) &&
        without(cell.open, "r", "t") === "" &&
        /^<v>[^<]*<\/v>$/.test(cell.children.flat().join(""));
      if (!isPlain) surprise(`${address} is new: ${cell.raw}`);
      if (!before.rows.has(number) && (between !== "" || without(open, "r") !== ""))
        surprise(`row ${number} is new: ${open}`);
    }
  return { surprises, marked };
};

/** Two spellings of a cell that was calculated: its value may differ, and with it the extent of its formula. */
const compareCells = (before: WrittenCell, after: WrittenCell): { what?: string; isMarked?: boolean } => {
  const named = (cell: WrittenCell, ...names: string[]) =>
    cell.children.filter(([tag]) => names.includes(tagName(tag ?? "")));
  const rest = (cell: WrittenCell) =>
    cell.children
      .filter(([tag]) => !["f", "v", "is"].includes(tagName(tag ?? "")))
      .flat()
      .join("")
      .trim();
  if (without(before.open, "t", "cm", "vm") !== without(after.open, "t", "cm", "vm")) return { what: "its attributes" };
  if (rest(before) !== rest(after)) return { what: "what else stands in it" };
  if (named(after, "is").length > 0 || named(after, "v").length > 1) return { what: "its value" };
  const [[old] = [], [now] = []] = [named(before, "f"), named(after, "f")];
  if ((old === undefined) !== (now === undefined)) return { what: "its formula" };
  const hasOtherMark = attribute(before.open, "cm") !== attribute(after.open, "cm");
  if (!old || !now) return hasOtherMark ? { what: "its mark" } : {};
  const sameText = inner(old).join("") === inner(now).join("");
  const [oldTag = "", newTag = ""] = [old[0], now[0]];
  const isMarked = attribute(newTag, "t") === "array" && attribute(oldTag, "t") !== "array";
  if (isMarked) return isOurs(now) ? { isMarked } : { what: "its mark" };
  if (hasOtherMark) return { what: "its mark" };
  if (without(oldTag, "ref") !== without(newTag, "ref")) return { what: "its formula's attributes" };
  return sameText || isOurs(now) ? {} : { what: "its formula" };
};

/** Written as spreadsheets bind a function of an add-in, and only of this one. */
const isOurs = (formula: readonly string[]): boolean =>
  /(^|[^!.\w])_xldudf_BIMETAL_[A-Z_]+\(/.test(inner(formula).join(""));
