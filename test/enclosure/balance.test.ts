import { assert, constantFrom, double, property, record } from "fast-check";
import { hottestAir } from "../../src/enclosure/air";
import { effectiveArea } from "../../src/enclosure/area";
import { balanceRise, balanceWatts, warmFaces } from "../../src/enclosure/balance";
import { type Cabinet, mountings } from "../../src/enclosure/cabinet";
import { convectiveFlux } from "../../src/enclosure/convection";
import { facingEmissivity, radiantFlux } from "../../src/enclosure/radiation";
import { NoAnswer } from "../../src/metrology/no-answer";

const between = (min: number, max: number) => double({ min, max, noNaN: true });

const cases = record({
  cabinet: record({
    height: between(0.05, 2.4),
    width: between(0.05, 2),
    depth: between(0.03, 1),
    mounting: constantFrom(...mountings),
  }),
  // Even in the logarithm: from 1 W to 5000 W.
  watts: between(0, Math.log(5000)).map(Math.exp),
  room: between(-40, 60),
  emissivity: between(0.05, 1),
});

const riseOrRefusal = (cabinet: Cabinet, watts: number, around: { room: number; emissivity: number }) => {
  try {
    return balanceRise(cabinet, watts, around);
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return thrown;
    throw thrown;
  }
};

describe("the heat balance", () => {
  test("closes: heat in − heat out < 1e-6 W, on both sides of every face, over random enclosures", () => {
    let solved = 0;
    assert(
      property(cases, ({ cabinet, watts, room, emissivity }) => {
        const rise = riseOrRefusal(cabinet, watts, { room, emissivity });
        if (rise instanceof NoAnswer) {
          // Refused only where the hottest air that the table covers does not carry the heat away.
          expect(balanceWatts(cabinet, { inside: hottestAir, room, emissivity })).toBeLessThan(watts);
          return;
        }
        solved++;
        const inside = room + rise;
        const faces = warmFaces(cabinet, { inside, room, emissivity });
        let into = 0;
        let out = 0;
        for (const { name, area, wall, watts } of faces) {
          const { height, width, depth } = cabinet;
          const shape =
            name === "roof"
              ? ({ facing: "hot up", length: (width * depth) / (2 * (width + depth)) } as const)
              : ({ facing: "vertical", length: height } as const);
          into +=
            area * convectiveFlux({ ...shape, surface: inside, air: wall }) +
            area * radiantFlux(facingEmissivity(emissivity), { from: inside, to: wall });
          out += watts;
          expect(wall).toBeGreaterThanOrEqual(room);
          expect(wall).toBeLessThanOrEqual(inside);
        }
        expect(Math.abs(watts - out)).toBeLessThan(1e-6);
        expect(Math.abs(watts - into)).toBeLessThan(1e-6);
      }),
      { numRuns: 300, seed: 20 },
    );
    expect(solved).toBeGreaterThan(100);
  });

  test("more heat is never cooler", () => {
    assert(
      property(cases, between(1, 1.5), ({ cabinet, watts, room, emissivity }, more) => {
        const less = riseOrRefusal(cabinet, watts, { room, emissivity });
        const hotter = riseOrRefusal(cabinet, more * watts, { room, emissivity });
        if (hotter instanceof NoAnswer) return;
        expect(less).not.toBeInstanceOf(NoAnswer);
        expect(hotter).toBeGreaterThanOrEqual((less as number) - 1e-9);
      }),
      { numRuns: 150, seed: 21 },
    );
  });

  test("a bigger enclosure is never hotter", () => {
    const grow = record({ height: between(1, 1.5), width: between(1, 1.5), depth: between(1, 1.5) });
    assert(
      property(cases, grow, ({ cabinet, watts, room, emissivity }, by) => {
        const rise = riseOrRefusal(cabinet, watts, { room, emissivity });
        if (rise instanceof NoAnswer) return;
        const bigger = {
          ...cabinet,
          height: by.height * cabinet.height,
          width: by.width * cabinet.width,
          depth: by.depth * cabinet.depth,
        };
        expect(balanceRise(bigger, watts, { room, emissivity })).toBeLessThanOrEqual(rise + 1e-9);
      }),
      { numRuns: 150, seed: 22 },
    );
  });

  test("what covers a face never cools: a wall behind, a neighbour, a second one, a covered top", () => {
    const warmer = [
      ["free", "wall"],
      ["free", "end of row"],
      ["end of row", "middle of row"],
      ["end of row", "end of row, wall"],
      ["wall", "end of row, wall"],
      ["middle of row", "middle of row, wall"],
      ["end of row, wall", "middle of row, wall"],
      ["middle of row, wall", "middle of row, wall, covered top"],
    ] as const;
    assert(
      property(cases, constantFrom(...warmer), ({ cabinet, watts, room, emissivity }, [bare, covered]) => {
        const less = riseOrRefusal({ ...cabinet, mounting: bare }, watts, { room, emissivity });
        const more = riseOrRefusal({ ...cabinet, mounting: covered }, watts, { room, emissivity });
        if (more instanceof NoAnswer) return;
        expect(more).toBeGreaterThanOrEqual((less as number) - 1e-9);
        expect(effectiveArea({ ...cabinet, mounting: covered })).toBeLessThanOrEqual(
          effectiveArea({ ...cabinet, mounting: bare }),
        );
      }),
      { numRuns: 150, seed: 23 },
    );
  });

  test("converges or refuses with the reason for 1 to 5000 W in 0.02 to 12 m²", () => {
    let answered = 0;
    let refused = 0;
    // Outer surface of a cube of edge a is 6 a².
    for (const surface of [0.02, 0.1, 0.5, 2, 6, 12])
      for (const watts of [1, 10, 100, 1000, 5000])
        for (const mounting of mountings) {
          const edge = Math.sqrt(surface / 6);
          const cabinet = { height: edge, width: edge, depth: edge, mounting };
          const rise = riseOrRefusal(cabinet, watts, { room: 35, emissivity: 0.9 });
          if (rise instanceof NoAnswer) {
            refused++;
            expect(rise.message).toMatch(
              /^watts: with \d+ W the air inside would be above 160 °C, where the table of air ends; this enclosure passes [\d.]+ W at that\.$/,
            );
          } else {
            answered++;
            expect(rise).toBeGreaterThan(0);
            expect(rise).toBeLessThanOrEqual(125);
          }
        }
    expect(answered).toBeGreaterThan(refused);
    expect(refused).toBeGreaterThan(20);
  });

  test("a polished enclosure runs hotter than a painted one", () => {
    const cabinet: Cabinet = { height: 0.6, width: 0.4, depth: 0.15, mounting: "wall" };
    const painted = balanceRise(cabinet, 40, { room: 25, emissivity: 0.9 });
    const polished = balanceRise(cabinet, 40, { room: 25, emissivity: 0.1 });
    expect(polished).toBeGreaterThan(1.3 * painted);
  });

  test("lies within a quarter of IEC TR 60890 (from memory) where both apply: 2.2 × 1.0 × 0.5 m on a wall, 300 W, 14.2 K", () => {
    const rise = balanceRise({ height: 2.2, width: 1, depth: 0.5, mounting: "wall" }, 300, {
      room: 35,
      emissivity: 0.9,
    });
    expect(Math.abs(rise / 14.2 - 1)).toBeLessThan(0.25);
  });

  test("of a tall plate agrees with the fluxes worked by hand at its wall", () => {
    // 1 m² front and back, thin: room 20 °C, wall 30 °C. Air at 25 °C: k 0.02551, ν 15.62e-6, Pr 0.7296 (Çengel A-15).
    // Ra = 9.81/298.15·10·1³·0.7296/(15.62e-6)² = 9.839e8; Ra^(1/6) = 31.54; (0.492/0.7296)^(9/16) = 0.8012; 1.8012^(8/27) = 1.1904;
    // Nu = (0.825 + 0.387·31.54/1.1904)² = 122.7; h = 3.131 W/m²K; 31.31 W/m². Radiation 0.9·5.670e-8·(303.15⁴ − 293.15⁴) = 54.12 W/m².
    const flux = convectiveFlux({ facing: "vertical", length: 1, surface: 30, air: 20 });
    expect(Math.abs(flux / 31.31 - 1)).toBeLessThan(2e-3);
    expect(radiantFlux(0.9, { from: 30, to: 20 })).toBeCloseTo(54.12, 1);
  });
});
