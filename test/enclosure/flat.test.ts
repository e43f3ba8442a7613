import { riseOf, wattsAt } from "../../src/enclosure/rise";

/** A cabinet with the effective area asked for: free, 1 × 1 m and as deep as it takes (1.8 + 3.2 × depth). */
const withArea = (area: number) => ({
  cabinet: { height: 1, width: 1, depth: (area - 1.8) / 3.2, mounting: "free" as const },
  method: "flat" as const,
  room: 30,
  emissivity: 0.9,
  partitions: 0,
});

describe("the flat hand estimate of 5.5 W/m²K", () => {
  test("passes 242 W from 4.4 m² at 10 K (published)", () => {
    expect(wattsAt(withArea(4.4), 10)).toBeCloseTo(242, 9);
  });

  test("of 350 W in 3.96 m² and a room of 30 °C is 46.07 °C (350 ÷ 5.5 ÷ 3.96, by hand)", () => {
    expect(Math.abs(30 + riseOf(withArea(3.96), 350).middle - 46.07)).toBeLessThan(0.01);
  });
});
