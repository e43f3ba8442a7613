import { hundredthSecond, tenthSecond } from "../../src/inrush/ieee242";
import { transformerInrush } from "../../src/inrush/transformer";

describe("transformer inrush", () => {
  // The second reader's copy: IEEE Std 242-2001, chapter 15; the point at 0.01 s from memory.
  test("the points are 12 × at 0.1 s and 25 × at 0.01 s, and the second says it is from memory", () => {
    expect(tenthSecond).toMatchObject({ multiple: 12, seconds: 0.1 });
    expect(tenthSecond.source.standing).toBe("corroborated");
    expect(hundredthSecond).toMatchObject({ multiple: 25, seconds: 0.01 });
    expect(hundredthSecond.source.standing).toBe("from memory");
  });

  test("1 kVA at 250 V, single phase: 4 A, 48 A, 100 A (hand-worked)", () => {
    expect(transformerInrush({ kilovoltAmperes: 1, volts: 250, phases: 1 })).toEqual({
      fullLoad: 4,
      tenthSecond: 48,
      hundredthSecond: 100,
    });
  });

  test("75 kVA at 480 V, three phases: 90.2 A at full load (hand-worked: 75,000 ÷ 831.384)", () => {
    expect(transformerInrush({ kilovoltAmperes: 75, volts: 480, phases: 3 }).fullLoad).toBeCloseTo(90.211, 3);
  });
});
