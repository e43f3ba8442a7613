import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { optional, quantity, word } from "../../definition/parameter";
import { type Cabinet, mountings } from "../../enclosure/cabinet";
import { type Cooling, type Method, methods } from "../../enclosure/rise";
import { usualEmissivity, usualRoom } from "../../enclosure/usual";

export const lossAtRating = quantity(
  "W",
  "heat of one pole at the rated current, warm and settled",
  z.number().check(z.positive(), z.maximum(1e5)),
  { ifBlank: "the loss at the rating is blank." },
);

export const rating = quantity("A", "rated current of the way", z.number().check(z.minimum(0.01), z.maximum(1e5)), {
  ifBlank: "the rating is blank.",
});

export const load = quantity(
  "A",
  "current the way carries, the same in every pole; 0 or blank is a way that is off",
  z.number().check(z.nonnegative(), z.maximum(1e5)),
);

export const poles = quantity(
  "",
  "number of poles of the way that carry the load",
  z.int("a whole number").check(z.minimum(1)),
);

export const diversity = quantity(
  "",
  "rated diversity factor, a factor on the current of every circuit; measured loads take none",
  z.number().check(z.minimum(0.01), z.maximum(1)),
  { hint: "a factor above 1 is the other convention, where the sum is divided by it: type its reciprocal" },
);

export const otherWatts = quantity(
  "W",
  "heat of everything else inside: wiring, supplies, lamps, contactors",
  z.number().check(z.nonnegative()),
);

const outside = (meaning: string) =>
  quantity("m", `outside ${meaning} of the enclosure`, z.number().check(z.minimum(0.01), z.maximum(10)), {
    hint: "in metres; were millimetres meant?",
  });

export const height = outside("height");
export const width = outside("width");
export const depth = outside("depth");

export const mounting = word(
  "how the enclosure stands: alone (free, wall) or in a row of its like; away from the wall or on it",
  mountings,
);

export const method = optional(
  word(
    "how the rise is worked out: by a heat balance, by the tables of IEC TR 60890, or by the flat hand estimate",
    methods,
  ),
  "balance",
);

export const emissivity = optional(
  quantity(
    "",
    "emissivity of all surfaces, for the balance: paint 0.9, bare zinc or stainless steel far less",
    z.number().check(z.positive(), z.maximum(1)),
  ),
  `${usualEmissivity}, painted`,
);

export const airTemperature = (meaning: string) =>
  quantity("°C", meaning, z.number().check(z.minimum(-40), z.maximum(60)), { hint: "in °C; was °F meant?" });

export const room = optional(airTemperature("air of the room around the enclosure"), `${usualRoom} °C`);

export const partitions = optional(
  quantity(
    "",
    "level partitions inside, 0 to 3, for IEC TR 60890",
    z.int("a whole number").check(z.minimum(0), z.maximum(3)),
  ),
  "none",
);

/** What RISE and DISSIPATES are told of an enclosure. */
export interface GivenEnclosure extends Cabinet {
  readonly method?: Method;
  readonly emissivity?: number;
  readonly room?: number;
  readonly partitions?: number;
}

/** The enclosure with everything that was left out put in. */
export const coolingOf = ({
  height,
  width,
  depth,
  mounting,
  method = "balance",
  emissivity = usualEmissivity,
  room = usualRoom,
  partitions = 0,
}: GivenEnclosure): Cooling => {
  if (partitions > 0 && method !== "IEC TR 60890")
    throw new BadInput(`partitions: only the method "IEC TR 60890" takes them, not "${method}"; leave them out.`);
  return { cabinet: { height, width, depth, mounting }, method, emissivity, room, partitions };
};
