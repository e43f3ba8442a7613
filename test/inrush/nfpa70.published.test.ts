import { motorFullLoad } from "../../src/inrush/full-load";
import {
  type CodeLetter,
  ceilingPercent,
  codeLetters,
  exceptionPercent,
  slowSynchronous,
} from "../../src/inrush/nfpa70";
import { singlePhase, systemVoltages, threePhase } from "../../src/inrush/nfpa70-currents";
import { NoAnswer } from "../../src/metrology/no-answer";

// The second reader's copy of NFPA 70 (2023), article 430.

// Table 430.248: hp, then A at 115, 200, 208, 230 V.
const table248: readonly (readonly (number | null)[])[] = [
  [1 / 6, 4.4, 2.5, 2.4, 2.2],
  [1 / 4, 5.8, 3.3, 3.2, 2.9],
  [1 / 3, 7.2, 4.1, 4.0, 3.6],
  [1 / 2, 9.8, 5.6, 5.4, 4.9],
  [3 / 4, 13.8, 7.9, 7.6, 6.9],
  [1, 16, 9.2, 8.8, 8.0],
  [1.5, 20, 11.5, 11.0, 10],
  [2, 24, 13.8, 13.2, 12],
  [3, 34, 19.6, 18.7, 17],
  [5, 56, 32.2, 30.8, 28],
  [7.5, 80, 46.0, 44.0, 40],
  [10, 100, 57.5, 55.0, 50],
];

// Table 430.250: hp, then A at 115, 200, 208, 230, 460, 575 V.
const table250: readonly (readonly (number | null)[])[] = [
  [1 / 2, 4.4, 2.5, 2.4, 2.2, 1.1, 0.9],
  [3 / 4, 6.4, 3.7, 3.5, 3.2, 1.6, 1.3],
  [1, 8.4, 4.8, 4.6, 4.2, 2.1, 1.7],
  [1.5, 12.0, 6.9, 6.6, 6.0, 3.0, 2.4],
  [2, 13.6, 7.8, 7.5, 6.8, 3.4, 2.7],
  [3, null, 11.0, 10.6, 9.6, 4.8, 3.9],
  [5, null, 17.5, 16.7, 15.2, 7.6, 6.1],
  [7.5, null, 25.3, 24.2, 22, 11, 9],
  [10, null, 32.2, 30.8, 28, 14, 11],
  [15, null, 48.3, 46.2, 42, 21, 17],
  [20, null, 62.1, 59.4, 54, 27, 22],
  [25, null, 78.2, 74.8, 68, 34, 27],
  [30, null, 92, 88, 80, 40, 32],
  [40, null, 120, 114, 104, 52, 41],
  [50, null, 150, 143, 130, 65, 52],
  [60, null, 177, 169, 154, 77, 62],
  [75, null, 221, 211, 192, 96, 77],
  [100, null, 285, 273, 248, 124, 99],
  [125, null, 359, 343, 312, 156, 125],
  [150, null, 414, 396, 360, 180, 144],
  [200, null, 552, 528, 480, 240, 192],
  [250, null, null, null, null, 302, 242],
  [300, null, null, null, null, 361, 289],
  [350, null, null, null, null, 414, 336],
  [400, null, null, null, null, 477, 382],
  [450, null, null, null, null, 515, 412],
  [500, null, null, null, null, 590, 472],
];

// Table 430.7(B): letter, from kVA per hp, to kVA per hp.
const table7: readonly (readonly [CodeLetter, number, number])[] = [
  ["A", 0, 3.14],
  ["B", 3.15, 3.54],
  ["C", 3.55, 3.99],
  ["D", 4.0, 4.49],
  ["E", 4.5, 4.99],
  ["F", 5.0, 5.59],
  ["G", 5.6, 6.29],
  ["H", 6.3, 7.09],
  ["J", 7.1, 7.99],
  ["K", 8.0, 8.99],
  ["L", 9.0, 9.99],
  ["M", 10.0, 11.19],
  ["N", 11.2, 12.49],
  ["P", 12.5, 13.99],
  ["R", 14.0, 15.99],
  ["S", 16.0, 17.99],
  ["T", 18.0, 19.99],
  ["U", 20.0, 22.39],
  ["V", 22.4, Infinity],
];

/** A system voltage of each column. */
const systemVolts = { 115: 120, 200: 200, 208: 208, 230: 240, 460: 480, 575: 600 } as const;

describe.each([
  ["430.248", 1, table248, singlePhase, [115, 200, 208, 230]],
  ["430.250", 3, table250, threePhase, [115, 200, 208, 230, 460, 575]],
] as const)("Table %s", (_, phases, published, table, volts) => {
  test("has these rows and columns, and no others", () => {
    expect(table.columns).toEqual(volts);
    expect(table.rows.map(({ hp, amperes }) => [hp, ...amperes])).toEqual(published);
  });

  test("an empty place of the table is refused, every other one is read", () => {
    for (const [hp, ...amperes] of published)
      volts.forEach((column, i) => {
        const asked = () => motorFullLoad({ power: hp as number, volts: systemVolts[column], phases }).amperes;
        if (amperes[i] === null) expect(asked).toThrow(NoAnswer);
        else expect(asked()).toBe(amperes[i]);
      });
  });
});

// Tables 430.248 and 430.250, headings: system voltages of 110 to 120, 220 to 240, 440 to 480 and 550 to 600 V.
test("a column stands for these system voltages; 200 V and 208 V for themselves", () => {
  expect(systemVoltages).toEqual({
    115: [110, 120],
    200: [200, 200],
    208: [208, 208],
    230: [220, 240],
    460: [440, 480],
    575: [550, 600],
  });
});

test("Table 430.7(B) has these letters and no others", () => {
  expect(Object.entries(codeLetters).map(([letter, [from, to]]) => [letter, from, to])).toEqual(table7);
});

// Table 430.52(C)(1), the column of inverse-time breakers, %.
test("Table 430.52: 250 %, for wound-rotor and d.c. motors 150 %", () => {
  expect(ceilingPercent).toEqual({
    "single-phase": 250,
    "squirrel cage": 250,
    "Design B premium": 250,
    synchronous: 250,
    "wound rotor": 150,
    "d.c.": 150,
  });
});

test("430.52(C)(1) exception: 400 % up to 100 A full load, 300 % above", () => {
  expect([1, 100, 100.1, 500].map(exceptionPercent)).toEqual([400, 400, 300, 300]);
});

test("Table 430.52(C)(1), its note (from memory): synchronous motors of low torque, 450 r/min or less, started unloaded: 200 %", () => {
  expect(slowSynchronous).toEqual({ speed: 450, percent: 200 });
});
