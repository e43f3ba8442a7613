import { call } from "../../src/definition/call";
import type { Argument } from "../../src/definition/cells";
import type { AnyDefinition } from "../../src/definition/define";
import { explained } from "../../src/definition/explained";
import contactLimit from "../../src/functions/contact.limit";
import contactOhms from "../../src/functions/contact.ohms";
import contactShare from "../../src/functions/contact.share";
import contactSpread from "../../src/functions/contact.spread";
import contactTerminal from "../../src/functions/contact.terminal";
import contactWatts from "../../src/functions/contact.watts";

/** Rows of answers, a refusal as its sentence. */
const answers = (definition: AnyDefinition, ...args: Argument[]) =>
  call(definition, args).map((row) => row.map((cell) => (cell instanceof Error ? cell.message : cell)));

describe("a drop that was not measured never becomes an answer", () => {
  test.each([
    ["CONTACT.WATTS", contactWatts, [20]],
    ["CONTACT.OHMS", contactOhms, [20]],
  ] as const)("%s refuses a blank drop on every host", (_, definition, [current]) => {
    expect(answers(definition, current, null)).toEqual([["drop is blank."]]);
    expect(answers(definition, current, 0)).toEqual([
      ["drop: more than 0 V is wanted, not 0 V (a blank cell counts as 0)."],
    ]);
  });

  test("a blank row stays blank, a half-filled one is refused in its place", () => {
    expect(answers(contactWatts, [[20], [0], [null], [20]], [[0.16], [0], [null], [null]])).toEqual([
      [3.2],
      [""],
      [""],
      ["drop is blank."],
    ]);
  });

  test("CONTACT.SHARE gives no finding without a drop", () => {
    expect(answers(contactShare, [[20], [20]], [[0.16], [0]], 20)[1]).toEqual(
      Array(3).fill("drop: more than 0 V is wanted, not 0 V (a blank cell counts as 0)."),
    );
  });
});

describe("CONTACT.LIMIT", () => {
  test("names the end of the document", () => {
    expect(answers(contactLimit, 160)).toEqual([
      Array(2).fill("rating: IEC 60898-1 ends at 125 A, so it has no power-loss limit for 160 A."),
    ]);
  });
  test("answers a column of ratings", () => {
    expect(answers(contactLimit, [[6], [63]])).toEqual([
      [3, 0.5],
      [13, 13 / 63],
    ]);
  });
});

describe("CONTACT.SPREAD", () => {
  test("a blank pole keeps its place, on hosts that hand it over as 0 too", () => {
    const expected = [
      [1, "lowest"],
      ["", ""],
      [1.6, "investigate"],
    ];
    expect(answers(contactSpread, [[50], [null], [80]])).toEqual(expected);
    expect(answers(contactSpread, [[50], [0], [80]])).toEqual(expected);
  });

  test.each<[string, Argument, string]>([
    ["one pole alone", [[50], [null]], "ohms: at least two poles are wanted, since they are compared with each other."],
    ["one cell", 50, "ohms: a range with the breaker's poles is wanted, not one cell."],
    ["a negative reading", [[50], [-60]], "ohms, pole 2: more than 0 Ω is wanted, not -60 Ω."],
    [
      "text",
      [[50], ["60"]],
      'ohms, pole 2: a number in Ω is wanted, not the text "60", which only looks like a number: type it again as one.',
    ],
    [
      "two breakers at once",
      [
        [50, 60],
        [50, 60],
      ],
      "ohms: the poles of one breaker are wanted, one column or one row.",
    ],
  ])("refuses %s", (_, range, sentence) => {
    expect(answers(contactSpread, range)).toEqual([[sentence, sentence]]);
  });
});

describe("CONTACT.TERMINAL", () => {
  test("the rises of IEC 60898-1 and IEC 60947-2 differ by 20 K", () => {
    expect(answers(contactTerminal, 100, 25)).toEqual([[75, 60, "above the limit"]]);
    expect(answers(contactTerminal, 100, 25, "iec 60947-2")).toEqual([[75, 80, "within the limit"]]);
  });

  test("a temperature in °F, an exchanged pair and a blank room are refused", () => {
    const first = (...args: Argument[]) => answers(contactTerminal, ...args)[0]?.[0];
    expect(first(80, 77)).toBe("room: at most 60 °C is wanted, not 77 °C; in °C; was °F meant?");
    expect(first(25, 48)).toBe(
      "temperature: the terminal at 25 °C is colder than the room at 48 °C; are the two exchanged?",
    );
    expect(first(70, 0)).toBe(
      "room: 0 °C is also what a blank cell counts as; type the room's temperature, 0.1 for freezing.",
    );
    expect(first(70, null)).toBe("room is blank.");
    expect(first(70, 25, "UL")).toBe(
      'standard: the text "UL" is not known; known are "IEC 60898-1", "IEC 60947-2", "UL 489", "UL 489 100 %".',
    );
  });
});

test.each([
  ["CONTACT.WATTS", contactWatts, [20, 160]],
  ["CONTACT.OHMS", contactOhms, [20, 160]],
  ["CONTACT.SHARE", contactShare, [20, 160, 20]],
] as const)("%s asks after millivolts typed for volts, and only then", (_, definition, args) => {
  expect(explained(definition, args).cautions[0]).toBe(
    "160 V is no drop of a pole; were millivolts meant? 160 mV is 0.16 V.",
  );
  const usual = args.map((value, place) => (place === 1 ? 0.16 : value));
  expect(explained(definition, usual).cautions.join(" ")).not.toMatch(/millivolts meant/);
});
