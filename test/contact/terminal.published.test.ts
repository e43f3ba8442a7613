import { type TerminalStandard, terminalRises } from "../../src/contact/terminal";

// The second reader's copy: temperature rise of terminals above the room at the rating, K, and how far it was followed to its page.
test.each<[TerminalStandard, number, string]>([
  ["IEC 60898-1", 60, "corroborated"], // Table 6
  ["IEC 60947-2", 80, "from memory"], // Table 7
  ["UL 489", 50, "from memory"], // 7.1.4, in a room at 25 °C; corroborated only in part
  ["UL 489 100 %", 60, "from memory"],
])("%s: %d K, %s", (standard, kelvin, standing) => {
  expect(terminalRises[standard].limit).toBe(kelvin);
  expect(terminalRises[standard].source.standing).toBe(standing);
});
