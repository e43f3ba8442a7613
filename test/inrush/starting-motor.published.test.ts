import { motorPeak, startingPowerFactor } from "../../src/inrush/starting-motor";

// The second reader's copy.

test("IEC 60034-12:2016, clause 1, note 4: a motor first peaks at 1.8 to 2.8 times its r.m.s. locked-rotor current", () => {
  expect(motorPeak).toEqual({ least: 1.8, most: 2.8 });
});

test("IEEE Std 399-1997, 9.5.2 (from memory): a power factor of 0.2 while a motor below 1000 hp starts", () => {
  expect(startingPowerFactor).toEqual({ below: 1000, value: 0.2 });
});
