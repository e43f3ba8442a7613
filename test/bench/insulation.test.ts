import { type InsulationClassName, insulationClasses, insulationFinding } from "../../src/bench/insulation";
import { dischargeTimes, insulationSeconds } from "../../src/bench/insulation-test";

// The second reader's copy: test voltage (d.c.), the least value, what a lower one calls for, standing.
test.each<[InsulationClassName, number, number, string, string]>([
  ["NETA 250 V", 500, 25, "investigate", "from memory"], // ANSI/NETA ATS and MTS, table 100.1
  ["NETA 600 V", 1000, 100, "investigate", "from memory"], // corroborated in part
  ["NETA 1000 V", 1000, 100, "investigate", "from memory"],
  ["IEC 60898-1 poles", 500, 2, "reject", "from memory"], // 9.7.2: line to load open, pole to pole closed
  ["IEC 60898-1 frame", 500, 5, "reject", "from memory"], // all poles to the frame or foil
  ["NEMA AB 4", 500, 1, "reject", "from memory"], // 5.3, 6.3: at least 500 V, better 1000 V; corroborated in part
  ["TM 5-683 500 V", 500, 0.5, "reject", "corroborated"], // 5-5: 1 MΩ per kV of test voltage
  ["TM 5-683 1000 V", 1000, 1, "reject", "corroborated"],
])("%s: %d V, %d MΩ, below it %s", (name, volts, least, below, standing) => {
  const asked = insulationClasses[name];
  expect([asked.testVolts, asked.least, asked.below, asked.source.standing]).toEqual([volts, least, below, standing]);
  expect(insulationFinding(least, asked)).toBe("meets");
  expect(insulationFinding(least * 0.999, asked)).toBe(below);
});

test("TM 5-683 asks 1 MΩ for each kilovolt of its test voltage", () => {
  for (const name of ["TM 5-683 500 V", "TM 5-683 1000 V"] as const)
    expect(insulationClasses[name].least).toBe(insulationClasses[name].testVolts / 1000);
});

test("ANSI/NETA ATS and MTS, table 100.1 (from memory): read after one minute; NASA LLIS-0848: discharge for 4 times the test time", () => {
  expect(insulationSeconds).toBe(60);
  expect(dischargeTimes).toBe(4);
});
