import { StringValueObject } from "@univerjs/engine-formula";
import { arrayOf, eachCell, firstOf, isYes, listOf, rowsOf } from "./cells";
import { type FunctionClass, type Value, withArguments } from "./engine-function";

/** What no one looks for. */
const nothing = StringValueObject.create("\u0000");

/** 0 and FALSE are not found in blank cells when the very value is looked for; the engine finds them there. */
const passesOverBlanks = (name: string, wantsExact: (values: Value[]) => boolean, hide: (cells: Value) => Value) =>
  withArguments(name, ([wanted, cells, ...rest]) => {
    if (!wanted || !cells) return [wanted, cells].flatMap((value) => value ?? []);
    const mayMistake = listOf(wanted).some((value) => (value.isNumber() || value.isBoolean()) && !value.getValue());
    const isHidden = mayMistake && cells.isArray() && wantsExact([wanted, cells, ...rest]);
    return [wanted, isHidden ? hide(cells) : cells, ...rest];
  });

const hideAll = (cells: Value): Value => eachCell(cells, (cell) => (cell.isNull() ? nothing : cell));
const hideIn = (isLookedAt: (row: number, column: number) => boolean) => (cells: Value) =>
  arrayOf(
    rowsOf(cells).map((values, row) =>
      values.map((value, column) => (value.isNull() && isLookedAt(row, column) ? nothing : value)),
    ),
  );

const isExact = (mode: Value | undefined): boolean => mode === undefined || Number(firstOf(mode).getValue() ?? 0) === 0;
const saysExact = ([, , , nearest]: Value[]): boolean => nearest !== undefined && !isYes(nearest);

export const blankSafe: [FunctionClass, string][] = [
  [
    passesOverBlanks(
      "VLOOKUP",
      saysExact,
      hideIn((_, column) => column === 0),
    ),
    "VLOOKUP",
  ],
  [
    passesOverBlanks(
      "HLOOKUP",
      saysExact,
      hideIn((row) => row === 0),
    ),
    "HLOOKUP",
  ],
  [passesOverBlanks("XLOOKUP", ([, , , , mode]) => isExact(mode), hideAll), "XLOOKUP"],
  [passesOverBlanks("XMATCH", ([, , mode]) => isExact(mode), hideAll), "XMATCH"],
];
