import { type Argument, type Cell, CellError, isRange } from "./cells";

/** A text as a formula holds it. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** A value as it is typed into a formula; an argument left out is nothing. */
export const inFormula = (argument: Argument): string => {
  if (argument === undefined || argument === null) return "";
  // An array constant: commas across, semicolons down.
  if (isRange(argument)) return `{${argument.map((row) => row.map(constant).join(",")).join(";")}}`;
  return constant(argument);
};

const constant = (cell: Cell): string => {
  // An array constant has no blanks; an empty text is taken as one.
  if (cell === null) return '""';
  if (cell instanceof CellError) return cell.code;
  if (typeof cell === "string") return quoted(cell);
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
};

/** A call of a function with its arguments as they are typed: what is left out at the end is not written. */
export const callInFormula = (name: string, texts: readonly string[]): string =>
  `=BIMETAL.${name}(${texts.join(",").replace(/,+$/, "")})`;
