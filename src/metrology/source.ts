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
}

/** The source in one line: "IEC 60898-1 (2015), Table 7, test c: corroborated". */
export const citation = ({ document, edition, place, standing }: Source): string => {
  const where = [edition ? `${document} (${edition})` : document, place].filter(Boolean).join(", ");
  if (standing === "common practice, no source") return where ? `${where}: ${standing}` : standing;
  return `${where}: ${standing}${standing === "from memory" ? ", compare with the page" : ""}`;
};
