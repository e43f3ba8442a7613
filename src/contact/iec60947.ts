import { terminalRiseLimit } from "./terminal-rise";

// IEC 60947-2, circuit-breakers of low-voltage switchgear: what it says of heat at the terminals.

/** K above the room that a terminal may reach at the rated current, settled. */
export const terminalRise = terminalRiseLimit(80, {
  document: "IEC 60947-2",
  place: "Table 7, terminals for external connections",
  standing: "from memory",
});
