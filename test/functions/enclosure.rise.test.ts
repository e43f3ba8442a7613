import { call } from "../../src/definition/call";
import type { Argument } from "../../src/definition/cells";
import { explained } from "../../src/definition/explained";
import area from "../../src/functions/enclosure.area";
import dissipates from "../../src/functions/enclosure.dissipates";
import diversity from "../../src/functions/enclosure.diversity";
import rise from "../../src/functions/enclosure.rise";

const told = (definition: Parameters<typeof call>[0], ...args: Argument[]) => {
  const cell = call(definition, args)[0]?.[0];
  return cell instanceof Error ? `${cell.name}: ${cell.message}` : cell;
};
const omitted = undefined;

describe("ENCLOSURE.RISE", () => {
  test("a column of heats is answered row by row", () => {
    const rows = call(rise, [[[24.09], [240.9], ["warm"]], 2, 0.6, 0.5, "free", "flat"]);
    expect(rows[0]?.[0]).toBeCloseTo(1, 12);
    expect(rows[1]?.[0]).toBeCloseTo(10, 12);
    expect(rows[2]?.[0]).toHaveProperty("name", "BadInput");
  });

  test("a room typed in °F, millimetres for metres and an unknown mounting are refused with a sentence", () => {
    expect(told(rise, 40, 0.6, 0.4, 0.15, "wall", omitted, omitted, 95)).toBe(
      "BadInput: room: at most 60 °C is wanted, not 95 °C; in °C; was °F meant?",
    );
    expect(told(rise, 40, 600, 0.4, 0.15, "wall")).toBe(
      "BadInput: height: at most 10 m is wanted, not 600 m; in metres; were millimetres meant?",
    );
    expect(told(rise, 40, 0.6, 0.4, 0.15, "ceiling")).toMatch(
      /^BadInput: mounting: the text "ceiling" is not known; known are "free", /,
    );
  });

  test("partitions belong to IEC TR 60890 alone, at most three of them", () => {
    expect(told(rise, 40, 2, 0.8, 0.6, "wall", "balance", omitted, omitted, 2)).toBe(
      'BadInput: partitions: only the method "IEC TR 60890" takes them, not "balance"; leave them out.',
    );
    expect(told(rise, 40, 2, 0.8, 0.6, "wall", "IEC TR 60890", omitted, omitted, 4)).toBe(
      "BadInput: partitions: at most 3 is wanted, not 4.",
    );
    // d = 1.15 for two (from memory).
    const ratio =
      Number(told(rise, 40, 2, 0.8, 0.6, "wall", "IEC TR 60890", omitted, omitted, 2)) /
      Number(told(rise, 40, 2, 0.8, 0.6, "wall", "IEC TR 60890"));
    expect(ratio).toBeCloseTo(1.15, 12);
  });

  test("every answer by IEC TR 60890 says to check against the standard, every flat one that it is optimistic", () => {
    expect(explained(rise, [300, 2.2, 1, 0.5, "wall", "IEC TR 60890"]).cautions.join(" ")).toContain(
      "check against the standard",
    );
    expect(explained(rise, [300, 2.2, 1, 0.5, "wall", "flat"]).cautions.join(" ")).toContain("optimistic");
    expect(explained(rise, [300, 2.2, 1, 0.5, "wall"]).cautions.join(" ")).toContain(
      "the air under the roof is hotter",
    );
  });

  test("flat gives 0.56 to 0.82 of the IEC TR 60890 rise, as its caution says", () => {
    for (const [watts, height, width, depth] of [
      [300, 2.2, 1, 0.5],
      [100, 1, 0.6, 0.3],
      [600, 2, 0.8, 0.6],
    ] as const) {
      const flat = Number(told(rise, watts, height, width, depth, "wall", "flat"));
      const tabled = Number(told(rise, watts, height, width, depth, "wall", "IEC TR 60890"));
      expect(flat / tabled).toBeGreaterThan(0.56);
      expect(flat / tabled).toBeLessThan(0.82);
    }
  });

  test("heat that no air carries away is refused with what the enclosure passes", () => {
    expect(told(rise, 4000, 0.3, 0.3, 0.2, "wall")).toMatch(
      /^NoAnswer: watts: with 4000 W the air inside would be above 160 °C, where the table of air ends; this enclosure passes \d+(\.\d)? W at that\.$/,
    );
  });
});

describe("ENCLOSURE.DISSIPATES", () => {
  test.each(["balance", "IEC TR 60890", "flat"])("undoes ENCLOSURE.RISE by the method %s", (method) => {
    for (const watts of [5, 60, 400]) {
      const warm = Number(told(rise, watts, 1.2, 0.6, 0.3, "end of row, wall", method, 0.8, 20));
      expect(Number(told(dissipates, warm, 1.2, 0.6, 0.3, "end of row, wall", method, 0.8, 20))).toBeCloseTo(watts, 7);
    }
  });

  test("refuses air beyond the table", () => {
    expect(told(dissipates, 130, 1.2, 0.6, 0.3, "wall")).toBe(
      "NoAnswer: rise: 130 K above a room of 35 °C is beyond 160 °C, where the table of air ends.",
    );
  });
});

describe("ENCLOSURE.AREA and ENCLOSURE.DIVERSITY", () => {
  test("the area's step shows each face: on a wall the back counts 0.5", () => {
    const { steps } = explained(area, [2, 0.8, 0.6, "wall"]);
    expect(steps[0]?.plain).toBe(
      "roof 0.48 m² × 1.4; front 1.6 m² × 0.9; covered back 1.6 m² × 0.5; side 1.2 m² × 0.9; side 1.2 m² × 0.9; covered floor 0.48 m² × 0",
    );
  });

  test("one circuit has no diversity, and half a circuit is none", () => {
    expect(told(diversity, 1)).toBe(
      "NoAnswer: circuits: the table of IEC 61439-2 begins at 2; one circuit alone has no diversity, count its full current.",
    );
    expect(told(diversity, 2.5)).toBe("BadInput: circuits: a whole number is wanted, not 2.5.");
  });

  test("a factor from a table recalled is marked as such", () => {
    expect(explained(diversity, [5, "IEC 61439-3"]).cautions[0]).toContain("from memory");
    expect(explained(diversity, [5]).cautions[0]).not.toContain("from memory");
  });
});
