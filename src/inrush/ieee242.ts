import type { Source } from "../metrology/source";

// IEEE Std 242, protection and coordination of power systems, chapter 15: what a transformer draws when switched on,
// as multiples of its full-load current and the time they are taken to last.

/** A point of the usual inrush curve. */
export interface InrushPoint {
  readonly multiple: number;
  readonly seconds: number;
  readonly source: Source;
}

const guard = "test/inrush/transformer.test.ts";

/** A point with the source that prints it. */
const point = (
  multiple: number,
  seconds: number,
  { place, standing }: Pick<Source, "place" | "standing">,
): InrushPoint => ({
  multiple,
  seconds,
  source: {
    document: "IEEE Std 242",
    edition: "2001",
    place: `${place} (${multiple} × at ${seconds} s)`,
    standing,
    tables: [
      {
        title: `Transformer inrush at ${seconds} s`,
        columns: [
          ["of the full-load current", "×"],
          ["for", "s"],
        ],
        rows: [[multiple, seconds]],
        guard,
      },
    ],
  },
});

/** 8 to 12 is what is met; 12 is what is planned with. */
export const tenthSecond = point(12, 0.1, { place: "chapter 15, p. 615", standing: "corroborated" });

export const hundredthSecond = point(25, 0.01, { place: "chapter 15", standing: "from memory" });
