import type { Argument, Range } from "../../../definition/cells";
import type { AnyDefinition } from "../../../definition/define";
import { sheetOf } from "../address";
import type { Port, Selection } from "../port";
import { agrees, type OwnCall, type Written } from "./formula";
import { type Place, placeOf } from "./place";

/** Where an argument came from, as a person is told. */
export interface Origin {
  readonly written: Written;
  /** Present when the value is known neither from memory nor from the formula: why. */
  readonly unknown?: string;
}

/** A call with the values it was given. */
export interface ResolvedCall extends Place {
  readonly definition: AnyDefinition;
  readonly text: string;
  readonly args: readonly Argument[];
  /** By place in the formula. */
  readonly origins: readonly Origin[];
}

const calculation = "a calculation: put it in a cell of its own to see it";

/**
 * The values of a call's arguments: as the road remembers them from the last time the cell was calculated, else from the
 * references and literals of the formula. `isOnly`: the function stands once in the formula, so what is remembered is this call.
 */
export const resolve = async (
  { definition, text, isWhole, written }: OwnCall,
  selection: Selection,
  port: Port,
  isOnly: boolean,
): Promise<ResolvedCall> => {
  const home = selection.spill?.anchor ?? selection.address;
  const remembered = isOnly ? port.lastCallAt(home, definition) : undefined;
  const found =
    remembered && agrees(written, remembered.args)
      ? written.map((written, place) => ({ written, value: remembered.args[place] }))
      : await Promise.all(written.map((argument) => look(argument, sheetOf(home), port)));
  const args = found.map(({ value }) => value);
  return { definition, text, args, origins: found, ...placeOf(selection, isWhole, definition, args) };
};

const look = async (written: Written, sheet: string, port: Port): Promise<Origin & { value: Argument }> => {
  if (written.as === "typed") return { written, value: written.value };
  if (written.as === "left out") return { written, value: undefined };
  if (written.as === "calculation") return { written, value: undefined, unknown: calculation };
  try {
    return { written, value: oneCell(await port.valuesAt(written.text, sheet)) };
  } catch {
    return { written, value: undefined, unknown: calculation };
  }
};

/** A reference to one cell is handed to a function as that cell. */
export const oneCell = (range: Range): Argument => (range.length === 1 && range[0]?.length === 1 ? range[0][0] : range);
