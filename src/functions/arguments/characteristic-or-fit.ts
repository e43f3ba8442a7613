import type { Parameter } from "../../definition/parameter";
import type { Fitted } from "../../thermal/fitted";
import type { Characteristic } from "../../trip/characteristic";
import type { OwnBand } from "../../trip/own-band";
import { characteristic } from "./characteristic";
import { isFitBlock, readFit } from "./fit-block";

/** A characteristic as anywhere, or, told by its first label, the block of THERMAL.FIT: one breaker for all rows. */
export const characteristicOrFit: Parameter<Characteristic | OwnBand | Fitted> = {
  ...characteristic,
  meaning: `${characteristic.meaning}; or the whole block of THERMAL.FIT, one breaker's own strip`,
  readBlock: (range, name) => (isFitBlock(range) ? readFit(range, name) : characteristic.readBlock?.(range, name)),
};

export const isFitted = (kind: Characteristic | OwnBand | Fitted): kind is Fitted => "profile" in kind;
