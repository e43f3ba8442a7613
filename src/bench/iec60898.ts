import { loneValues, type Source } from "../metrology/source";
import { testWireTable } from "./test-wire-table";

// IEC 60898-1: how its trip tests are made, and with which copper conductors, one at each terminal (9.2).

const document = "IEC 60898-1";

/** From the hold to the trip straight after it the current is raised evenly within so many seconds. */
export const raisedWithin = 5;

export const raisedSource: Source = {
  document,
  place: "Table 7, test b",
  standing: "corroborated",
  tables: [
    {
      title: "From the hold to the trip",
      columns: loneValues,
      rows: [["current raised evenly within", raisedWithin, "s"]],
      guard: "test/bench/field-values.published.test.ts",
    },
  ],
};

export const testWire = testWireTable({ document, place: "Table 10 (9.2), test conductors", standing: "from memory" }, [
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
]);
