import { motorFullLoad, motorTable } from "../../src/inrush/full-load";
import { horsepower, sayHorsepower } from "../../src/inrush/horsepower";
import type { Phases } from "../../src/inrush/line-current";
import { NoAnswer } from "../../src/metrology/no-answer";

const amperes = (power: number, volts: number, phases: Phases) => motorFullLoad({ power, volts, phases }).amperes;

describe("the full-load current of a motor", () => {
  test("systems of 110–120, 220–240, 440–480 and 550–600 V read the 115, 230, 460 and 575 V columns", () => {
    expect([110, 115, 120].map((volts) => amperes(1, volts, 1))).toEqual([16, 16, 16]);
    expect([220, 230, 240].map((volts) => amperes(1, volts, 1))).toEqual([8, 8, 8]);
    expect([440, 460, 480].map((volts) => amperes(20, volts, 3))).toEqual([27, 27, 27]);
    expect([550, 575, 600].map((volts) => amperes(20, volts, 3))).toEqual([22, 22, 22]);
    expect([200, 208].map((volts) => amperes(20, volts, 3))).toEqual([62.1, 59.4]);
  });

  test("a nameplate's rounded power finds its row, in kilowatts too", () => {
    expect([0.33, 1 / 3, 0.1667].map((power) => amperes(power, 120, 1))).toEqual([7.2, 7.2, 4.4]);
    expect([0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 5.5, 7.5].map((kW) => amperes(horsepower(kW), 230, 3))).toEqual([
      2.2, 3.2, 4.2, 6, 6.8, 9.6, 22, 28,
    ]);
  });

  test("0.12, 0.18 and 90 kW are the usual names of 1/6, 1/4 and 125 hp; 4 and 160 kW have no row", () => {
    expect([0.12, 0.18].map((kW) => amperes(horsepower(kW), 115, 1))).toEqual([4.4, 5.8]);
    expect(amperes(horsepower(90), 460, 3)).toBe(156);
    for (const kW of [4, 160]) expect(() => amperes(horsepower(kW), 460, 3)).toThrow(/lies between two rows/);
  });

  test("one horsepower is 0.746 kW (Mechanical horsepower, 745.7 W, as the code rounds it)", () => {
    expect(horsepower(0.746)).toBe(1);
  });

  test.each<[number, number, Phases, string]>([
    [4, 230, 3, "power: 4 hp lies between two rows of Table 430.250 at 230 V, 3 hp and 5 hp."],
    [0.2, 115, 1, "power: 0.2 hp lies between two rows of Table 430.248 at 115 V, 1/6 hp and 1/4 hp."],
    [0.1, 115, 1, "power: 0.1 hp is below the smallest row of Table 430.248 at 115 V, 1/6 hp."],
    [5, 120, 3, "power: 5 hp is above the largest row of Table 430.250 at 115 V, 2 hp."],
    [
      1,
      277,
      1,
      "volts: Table 430.248 has columns for 110–120, 200, 208, 220–240 V, and none for 277 V; there the nameplate decides.",
    ],
    [
      1,
      400,
      3,
      "volts: Table 430.250 has columns for 110–120, 200, 208, 220–240, 440–480, 550–600 V, and none for 400 V; there the nameplate decides.",
    ],
  ])("%d hp at %d V, %d phases, is not answered", (power, volts, phases, sentence) => {
    expect(() => amperes(power, volts, phases)).toThrow(new NoAnswer(sentence));
  });

  test("horsepower is written as the table writes it", () => {
    expect([1 / 6, 0.25, 1 / 3, 0.5, 0.75, 1, 1.5, 7.5, 100].map(sayHorsepower)).toEqual([
      "1/6",
      "1/4",
      "1/3",
      "1/2",
      "3/4",
      "1",
      "1 1/2",
      "7 1/2",
      "100",
    ]);
  });
});

// The tables were made from the 230 V column: the same power at another voltage. A slip of the pen would stick out.
describe.each<[string, Phases]>([
  ["430.248", 1],
  ["430.250", 3],
])("Table %s holds together", (_, phases) => {
  const { columns, rows } = motorTable(phases);
  const at = (volts: number, row: (typeof rows)[number]) => row.amperes[columns.indexOf(volts)] ?? undefined;

  test("more power draws more current, at every voltage", () => {
    columns.forEach((_, i) => {
      const column = rows.map(({ amperes }) => amperes[i]).filter((amperes) => typeof amperes === "number");
      for (let k = 1; k < column.length; k++) expect(column[k]).toBeGreaterThan(column[k - 1] as number);
    });
  });

  test("the 200 V and 208 V columns are 1.15 × and 1.10 × the 230 V column", () => {
    for (const row of rows) {
      const base = at(230, row);
      if (base === undefined) continue;
      expect(Math.abs((at(200, row) ?? 0) / base / 1.15 - 1)).toBeLessThan(0.02);
      expect(Math.abs((at(208, row) ?? 0) / base / 1.1 - 1)).toBeLessThan(0.02);
    }
  });

  test("half the voltage takes twice the current", () => {
    for (const row of rows) {
      const [v115, v230, v460] = [115, 230, 460].map((volts) => at(volts, row));
      if (v115 !== undefined && v230 !== undefined) expect(Math.abs(v115 / v230 / 2 - 1)).toBeLessThan(0.015);
      if (v230 !== undefined && v460 !== undefined) expect(Math.abs(v230 / v460 / 2 - 1)).toBeLessThan(0.04);
    }
  });
});
