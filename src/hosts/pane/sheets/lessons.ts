import { dropAndWatts } from "./lessons/drop-and-watts";
import { holdAndTrip } from "./lessons/hold-and-trip";
import { hotAndCold } from "./lessons/hot-and-cold";
import { howSure } from "./lessons/how-sure";
import { motorStart } from "./lessons/motor-start";
import { slowRamp } from "./lessons/slow-ramp";
import { twoMechanisms } from "./lessons/two-mechanisms";
import { warmPanel } from "./lessons/warm-panel";
import type { ReadySheet } from "./ready-sheet";

/** The eight lessons in the order in which they are easiest. */
export const lessons: readonly ReadySheet[] = [
  twoMechanisms,
  holdAndTrip,
  slowRamp,
  hotAndCold,
  dropAndWatts,
  motorStart,
  warmPanel,
  howSure,
];
