import { lineCurrent, type Phases } from "./line-current";
import { type CodeLetter, codeLetters } from "./nfpa70";

/** A motor whose rotor stands still: power in hp, V between the lines, the code letter on its nameplate. */
interface LockedMotor {
  readonly power: number;
  readonly volts: number;
  readonly phases: Phases;
  readonly letter: CodeLetter;
}

/** A, r.m.s., between which the letter of NFPA 70 table 430.7(B) puts the locked-rotor current; V has no upper end (Infinity). */
export const lockedRotor = ({ power, letter, ...supply }: LockedMotor): { low: number; high: number } => {
  const [low, high] = codeLetters[letter];
  return {
    low: lineCurrent({ kilovoltAmperes: power * low, ...supply }),
    high: lineCurrent({ kilovoltAmperes: power * high, ...supply }),
  };
};
