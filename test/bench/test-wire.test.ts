import { type TestWireStandard, testWire, testWireRow, testWireTables } from "../../src/bench/test-wire";
import { conductorNamed } from "../../src/contact/conductor";
import { NoAnswer } from "../../src/metrology/no-answer";

const standards = Object.keys(testWireTables) as TestWireStandard[];

test("a rating at a row's end belongs to it, one above takes the next, thicker row", () => {
  expect(testWire("IEC 60898-1", 20).size).toBe("2.5 mm²");
  expect(testWire("IEC 60898-1", 20.1).size).toBe("4 mm²");
  // 35 A stands in no row of the UL table: the 40 A row's wire is the thicker neighbour's.
  expect(testWire("UL 489", 35).size).toBe("8 AWG");
});

test.each<[TestWireStandard, number, string]>([
  ["IEC 60898-1", 125, "rating: the test conductors of IEC 60898-1 end at 125 A, so there are none for 126 A."],
  ["IEC 60947-2", 2500, "rating: the test conductors of IEC 60947-1 end at 2500 A, so there are none for 2501 A."],
  ["UL 489", 2500, "rating: the test conductors of UL 489 end at 2500 A, so there are none for 2501 A."],
])("%s ends at %d A", (standard, last, sentence) => {
  expect(testWire(standard, last).metres).toBeGreaterThan(0);
  expect(testWireRow(standard, last + 1)).toBeUndefined();
  expect(() => testWire(standard, last + 1)).toThrow(new NoAnswer(sentence));
});

test("more rating never takes a thinner conductor, and single conductors are sizes that the other functions know", () => {
  for (const standard of standards) {
    const single = testWireTables[standard].rows.filter(({ size }) => /^\S+ (mm²|AWG|kcmil)$/.test(size));
    expect(single.length).toBeGreaterThan(9);
    const areas = single.map(({ size }) => conductorNamed(size)?.areaSquareMillimetres ?? 0);
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
    expect(Math.min(...areas)).toBeGreaterThan(0);
  }
});

test("terminals marked 75 °C never ask for a thicker conductor than others", () => {
  for (let rating = 1; rating <= 250; rating++) {
    const area = (standard: TestWireStandard) =>
      conductorNamed(testWire(standard, rating).size)?.areaSquareMillimetres ?? 0;
    expect(area("UL 489 75 °C")).toBeLessThanOrEqual(area("UL 489"));
  }
});
