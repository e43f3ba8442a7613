import type { Air } from "../../src/enclosure/air";
import { convectiveFlux, type Facing, nusselt, rayleigh } from "../../src/enclosure/convection";
import { facingEmissivity, radiantFlux } from "../../src/enclosure/radiation";
import { root } from "../../src/metrology/root";

describe("natural convection from a vertical plate", () => {
  // Incropera and DeWitt, Example 9.2 (from memory): a glass fire screen 0.71 m high and 1.02 m wide at 232 °C in air of 23 °C.
  const screen: Air = { conductivity: 0.0338, viscosity: 2.64e-5, prandtl: 0.69, expansion: 0.0025 };

  test("gives the fire screen Ra = 1.813e9, Nu = 147, h = 7.0 W/m²K and 1060 W", () => {
    const ra = rayleigh(screen, { difference: 232 - 23, length: 0.71 });
    expect(Math.abs(ra / 1.813e9 - 1)).toBeLessThan(2e-3);
    const nu = nusselt("vertical", ra, screen.prandtl);
    expect(Math.abs(nu - 147)).toBeLessThan(0.5);
    const h = (nu * screen.conductivity) / 0.71;
    expect(Math.abs(h - 7.0)).toBeLessThan(0.05);
    // The book rounds h to 7.0 before it multiplies.
    expect(Math.abs(Number(h.toFixed(1)) * 1.02 * 0.71 * (232 - 23) - 1060)).toBeLessThan(5);
  });

  test("of Ra = 5.503e8 and Pr = 0.7256 gives Nu = 102.6 (Çengel, chapter 9)", () => {
    expect(Math.abs(nusselt("vertical", 5.503e8, 0.7256) - 102.6)).toBeLessThan(0.1);
  });

  test("with air at the film temperature from our fits stays within 2 % of the book's 7.0 W/m²K", () => {
    const flux = convectiveFlux({ facing: "vertical", length: 0.71, surface: 232, air: 23 });
    expect(Math.abs(flux / 209 / 7.0 - 1)).toBeLessThan(0.02);
  });
});

describe("radiation", () => {
  test("from the fire screen, black, at 505 K to 296 K is 2355 W (Incropera and DeWitt, Example 9.2, comment, from memory)", () => {
    expect(Math.abs(0.7242 * radiantFlux(1, { from: 505 - 273.15, to: 296 - 273.15 }) - 2355)).toBeLessThan(4);
  });

  test("of a pipe: emits 2270 W/m², receives 447 W/m², loses 998 W/m in all (Incropera and DeWitt, Example 1.2, from memory)", () => {
    const nothing = -273.15;
    expect(Math.abs(radiantFlux(0.8, { from: 473 - 273.15, to: nothing }) - 2270)).toBeLessThan(1);
    expect(Math.abs(radiantFlux(1, { from: 298 - 273.15, to: nothing }) - 447)).toBeLessThan(1);
    const net = radiantFlux(0.8, { from: 473 - 273.15, to: 298 - 273.15 });
    expect(Math.abs(Math.PI * 0.07 * (15 * (473 - 298) + net) - 998)).toBeLessThan(1);
  });

  test("between two facing surfaces of 0.9 works with 1/(1/0.9 + 1/0.9 − 1) = 0.81818", () => {
    expect(facingEmissivity(0.9)).toBeCloseTo(0.818182, 6);
    expect(facingEmissivity(1)).toBe(1);
  });
});

describe("a circuit board of 0.15 m × 0.20 m that makes 8 W in a room of 20 °C, back insulated, emissivity 0.8 (Çengel, problem 9-33)", () => {
  const settles = (facing: Facing, length: number) =>
    root(
      (surface) =>
        convectiveFlux({ facing, length, surface, air: 20 }) + radiantFlux(0.8, { from: surface, to: 20 }) - 8 / 0.03,
      20.001,
      150,
    );

  test.each([
    ["vertical", 0.2, 46.6, 0.4],
    ["hot up", 0.04286, 42.6, 0.4],
    ["hot down", 0.04286, 50.7, 0.8],
  ] as const)("%s settles at the published temperature", (facing, length, published, tolerance) => {
    expect(Math.abs(settles(facing, length) - published)).toBeLessThan(tolerance);
  });
});

describe("the level pair hot side up", () => {
  test("has no step: the two laws meet where 0.54·Ra^¼ = 0.15·Ra^⅓, Ra = 3.6^12 = 4.738e6", () => {
    const ra = 3.6 ** 12;
    expect(nusselt("hot up", ra * (1 - 1e-9), 0.7) / nusselt("hot up", ra * (1 + 1e-9), 0.7)).toBeCloseTo(1, 8);
    expect(nusselt("hot up", 1e5, 0.7)).toBeCloseTo(0.54 * 10 ** 1.25, 10);
    expect(nusselt("hot up", 1e9, 0.7)).toBeCloseTo(150, 8);
  });
});
