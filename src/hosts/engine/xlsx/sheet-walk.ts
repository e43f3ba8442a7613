import { MOST_COLUMNS, MOST_ROWS, readPlace, sayCellOf } from "../place";
import { checkRoot } from "./parts";
import { UnreadableWorkbook } from "./unreadable";
import { type Opened, readXml } from "./xml";

/** A `<c>` of a sheet's part as it is written, and where. */
export interface WrittenCell {
  readonly row: number;
  readonly column: number;
  readonly open: Opened;
  readonly end: number;
  readonly formula?: WrittenPiece & { readonly attributes: Readonly<Record<string, string>>; readonly open: Opened };
  readonly value?: WrittenPiece;
  /** Text that stands in the cell itself (`<is>`). */
  readonly inline?: WrittenPiece;
}

interface WrittenPiece {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

interface WrittenRow {
  readonly row: number;
  readonly open: Opened;
  /** The place of its "</row>"; of a row closed in itself its end. */
  readonly closeFrom: number;
  readonly end: number;
}

export interface Walk {
  cell?(cell: WrittenCell): void;
  rowStart?(row: number, open: Opened): void;
  rowEnd?(row: WrittenRow): void;
  /** Any element outside the rows. */
  element?(element: Opened): void;
  elementText?(text: string): void;
  elementEnd?(name: string, from: number, to: number): void;
}

/** More cells than this are refused: they would not fit into memory. */
const MOST_CELLS = 6_000_000;

/** Goes through a sheet's part once, in order. */
export const walkSheet = (xml: string, part: string, walk: Walk): void => {
  let isRoot = true;
  let row = -1;
  let column = -1;
  let cells = 0;
  let openRow: Opened | undefined;
  let cell: (Omit<WrittenCell, "end"> & { -readonly [K in keyof WrittenCell]?: WrittenCell[K] }) | undefined;
  let piece: { kind: "f" | "v" | "is"; open: Opened; text: string } | undefined;
  let reading = false;
  let inReading = false;

  const disorder = (): never => {
    throw new UnreadableWorkbook(`${part} has rows or cells out of order.`);
  };

  const place = (reference: string | undefined): void => {
    const given = reference === undefined ? undefined : readPlace(reference);
    if (reference !== undefined && !given)
      throw new UnreadableWorkbook(`${part} has a cell at ${reference}, which is no place.`);
    const before = column;
    column = given?.column ?? column + 1;
    if ((given && given.row !== row) || column <= before) disorder();
    cells += 1;
    if (row < 0 || row >= MOST_ROWS || column >= MOST_COLUMNS)
      throw new UnreadableWorkbook(`${part} has a cell outside any sheet (row ${row + 1}, column ${column + 1}).`);
    if (cells > MOST_CELLS)
      throw new UnreadableWorkbook(`${part} has more than ${MOST_CELLS} cells, too many for this program.`);
  };

  readXml(xml, part, {
    open: (element) => {
      const { name, attributes } = element;
      if (isRoot) checkRoot(name, attributes, part);
      isRoot = false;
      if (name === "row") {
        if (openRow) disorder();
        const before = row;
        row = attributes.r === undefined ? row + 1 : Number(attributes.r) - 1;
        if (row <= before) disorder();
        if (!Number.isInteger(row))
          throw new UnreadableWorkbook(`${part} has a row "${attributes.r}", which is no number.`);
        column = -1;
        openRow = element;
        walk.rowStart?.(row, element);
      } else if (openRow && name === "c") {
        if (cell) disorder();
        place(attributes.r);
        cell = { row, column, open: element };
      } else if (cell && (name === "f" || name === "v" || name === "is")) {
        const isTwice = { f: cell.formula, v: cell.value, is: cell.inline }[name] !== undefined;
        if (piece || isTwice)
          throw new UnreadableWorkbook(`${part} has a cell with two formulas or two values (${sayCellOf(cell)}).`);
        piece = { kind: name, open: element, text: "" };
        reading = name !== "is";
      } else if (piece?.kind === "is" && name === "t") reading = !inReading;
      // How a text is spoken stands beside it and is no part of it.
      else if (piece?.kind === "is" && name === "rPh") inReading = true;
      else if (!openRow) walk.element?.(element);
    },
    text: (text) => {
      if (piece && reading) piece.text += text;
      else if (!openRow) walk.elementText?.(text);
    },
    close: (name, from, to) => {
      if (piece && name === "t") reading = false;
      if (name === "rPh") inReading = false;
      if (cell && piece?.kind === name) {
        const written = { text: piece.text, from: piece.open.from, to };
        if (name === "f") cell.formula = { ...written, attributes: piece.open.attributes, open: piece.open };
        else cell[name === "v" ? "value" : "inline"] = written;
        piece = undefined;
        reading = false;
      } else if (cell && name === "c") {
        walk.cell?.({ ...cell, end: to });
        cell = undefined;
      } else if (openRow && name === "row") {
        walk.rowEnd?.({ row, open: openRow, closeFrom: from, end: to });
        openRow = undefined;
      } else if (!openRow) walk.elementEnd?.(name, from, to);
    },
  });
};
