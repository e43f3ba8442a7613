import * as z from "zod/mini";
import type { Unit } from "../metrology/say";
import { BadInput } from "./bad-input";
import type { Cell, Range } from "./cells";
import { limitsOf } from "./limits";
import { refusalSentence } from "./refusal-sentence";

// The host pages forbid `eval`; without this zod probes for it at the first object schema and the browser reports a violation.
z.config({ jitless: true });

/**
 * How a parameter meets ranges:
 * - `row`: one cell, or a range answered row by row;
 * - `column`: a list taken whole, as long as the other columns of the same call (one cell stands for all rows);
 * - `whole`: a list taken whole, as long as it likes;
 * - `raw`: handed on unread.
 */
type Spread = "row" | "column" | "whole" | "raw";

/** One argument of a sheet function: what a cell must hold, in which unit, and what it means. `T` is what `calculate` receives. */
export interface Parameter<T = unknown> {
  readonly spread: Spread;
  readonly schema: z.ZodMiniType;
  readonly unit: Unit;
  readonly meaning: string;
  /** Present when the argument may be left out: what holds then, in words. */
  readonly otherwise?: string;
  /** The words that may be typed, for completion and forms. */
  readonly choices?: readonly string[];
  /** Present when a blank (or 0) cell in a range has a meaning of its own; anywhere else it is refused. */
  readonly blank?: { readonly value: unknown };
  /** The sentence that refuses a blank cell, where "… is blank" says too little. */
  readonly ifBlank?: string;
  /** Takes the last place and every argument after it. */
  readonly repeating?: boolean;
  /** Reads one cell; throws BadInput. */
  readonly read: (cell: Cell, name: string) => unknown;
  /** Reads a range as one thing for all rows (told by its shape); undefined when the shape says otherwise. */
  readonly readBlock?: (range: Range, name: string) => unknown;
  /** Only for the compiler: what `calculate` receives. */
  readonly gives?: T;
}

export type Parameters = Readonly<Record<string, Parameter>>;

/** The checked inputs of one row, by parameter key. */
export type Given<P extends Parameters> = { readonly [K in keyof P]: P[K] extends Parameter<infer T> ? T : never };

/** "startCurrent" as the sheet says it: "start current". */
export const sheetName = (key: string): string => key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/**
 * No bench measures outside 1e-12 to 1e12 of any unit. The bound keeps every later product and quotient finite, so that a slip of
 * the keyboard is refused where it was typed.
 */
export const measurable = (value: number): boolean =>
  value === 0 || (Math.abs(value) >= 1e-12 && Math.abs(value) <= 1e12);

/** A quantity with its unit and limits. The schema is the authority; numbers inside its limits skip it, which keeps long columns quick. */
export const quantity = (
  unit: Unit,
  meaning: string,
  schema: z.ZodMiniNumber = z.number().check(z.positive()),
  { hint, ifBlank }: { hint?: string; ifBlank?: string } = {},
): Parameter<number> => {
  const { minimum, exclusiveMinimum, maximum, exclusiveMaximum, isAll } = limitsOf(schema);
  const read = (cell: Cell, name: string): number => {
    if (
      typeof cell === "number" &&
      cell >= minimum &&
      cell > exclusiveMinimum &&
      cell <= maximum &&
      cell < exclusiveMaximum &&
      measurable(cell) &&
      isAll
    )
      return cell;
    if (typeof cell === "number" && Number.isFinite(cell) && !measurable(cell))
      throw new BadInput(`${name}: ${cell} ${unit} is beyond any measurement (1e-12 to 1e12).`.replace("  ", " "));
    if (typeof cell === "number" && schema.safeParse(cell).success) return cell;
    throw new BadInput(refusalSentence(name, { schema, unit, ifBlank }, cell, hint));
  };
  return { spread: "row", schema, unit, meaning, ifBlank, read };
};

/** One of a few words, in any case and with any spaces. */
export const word = <const W extends string>(
  meaning: string,
  choices: readonly [W, ...W[]],
  { ifBlank }: { ifBlank?: string } = {},
): Parameter<W> => {
  const schema = z.enum(choices);
  const known = new Map<string, W>(choices.map((choice) => [plain(choice), choice]));
  const read = (cell: Cell, name: string): W => {
    const found = typeof cell === "string" ? known.get(plain(cell)) : undefined;
    if (found !== undefined) return found;
    throw new BadInput(refusalSentence(name, { schema, unit: "", choices, ifBlank }, cell));
  };
  return { spread: "row", schema, unit: "", meaning, choices, ifBlank, read };
};

/** A word as it is looked up: case, spaces and their number forgiven. */
export const plain = (text: string): string => text.trim().replace(/\s+/g, " ").toLowerCase();

/** Free text, such as the name of a breaker. */
export const label = (meaning: string): Parameter<string> => ({
  spread: "row",
  schema: z.string().check(z.minLength(1)),
  unit: "",
  meaning,
  read: (cell, name) => {
    if (typeof cell === "string" && cell !== "") return cell;
    if (typeof cell === "number" && cell !== 0 && Number.isFinite(cell)) return String(cell);
    throw new BadInput(refusalSentence(name, { schema: z.string(), unit: "" }, cell));
  },
});

/** An argument that may be left out; `otherwise` says what holds then. */
export const optional = <T>(parameter: Parameter<T>, otherwise: string): Parameter<T | undefined> => ({
  ...parameter,
  otherwise,
});

/** A blank cell of a range has a meaning of its own here. Use only where 0 can mean nothing else: some hosts hand a blank over as 0. */
export const blankMeans = <T, B>(parameter: Parameter<T>, value: B): Parameter<T | B> => ({
  ...parameter,
  blank: { value },
});

/** A list, as long as the other columns of the same call. */
export const column = <T>({ gives: _, ...parameter }: Parameter<T>): Parameter<readonly T[]> => ({
  ...parameter,
  spread: "column",
});

/** A list of its own length. */
export const list = <T>({ gives: _, ...parameter }: Parameter<T>): Parameter<readonly T[]> => ({
  ...parameter,
  spread: "whole",
});
