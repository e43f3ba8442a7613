import type { Argument, Range } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import { sheetOf } from "../address";
import type { Port, Selection } from "../port";
import type { OwnCall, Written } from "./formula";
import { type Place, placeOf } from "./place";
import { sameCells } from "./same-cells";

/** Where an argument came from, as a person is told. */
interface Origin {
  readonly written: Written;
  /** Present when the value is known neither from memory nor from the formula: why. */
  readonly unknown?: string;
}

/** A call with the values it was given. */
export interface ResolvedCall extends Place {
  readonly definition: AnyDefinition;
  readonly text: string;
  readonly isWhole: boolean;
  readonly args: readonly Argument[];
  /** By place in the formula. */
  readonly origins: readonly Origin[];
}

const calculation = "a calculation: put it in a cell of its own to see it";

/**
 * The values of a call's arguments: from the references and literals of the formula, and what it works out on the way as the road
 * remembers it from the last time the cell was calculated. `isOnly`: the function stands once in the formula, so what is remembered
 * is this call. What is remembered counts only while it is what the formula's cells hold now: a row put in above, or a sheet
 * renamed, leaves the memory of another cell behind.
 */
export const resolve = async (
  { definition, text, isWhole, written }: OwnCall,
  selection: Selection,
  port: Port,
  isOnly: boolean,
): Promise<ResolvedCall> => {
  const home = homeOf(selection);
  const looked = await Promise.all(written.map((argument) => look(argument, sheetOf(home), port)));
  const remembered = isOnly ? port.lastCallAt(home, definition) : undefined;
  const isThisCall = remembered && looked.every((found, place) => agrees(found, remembered.args[place]));
  const found = isThisCall ? looked.map((argument, place) => recalled(argument, remembered.args[place])) : looked;
  const args = found.map(({ value }) => value);
  return { definition, text, isWhole, args, origins: found, ...placeOf(selection, isWhole, definition, args) };
};

/** The cell whose formula is told: inside a spill the first. */
export const homeOf = ({ spill, address }: Selection): string => spill?.anchor ?? address;

/** The same call seen from another cell of its answer. */
export const seenFrom = (
  selection: Selection,
  { definition, text, isWhole, args, origins }: ResolvedCall,
): ResolvedCall => {
  return { definition, text, isWhole, args, origins, ...placeOf(selection, isWhole, definition, args) };
};

interface Looked extends Origin {
  readonly value: Argument;
}

const look = async (written: Written, sheet: string, port: Port): Promise<Looked> => {
  if (written.as === "typed") return { written, value: written.value };
  if (written.as === "left out") return { written, value: undefined };
  if (written.as === "calculation") return { written, value: undefined, unknown: calculation };
  try {
    return { written, value: oneCell(await port.valuesAt(written.text, sheet)) };
  } catch {
    return { written, value: undefined, unknown: calculation };
  }
};

const recalled = ({ written, value }: Looked, remembered: Argument): Looked =>
  written.as === "left out" ? { written, value } : { written, value: remembered };

/** Whether an argument as the formula has it now can be the remembered one. One that is not known now can. */
const agrees = ({ unknown, value }: Looked, remembered: Argument): boolean =>
  unknown !== undefined || sameCells(value, remembered);

/** A reference to one cell is handed to a function as that cell. */
export const oneCell = (range: Range): Argument => (range.length === 1 && range[0]?.length === 1 ? range[0][0] : range);
