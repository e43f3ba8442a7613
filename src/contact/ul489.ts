import type { TerminalRise } from "./terminal-rise";

// UL 489, moulded-case circuit breakers: what it says of heat at the terminals (7.1.4, at 100 % load in a room at 25 °C).

const source = { document: "UL 489", place: "7.1.4, temperature test", standing: "from memory" } as const;

/** K above the room that a terminal may reach at the rated current, settled. */
export const terminalRise = { limit: 50, source } as const satisfies TerminalRise;

/** The same for a breaker listed to carry 100 % of its rating continuously in its enclosure. */
export const terminalRiseFullyRated = { limit: 60, source } as const satisfies TerminalRise;
