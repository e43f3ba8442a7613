import type { Nullable } from "@univerjs/core";
import {
  type ArrayValueObject,
  AstTreeBuilder,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  Interpreter,
  LexerNode,
} from "@univerjs/engine-formula";
import { eachCell } from "./cured/cells";
import { demand } from "./demand";
import { engineError } from "./engine-values";

/** A formula that cannot be made into a tree (a LAMBDA whose parameter is a call) would end the calculation of the whole workbook. */
export const catchMisreadings = (): void => {
  const { prototype } = AstTreeBuilder;
  demand(typeof prototype.parse === "function", "it makes no trees of formulas");
  const { parse } = prototype;
  prototype.parse = function (node) {
    try {
      return parse.call(this, node);
    } catch {
      // LET of nothing: the engine's own way to its node for an error, whose class it does not export.
      const nothing = new LexerNode();
      nothing.setToken("LET");
      return parse.call(this, nothing);
    }
  };
};

/** What stands beside the #VALUE! of a formula over which the engine itself broke. */
export const BREAKDOWN = "The grid engine cannot calculate this formula.";

/** A function of the engine that throws would end the calculation of the whole workbook without a word. */
export const catchBreakdowns = (): void => {
  const { prototype } = Interpreter;
  demand(
    typeof prototype.execute === "function" && typeof prototype.executeAsync === "function",
    "it runs no formulas",
  );
  const { execute, executeAsync } = prototype;
  prototype.execute = function (node) {
    try {
      return finite(execute.call(this, node));
    } catch {
      return engineError(ErrorType.VALUE, BREAKDOWN) as ReturnType<typeof execute>;
    }
  };
  prototype.executeAsync = async function (node) {
    return executeAsync
      .call(this, node)
      .then(finite)
      .catch(() => engineError(ErrorType.VALUE, BREAKDOWN) as Awaited<ReturnType<typeof executeAsync>>);
  };
};

/** A number that is none, or is beyond all numbers, is #NUM!, and a LAMBDA that nothing calls #CALC!; the engine shows them as values. */
const finite = (answer: FunctionVariantType): FunctionVariantType => {
  if (answer.isReferenceObject()) return answer;
  const value = answer as BaseValueObject;
  if (value.isLambda()) return ErrorValueObject.create(ErrorType.CALC);
  if (!value.isArray()) return isNumberless(value) ? ErrorValueObject.create(ErrorType.NUM) : answer;
  let isWhole = true;
  (value as ArrayValueObject).iterator((cell) => {
    isWhole = !isNumberless(cell);
    return isWhole;
  });
  return isWhole
    ? answer
    : eachCell(value, (cell) => (isNumberless(cell) ? ErrorValueObject.create(ErrorType.NUM) : cell));
};

const isNumberless = (value: Nullable<BaseValueObject>): boolean =>
  value?.isNumber() === true && !Number.isFinite(value.getValue());
