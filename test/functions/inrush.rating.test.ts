import { call } from "../../src/definition/call";
import type { Argument } from "../../src/definition/cells";
import { explained } from "../../src/definition/explained";
import inrushRating from "../../src/functions/inrush.rating";

const answers = (...args: Argument[]) =>
  call(inrushRating, args).map((row) => row.map((cell) => (cell instanceof Error ? cell.message : cell)));

test("a column of starts: blank rows stay blank, a start that no rating rides through is refused in its row", () => {
  expect(answers([[40], [null], [400]], 0.3, 8, "C")).toEqual([
    [16],
    [""],
    [
      'start current: no rating of IEC 60898-1 up to 125 A with "C" is sure to ride through 400 A for 0.3 s; at 125 A its peak margin is 0.7813.',
    ],
  ]);
});

test("above the code's ceiling there is no answer, and the sentence tells the ceiling and the exception", () => {
  // 250 % of 5 A is 12.5 A, next standard rating 15 A; the exception 400 % is 20 A
  expect(answers(40, 0.3, 8, "C", "IEC 60898-1", 5)).toEqual([
    [
      "full load: the smallest rating that is sure to ride through is 16 A, above the code's ceiling of 15 A (250 % of 5 A is 12.5 A); only if the motor will not start on that, up to 20 A is allowed (430.52(C)(1)).",
    ],
  ]);
  expect(answers(40, 0.3, 8, "C", "IEC 60898-1", 8)).toEqual([[16]]);
});

test.each<[string, Argument, string]>([
  [
    "a characteristic without a printed magnetic band",
    "UL 489",
    'characteristic: the magnetic band of "UL 489" hangs on a marked setting, so no rating is sure to ride through; ask INRUSH.MARGIN for one rating with its setting.',
  ],
  [
    "an own band",
    [
      [1.2, 10, 100],
      [6, 1, 2],
    ],
    "characteristic: an own band tells no magnetic band, so no rating is sure to ride through; ask INRUSH.MARGIN for one rating.",
  ],
])("refuses %s", (_, characteristic, sentence) => {
  expect(answers(40, 0.3, 8, characteristic)).toEqual([[sentence]]);
});

test("tells why the smaller ratings will not do", () => {
  const { steps, cautions } = explained(inrushRating, [40, 0.3, 8, "C"]);
  expect(steps.map(({ sentence, plain }) => `${sentence}: ${plain}`)).toEqual([
    // lower magnetic current ÷ (2 × 40 A): 30, 40, 50, 65, 80 A
    "6 A: may trip: its peak margin is 0.375",
    "8 A: may trip: its peak margin is 0.5",
    "10 A: may trip: its peak margin is 0.625",
    "13 A: may trip: its peak margin is 0.8125",
    "16 A: rides through: its peak margin is 1",
  ]);
  expect(cautions.join(" ")).toMatch(/Riding through is not permission/);
});
