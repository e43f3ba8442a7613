import { fieldBand, pulse, runUpSeconds } from "../../src/bench/field-values";
import { raisedWithin } from "../../src/bench/iec60898";

// The second reader's copy.

test("NEMA AB 4, 5.6.4: a run-up of 2 to 5 s; pulses of 5 to 10 cycles from about 70 % of the expected current up", () => {
  expect(runUpSeconds).toEqual({ least: 2, most: 5 });
  expect(pulse).toEqual({ least: 5, most: 10, firstShare: 0.7 });
});

test("ANSI/NETA ATS and MTS, table 100.8: an adjustable release trips at 0.7 to 1.4 × its setting", () => {
  expect(fieldBand).toEqual({ lower: 0.7, upper: 1.4 });
});

test("IEC 60898-1, Table 7, test b: the current is steadily increased within 5 s", () => {
  expect(raisedWithin).toBe(5);
});
