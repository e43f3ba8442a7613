import { z } from "zod";
import { quantity } from "../../definition/parameter";

export const lossAtRating = quantity(
  "W",
  "heat of one pole at the rated current, warm and settled",
  z.number().positive(),
  {
    ifBlank: "the loss at the rating is blank.",
  },
);

export const rating = quantity("A", "rated current of the way", z.number().positive(), {
  ifBlank: "the rating is blank.",
});

export const load = quantity(
  "A",
  "current the way carries, the same in every pole; 0 or blank is a way that is off",
  z.number().nonnegative(),
);

export const poles = quantity("", "number of poles of the way that carry the load", z.int("a whole number").min(1));

export const diversity = quantity(
  "",
  "rated diversity factor, a factor on the current of every circuit; measured loads take none",
  z.number().positive().max(1),
  { hint: "a factor above 1 is the other convention, where the sum is divided by it: type its reciprocal" },
);

export const otherWatts = quantity(
  "W",
  "heat of everything else inside: wiring, supplies, lamps, contactors",
  z.number().nonnegative(),
);
