import { levelPlate, uprightPlate } from "../../src/enclosure/convection";
import { smallUpTo, topCurves } from "../../src/enclosure/iec60890-tables";
import { copperPerKelvin, lossReference } from "../../src/enclosure/panel";
import { radiantFlux } from "../../src/enclosure/radiation";
import { flatCoefficient } from "../../src/enclosure/rise";

// The second reader's copy.

test("Stefan–Boltzmann law, grey surfaces: σ is 5.670374419e-8 W/(m²·K⁴) (CODATA 2018), 0 °C is 273.15 K", () => {
  // A black surface at 300 K: 5.670374419e-8 × 300⁴ = 459.300327939, by hand.
  expect(radiantFlux(1, { from: 300 - 273.15, to: -273.15 })).toBeCloseTo(459.300327939, 8);
});

test("Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1323: 0.825, 0.387, 0.492", () => {
  expect(uprightPlate).toEqual({ still: 0.825, driven: 0.387, prandtl: 0.492 });
});

test("Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, chapter 9: 0.54, 0.15 hot side up, 0.27 down", () => {
  expect(levelPlate).toEqual({ hotUp: { quarter: 0.54, third: 0.15 }, hotDown: 0.27 });
});

test("IEC 60028: annealed copper, 0.00393 per kelvin at 20 °C", () => {
  expect([copperPerKelvin, lossReference]).toEqual([0.00393, 20]);
});

test("IEC TR 60890 (from memory): small up to 1.25 m²; curves 1 to 5 of the top factor", () => {
  expect(smallUpTo).toBe(1.25);
  expect(topCurves).toEqual({
    free: 1,
    "end of row": 2,
    wall: 3,
    "middle of row": 3,
    "end of row, wall": 4,
    "middle of row, wall": 5,
    "middle of row, wall, covered top": 5,
  });
});

test("hand estimate for painted sheet steel: 5.5 W/(m²·K)", () => {
  expect(flatCoefficient).toBe(5.5);
});
