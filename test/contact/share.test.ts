import { lossAtRating, shareOfLimit } from "../../src/contact/share";

describe("the share of the power-loss limit", () => {
  test("160 mV at 20 A is 3.2 W, 71 % of 4.5 W (hand-worked)", () => {
    expect(shareOfLimit({ current: 20, drop: 0.16, rating: 20 })).toBeCloseTo(3.2 / 4.5, 14);
  });

  test("the same resistance gives the same share from any current", () => {
    for (const current of [5, 10, 40])
      expect(shareOfLimit({ current, drop: current * 0.008, rating: 20 })).toBeCloseTo(3.2 / 4.5, 14);
  });

  test("loss at the rating is I²R: 8 mΩ at 16 A is 2.048 W (hand-worked)", () => {
    expect(lossAtRating({ current: 4, drop: 0.032, rating: 16 })).toBeCloseTo(2.048, 14);
  });
});
