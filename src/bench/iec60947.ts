import { testWireTable } from "./test-wire-table";

// IEC 60947-1, tables 9, 10 and 11: copper test conductors by test current, for the breakers of IEC 60947-2.

/** At least 1 m up to 35 mm², 2 m above. */
const [short, long] = [1, 2];

export const testWire = testWireTable(
  { document: "IEC 60947-1", place: "Tables 9, 10, 11, test conductors", standing: "from memory" },
  [
    { upTo: 8, size: "1 mm²", metres: short },
    { upTo: 12, size: "1.5 mm²", metres: short },
    { upTo: 20, size: "2.5 mm²", metres: short },
    { upTo: 25, size: "4 mm²", metres: short },
    { upTo: 32, size: "6 mm²", metres: short },
    { upTo: 50, size: "10 mm²", metres: short },
    { upTo: 65, size: "16 mm²", metres: short },
    { upTo: 85, size: "25 mm²", metres: short },
    { upTo: 115, size: "35 mm²", metres: short },
    { upTo: 150, size: "50 mm²", metres: long },
    { upTo: 175, size: "70 mm²", metres: long },
    { upTo: 225, size: "95 mm²", metres: long },
    { upTo: 250, size: "120 mm²", metres: long },
    { upTo: 275, size: "150 mm²", metres: long },
    { upTo: 350, size: "185 mm²", metres: long },
    { upTo: 400, size: "240 mm²", metres: long },
    { upTo: 500, size: "2 × 150 mm² or 2 bars of 30 × 5 mm", metres: long },
    { upTo: 630, size: "2 × 185 mm² or 2 bars of 40 × 5 mm", metres: long },
    { upTo: 800, size: "2 × 240 mm² or 2 bars of 50 × 5 mm", metres: long },
    { upTo: 1000, size: "2 bars of 60 × 5 mm", metres: long },
    { upTo: 1250, size: "2 bars of 80 × 5 mm", metres: long },
    { upTo: 1600, size: "2 bars of 100 × 5 mm", metres: long },
    { upTo: 2000, size: "3 bars of 100 × 5 mm", metres: long },
    { upTo: 2500, size: "4 bars of 100 × 5 mm", metres: long },
  ],
);
