import type { AnyDefinition, Result } from "../definition/define";
import { type Parameter, sheetName } from "../definition/parameter";
import { pageOf } from "./reference-text";

/** What Excel is told of the sheet functions: the content of functions.json. */
interface FunctionsJson {
  /** An error cell in a range reaches the function, which refuses that row alone. */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly SheetFunction[];
  /** The words of those parameters that take only some; Excel completes them while a formula is typed. */
  readonly enums: readonly WordList[];
}

interface SheetFunction {
  /** Stands in every workbook that uses the function: a name once published is never given up. */
  readonly id: string;
  readonly name: string;
  readonly description: string;
  /** The function's reference page; Excel leads there from its own help. */
  readonly helpUrl?: string;
  readonly parameters: readonly SheetParameter[];
  readonly result: { readonly type: "any"; readonly dimensionality: "matrix" };
  readonly options: { readonly requiresAddress: true };
}

interface SheetParameter {
  readonly name: string;
  readonly description: string;
  /** Excel converts nothing and refuses nothing: the sentences that refuse a cell are ours. */
  readonly type: "any";
  readonly dimensionality: "matrix";
  readonly optional?: true;
  readonly repeating?: true;
  readonly customEnumId?: string;
}

interface WordList {
  readonly id: string;
  readonly type: "string";
  readonly values: readonly { readonly name: string; readonly stringValue: string }[];
}

/**
 * Excel's metadata of the functions of a catalogue, after "Manually create JSON metadata for custom functions" (Office Add-ins documentation).
 * `reference` is the https address of the folder that the reference pages are served from.
 */
export const functionsJson = (catalogue: readonly AnyDefinition[], reference?: string): FunctionsJson => ({
  allowErrorForDataTypeAny: true,
  functions: catalogue.map((definition) => ({
    id: definition.name,
    name: definition.name,
    description: `${definition.summary} Gives ${definition.results.map(sayResult).join(", ")}.`,
    ...(reference === undefined ? {} : { helpUrl: `${reference}/${pageOf(definition.name)}` }),
    parameters: parametersOf(definition).map(([key, parameter]) => sheetParameter(definition, key, parameter)),
    result: { type: "any", dimensionality: "matrix" },
    options: { requiresAddress: true },
  })),
  enums: catalogue.flatMap((definition) =>
    parametersOf(definition).flatMap(([key, { choices }]) =>
      choices ? [wordList(wordListId(definition, key), choices)] : [],
    ),
  ),
});

const parametersOf = (definition: AnyDefinition): [string, Parameter][] =>
  Object.entries(definition.parameters as Record<string, Parameter>);

const sheetParameter = (definition: AnyDefinition, key: string, parameter: Parameter): SheetParameter => ({
  name: sheetName(key),
  description: describe(parameter),
  type: "any",
  dimensionality: "matrix",
  ...(parameter.otherwise === undefined ? {} : { optional: true }),
  ...(parameter.repeating ? { repeating: true } : {}),
  ...(parameter.choices ? { customEnumId: wordListId(definition, key) } : {}),
});

/** "(A) the current through the pole, r.m.s. Left out: cold." */
const describe = ({ unit, meaning, otherwise }: Parameter): string => {
  const sentence = `${unit ? `(${unit}) ` : ""}${meaning}`;
  if (otherwise === undefined) return sentence;
  return `${sentence}${/[.!?]$/.test(meaning) ? "" : "."} Left out: ${otherwise}${/[.!?]$/.test(otherwise) ? "" : "."}`;
};

const sayResult = ({ name, unit }: Result): string => (unit ? `${name} (${unit})` : name);

const wordListId = ({ name }: AnyDefinition, key: string): string => `${name}.${key.toUpperCase()}`;

const wordList = (id: string, choices: readonly string[]): WordList => ({
  id,
  type: "string",
  values: choices.map((word) => ({ name: word, stringValue: word })),
});
