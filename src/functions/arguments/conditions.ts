import { z } from "zod";
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
    blankMeans(quantity("A", "the current carried steadily for long before", z.number().nonnegative()), 0),
    "cold",
  ),
  ambient: optional(
    quantity("°C", "the air around the breaker", z.number().min(-40).max(60), { hint: "in °C; was °F meant?" }),
    "each printed point at its own temperature",
  ),
  setting: optional(
    blankMeans(quantity("A", "the marked instantaneous setting of the magnetic release, in amperes"), undefined),
    "the printed magnetic band of B, C and D; otherwise not known",
  ),
  tripRise: optional(
    quantity("K", "how far the strip's trip lies above the calibration temperature", z.number().min(20).max(200)),
    `${usualTripRise} K (common practice, no source)`,
  ),
} as const;

/** A breaker in its conditions. Refuses a setting beside a characteristic that has its band printed. */
export const askedOf = ({
  rating,
  characteristic,
  ...around
}: { rating: number; characteristic: Characteristic | OwnBand } & Conditions): Asked => {
  if (!("rows" in characteristic) && around.setting !== undefined && !characteristic.takesSetting)
    throw new BadInput(
      `setting: "${characteristic.name}" has its magnetic band printed (${characteristic.magneticInWords}); leave the setting of ${sayNumber(around.setting)} A out.`,
    );
  const { preload, ambient, setting, tripRise } = around;
  return asked(rating, characteristic, { preload, ambient, setting, tripRise });
};
