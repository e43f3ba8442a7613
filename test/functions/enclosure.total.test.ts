import { call } from "../../src/definition/call";
import { explained } from "../../src/definition/explained";
import panel from "../../src/functions/enclosure.panel";
import total from "../../src/functions/enclosure.total";
import watts from "../../src/functions/enclosure.watts";

const sentences = (rows: ReturnType<typeof call>) =>
  rows.flat().map((cell) => (cell instanceof Error ? cell.message : cell));

describe("ENCLOSURE.WATTS", () => {
  test("a range of loads is answered row by row, and a way that is off makes no heat", () => {
    // Hand-worked: 4 W × (20/20)², × (10/20)², × (5/20)².
    expect(call(watts, [4, 20, [[20], [10], [5], [0]]])).toEqual([[4], [1], [0.25], [""]]);
    expect(call(watts, [[[4], [4]], 20, [[20], [0]]])).toEqual([[4], [0]]);
  });

  test("half a pole, a share above 1 and a load below nothing are refused", () => {
    expect(sentences(call(watts, [4, 20, 10, 1.5]))[0]).toBe("poles: a whole number is wanted, not 1.5.");
    expect(sentences(call(watts, [4, 20, 10, 1, 1.2]))).toEqual(["fixed loss share: at most 1 is wanted, not 1.2."]);
    expect(sentences(call(watts, [4, 20, -1]))).toEqual(["load: at least 0 A is wanted, not -1 A."]);
    expect(sentences(call(watts, [4, null, 1]))).toEqual(["the rating is blank."]);
  });

  test("a load above the rating is worked out and cautioned", () => {
    const account = explained(watts, [4, 20, 40]);
    expect(account.results[0]?.shown).toBe("16 W"); // Hand-worked: twice the current, four times the loss.
    expect(account.cautions[0]).toContain("above the rating");
  });
});

describe("ENCLOSURE.TOTAL", () => {
  test("20 poles of 5 W at full load make 100 W", () => {
    const twenty = Array.from({ length: 20 }, () => [5]);
    expect(call(total, [twenty, 20, 20])).toEqual([[100, 5]]);
  });

  test("breakers 20 W, a fifth more for the wiring, auxiliaries 3 W: 27 W (CEI 23-51, from memory)", () => {
    expect(call(total, [20, 63, 63, 1, [[4], [3]]])).toEqual([[27, 20]]);
  });

  test("blank rows below the last way are no ways", () => {
    expect(
      call(total, [
        [[5], [5], [null]],
        [[20], [20], [null]],
        [[20], [20], [0]],
      ]),
    ).toEqual([[10, 5]]);
  });

  test("a factor above 1 is the other convention and refused", () => {
    expect(sentences(call(total, [5, 20, 20, 1, 0, 1.25]))[0]).toBe(
      "diversity: at most 1 is wanted, not 1.25; a factor above 1 is the other convention, where the sum is divided by it: type its reciprocal.",
    );
  });

  test("both readings of the diversity factor are told: 0.8² × 100 W = 64 W, and 0.8 × 100 W = 80 W", () => {
    expect(call(total, [5, 20, 20, 20, 0, 0.8])[0]?.[0]).toBeCloseTo(64, 10);
    const lines = explained(total, [5, 20, 20, 20, 0, 0.8]).steps.map(({ plain }) => plain);
    expect(lines).toContain("0.8² × 100 W = 64 W");
    expect(lines).toContain("some full, some off: 0.8 × 100 W + 0 W = 80 W");
  });
});

test.each([
  ["ENCLOSURE.PANEL", panel, [20, 4], [0.6, 0.4, 0.12, "wall", 30]],
  ["ENCLOSURE.TOTAL", total, [4, 20], []],
  ["ENCLOSURE.WATTS", watts, [4, 20], []],
] as const)("%s asks whether losses and ratings changed places", (_, definition, [first, second], rest) => {
  const asked = /^20 W a pole at 4 A is more than twice what IEC 60898-1 allows .* not exchanged with the rating\?$/;
  // 4 W at 20 A is within the 4.5 W of the table, 20 W at 4 A far above its 3 W.
  expect(explained(definition, [second, first, 3, ...rest]).cautions[0]).toMatch(asked);
  expect(explained(definition, [first, second, 3, ...rest]).cautions[0]).not.toMatch(asked);
});
