/** How far a value has been followed to its page. Shown wherever the value is used. */
export type Standing =
  | "corroborated" // independent public sources agree; the page itself has not been read
  | "from memory" // recalled, not yet compared with the page
  | "derived" // follows by arithmetic from values with a source
  | "handbook" // a general text of physics or metrology
  | "common practice, no source";

/** Where a number or a rule comes from. */
export interface Source {
  readonly document: string;
  readonly edition?: string;
  readonly place?: string;
  readonly standing: Standing;
  /** The values that are taken from there; left out where it is a rule or a law without any. */
  readonly tables?: readonly PublishedTable[];
}

/** Values of a document, made of the very numbers that the functions compute with, so that they can be read beside the page. */
export interface PublishedTable {
  readonly title: string;
  readonly columns: readonly Column[];
  /** A cell for each column; null where the document has none. */
  readonly rows: readonly (readonly (number | string | null)[])[];
  /** Of each row, where the rows stand otherwise than their source. */
  readonly standings?: readonly Standing[];
  /** The test that holds the second reader's copy, from the top of the project. */
  readonly guard: string;
}

/** How each row of a table stands. */
export const standingsOf = ({ rows, standings }: PublishedTable, { standing }: Source): readonly Standing[] =>
  standings ?? rows.map(() => standing);

/** The unit as it is printed, "Ω/km"; none for words and ratios. */
type Column = readonly [name: string, unit?: string];

/** Columns for values that stand alone. */
export const loneValues: readonly Column[] = [["quantity"], ["value"], ["unit"]];

/** The source in one line: "IEC 60898-1 (2015), Table 7, test c: corroborated". */
export const citation = ({ document, edition, place, standing }: Source): string => {
  const where = [edition ? `${document} (${edition})` : document, place].filter(Boolean).join(", ");
  if (standing === "common practice, no source") return where ? `${where}: ${standing}` : standing;
  return `${where}: ${standing}${standing === "from memory" ? ", compare with the page" : ""}`;
};
