import {
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  FunctionType,
  type IFunctionInfo,
} from "@univerjs/engine-formula";
import { call } from "../../definition/call";
import type { AnyDefinition } from "../../definition/define";
import type { Memory } from "../../definition/memory";
import { type Parameter, sheetName } from "../../definition/parameter";
import type { FunctionClass } from "./cured/engine-function";
import { argumentOf, engineAnswer, engineError } from "./engine-values";
import { type Place, sayPlace } from "./place";

/** The namespace that a sheet writes before every function's name. */
export const NAMESPACE = "BIMETAL";

/** "TRIP.RANGE" as the sheet writes it: "BIMETAL.TRIP.RANGE". */
export const sheetFunction = (definition: AnyDefinition): string => `${NAMESPACE}.${definition.name}`;

/** Something thrown that is no refusal: our fault, to be told and mended. */
export interface Defect {
  readonly place: Place;
  readonly definition: AnyDefinition;
  readonly thrown: unknown;
}

/**
 * The catalogue as functions of the grid engine, for UniverFormulaEnginePlugin's `function`. Each call takes the one road and is
 * remembered by its cell ("Log!F2"). A defect stands in the cell as #VALUE! with a sentence that says so, and is told.
 */
export const functionsFor = (
  catalogue: readonly AnyDefinition[],
  memory: Memory,
  onDefect: (defect: Defect) => void,
): [FunctionClass, string][] =>
  catalogue.map((definition) => [functionClass(definition, memory, onDefect), sheetFunction(definition)]);

const functionClass = (definition: AnyDefinition, memory: Memory, onDefect: (defect: Defect) => void): FunctionClass =>
  class extends BaseFunction {
    // Any number of arguments may come: the road's own sentence refuses those that do not fit.
    override minParams = -1;
    override maxParams = -1;
    override needsSheetsInfo = true;

    override calculate(...values: BaseValueObject[]): BaseValueObject {
      const sheet = this.getSheetsInfo().sheetNameMap[this.subUnitId ?? ""] ?? "";
      const place = { sheet, row: this.row, column: this.column };
      try {
        const args = values.map(argumentOf);
        memory.remember(sayPlace(place), definition, args);
        return engineAnswer(call(definition, args));
      } catch (thrown) {
        onDefect({ place, definition, thrown });
        return engineError(ErrorType.VALUE, sayDefect(definition, thrown));
      }
    }
  };

const sayDefect = (definition: AnyDefinition, thrown: unknown): string =>
  `${sheetFunction(definition)} has a defect, please report it: ${thrown instanceof Error ? thrown.message : String(thrown)}`;

/** What the grid shows while one of our functions is typed, for UniverSheetsFormulaPlugin's `description`. */
export const descriptionsFor = (catalogue: readonly AnyDefinition[]): IFunctionInfo[] =>
  catalogue.map((definition) => ({
    functionName: sheetFunction(definition),
    functionType: FunctionType.User,
    description: definition.summary,
    abstract: definition.summary,
    functionParameter: Object.entries(definition.parameters as Record<string, Parameter>).map(([key, parameter]) => ({
      name: sheetName(key),
      detail: sayParameter(parameter),
      example: parameter.choices?.[0] ? `"${parameter.choices[0]}"` : "",
      require: parameter.otherwise === undefined ? 1 : 0,
      repeat: parameter.repeating ? 1 : 0,
    })),
  }));

const sayParameter = ({ meaning, unit, choices, otherwise }: Parameter): string =>
  [
    unit === "" ? meaning : `${meaning}, in ${unit}`,
    choices && `one of ${choices.map((word) => `"${word}"`).join(", ")}`,
    otherwise !== undefined && `left out: ${otherwise}`,
  ]
    .filter(Boolean)
    .join("; ");
