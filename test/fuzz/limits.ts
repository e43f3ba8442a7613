import * as z from "zod/mini";
import type { Parameter } from "../../src/definition/parameter";

/** What a parameter's schema says of the numbers and words it takes. */
export interface Limits {
  readonly lowest: number;
  readonly highest: number;
  /** Whether the lowest and highest are taken themselves. */
  readonly open: { readonly low: boolean; readonly high: boolean };
  readonly whole: boolean;
  readonly words: readonly (string | number)[];
  readonly takesNumbers: boolean;
}

interface JsonSchema {
  readonly type?: string;
  readonly const?: string | number;
  readonly enum?: readonly (string | number)[];
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly exclusiveMaximum?: number;
  readonly anyOf?: readonly JsonSchema[];
  readonly items?: JsonSchema;
}

/** The road takes nothing larger, whatever the schema says; see `quantity`. */
const beyondMeasure = 1e12;

const read = new WeakMap<Parameter, Limits>();

/** The limits that a parameter's schema names. */
export const limitsOf = (parameter: Parameter): Limits => {
  const known = read.get(parameter);
  if (known) return known;
  const limits = limitsIn(z.toJSONSchema(parameter.schema, { unrepresentable: "any" }) as JsonSchema);
  read.set(parameter, limits);
  return limits;
};

const limitsIn = (schema: JsonSchema): Limits => {
  const parts = schema.anyOf ?? (schema.items ? [schema.items] : [schema]);
  const words = parts.flatMap((part) => part.enum ?? (part.const === undefined ? [] : [part.const]));
  const number = parts.find(({ type, const: only }) => only === undefined && (type === "number" || type === "integer"));
  const { minimum, exclusiveMinimum, maximum, exclusiveMaximum } = number ?? {};
  return {
    lowest: Math.max(minimum ?? exclusiveMinimum ?? -beyondMeasure, -beyondMeasure),
    highest: Math.min(maximum ?? exclusiveMaximum ?? beyondMeasure, beyondMeasure),
    open: { low: exclusiveMinimum !== undefined, high: exclusiveMaximum !== undefined },
    whole: number?.type === "integer",
    words,
    takesNumbers: number !== undefined,
  };
};
