import * as iec60898 from "./iec60898";
import * as iec60947 from "./iec60947";
import type { TerminalRise } from "./terminal-rise";
import * as ul489 from "./ul489";

/** The documents that limit the temperature of a terminal, by the name a sheet asks for. */
export const terminalRises = {
  "IEC 60898-1": iec60898.terminalRise,
  "IEC 60947-2": iec60947.terminalRise,
  "UL 489": ul489.terminalRise,
  "UL 489 100 %": ul489.terminalRiseFullyRated,
} as const satisfies Record<string, TerminalRise>;

export type TerminalStandard = keyof typeof terminalRises;
