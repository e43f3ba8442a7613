import * as z from "zod/mini";
import type { PoleOhms } from "../../contact/spread";
import { BadInput } from "../../definition/bad-input";
import { type Cell, CellError, type Range } from "../../definition/cells";
import { type Parameter, quantity } from "../../definition/parameter";

// A current or a drop of exactly 0 is not measured: it is a blank cell, which must not become 0 W or "within the limit".

export const poleCurrent = quantity("A", "the current through the pole, r.m.s.");

export const poleDrop = quantity(
  "V",
  "the voltage drop across the pole, line to load terminal, in volts (160 mV is 0.16)",
);

export const rating = quantity("A", "the breaker's rated current");

export const terminalTemperature = quantity(
  "°C",
  "temperature of the terminal at the rating, settled",
  z.number().check(z.minimum(-40), z.maximum(400)),
);

export const roomTemperature = quantity(
  "°C",
  "temperature of the air around the breaker, out of reach of its warmth",
  z.number().check(z.minimum(-40), z.maximum(60)),
  { hint: "in °C; was °F meant?" },
);

const poleResistance = quantity("Ω", "the resistance of one pole");

/** A blank cell (0 on some hosts) is a pole that was not measured. */
const readPole = (cell: Cell, at: number): number | undefined =>
  cell === null || cell === "" || cell === 0
    ? undefined
    : (poleResistance.read(cell, `ohms, pole ${at + 1}`) as number);

/** The poles of one breaker, taken together: one column or one row. */
export const poles: Parameter<PoleOhms> = {
  spread: "whole",
  schema: z.array(z.number().check(z.positive())).check(z.minLength(2)),
  unit: "Ω",
  meaning: "the resistances of the breaker's poles as one range, measured at the same current; drops do as well",
  read: (cell) => {
    if (cell instanceof CellError) throw new BadInput(`ohms: the cell holds ${cell.code}; mend that cell first.`);
    throw new BadInput("ohms: a range with the breaker's poles is wanted, not one cell.");
  },
  readBlock: (range: Range) => {
    if (range.length > 1 && (range[0]?.length ?? 0) > 1)
      throw new BadInput("ohms: the poles of one breaker are wanted, one column or one row.");
    const poles = range.flat().map(readPole);
    if (poles.filter((ohms) => ohms !== undefined).length < 2)
      throw new BadInput("ohms: at least two poles are wanted, since they are compared with each other.");
    return poles;
  },
};
