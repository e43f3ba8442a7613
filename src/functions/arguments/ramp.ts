import * as z from "zod/mini";
import { quantity } from "../../definition/parameter";
import type { Source } from "../../metrology/source";

export const rampRate = quantity(
  "A/s",
  "how fast the current is turned up",
  z.number().check(z.minimum(1e-6), z.maximum(1e6)),
);

export const rampStart = "the current at which the ramp begins, stepped to at time zero";

export const rampLaw: Source = {
  document: "τ·dθ/dt = i² − θ solved for a current i = I₀ + r·t",
  standing: "derived",
};
