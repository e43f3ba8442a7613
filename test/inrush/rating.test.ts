import fc from "fast-check";
import { startMargin } from "../../src/inrush/margin";
import { ratingsTried } from "../../src/inrush/rating";
import { NoAnswer } from "../../src/metrology/no-answer";
import { asked } from "../../src/trip/asked";
import { iec60898 } from "../../src/trip/iec60898";
import { iec60947Typical } from "../../src/trip/iec60947";
import { ratingLists } from "../../src/trip/standard-rating";
import { ul489 } from "../../src/trip/ul489";

const [nec, iec] = ratingLists;
const start = { current: 40, seconds: 0.3, running: 8 };
const ratings = (
  letter: "B" | "C" | "D",
  change: Partial<typeof start> = {},
  list: (typeof ratingLists)[number] = iec,
) => ratingsTried(iec60898[letter], { ...start, ...change }, list).map(({ rating }) => rating);

describe("which part of the start decides", () => {
  test("the worst first peak: twice the start current must lie below the magnetic band", () => {
    // 5 × 16 A = 80 A = 2 × 40 A; of the NEC list 5 × 15 A = 75 A is below it, 5 × 20 A is not
    expect(ratings("C")).toEqual([6, 8, 10, 13, 16]);
    expect(ratings("C", {}, nec)).toEqual([15, 20]);
    // 3 × 25 A = 75 A, 3 × 32 A = 96 A
    expect(ratings("B").at(-1)).toBe(32);
  });

  test("the strip: a long start takes a larger rating", () => {
    // quickest strip (p = 1.45, τ = 1 s ÷ ln(6.5025 ÷ 4.4) = 2.5602 s): 0.2249 s at 5 × (8 A), 0.3607 s at 4 × (10 A)
    expect(ratings("D").at(-1)).toBe(10);
    // at 2 × (20 A) the quickest has p = 1.13, τ = 4.574 s: 4.574 s × ln(4 ÷ 2.7231) = 1.759 s; at 2.5 × (16 A) about 1 s
    expect(ratings("D", { seconds: 1.5 }).at(-1)).toBe(20);
  });

  test("the running current: 1.13 × the rating must carry it", () => {
    // 1.13 × 16 A = 18.08 A, below 18.5 A
    expect(ratings("C", { running: 18.5 }).at(-1)).toBe(20);
  });
});

test("no smaller rating of the list rides through, and more start current never takes a smaller one", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("B", "C", "D"),
      fc.double({ min: 1, max: 150, noNaN: true }),
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      (letter, current, seconds) => {
        const asking = { current, seconds, running: current / 6 };
        const found = ratingsTried(iec60898[letter], asking, iec).at(-1)?.rating ?? 0;
        for (const rating of iec.ratings) {
          const { verdict } = startMargin(asked(rating, iec60898[letter], {}), asking);
          if (rating <= found) expect(verdict === "rides through").toBe(rating === found);
        }
        const more = ratingsTried(iec60898[letter], { ...asking, current: current * 1.2 }, iec);
        expect(more.at(-1)?.rating).toBeGreaterThanOrEqual(found);
      },
    ),
    { numRuns: 60 },
  );
});

test("a magnetic band that hangs on a setting tells no rating", () => {
  for (const characteristic of [ul489, iec60947Typical])
    expect(() => ratingsTried(characteristic, start, nec)).toThrow(
      new NoAnswer(
        `characteristic: the magnetic band of "${characteristic.name}" hangs on a marked setting, so no rating is sure to ride through; ask INRUSH.MARGIN for one rating with its setting.`,
      ),
    );
});

test("where none rides through the largest says how far it falls short: 5 × 125 A ÷ (2 × 400 A) = 0.7813", () => {
  expect(() => ratingsTried(iec60898.C, { ...start, current: 400 }, iec)).toThrow(
    new NoAnswer(
      'start current: no rating of IEC 60898-1 up to 125 A with "C" is sure to ride through 400 A for 0.3 s; at 125 A its peak margin is 0.7813.',
    ),
  );
});
