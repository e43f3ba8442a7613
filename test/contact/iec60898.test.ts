import { powerLossLimit } from "../../src/contact/iec60898";
import { NoAnswer } from "../../src/metrology/no-answer";

describe("the power-loss limit of IEC 60898-1", () => {
  test("a rating at a row's end takes that row, one above it the next", () => {
    expect(powerLossLimit(16)).toBe(3.5);
    expect(powerLossLimit(16.01)).toBe(4.5);
  });

  test("a small rating may drop more volts: 3 W at 6 A is half a volt", () => {
    expect(powerLossLimit(6) / 6).toBe(0.5);
  });

  test("above 125 A the document has no limit, and says so", () => {
    expect(() => powerLossLimit(126)).toThrow(
      new NoAnswer("rating: IEC 60898-1 ends at 125 A, so it has no power-loss limit for 126 A."),
    );
  });
});
