import { copperK, copperMelts, insulationLimit, pvcForLong, shortShot, usualStart } from "../../src/bench/lead";
import { type Conductor, conductorNamed } from "../../src/contact/conductor";
import { copperZero } from "../../src/contact/copper";

// The second reader's copy.

test("IEC 60949 and IEC 60364-5-54, Annex A: copper K = 226 A·√s/mm², β = 234.5 K", () => {
  expect([copperK, copperZero]).toEqual([226, 234.5]);
});

test("Onderdonk's equation (1928): copper melts at 1083 °C", () => {
  expect(copperMelts).toBe(1083);
});

test("IEC 60364-4-43, 434.5.2 (from memory): durations up to 5 s", () => {
  expect(shortShot).toBe(5);
});

test("IEC 60364-4-43, Table 43A: PVC 70 °C for long; after a short shot 160 °C, above 300 mm² 140 °C (from memory)", () => {
  expect(pvcForLong).toBe(70);
  const limit = (areaSquareMillimetres: number) =>
    insulationLimit({ ...(conductorNamed("240 mm²") as Conductor), areaSquareMillimetres });
  expect([limit(2.5), limit(300), limit(300.1)]).toEqual([160, 160, 140]);
});

test("IEC 60364-5-52, Annex B, and NFPA 70, Table 310.16 (from memory): conductors in air of 30 °C", () => {
  expect(usualStart).toBe(30);
});
