import { call } from "../../src/definition/call";
import type { Argument } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import { explained } from "../../src/definition/explained";
import meterConforms from "../../src/functions/meter.conforms";
import meterError from "../../src/functions/meter.error";
import meterOhms from "../../src/functions/meter.ohms";
import meterRepeats from "../../src/functions/meter.repeats";
import meterTurns from "../../src/functions/meter.turns";
import meterWatts from "../../src/functions/meter.watts";

/** Rows of answers, a refusal as its sentence. */
const answers = (definition: AnyDefinition, ...args: Argument[]) =>
  call(definition, args).map((row) => row.map((cell) => (cell instanceof Error ? cell.message : cell)));
const first = (definition: AnyDefinition, ...args: Argument[]) => answers(definition, ...args)[0]?.[0];

describe("METER.ERROR", () => {
  test("a statement that adds up to nothing is refused", () => {
    expect(first(meterError, 100, 0, 0, 0.1)).toBe(
      "percent and counts: the statement adds up to 0, and no meter is without error.",
    );
  });
  test("warns where a cell formatted as per cent was handed over", () => {
    expect(explained(meterError, [100, 0.01, 2, 0.1]).cautions[0]).toBe(
      "0.01 % of the reading was used: a cell that shows 1 % holds 0.01.",
    );
    expect(explained(meterError, [100, 1, 2, 0.1]).cautions[0]).toMatch(/^A cell formatted/);
  });
});

describe("METER.REPEATS", () => {
  test("one reading alone is refused", () => {
    expect(first(meterRepeats, [[5], [null]])).toBe("readings: at least two are wanted, one alone shows no scatter.");
    expect(first(meterRepeats, 5)).toBe("readings: at least two are wanted, one alone shows no scatter.");
  });
  test("a blank cell is left out where the host says so, and refused where it arrives as 0", () => {
    expect(answers(meterRepeats, [[4], [null], [6]])).toEqual([[5, Math.SQRT2, 1, 2 - 1]]);
    expect(first(meterRepeats, [[5.007], [0], [4.994]])).toMatch(/a blank cell counts as 0 on some hosts/);
    expect(first(meterRepeats, [[-5.007], [0], [-4.994]])).toMatch(/a blank cell counts as 0 on some hosts/);
  });
  test("a 0 among readings about 0 is a reading, and is spoken of", () => {
    expect(first(meterRepeats, [[0.01], [0], [-0.01]])).toBe(0);
    expect(explained(meterRepeats, [[[0.01], [0], [-0.01]]]).cautions[0]).toMatch(/exactly 0/);
  });
});

describe("METER.OHMS and METER.WATTS", () => {
  const readings = [20, 0.13, 0.0412, 0.000185] as const;

  test("degrees of freedom as two cells, as one for both, and many", () => {
    const expanded = (...degrees: Argument[]) => answers(meterOhms, ...readings, 0, ...degrees)[0]?.[2];
    expect(expanded([["many", 4]])).not.toBe(expanded());
    expect(expanded([[4, 4]])).toBe(expanded(4));
    expect(expanded([["many", " MANY "]])).toBe(expanded());
  });

  test("degrees that are blank or below 1 are refused", () => {
    for (const degrees of [null, 0, 0.5, "few"])
      expect(first(meterOhms, ...readings, 0, degrees)).toMatch(
        /^degrees: a number from 1 to 1,000,000, or "many" for an uncertainty from a specification, is wanted, not /,
      );
  });

  test("a blank uncertainty is refused, not taken as none", () => {
    expect(first(meterWatts, 20, 0, 0.0412, 0.000185)).toBe(
      "current uncertainty: more than 0 A is wanted, not 0 A (a blank cell counts as 0).",
    );
  });

  test("a correlation in per cent is refused", () => {
    expect(first(meterWatts, ...readings, 90)).toBe("correlation: at most 1 is wanted, not 90.");
  });

  test("columns of readings answer row by row", () => {
    const rows = answers(meterWatts, [[20], [10]], 0.1, [[0.04], [0.02]], 0.0002);
    expect(rows.map(([watts]) => watts)).toEqual([0.8, 0.2]);
  });

  test("the answer in words ends at the last place of its uncertainty (JCGM 100 7.2.6)", () => {
    const h2 = [0.019661, 9.47100839404126e-6, 4.999, 0.0032093613071762423, -0.3553112198175105] as const;
    expect(explained(meterOhms, h2).answer).toBe("The pole has 254.26 Ω ± 0.47 Ω, with a probability of about 95 %.");
  });

  test("the explanation names the degrees of freedom it used", () => {
    const { steps } = explained(meterOhms, [...readings, 0, [["many", 4]]]);
    expect(steps.map(({ plain }) => plain).join("\n")).toMatch(/ν = .*, k = /);
  });
});

describe("METER.CONFORMS", () => {
  test("a limit is none when left out, blank or said to be none", () => {
    const expected = answers(meterConforms, 509.7, 8.6, 490);
    expect(expected[0]?.[1]).toBe("conforms");
    expect(answers(meterConforms, 509.7, 8.6, 490, null)).toEqual(expected);
    expect(answers(meterConforms, 509.7, 8.6, 490, "none")).toEqual(expected);
  });

  test("a 0 that leaves no room between the limits is a blank cell", () => {
    expect(answers(meterConforms, 509.7, 8.6, 490, 0)).toEqual(answers(meterConforms, 509.7, 8.6, 490));
    expect(answers(meterConforms, -5.47, 0.05, 0, -5.4)).toEqual(answers(meterConforms, -5.47, 0.05, undefined, -5.4));
  });

  test("a 0 beside a limit on its other side is a limit", () => {
    expect(answers(meterConforms, -3, 0.5, 0, 5)[0]?.[1]).toBe("does not conform");
  });

  test("without any limit there is no verdict, however the blanks arrive", () => {
    for (const [lower, upper] of [
      [undefined, undefined],
      [null, null],
      [0, 0],
      ["none", "none"],
      ["none", 0],
    ] as const)
      expect(first(meterConforms, 5, 1, lower, upper)).toBe(
        "lower, upper: both limits are blank (a blank cell counts as 0 on some hosts; type a lone limit of zero as 1E-9).",
      );
  });

  test("a blank value never becomes a verdict", () => {
    expect(first(meterConforms, null, 0.1, -1, 1)).toBe("value is blank.");
    expect(first(meterConforms, 0, 0.1, -1, 1)).toBe(
      "value: 0 is also what a blank cell counts as; type a measured zero as 1E-9.",
    );
  });

  test("limits the wrong way round are refused", () => {
    expect(first(meterConforms, 5, 1, 10, 2)).toBe("lower, upper: the lower limit 10 is not below the upper limit 2.");
  });

  test("says when no reading could conform", () => {
    expect(explained(meterConforms, [5, 1, 4, 6]).cautions[0]).toMatch(/^The limits lie closer together than 4u/);
  });
});

describe("METER.TURNS", () => {
  test("turns are counted in whole numbers", () => {
    expect(answers(meterTurns, 51, [[10], [5]])).toEqual([[5.1], [10.2]]);
    expect(first(meterTurns, 51, 2.5)).toMatch(/whole number/);
  });
});

test("the chance of conforming is never said as certain, nor in digits that nobody measures", () => {
  // 6 lies sixteen standard uncertainties below 7, and 7 on the limit itself has one chance in two.
  expect(explained(meterConforms, [6, 0.0625, 7]).answer).toMatch(
    /does not conform \(probability less than 0\.01 %\)\.$/,
  );
  expect(explained(meterConforms, [8, 0.0625, 7]).answer).toMatch(/: conforms \(probability more than 99\.99 %\)\.$/);
  expect(explained(meterConforms, [7, 0.0625, 7]).answer).toMatch(/\(probability 50 %\)\.$/);
});
