import { testWireTable } from "./test-wire-table";

// IEC 60898-1, 9.2: the copper conductors, one at each terminal, with which trip and temperature-rise tests are made.

export const testWire = testWireTable(
  { document: "IEC 60898-1", place: "Table 10 (9.2), test conductors", standing: "from memory" },
  [
    { upTo: 6, size: "1 mm²", metres: 1 },
    { upTo: 13, size: "1.5 mm²", metres: 1 },
    { upTo: 20, size: "2.5 mm²", metres: 1 },
    { upTo: 25, size: "4 mm²", metres: 1 },
    { upTo: 32, size: "6 mm²", metres: 1 },
    { upTo: 50, size: "10 mm²", metres: 1 },
    { upTo: 63, size: "16 mm²", metres: 2 },
    { upTo: 80, size: "25 mm²", metres: 2 },
    { upTo: 100, size: "35 mm²", metres: 2 },
    { upTo: 125, size: "50 mm²", metres: 2 },
  ],
);
