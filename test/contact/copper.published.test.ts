import { awgDiameterMillimetres } from "../../src/contact/astm-b258";
import { copperZero } from "../../src/contact/copper";

// The second reader's copy.

test("IEC 60949: the resistance of copper goes with 234.5 °C + θ", () => {
  expect(copperZero).toBe(234.5);
});

test("ASTM B258: 36 AWG is 0.005 inch and 4/0 AWG 0.46 inch thick, with 39 even steps between them", () => {
  expect(awgDiameterMillimetres(36)).toBeCloseTo(0.005 * 25.4, 12);
  expect(awgDiameterMillimetres(-3)).toBeCloseTo(0.46 * 25.4, 12);
  // A step is the 39th root of 92, 1.1229322 as the document rounds it.
  expect(awgDiameterMillimetres(12) / awgDiameterMillimetres(13)).toBeCloseTo(1.1229322, 7);
});
