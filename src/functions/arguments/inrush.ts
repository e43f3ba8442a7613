import * as z from "zod/mini";
import { BadInput } from "../../definition/bad-input";
import { sayCell } from "../../definition/cells";
import { type Parameter, quantity, word } from "../../definition/parameter";
import type { Phases } from "../../inrush/line-current";
import { type CodeLetter, ceilingPercent, codeLetters, type MotorType } from "../../inrush/nfpa70";

export const horsepower = quantity("hp", "rated power of the motor");

export const volts = quantity("V", "voltage of the supply, between the lines where there are three phases");

export const phases: Parameter<Phases> = {
  spread: "row",
  schema: z.union([z.literal(1), z.literal(3)]),
  unit: "",
  meaning: "number of phases, 1 or 3",
  read: (cell, name) => {
    if (cell === 1 || cell === 3) return cell;
    if (cell === null || cell === "") throw new BadInput(`${name} is blank.`);
    throw new BadInput(`${name}: 1 or 3 is wanted, not ${sayCell(cell)}.`);
  },
};

/** A motor's start as a breaker meets it. */
export const start = {
  startCurrent: quantity("A", "the current while the motor starts, r.m.s., measured or from its locked-rotor table"),
  startTime: quantity("s", "how long the start lasts"),
  runningCurrent: quantity("A", "the current once it runs, r.m.s."),
} as const;

export const codeLetter = word(
  "the locked-rotor code letter on the motor's nameplate",
  Object.keys(codeLetters) as [CodeLetter, ...CodeLetter[]],
);

export const motorType = word(
  "the kind of motor; the wound rotor and d.c. motors have a lower ceiling",
  Object.keys(ceilingPercent) as [MotorType, ...MotorType[]],
);
