import { say, sayNumber } from "../../src/metrology/say";

test.each([
  [0, "0"],
  [9.96278396005399, "9.963"],
  [60, "60"],
  [12345, "12345"],
  [12345.678, "12346"],
  [41.99362537885852, "41.99"],
  [0.1, "0.1"],
  [0.0001, "0.0001"],
  [0.00001234567, "1.235e-5"],
  [-2.5, "-2.5"],
  [99.996, "100"],
  [1e7, "1e7"],
  [123456789.5, "1.235e8"],
  [1.1300000000000001, "1.13"],
])("%p is said as %s", (value, said) => {
  expect(sayNumber(value)).toBe(said);
});

test("a quantity wears its unit, a word does not", () => {
  expect(say(51, "A")).toBe("51 A");
  expect(say(2.55, "×")).toBe("2.55 ×");
  expect(say("holds", "s")).toBe("holds");
  expect(say(3, "")).toBe("3");
  expect(say(0.123456, "V", 2)).toBe("0.12 V");
});
