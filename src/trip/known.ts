import type { Characteristic } from "./characteristic";
import { iec60898 } from "./iec60898";
import { iec60947, iec60947Typical } from "./iec60947";
import { ul489, ul489Typical } from "./ul489";

/** The characteristics a sheet may ask for by name. */
export const knownCharacteristics: readonly Characteristic[] = [
  iec60898.B,
  iec60898.C,
  iec60898.D,
  iec60947,
  iec60947Typical,
  ul489,
  ul489Typical,
];
