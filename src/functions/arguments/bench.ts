import * as z from "zod/mini";
import { type InsulationClassName, insulationClasses } from "../../bench/insulation";
import { insulationSeconds } from "../../bench/insulation-test";
import { usualStart } from "../../bench/lead";
import { judged, type LoggedTest } from "../../bench/summary";
import { type TestWireStandard, testWireTables } from "../../bench/test-wire";
import { BadInput } from "../../definition/bad-input";
import { CellError, sayCell } from "../../definition/cells";
import { blankMeans, column, label, optional, type Parameter, quantity, word } from "../../definition/parameter";

export const rating = quantity("A", "the breaker's rated current; of an adjustable thermal release its setting Ir");

export const poles = optional(
  quantity("", "number of poles of the breaker, 1 to 4", z.int("a whole number").check(z.minimum(1), z.maximum(4))),
  "1 pole",
);

export const testCurrent = quantity("A", "the test current, r.m.s.", z.number().check(z.positive(), z.maximum(1e6)));

export const leadLength = quantity(
  "m",
  "length of conductor, both leads together (there and back)",
  z.number().check(z.positive(), z.maximum(1e3)),
);

export const breakerDrop = quantity(
  "V",
  "drop of the breaker with all its joints at that current; poles in series add up",
  z.number().check(z.positive(), z.maximum(1e3)),
);

export const reactance = optional(
  blankMeans(
    quantity("Ω", "reactance of the whole loop, the source's own included", z.number().check(z.nonnegative())),
    0,
  ),
  "0: leads laid close together, a source of resistance only",
);

export const openCircuitVolts = optional(
  blankMeans(quantity("V", "what the source shows with nothing connected"), undefined),
  "reachable is not known",
);

export const startTemperature = optional(
  quantity(
    "°C",
    "temperature of the lead before the shot, warm from the last one or not",
    z.number().check(z.minimum(-40), z.maximum(160)),
    {
      hint: "in °C; was °F meant?",
    },
  ),
  `${usualStart} °C`,
);

export const usualWireStandard = "IEC 60898-1" satisfies TestWireStandard;

export const wireStandard = optional(
  word(
    'the document the breaker is tested by; "UL 489 75 °C" for terminals marked so',
    Object.keys(testWireTables) as [TestWireStandard, ...TestWireStandard[]],
  ),
  usualWireStandard,
);

export const megohms = quantity(
  "MΩ",
  `insulation resistance after ${insulationSeconds} s; a reading beyond the scale is typed as the end of the scale`,
  z.number().check(z.positive()),
  { ifBlank: "megohms is blank; type a reading of zero as 0.001." },
);

export const insulationClass = word(
  "the document and the voltage class (NETA), what is measured (IEC 60898-1: across and between poles, or to the frame) or the test voltage (TM 5-683) to judge by",
  Object.keys(insulationClasses) as [InsulationClassName, ...InsulationClassName[]],
);

export const breakers = column(label("the name of the breaker beside each verdict"));

const words =
  "in range, early, late, outside the computed band, did not trip in time, undecided until a time, too close to call";

/** Verdicts as TRIP.VERDICT gives them; one that is blank or an error is kept as missing. */
export const verdicts: Parameter<readonly LoggedTest["verdict"][]> = {
  spread: "column",
  schema: z.string(),
  unit: "",
  meaning: "the verdicts of TRIP.VERDICT, one beside each breaker's name",
  read: (cell, name): LoggedTest["verdict"] => {
    if (cell === null || cell === "" || cell === 0) return { missing: "blank" };
    if (cell instanceof CellError) return { missing: cell.code };
    const found = typeof cell === "string" ? judged(cell) : undefined;
    if (found) return { judged: found };
    throw new BadInput(`${name}: ${sayCell(cell)} is no verdict; known are ${words}.`);
  },
};
