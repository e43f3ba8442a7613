import { diversityFactor, diversityStandards } from "../../src/enclosure/diversity";

describe("the rated diversity factor", () => {
  test("by IEC 61439-2, as published", () => {
    const circuits = [2, 3, 4, 5, 6, 9, 10, 24, 40];
    expect(circuits.map((n) => diversityFactor(n, "IEC 61439-2"))).toEqual([
      0.9, 0.9, 0.8, 0.8, 0.7, 0.7, 0.6, 0.6, 0.6,
    ]);
  });

  test.each(["IEC 61439-3", "CEI 23-51"] as const)("by %s (from memory)", (standard) => {
    expect([2, 3, 4, 5, 6, 9, 10, 40].map((n) => diversityFactor(n, standard))).toEqual([
      0.8, 0.8, 0.7, 0.7, 0.6, 0.6, 0.5, 0.5,
    ]);
  });

  test("of more circuits is never larger, and of one circuit there is none", () => {
    for (const standard of diversityStandards) {
      for (let n = 2; n < 50; n++)
        expect(diversityFactor(n + 1, standard)).toBeLessThanOrEqual(diversityFactor(n, standard));
      expect(() => diversityFactor(1, standard)).toThrow(/begins at 2; one circuit alone has no diversity/);
    }
  });
});
