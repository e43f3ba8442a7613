import { airTable } from "../../src/enclosure/air";
import { surfaceFactors } from "../../src/enclosure/area";
import { levelPlate, nusselt, rayleigh, uprightPlate } from "../../src/enclosure/convection";
import { smallUpTo, topCurves } from "../../src/enclosure/iec60890-tables";
import { copperPerKelvin, lossReference } from "../../src/enclosure/panel";
import { radiantFlux } from "../../src/enclosure/radiation";
import { flatCoefficient } from "../../src/enclosure/rise";
import { usualEmissivity, usualRoom } from "../../src/enclosure/usual";

// The second reader's copy.

test("Stefan–Boltzmann law, grey surfaces: σ is 5.670374419e-8 W/(m²·K⁴) (CODATA 2018), 0 °C is 273.15 K", () => {
  // A black surface at 300 K: 5.670374419e-8 × 300⁴ = 459.300327939, by hand.
  expect(radiantFlux(1, { from: 300 - 273.15, to: -273.15 })).toBeCloseTo(459.300327939, 8);
});

test("Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1323: 0.825, 0.387, 0.492", () => {
  expect(uprightPlate).toEqual({ still: 0.825, driven: 0.387, prandtl: 0.492 });
  // Their equation at Ra = 1e9 and Pr = 0.7, worked in another language.
  expect(nusselt("vertical", 1e9, 0.7)).toBeCloseTo(122.615057663, 8);
});

test("Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, chapter 9: 0.54, 0.15 hot side up, 0.27 down", () => {
  expect(levelPlate).toEqual({ hotUp: { quarter: 0.54, third: 0.15 }, hotDown: 0.27 });
});

test("CGPM, 3rd meeting, 1901: g = 9.80665 m/s²", () => {
  const air = { conductivity: 1, viscosity: 1, prandtl: 1, expansion: 1 };
  expect(rayleigh(air, { difference: 1, length: 1 })).toBe(9.80665);
});

test("Çengel, Heat Transfer: A Practical Approach, Table A-15: °C, W/(m·K), 10⁻⁶ m²/s, Prandtl number; −40 °C from memory", () => {
  const rows = airTable.tables?.[0]?.rows ?? [];
  const typed = [
    [-40, 0.02057, 10.08, 0.7436],
    [0, 0.02364, 13.38, 0.7362],
    [20, 0.02514, 15.16, 0.7309],
    [40, 0.02662, 17.02, 0.7255],
    [60, 0.02808, 18.96, 0.7202],
    [80, 0.02953, 20.97, 0.7154],
    [120, 0.03235, 25.22, 0.7073],
    [160, 0.03511, 29.75, 0.7014],
  ];
  expect(rows.map(([t]) => t)).toEqual(typed.map(([t]) => t));
  typed.forEach(([t = 0, ...values], i) => {
    const within = t < 0 ? 1e-2 : t > 120 ? 2.5e-3 : 1e-3;
    values.forEach((value, column) => {
      expect(Math.abs(Number(rows[i]?.[column + 1]) / value - 1)).toBeLessThan(within);
    });
  });
  expect(airTable.tables?.[0]?.standings).toEqual(["from memory", ...Array(7).fill("corroborated")]);
});

test("IEC TR 60890: surface factors, bare and covered", () => {
  expect(surfaceFactors.tables?.map(({ rows }) => rows)).toEqual([
    [
      ["roof", 1.4, 0.7],
      ["side", 0.9, 0.5],
      ["floor", 0, 0],
    ],
  ]);
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

test("IEC 61439-1:2011, 7.1.1.1 (from memory): the mean over 24 h does not exceed 35 °C", () => {
  expect(usualRoom).toBe(35);
});

test("Çengel, Heat Transfer: A Practical Approach, tables of emissivity: paints lie between 0.85 and 0.95", () => {
  expect(usualEmissivity).toBeCloseTo((0.85 + 0.95) / 2, 12);
});
