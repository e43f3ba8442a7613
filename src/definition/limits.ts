import type * as z from "zod/mini";

/** What a number's schema lets in. */
export interface Limits {
  readonly minimum: number;
  readonly exclusiveMinimum: number;
  readonly maximum: number;
  readonly exclusiveMaximum: number;
  /** Whole numbers only. */
  readonly whole: boolean;
  /** It asks for nothing else: a number inside the limits is one that the schema takes. */
  readonly isAll: boolean;
}

/**
 * The limits of a number's schema, read from its checks. zod can write them as JSON Schema too, but that part of it is
 * large, and says nothing of the checks that JSON Schema does not know.
 */
export const limitsOf = (schema: z.ZodMiniNumber): Limits => {
  const found = {
    minimum: -Number.MAX_VALUE,
    exclusiveMinimum: -Infinity,
    maximum: Number.MAX_VALUE,
    exclusiveMaximum: Infinity,
  };
  const { format, checks = [] } = schema._zod.def as z.core.$ZodNumberDef & { readonly format?: string };
  const whole = format === "safeint";
  let isAll = format === undefined;
  for (const one of checks) {
    const { check, inclusive, value } = one._zod.def as Partial<
      z.core.$ZodCheckGreaterThanDef | z.core.$ZodCheckLessThanDef
    >;
    if (check === "greater_than") {
      const end = inclusive ? "minimum" : "exclusiveMinimum";
      found[end] = Math.max(found[end], Number(value));
    } else if (check === "less_than") {
      const end = inclusive ? "maximum" : "exclusiveMaximum";
      found[end] = Math.min(found[end], Number(value));
    } else isAll = false;
  }
  return { ...found, whole, isAll };
};
