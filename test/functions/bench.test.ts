import { call } from "../../src/definition/call";
import { type Argument, CellError, type Range } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import { explained } from "../../src/definition/explained";
import benchInsulation from "../../src/functions/bench.insulation";
import benchLead from "../../src/functions/bench.lead";
import benchPlan from "../../src/functions/bench.plan";
import benchSource from "../../src/functions/bench.source";
import benchSummary from "../../src/functions/bench.summary";
import benchWire from "../../src/functions/bench.wire";

/** Rows of answers, a refusal as its sentence. */
const answers = (definition: AnyDefinition, ...args: Argument[]) =>
  call(definition, args).map((row) => row.map((cell) => (cell instanceof Error ? cell.message : cell)));

/** A fit block with the rows that it is read by; the time constant's upper limit is the fifth cell of its row. */
const block = (pickup: number, timeConstant: number, high: number | string): Range => [
  ["pickup", pickup, 0.1, pickup - 0.2, pickup + 0.2, ""],
  ["time constant", timeConstant, 3, timeConstant - 6, high, ""],
  ["scatter", 0.05, 0.01, 0.03, 0.1, ""],
  ["tripped", 8, "", "", "", ""],
  ["held", 2, "", "", "", ""],
  ["left out", 0, "", "", "", ""],
  ["log-likelihood", 12, "", "", "", ""],
  ["pinned", false, "", "", "", ""],
  ["covariance of ln pickup", "not known", "", "", "", ""],
];

describe("BENCH.PLAN", () => {
  test("a fit shortens the rests to its own time constant, at the slow end of its limits: 110 s × ln 100", () => {
    const rows = answers(benchPlan, 16, "C", 1, block(19, 100, 110));
    expect(rows[3]?.[5]).toBeCloseTo(506.569, 3);
    expect(rows[4]?.[5]).toBe(0);
    expect(rows[3]?.[6]).toMatch(/^From cold: rest 8\.44 min and until the terminals/);
  });

  test("without an upper limit the likeliest value is used, and said", () => {
    expect(answers(benchPlan, 16, "C", 1, block(19, 100, "no limit"))[3]?.[5]).toBeCloseTo(460.517, 3);
    expect(explained(benchPlan, [16, "C", 1, block(19, 100, "no limit")]).cautions[0]).toMatch(
      /no upper limit, so its likeliest value sets the rests: rest longer\.$/,
    );
  });

  test("a fit whose pickup cannot be this breaker's is asked after", () => {
    // 1.13 × 16 A = 18.08 A to 1.45 × 16 A = 23.2 A
    expect(explained(benchPlan, [16, "C", 1, block(28, 100, 110)]).cautions[0]).toBe(
      "The fitted pickup of 28 A lies outside 18.08 A to 23.2 A, where a sound breaker of this kind has it: is it this breaker's fit?",
    );
    expect(explained(benchPlan, [16, "C", 1, block(19, 100, 110)]).cautions[0]).not.toMatch(/fitted pickup/);
    // By hand, as the example of 63 A: 5356.6 s × ln 100 = 6.85 h; of C, 274.5 s × ln 100 = 21.1 min.
    expect(explained(benchPlan, [20, "IEC 60947-2"]).cautions[0]).toMatch(
      /hardly bound how slowly a strip may cool, so the rest comes to 6\.85 h\. Do not shorten it by guess/,
    );
    expect(explained(benchPlan, [20, "C"]).cautions.join(" ")).not.toMatch(/hardly bound/);
  });

  test.each<[string, Argument[], string]>([
    [
      "an own band",
      [16, [[1.2, 10, 100] as const, [5, 1, 2] as const]],
      'characteristic: a plan follows the tests of a standard, and an own band has none; ask by a name such as "C" or "UL 489".',
    ],
    ["five poles", [16, "C", 5], "poles: at most 4 is wanted, not 5."],
    ["half a pole", [16, "C", 1.5], "poles: a whole number is wanted, not 1.5."],
    ["a column of ratings", [[[16], [20]], "C"], "rating: one cell is wanted, not 2 rows × 1 column."],
    ["a rating beyond the document", [160, "C"], 'rating: IEC 60898-1 ends at 125 A, so "C" has no limits for 160 A.'],
    [
      "a single cell for the fit",
      [16, "C", 1, 19],
      "fit: the whole block that THERMAL.FIT spills is wanted as a range, not 19.",
    ],
  ])("refuses %s", (_, args, sentence) => {
    expect(answers(benchPlan, ...args)[0]?.[0]).toBe(sentence);
  });

  test("the marked setting tells the magnetic currents: 0.8 and 1.2 × 500 A, 1.3 × 200 A", () => {
    expect(
      answers(benchPlan, 63, "IEC 60947-2", 1, undefined, 500)
        .slice(5, 7)
        .map(([, current]) => current),
    ).toEqual([400, 600]);
    const [last] = answers(benchPlan, 20, "UL 489", 1, undefined, 200).slice(-2);
    expect(last?.[1]).toBeCloseTo(260, 9);
    expect(last?.[6]).toMatch(/For the marked setting of 200 A: compare it with the breaker\./);
    expect(answers(benchPlan, 16, "C", 1, undefined, 100)[0]?.[0]).toBe(
      'setting: "C" has its magnetic band printed (above 5 × up to 10 × the rating); leave the setting of 100 A out.',
    );
  });

  test("a setting so low that the magnet takes part at 300 % is said", () => {
    // 0.8 × 70 A = 56 A, below 60 A and above 40 A
    const low = answers(benchPlan, 20, "UL 489", 1, undefined, 70);
    expect(low[3]?.[6]).toMatch(/The magnetic release may trip at this current, so it is no test of the strip/);
    expect(low[4]?.[6]).not.toMatch(/no test of the strip/);
    expect(answers(benchPlan, 20, "UL 489")[3]?.[6]).not.toMatch(/no test of the strip/);
  });

  test("says how long it rests, in words and in steps", () => {
    const { answer, steps, plot } = explained(benchPlan, [20, "UL 489"]);
    expect(answer).toBe(
      '8 lines for a 20 A "UL 489" breaker of 1 pole; from cold each time a rest of 32 min, and until the terminals are back at room temperature.',
    );
    // 120 s ÷ ln(4/3) × ln 100, by hand
    expect(steps[2]?.plain).toBe("t = 417.1 s × ln(1 ÷ 0.01) = 1921 s (32 min)");
    expect(plot?.points).toHaveLength(4);
  });
});

describe("BENCH.SOURCE", () => {
  test("answers a column of currents; a blank row stays blank", () => {
    const rows = answers(benchSource, [[100], [null], [0], [200]], "1 AWG", 2, 0.199);
    expect(rows[0]?.[0]).toBeCloseTo(0.3, 12);
    expect(rows[1]).toEqual(["", "", ""]);
    expect(rows[2]).toEqual(["", "", ""]);
    // 200 A × 1.01 mΩ + 0.199 V
    expect(rows[3]?.[0]).toBeCloseTo(0.401, 12);
  });

  test("blank open-circuit volts in a column are not a source of 0 V", () => {
    const rows = answers(benchSource, [[100], [100]], "1 AWG", 2, 0.199, [[0.004], [0]], [[5], [0]]);
    expect(rows[0]?.[2]).toBeCloseTo(1000, 8);
    expect(rows[1]?.[2]).toBe("not known");
    expect(rows[1]?.[0]).toBeCloseTo(0.3, 12);
  });

  test("says whether the source reaches the current", () => {
    expect(explained(benchSource, [100, "1 AWG", 2, 0.199, 0.004, 5]).answer).toBe(
      "100 A take 0.5 V and 50 VA; this source reaches it, up to 1000 A.",
    );
    expect(explained(benchSource, [100, "1 AWG", 2, 0.199, 0.004, 0.25]).answer).toBe(
      "100 A take 0.5 V and 50 VA; this source does not reach it: 50 A at most.",
    );
  });

  test("a bare number is no conductor size", () => {
    expect(answers(benchSource, 100, 10, 2, 0.2)[0]?.[0]).toBe(
      'size: a conductor size with its unit is wanted, such as "12 AWG", "250 kcmil" or "2.5 mm²", not the bare number 10.',
    );
  });
});

describe("BENCH.LEAD", () => {
  test("a long shot is an upper bound, and never said to be beyond the limit", () => {
    // 40.8² × 100 ÷ (226² × 2.5²) = 0.521463; 264.5 K × (e^0.521463 − 1) = 181.05 K by hand
    const [rise, end, limit, finding] = answers(benchLead, 40.8, 100, "2.5 mm²")[0] ?? [];
    expect(rise).toBeCloseTo(181.05, 2);
    expect(end).toBeCloseTo(211.05, 2);
    expect(limit).toBe(160);
    expect(finding).toBe("not sure to stay within 160 °C: the heat that leaves is not counted");
    const told = explained(benchLead, [40.8, 100, "2.5 mm²"]);
    expect(told.answer).toMatch(/^The lead ends at 211 °C at most: /);
    expect(told.cautions[0]).toMatch(/holds for shots up to about 5 s\. In 100 s heat leaves the lead/);
  });

  test("a short one beyond it is", () => {
    // 400² × 2 ÷ (226² × 2.5²) = 1.0024; 264.5 K × (e^1.0024 − 1) = 456 K by hand
    expect(answers(benchLead, 400, 2, "2.5 mm²")[0]?.[3]).toBe(
      "beyond the limit of 160 °C: a thicker lead or a shorter shot is wanted",
    );
  });

  test("a start in °F is asked after, and a blank start never becomes a verdict", () => {
    expect(answers(benchLead, 100, 1, "10 mm²", 212)[0]?.[0]).toBe(
      "start temperature: at most 160 °C is wanted, not 212 °C; in °C; was °F meant?",
    );
    expect(answers(benchLead, 100, 1, "10 mm²", 0)[0]?.[0]).toBe(
      "lead: 0 °C is also what a blank cell counts as; type the lead's temperature, 0.1 for freezing.",
    );
  });

  test("copper that melts is no answer", () => {
    expect(answers(benchLead, 1000, 2, "12 AWG")[0]?.[0]).toMatch(/would melt the copper after 0\.8978 s/);
  });
});

describe("BENCH.WIRE", () => {
  test("a column of ratings, each refused by itself beyond the table", () => {
    expect(answers(benchWire, [[16], [160], [null], [63]])).toEqual([
      ["2.5 mm²", 1],
      Array(2).fill("rating: the test conductors of IEC 60898-1 end at 125 A, so there are none for 160 A."),
      ["", ""],
      ["16 mm²", 2],
    ]);
  });

  test("shows how each row stands, and that the thickest are suggestions", () => {
    expect(explained(benchWire, [16]).sources[0]?.standing).toBe("from memory");
    expect(explained(benchWire, [100, "UL 489"]).sources[0]?.standing).toBe("corroborated");
    expect(explained(benchWire, [800, "UL 489"]).cautions[0]).toMatch(/^From 800 A up .* a suggestion/);
    expect(explained(benchWire, [600, "UL 489"]).cautions[0]).not.toMatch(/suggestion/);
  });

  test("an unknown document names those that are known", () => {
    expect(answers(benchWire, 16, "IEC 60269")[0]?.[0]).toBe(
      'standard: the text "IEC 60269" is not known; known are "IEC 60898-1", "IEC 60947-2", "UL 489", "UL 489 75 °C".',
    );
  });
});

describe("BENCH.INSULATION", () => {
  test("a class without its document is refused: the documents differ a hundredfold", () => {
    expect(answers(benchInsulation, 25, "250 V")[0]?.[0]).toBe(
      'class: the text "250 V" is not known; known are "NETA 250 V", "NETA 600 V", "NETA 1000 V", "IEC 60898-1 poles", "IEC 60898-1 frame", "NEMA AB 4", "TM 5-683 500 V", "TM 5-683 1000 V".',
    );
    expect(answers(benchInsulation, 25)[0]?.[0]).toBe("class is missing.");
  });

  test("a blank reading never becomes a finding; a real zero has a way in", () => {
    expect(answers(benchInsulation, null, "NETA 250 V")[0]?.[0]).toBe(
      "megohms is blank; type a reading of zero as 0.001.",
    );
    expect(answers(benchInsulation, 0, "NETA 250 V")[0]?.[0]).toMatch(/megohms is blank/);
    expect(answers(benchInsulation, 0.001, "NEMA AB 4")).toEqual([["below 1 MΩ: reject"]]);
  });

  test("the caution about the charge left behind stands on every answer", () => {
    expect(explained(benchInsulation, [25, "NETA 250 V"]).cautions.join(" ")).toMatch(
      /discharge them for 4 times the test time/,
    );
  });
});

describe("BENCH.SUMMARY", () => {
  test("errors and blanks are in no count and are said; blank rows are no rows", () => {
    expect(
      answers(
        benchSummary,
        [["P1"], ["P1"], ["P1"], ["P2"], [null], ["P1"]],
        [["in range"], [new CellError("#N/A")], [null], [new CellError("#VALUE!")], [null], ["too close to call"]],
      ),
    ).toEqual([
      ["P1", 2, 1, 0, 1, "1 #N/A, 1 blank"],
      ["P2", 0, 0, 0, 0, "1 #VALUE!"],
    ]);
  });

  test("hosts that hand blanks over as 0 get the same", () => {
    expect(answers(benchSummary, [["P1"], [0], ["P1"]], [["late"], [0], [0]])).toEqual([["P1", 1, 0, 1, 0, "1 blank"]]);
  });

  test("breakers named by numbers are names too", () => {
    expect(answers(benchSummary, [[7], [7]], [["in range"], ["early"]])).toEqual([["7", 2, 1, 1, 0, ""]]);
  });

  test("the whole log in a sentence", () => {
    const told = explained(benchSummary, [
      [["P1"], ["P2"], ["P2"]],
      [["in range"], ["late"], [""]],
    ]);
    expect(told.answer).toBe(
      "2 breakers, tests with a verdict 2: in range 1, out 1, undecided 0; without a verdict, and not counted: 1.",
    );
    expect(told.steps.map(({ sentence }) => sentence).slice(1)).toEqual(["P2 wants attention"]);
    expect(told.cautions.join(" ")).toMatch(/not a release to service/);
  });

  test.each<[string, Argument[], RegExp]>([
    [
      "a word that is no verdict",
      [
        [["P1"], ["P1"]],
        [["in range"], ["ok"]],
      ],
      /^verdicts, row 2: the text "ok" is no verdict; known are in range, early, /,
    ],
    [
      "a verdict without a breaker",
      [
        [["P1"], [null]],
        [["in range"], ["late"]],
      ],
      /^breakers, row 2 is blank\.$/,
    ],
    [
      "lists of two lengths",
      [
        [["P1"], ["P2"]],
        [["in range"], ["late"], ["late"]],
      ],
      /^The ranges do not fit: breakers has 2 rows × 1 column, verdicts has 3 rows × 1 column\.$/,
    ],
    [
      "nothing at all",
      [
        [[null], [null]],
        [[null], [null]],
      ],
      /^breakers, verdicts: all rows are blank\.$/,
    ],
  ])("refuses %s", (_, args, sentence) => {
    expect(answers(benchSummary, ...args)[0]?.[0]).toMatch(sentence);
  });
});
