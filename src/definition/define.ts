import type { Unit } from "../metrology/say";
import type { Source } from "../metrology/source";
import type { Answer, Cell, Range } from "./cells";
import type { Given, Parameters } from "./parameter";
import type { Plot } from "./plot";
import type { Step } from "./step";

export interface Result {
  readonly name: string;
  readonly unit: Unit;
  readonly meaning: string;
}

/** One row of results. */
export type Row = readonly Answer[];

/** A call worked without this program. `null` leaves an argument out. */
export interface Example {
  readonly cells: readonly (Cell | Range)[];
  /** One row of answers, or several for a function that answers with rows. Numbers are compared to `within` (relative, default 1e-9). */
  readonly gives: Row | readonly Row[];
  readonly within?: number;
  /** How the expected answer was got without this program: published (with its place), hand-worked, an independent library. */
  readonly worked: string;
}

/** What `explain` adds to an answer. */
export interface Account {
  readonly steps: readonly Step[];
  /** The answer in words. */
  readonly answer: string;
  /** The sources this answer rests on; left out, all of the definition's. */
  readonly sources?: readonly Source[];
  /** Cautions that hold for this answer only. */
  readonly cautions?: readonly string[];
}

/** One sheet function. Everything that is shown of it anywhere is made from this object. */
interface Definition<P extends Parameters = Parameters> {
  /** "TRIP.RANGE": the sheet writes BIMETAL. before it; the file is functions/trip.range.ts. */
  readonly name: string;
  readonly summary: string;
  /** In the order of the formula; those that may be left out come last. */
  readonly parameters: P;
  readonly results: readonly Result[];
  /** `row`: one row of results for each row of inputs; `rows`: as many rows as it takes, from one set of inputs. */
  readonly answers: "row" | "rows";
  readonly sources: readonly Source[];
  readonly cautions: readonly string[];
  readonly examples: readonly Example[];
  /** Pure; the object given is used again for the next row. Throws BadInput or NoAnswer. */
  calculate(given: Given<P>): Row | readonly Row[];
  /** `rows` holds all rows of a function that answers with rows; `answer` is then the first. */
  explain(given: Given<P>, answer: Row, rows: readonly Row[]): Account;
  plot?(given: Given<P>, answer: Row, rows: readonly Row[]): Plot | undefined;
}

// biome-ignore lint/suspicious/noExplicitAny: a catalogue holds definitions of many parameter sets; each checks its own.
export type AnyDefinition = Definition<any>;

/** Ties the parameters to what `calculate`, `explain` and `plot` receive. */
export const define = <const P extends Parameters>(definition: Definition<P>): AnyDefinition => definition;
