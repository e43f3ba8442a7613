import fc from "fast-check";
import { type Argument, isRange, type Range } from "../../src/definition/cells";
import { catalogued } from "./catalogued";
import { die, logarithmic } from "./dice";
import { withMore } from "./more";
import { parametersOf, Question } from "./question";
import { anyQuestion, plainQuestions } from "./questions";
import { ask, isAnswered, plain } from "./road";

// What two answers owe each other: one question undone by another, asked in another order, or asked less exactly.

const givenIn = ({ definition, args }: Question, key: string): Argument =>
  args[parametersOf(definition).findIndex(([name]) => name === key)];

/** Runs a property that may have nothing to compare, and demands that it often has. */
const often = (name: string, compares: (question: Question, die: number) => boolean, numRuns = 200): void => {
  let compared = 0;
  fc.assert(
    fc.property(plainQuestions(name), die, (question, step) => {
      if (compares(question, step)) compared++;
    }),
    { numRuns },
  );
  expect(compared).toBeGreaterThan(numRuns / 5);
};

const first = (question: Question): readonly unknown[] => ask(question)[0] ?? [];
const wants = (question: Question, numbers: readonly unknown[]): boolean =>
  isAnswered(question, ask(question)) && numbers.every((one) => typeof one === "number");

test("answers do not depend on what was asked before", () => {
  fc.assert(
    fc.property(fc.array(anyQuestion, { minLength: 2, maxLength: 8, size: "max" }), (questions) => {
      const there = questions.map((question) => plain(ask(question)));
      const back = [...questions].reverse().map((question) => plain(ask(question)));
      expect(back.reverse()).toEqual(there);
    }),
    { numRuns: 120 },
  );
});

describe("one question undoes another", () => {
  const range = catalogued("TRIP.RANGE");

  test("up to the current that TRIP.CURRENT gives, TRIP.RANGE gives more than its time, and from the other one no more", () =>
    often("TRIP.CURRENT", (question) => {
      const [holds, trips] = first(question);
      const time = givenIn(question, "time");
      if (!wants(question, [holds]) || isRange(givenIn(question, "characteristic"))) return false;
      const at = (current: number) => first(new Question(range, [current, ...question.args.slice(1)]));
      const [shortest] = at(Number(holds) * (1 - 1e-6));
      if (typeof shortest === "number") expect(shortest).toBeGreaterThan(Number(time));
      if (typeof trips === "number") expect(at(trips * (1 + 1e-6))[1]).toBeLessThanOrEqual(Number(time));
      return true;
    }));

  test("ENCLOSURE.DISSIPATES passes at the rise of ENCLOSURE.RISE the watts that made it", () =>
    often("ENCLOSURE.RISE", (question) => {
      const [rise] = first(question);
      if (!wants(question, [rise]) || Number(rise) < 0.01 || Number(rise) > 200) return false;
      const [watts] = first(
        new Question(catalogued("ENCLOSURE.DISSIPATES"), [rise as number, ...question.args.slice(1)]),
      );
      if (typeof watts !== "number") return false;
      expect(watts / Number(question.args[0])).toBeCloseTo(1, 6);
      return true;
    }));

  test("after the time of THERMAL.TIME the state of THERMAL.STATE is the trip", () =>
    often("THERMAL.TIME", (question) => {
      const [time] = first(question);
      const [current, pickup, timeConstant, preload = 0] = question.args.map(Number);
      if (!wants(question, [time, current]) || pickup === undefined) return false;
      const start = (preload / pickup) ** 2;
      const state = new Question(catalogued("THERMAL.STATE"), [
        current,
        Number(time) * (1 - 1e-6),
        pickup,
        timeConstant,
        start,
      ]);
      const [reached] = first(state);
      if (typeof reached !== "number") return false;
      expect(reached).toBeGreaterThan(0.99);
      expect(reached).toBeLessThanOrEqual(1);
      return true;
    }));
});

describe("a wider error is never more certain", () => {
  /** What the same trial may be called beside a sharper meter. */
  const sharper: Readonly<Record<string, readonly string[]>> = {
    // Of a crossing that is sure, a wider error may leave open whether it goes as far as a printed limit.
    "outside the computed band": ["early", "late", "did not trip in time"],
  };
  const stays = (name: string, error: string, result: number) =>
    often(name, (question, step) => {
      const wider = withMore(question, error, step);
      if (!wider || !wants(question, []) || !wants(wider, [])) return false;
      const [sharp, blunt] = [String(first(question)[result]), String(first(wider)[result])];
      if (blunt !== "too close to call") expect([blunt, ...(sharper[blunt] ?? [])]).toContain(sharp);
      return true;
    });

  test("in TRIP.VERDICT's current", () => stays("TRIP.VERDICT", "currentError", 0));
  test("in TRIP.VERDICT's time", () => stays("TRIP.VERDICT", "timeError", 0));
  test("in METER.CONFORMS", () => stays("METER.CONFORMS", "u", 1));
});

test("a harder start is never judged better", () => {
  const order = ["rides through", "thermal rides through, magnetic not known", "may trip", "trips"];
  for (const harder of ["startTime", "startCurrent", "runningCurrent"])
    often("INRUSH.MARGIN", (question, step) => {
      const worse = withMore(question, harder, step);
      if (!worse || !wants(question, []) || !wants(worse, [])) return false;
      const [was, is] = [question, worse].map((one) => order.indexOf(String(first(one)[4])));
      expect(was).toBeGreaterThanOrEqual(0);
      expect(is).toBeGreaterThanOrEqual(was as number);
      return true;
    });
});

describe("the order of a list does not matter", () => {
  const isBlock = (range: Range): boolean => range.length > 1 && (range[0]?.length ?? 0) > 1;
  const turned = (argument: Argument): Argument => {
    if (!isRange(argument) || isBlock(argument)) return argument;
    return argument.map((row) => [...row].reverse()).reverse();
  };
  const near = (a: unknown, b: unknown): boolean =>
    typeof a === "number" && typeof b === "number" ? Math.abs(a - b) <= 1e-9 * Math.max(1e-3, Math.abs(a)) : a === b;

  test.each([
    ["THERMAL.FIT", 20],
    ["THERMAL.COMPARE", 100],
    ["METER.REPEATS", 100],
    ["ENCLOSURE.TOTAL", 100],
  ])("of %s", (name, numRuns) =>
    often(
      name,
      (question) => {
        const [there, back] = [ask(question), ask(question.with(question.args.map(turned)))];
        if (!isAnswered(question, there)) return false;
        const isSame = there.every((row, r) => row.every((cell, c) => near(cell, back[r]?.[c])));
        expect(isSame ? there : back).toEqual(there);
        return true;
      },
      numRuns,
    ),
  );
});

test("low, median and high of a forecast stand in their order", () =>
  often("THERMAL.FORECAST", (question) => {
    const [low, median, high] = first(question).map((cell) =>
      typeof cell === "number" ? cell : ["holds", "no limit"].includes(String(cell)) ? Infinity : Number.NaN,
    ) as number[];
    if (low === undefined || median === undefined || high === undefined || Number.isNaN(low + median + high))
      return false;
    expect(low).toBeLessThanOrEqual(median);
    expect(median).toBeLessThanOrEqual(high);
    return true;
  }));

test("the shortest time is never above the longest", () =>
  often("TRIP.RANGE", (question) => {
    const [shortest, longest] = first(question).map((cell) => (typeof cell === "number" ? cell : Infinity)) as number[];
    expect(shortest).toBeLessThanOrEqual(longest ?? 0);
    return isAnswered(question, ask(question));
  }));

test.each(["TRIP.RANGE", "THERMAL.TIME", "INRUSH.MARGIN"])(
  "a column of %s a thousand rows long answers as its rows do alone",
  (name) => {
    const columns = fc.sample(plainQuestions(name), 1)[0] as Question;
    const place = 0;
    const currents = Array.from({ length: 1000 }, (_, i) => [logarithmic(0.5, 500)(i / 1000)]);
    const long = columns.with(columns.args.map((argument, at) => (at === place ? currents : argument)));
    const rows = ask(long);
    currents.forEach((cell, i) => {
      expect(plain(ask(long.with(long.args.map((argument, at) => (at === place ? cell[0] : argument)))))).toBe(
        plain([rows[i] ?? []]),
      );
    });
  },
);
