import type { Unit } from "../metrology/say";

/** What a picture shows, as data; the pane draws it. Quantities are in the axes' units. */
export interface Plot {
  readonly title: string;
  /** The picture in a sentence, for those who do not see it. */
  readonly sentence: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly bands?: readonly Band[];
  readonly lines?: readonly Line[];
  readonly points?: readonly Point[];
}

export interface Axis {
  readonly quantity: string;
  readonly unit: Unit;
  readonly scale: "linear" | "log";
  readonly from: number;
  readonly to: number;
}

/** An area between two edges; a sample at the axis' end means that the band goes on beyond it. */
export interface Band {
  readonly name: string;
  readonly samples: readonly { readonly x: number; readonly low: number; readonly high: number }[];
}

export interface Line {
  readonly name: string;
  /** `limit`: a line not to be crossed; `course`: something that happens along it. */
  readonly role: "limit" | "course";
  readonly samples: readonly { readonly x: number; readonly y: number }[];
}

export interface Point {
  readonly name: string;
  /** `asked`: what the formula asks about; `tripped`, `held`: trials. */
  readonly role: "asked" | "tripped" | "held";
  readonly x: number;
  readonly y: number;
}
