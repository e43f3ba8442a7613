import { loneValues, type Source } from "../metrology/source";

/** A document's limit for the temperature of a terminal, K above the air of the room. */
export interface TerminalRise {
  readonly limit: number;
  readonly source: Source;
}

/** `kind`: which breakers it is for, where a document has several limits. */
export const terminalRiseLimit = (limit: number, source: Source, kind = ""): TerminalRise => ({
  limit,
  source: {
    ...source,
    tables: [
      {
        title: ["Temperature rise of a terminal", kind].filter(Boolean).join(" "),
        columns: loneValues,
        rows: [["most above the air of the room, settled at the rating", limit, "K"]],
        guard: "test/contact/terminal.published.test.ts",
      },
    ],
  },
});
