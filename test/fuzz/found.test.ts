import { type Argument, type Cell, CellError, type Range } from "../../src/definition/cells";
import { explained } from "../../src/definition/explained";
import { catalogued } from "./catalogued";
import { fitBlocks } from "./fit-blocks";
import { Question } from "./question";
import { ask, keepsToTheRoad } from "./road";
import { isWellExplained } from "./told";

// Calls that broke a promise once, each with what it owes.

const question = (name: string, ...args: Argument[]): Question => new Question(catalogued(name), args);
const said = (name: string, ...args: Argument[]): unknown => {
  const one = question(name, ...args);
  isWellExplained(one, 0);
  const [first] = keepsToTheRoad(one)[0] ?? [];
  return first instanceof Error ? first.message : first;
};

test("a text of two lines is refused in a sentence of one", () => {
  expect(said("CONTACT.LIMIT", "two\nlines")).toBe('rating: a number in A is wanted, not the text "two lines".');
  expect(said("EXPLAIN", "no\nsuch")).toMatch(/^name: "no such" is no function of ours; known are /);
});

test("an explanation names a long text by its beginning", () => {
  const { inputs } = explained(catalogued("BENCH.SUMMARY"), ["P1-03 ".repeat(6000), "late"]);
  expect(inputs[0]?.shown.length).toBeLessThan(50);
});

test("a breaker named in two lines is named in one by its explanation", () => {
  isWellExplained(question("BENCH.SUMMARY", [["two\nlines"], ["P1-03"]], [["late"], ["early"]]), 0);
  const { steps } = explained(catalogued("BENCH.SUMMARY"), ["two\nlines", "late"]);
  expect(steps.map(({ sentence }) => sentence)).toContain("two lines wants attention");
});

test("no picture is drawn of an uncertainty that the digits of its value cannot show", () => {
  isWellExplained(question("METER.CONFORMS", 768260, 1e-12, undefined, 1e12), 0);
  expect(explained(catalogued("METER.CONFORMS"), [768260, 1e-12, undefined, 1e12]).plot).toBeUndefined();
  expect(explained(catalogued("METER.CONFORMS"), [768260, 1, undefined, 1e12]).plot).toBeDefined();
});

test("a trip rise that leaves no strip between UL 489's two temperatures is refused", () => {
  // By hand: carried at 40 °C, tripping at 1.35 × at 25 °C: √(rise ÷ (rise − 15)) < 1.35, so the rise must be above 33.24 K.
  const sentence =
    /^trip rise: in this air the hold edge comes to 1\.35\d* × as the trip times count it, and no strip /;
  for (const name of ["UL 489", "UL 489 typical"]) {
    expect(said("TRIP.RANGE", 40, 20, name, undefined, 45, undefined, 33)).toMatch(sentence);
    expect(said("TRIP.RANGE", 40, 20, name, undefined, 45, undefined, 34)).toBeGreaterThanOrEqual(0);
  }
});

test("a magnetic band that cold air leaves below the hold edge still trips", () => {
  // By hand: set to 22 A it trips from 1.2 × 22 = 26.4 A within 0.2 s, may from 17.6 A; the hold edge is 21 A × √(135 ÷ 80) = 27.3 A.
  const at = (current: number) => ask(question("TRIP.RANGE", current, 20, "IEC 60947-2", undefined, -25, 22))[0];
  expect(at(27)).toEqual([0, 0.2]);
  expect(at(26)).toEqual([0, "no limit"]);
  expect(at(17)).toEqual(["holds", "no limit"]);
});

test("in air as hot as the strip at its trip the shortest time is not above the longest", () => {
  // By hand: 30 °C + 21.608 K − 51.607 °C leaves 0.001 K of 21.608 K, so 18 A load the strip as 0.9 ÷ √(0.001 ÷ 21.608) = 132 × would:
  // the slowest takes 60 s ÷ 0.2186 × ln(132² ÷ (132² − 1.13²)) = 0.02 s, sooner than the 0.1 s of test d.
  const [shortest, longest] = ask(question("TRIP.RANGE", 18, 20, "C", undefined, 51.607, undefined, 21.608))[0] ?? [];
  expect(longest).toBeCloseTo(0.02, 3);
  expect(Number(shortest)).toBeLessThan(Number(longest));
});

describe("what is asked lies inside its picture", () => {
  test.each<[string, ...Argument[]]>([
    ["TRIP.VERDICT", 30, 100_000, 20, "C", "held"],
    ["TRIP.VERDICT", 300, 0.004, 20, "C"],
    ["TRIP.CURRENT", 1757.6, 50, "IEC 60947-2", undefined, 58.5, 214, 58.7],
    ["INRUSH.MARGIN", 60, 50_000, 12, 20, "C"],
  ])("%s", (name, ...args) => {
    isWellExplained(question(name, ...args), 0);
    const { plot } = explained(catalogued(name), args);
    const points = plot?.points ?? [];
    expect(points.length).toBeGreaterThan(0);
    // The point stands at the time that was given, not at the edge of what is usually shown.
    const time = name === "TRIP.CURRENT" ? args[0] : args[1];
    expect(points.map(({ y }) => y)).toEqual(points.map(() => time));
  });
});

describe("a block of THERMAL.FIT with a cell changed is refused, never answered with no number", () => {
  const block = fitBlocks[0] as Range;
  const changed = (label: string, column: number, cell: Cell): Range => {
    const at = block.findIndex(
      ([first, second]) => first === label && (label !== "profile" || typeof second === "number"),
    );
    return block.map((row, i) => (i === at ? row.map((old, k) => (k === column ? cell : old)) : row));
  };
  test.each<[string, number, Cell, RegExp]>([
    ["profile", 4, 0, /^fit, a row "profile": a number above 0 is wanted, not 0\.$/],
    ["profile", 5, 5e-324, /^fit, a row "profile": a number above 0 is wanted, not 5e-324\.$/],
    ["covariance of ln pickup", 1, 0, /^fit, rows "covariance": these numbers are no covariance; /],
    ["covariance of ln pickup", 2, 1, /^fit, rows "covariance": these numbers are no covariance; /],
    ["tripped", 1, 2, /^fit, row "tripped": at least 3 beside limits is wanted, not 2\.$/],
    ["tripped", 1, 7.5, /^fit, row "tripped": a whole number is wanted, not 7\.5\.$/],
    ["held", 0, "Tripped", /^fit: the row "tripped" stands twice; hand over one block of THERMAL\.FIT\.$/],
  ])("%s, column %i: %s", (label, column, cell, sentence) => {
    expect(said("THERMAL.FORECAST", 40, changed(label, column, cell))).toMatch(sentence);
    expect(said("THERMAL.HOLDS", 40, 30, changed(label, column, cell))).toMatch(sentence);
  });
});

test("trials whose likelihood is flat but for rounding are fitted all the same", () => {
  const currents = [[926.71], [546.63], [300.55], [1e-12], [1e-12]];
  const outcomes = [["tripped"], ["tripped"], ["held"], ["held"], ["held"]];
  const asked = question("THERMAL.FIT", currents, 0.1, outcomes, undefined, 1e-12, "IEC 60947-2");
  isWellExplained(asked, 0);
  // As long at 547 A as at 927 A: the lower the pickup, the less that misfits, and far below both nothing changes any more.
  const [label, pickup] = keepsToTheRoad(asked)[0] ?? [];
  expect(label).toBe("pickup");
  expect(pickup).toBeGreaterThan(0);
  expect(pickup).toBeLessThan(55);
});

test("three names of characteristics that lie across are no band", () => {
  // IEC 60898-1 Table 7, tests d and e: 3 to 5 ×, 5 to 10 ×, 10 to 20 ×.
  expect(ask(question("TRIP.MAGNETIC", 10, [["B", "C", "D"]]))).toEqual([
    [30, 50, 100],
    [50, 100, 200],
  ]);
});

test("a cell handed over as a range of one is that cell", () => {
  const error = new CellError("#N/A");
  for (const [name, place, cell] of [
    ["THERMAL.HOLDS", 2, "B-2"],
    ["CONTACT.SPREAD", 0, error],
    ["ENCLOSURE.PANEL", 0, 20],
    ["TRIP.MAGNETIC", 1, "C"],
  ] as const) {
    const args = Array.from({ length: place + 1 }, (): Argument => 20);
    const [bare, inRange] = [cell, [[cell]]].map((one) => said(name, ...args.slice(0, place), one));
    expect(inRange).toEqual(bare);
  }
  expect(said("CONTACT.SPREAD", error)).toBe("ohms: the cell holds #N/A; mend that cell first.");
});

test("a log of a whole bench is refused where one breaker is asked about: each held current would take a search of its own", () => {
  const rows = Array.from({ length: 501 }, (_, i) => [10 + i / 100]);
  expect(said("THERMAL.FIT", rows, rows)).toBe(
    "currents: at most 500 trials of one breaker are taken, not 501; hand over the rows of one breaker alone.",
  );
});

test("what is no number is refused where a number or a name is wanted", () => {
  expect(said("METER.TURNS", Number.NaN, 2)).toBe("reading: a number in A is wanted, not NaN.");
  expect(said("BENCH.SUMMARY", Number.NEGATIVE_INFINITY, "late")).toMatch(/^breakers: /);
});

test("an own band takes no time and no multiple that nobody measures", () => {
  const band = (multiple: number, shortest: number, longest: Cell): Range => [
    [multiple, shortest, longest],
    [30, 0, 8],
  ];
  const sentence = /^characteristic, row 1 of the band: a (multiple|shortest time|longest time) .* is wanted, not /;
  for (const odd of [band(5e-324, 1, "no limit"), band(1, Number.POSITIVE_INFINITY, "no limit"), band(1, 1, 1e300)])
    expect(said("TRIP.RANGE", 20, 20, odd)).toMatch(sentence);
  expect(said("TRIP.RANGE", 20, 20, band(1, 1, "no limit"))).toBe(1);
});
