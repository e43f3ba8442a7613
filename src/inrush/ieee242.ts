import type { Source } from "../metrology/source";

// IEEE Std 242, protection and coordination of power systems, chapter 15: what a transformer draws when switched on,
// as multiples of its full-load current and the time they are taken to last.

/** A point of the usual inrush curve. */
export interface InrushPoint {
  readonly multiple: number;
  readonly seconds: number;
  readonly source: Source;
}

/** 8 to 12 is what is met; 12 is what is planned with. */
export const tenthSecond: InrushPoint = {
  multiple: 12,
  seconds: 0.1,
  source: {
    document: "IEEE Std 242",
    edition: "2001",
    place: "chapter 15, p. 615 (12 × at 0.1 s)",
    standing: "corroborated",
  },
};

export const hundredthSecond: InrushPoint = {
  multiple: 25,
  seconds: 0.01,
  source: { document: "IEEE Std 242", edition: "2001", place: "chapter 15 (25 × at 0.01 s)", standing: "from memory" },
};
