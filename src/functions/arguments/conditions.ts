import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { blankMeans, optional, quantity } from "../../definition/parameter";
import { sayNumber } from "../../metrology/say";
import { usualTripRise } from "../../trip/ambient";
import { type Asked, asked } from "../../trip/asked";
import type { Characteristic } from "../../trip/characteristic";
import type { Conditions } from "../../trip/conditions";
import type { OwnBand } from "../../trip/own-band";

export const rating = quantity(
  "A",
  "the breaker's rated current; of an adjustable thermal release its setting Ir; 1 when the current is given as a multiple",
);

/** The conditions of a test, last and in this order on every function that asks about tripping. */
export const conditions = {
  preload: optional(
    blankMeans(quantity("A", "the current carried steadily for long before", z.number().check(z.nonnegative())), 0),
    "cold",
  ),
  ambient: optional(
    quantity("°C", "the air around the breaker", z.number().check(z.minimum(-40), z.maximum(60)), {
      hint: "in °C; was °F meant?",
      ifBlank: "no air temperature: type it in each row, or leave the argument out for all of them.",
    }),
    "each printed point at its own temperature",
  ),
  setting: optional(
    blankMeans(quantity("A", "the marked instantaneous setting of the magnetic release, in amperes"), undefined),
    "the printed magnetic band of B, C and D; otherwise not known",
  ),
  tripRise: optional(
    quantity(
      "K",
      "how far the strip's trip lies above the calibration temperature",
      z.number().check(z.minimum(20), z.maximum(200)),
    ),
    `${usualTripRise} K (common practice, no source)`,
  ),
} as const;

/** A breaker and its conditions as a row gives them. */
interface BreakerInputs extends Conditions {
  readonly rating: number;
  readonly characteristic: Characteristic | OwnBand;
}

/** In a column most rows ask about the same breaker: the last one is kept. */
let last: { readonly inputs: BreakerInputs; readonly asked: Asked } | undefined;

const same = (a: BreakerInputs, b: BreakerInputs): boolean =>
  a.rating === b.rating &&
  a.characteristic === b.characteristic &&
  a.preload === b.preload &&
  a.ambient === b.ambient &&
  a.setting === b.setting &&
  a.tripRise === b.tripRise;

/** The breaker of a row, other inputs beside it being left alone. Refuses a setting beside a characteristic that has its band printed. */
export const askedOf = (inputs: BreakerInputs): Asked => {
  if (last && same(last.inputs, inputs)) return last.asked;
  const { rating, characteristic, preload, ambient, setting, tripRise } = inputs;
  if (!("rows" in characteristic) && setting !== undefined && !characteristic.takesSetting)
    throw new BadInput(
      `setting: "${characteristic.name}" has its magnetic band printed (${characteristic.magneticInWords}); leave the setting of ${sayNumber(setting)} A out.`,
    );
  const made = asked(rating, characteristic, { preload, ambient, setting, tripRise });
  last = { inputs: { rating, characteristic, preload, ambient, setting, tripRise }, asked: made };
  return made;
};
