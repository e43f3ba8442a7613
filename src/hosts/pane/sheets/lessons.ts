import { dropAndWatts } from "./lessons/drop-and-watts";
import { holdAndTrip } from "./lessons/hold-and-trip";
import { hotAndCold } from "./lessons/hot-and-cold";
import { howSure } from "./lessons/how-sure";
import { motorStart } from "./lessons/motor-start";
import { slowRamp } from "./lessons/slow-ramp";
import { twoMechanisms } from "./lessons/two-mechanisms";
import { warmPanel } from "./lessons/warm-panel";
import type { Shelved } from "./ready-sheet";

/** The eight lessons in the order in which they are easiest. */
export const lessons: readonly Shelved[] = [
  { sheet: twoMechanisms, purpose: "Why one current takes seconds and another trips at once." },
  { sheet: holdAndTrip, purpose: "What a standard can ask of a breaker, and from which start." },
  { sheet: slowRamp, purpose: "Why turning the current up by hand measures the hand." },
  { sheet: hotAndCold, purpose: "Why the same breaker is quicker in the afternoon, and the second time." },
  { sheet: dropAndWatts, purpose: "What a millivoltmeter tells of a closed contact." },
  { sheet: motorStart, purpose: "Why a sound breaker trips now and then when a motor starts." },
  { sheet: warmPanel, purpose: "How warm it gets behind a closed door, and what that takes away." },
  { sheet: howSure, purpose: "Whether a reading just inside a limit has passed." },
];
