import type { Argument } from "../definition/cells";
import type { AnyDefinition, Example } from "../definition/define";
import { callInFormula, inFormula } from "../definition/in-formula";
import { type Parameter, sheetName } from "../definition/parameter";
import { type Html, html, joined } from "./reference-html";

/** What an example gives to its function: a blank leaves an argument out. */
export const argumentsOf = ({ cells }: Example): Argument[] => cells.map((cell) => (cell === null ? undefined : cell));

/** What may be given to a function, argument by argument: `[preload]` may be left out, `[arguments …]` is as many as there are. */
export const shapeOf = ({ parameters }: AnyDefinition): string[] =>
  Object.entries(parameters as Record<string, Parameter>).map(([key, { otherwise, repeating }]) => {
    const name = repeating ? `${sheetName(key)} …` : sheetName(key);
    return otherwise === undefined ? name : `[${name}]`;
  });

/** An example as it is typed into a sheet: `=BIMETAL.THERMAL.STATE({30;36},10,22,90)`. What is left out at the end is not written. */
export const typedFormula = ({ name }: AnyDefinition, cells: readonly Argument[]): string =>
  callInFormula(name, cells.map(inFormula));

/** A formula as a page shows it: it breaks after an argument or a cell of an array. */
export const formulaCode = (formula: string): Html =>
  html`<code>${joined(formula.split(/(?<=[,;])/), html`<wbr>`)}</code>`;
