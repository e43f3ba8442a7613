import type { Source } from "../metrology/source";
import { terminalRiseLimit } from "./terminal-rise";

// UL 489, moulded-case circuit breakers: what it says of heat at the terminals (7.1.4, at 100 % load in a room at 25 °C).

const source: Source = { document: "UL 489", place: "7.1.4, temperature test", standing: "from memory" };

/** K above the room that a terminal may reach at the rated current, settled. */
export const terminalRise = terminalRiseLimit(50, source);

/** The same for a breaker listed to carry 100 % of its rating continuously in its enclosure. */
export const terminalRiseFullyRated = terminalRiseLimit(60, source, "of a breaker listed for 100 %");
