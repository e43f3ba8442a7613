import type { Source } from "../metrology/source";

/** A document's limit for the temperature of a terminal, K above the air of the room. */
export interface TerminalRise {
  readonly limit: number;
  readonly source: Source;
}
