import { testPlan } from "../../src/bench/plan";
import type { PlanStep } from "../../src/bench/plan-step";
import { NoAnswer } from "../../src/metrology/no-answer";
import { knownCharacteristics } from "../../src/trip/known";

const plan = (rating: number, name: string, poles = 1, timeConstant?: number): readonly PlanStep[] => {
  const characteristic = knownCharacteristics.find((one) => one.name === name);
  if (!characteristic) throw new Error(`no characteristic ${name}`);
  return testPlan({ rating, characteristic, poles, timeConstant });
};
const steps = (lines: readonly PlanStep[]) => lines.map(({ step }) => step);
const at = (lines: readonly PlanStep[], words: string): PlanStep => {
  const found = lines.find(({ step }) => step.includes(words));
  if (!found) throw new Error(`no line "${words}" in ${steps(lines).join("; ")}`);
  return found;
};
/** The longest rest of a plan: from a thermal trip to cold. */
const restOf = (lines: readonly PlanStep[]) => Math.max(...lines.map(({ rest = 0 }) => rest));

describe("the order", () => {
  test("IEC 60898-1: look, insulation, drop, a, b at once, c, d, e, exercise last", () => {
    expect(steps(plan(16, "C"))).toEqual([
      "look it over; close and open it once",
      "insulation: line to load open; to frame closed",
      "drop at the rating, settled",
      "hold at 1.13 ×, as found (test a)",
      "trip at 1.45 × straight after (test b)",
      "trip at 2.55 × (test c)",
      "no trip at 5 × for 0.1 s (test d)",
      "magnetic trip at 10 × (test e)",
      "if a trip was late: exercise it by hand, rest, repeat that line",
    ]);
  });

  test("UL 489 and field: 300 % as found, or 200 %, then 135 %, the magnetic release last", () => {
    expect(steps(plan(20, "UL 489"))).toEqual([
      "look it over; close and open it once",
      "insulation: line to load open; to frame closed",
      "drop at the rating, settled",
      "trip at 300 %, as found",
      "or, in place of 300 %: trip at 200 %, as found",
      "trip at 135 %",
      "magnetic trip, last",
      "if a trip was late: exercise it by hand, rest, repeat that line",
    ]);
  });

  test("several poles: in series for the long currents, each alone for the rest", () => {
    expect(steps(plan(16, "B", 2)).slice(3, 11)).toEqual([
      "hold at 1.13 ×, as found (test a)",
      "trip at 1.45 × straight after (test b)",
      "trip at 2.55 × (test c), pole 1 alone",
      "trip at 2.55 × (test c), pole 2 alone",
      "no trip at 3 × for 0.1 s (test d), pole 1 alone",
      "magnetic trip at 5 × (test e), pole 1 alone",
      "no trip at 3 × for 0.1 s (test d), pole 2 alone",
      "magnetic trip at 5 × (test e), pole 2 alone",
    ]);
    for (const words of ["drop", "test a", "test b"])
      expect(at(plan(16, "B", 2), words).caution).toMatch(/All poles in series\./);
    expect(at(plan(20, "UL 489", 3), "135 %").caution).toMatch(/All poles in series\./);
    expect(steps(plan(20, "UL 489", 3)).filter((step) => step.startsWith("trip at 300 %"))).toHaveLength(3);
    for (const { caution } of plan(16, "B")) expect(caution).not.toMatch(/series/);
  });
});

describe("the numbers of a line", () => {
  test("16 A C: currents, printed limits and when to stop (IEC 60898-1 Table 7)", () => {
    const lines = plan(16, "C");
    const hold = at(lines, "test a");
    expect(hold.current).toBeCloseTo(18.08, 10);
    expect(hold).toMatchObject({ band: { shortest: 3600, longest: Infinity }, stopAt: 3600 });
    const after = at(lines, "test b");
    expect(after.current).toBeCloseTo(23.2, 10);
    expect(after).toMatchObject({ band: { shortest: 0, longest: 3600 }, stopAt: 3600, rest: 0 });
    const cold = at(lines, "test c");
    expect(cold.current).toBeCloseTo(40.8, 10);
    expect(cold).toMatchObject({ band: { shortest: 1, longest: 60 }, stopAt: 60 });
    expect(at(lines, "test d")).toMatchObject({ current: 80, stopAt: 0.1 });
    expect(at(lines, "test e")).toMatchObject({ current: 160, band: { shortest: 0, longest: 0.1 }, stopAt: 0.1 });
  });

  test("above 63 A the hold lasts two hours, above 32 A test c two minutes", () => {
    expect(at(plan(80, "D"), "test a").stopAt).toBe(7200);
    expect(at(plan(80, "D"), "test b").stopAt).toBe(7200);
    expect(at(plan(40, "D"), "test c").stopAt).toBe(120);
  });

  test("20 A UL 489: 120 s at 200 %, an hour at 135 %; 300 % is watched as long as any field limit (70 s up to 600 V)", () => {
    const lines = plan(20, "UL 489");
    expect(at(lines, "as found")).toMatchObject({ current: 60, stopAt: 70 });
    expect(at(lines, "200 %")).toMatchObject({ current: 40, band: { shortest: 0, longest: 120 }, stopAt: 120 });
    expect(at(lines, "trip at 135 %")).toMatchObject({
      current: 27,
      band: { shortest: 0, longest: 3600 },
      stopAt: 3600,
    });
    expect(at(lines, "magnetic")).toMatchObject({ current: "not known", band: "not known", stopAt: 5 });
  });

  test("where the field table has a hole the computed band alone says how long to watch", () => {
    // Table 100.7 has no row between 5000 A and 6000 A; slowest strip 1800 s ÷ ln(4/3) × ln(9/8) = 736.96 s by hand.
    const line = at(plan(5500, "UL 489"), "300 %");
    expect(line.stopAt).toBeCloseTo(736.96, 2);
    expect(line.caution).not.toMatch(/field limit/);
  });

  test("IEC 60947-2: the current of a magnetic line hangs on the marked setting", () => {
    const lines = plan(16, "IEC 60947-2");
    expect(at(lines, "0.8 × the marked setting")).toMatchObject({ current: "not known", stopAt: 0.2 });
    expect(at(lines, "1.2 × the marked setting")).toMatchObject({ current: "not known", stopAt: 0.2 });
    expect(at(lines, "hold at 1.05 ×").current).toBeCloseTo(16.8, 10);
  });
});

describe("rests", () => {
  // 4.6 time constants of the slowest strip: 60 s ÷ ln(2.55² ÷ (2.55² − 1.13²)) = 274.45 s; 120 s ÷ ln(4/3) = 417.13 s, by hand.
  test.each([
    [16, "C", 21.065],
    [32, "B", 21.065],
    [40, "C", 42.13],
    [125, "D", 42.13],
    [20, "UL 489", 32.02],
    [30, "UL 489 typical", 32.02],
  ])("%d A %s rests %d min from a thermal trip", (rating, name, minutes) => {
    expect(restOf(plan(rating, name)) / 60).toBeCloseTo(minutes, 2);
  });

  test("only the trip straight after the hold has none; every other timed line starts from cold and says so", () => {
    for (const { name } of knownCharacteristics)
      for (const poles of [1, 3]) {
        const lines = plan(25, name, poles);
        const timed = lines.filter(({ step, current }) => current !== undefined && !step.startsWith("drop"));
        for (const { step, rest, caution } of timed) {
          if (step.includes("straight after")) expect(rest).toBe(0);
          else {
            expect(rest).toBe(restOf(lines));
            expect(caution).toMatch(/^From cold: rest .* and until the terminals are back at room temperature\./);
          }
        }
        expect(timed.filter(({ rest }) => rest === 0)).toHaveLength(name.startsWith("UL") ? 0 : 1);
      }
  });

  test("a breaker's own time constant sets its own rest: 100 s × ln 100", () => {
    expect(restOf(plan(16, "C", 1, 100))).toBeCloseTo(460.517, 3);
  });
});

describe("cautions", () => {
  test("every line has one, and every line with a current says that it burns", () => {
    for (const { name } of knownCharacteristics)
      for (const { current, caution } of plan(20, name, 2)) {
        expect(caution).toMatch(/^[A-Z0-9].*\.$/);
        expect(caution).not.toMatch(/\bsafe\b|undefined|NaN|Infinity/);
        if (current !== undefined) expect(caution).toMatch(/hot enough to burn: hands off/);
      }
  });

  test("the ones that a tester must not miss", () => {
    const ul = plan(20, "UL 489");
    expect(at(ul, "look").caution).toMatch(/locked out, proved dead/);
    expect(at(ul, "look").caution).toMatch(/12 AWG copper, at least 1\.2 m at each terminal/);
    expect(at(ul, "insulation").caution).toMatch(/discharge for 4 times the test time before touching/);
    expect(at(ul, "200 %").caution).toMatch(/A pass at 200 % does not prove 135 %\./);
    expect(at(ul, "300 %").caution).toMatch(/50 s up to 250 V, 70 s up to 600 V/);
    expect(at(ul, "magnetic").caution).toMatch(/A run-up can destroy the breaker: 2 to 5 s at most, one pole/);
    const c = plan(16, "C");
    // IEC 60898-1 Table 15 (from memory): 3.5 W up to 16 A; ÷ 16 A = 0.21875 V
    expect(at(c, "drop").caution).toMatch(/allows 3\.5 W, that is 0\.2188 V, a pole \(from memory\)/);
    expect(at(c, "test a").caution).toMatch(/At the end do not switch off: go on with the next line/);
    expect(at(c, "test b").caution).toMatch(/raise the current evenly within 5 s/);
    expect(at(c, "test e").caution).toMatch(/Never by running the current up/);
    expect(at(c, "exercise").caution).toMatch(/as found and exercised/);
  });
});

test("a rating outside the document has no plan", () => {
  expect(() => plan(160, "C")).toThrow(
    new NoAnswer('rating: IEC 60898-1 ends at 125 A, so "C" has no limits for 160 A.'),
  );
});
