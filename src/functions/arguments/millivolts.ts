import { say } from "../../metrology/say";

/** V: 3 W at 0.3 A, the most that IEC 60898-1 allows the smallest rating made, is a drop of 10 V. */
const hardlyADrop = 10;

/** Millivolts typed for volts. */
export const millivoltsCaution = (drop: number): readonly string[] =>
  drop > hardlyADrop
    ? [
        `${say(drop, "V")} is no drop of a pole; were millivolts meant? ${say(drop, "")} mV is ${say(drop / 1000, "V")}.`,
      ]
    : [];
