import type { AnyDefinition } from "../../../definition/define";
import type { Port, Selection } from "../port";
import { readFormula } from "./formula";
import { homeOf, type ResolvedCall, resolve, seenFrom } from "./resolved";

/** What there is to tell about the selected cell. */
export type Story =
  | { readonly tells: "nothing selected" }
  | { readonly tells: "ordinary cell"; readonly selection: Selection; readonly strangers: readonly string[] }
  | { readonly tells: "calls"; readonly selection: Selection; readonly calls: readonly ResolvedCall[] };

/**
 * Reads the selected cell: which of our functions stand in it, and what they were given. `before`: a story that still holds; another
 * cell of the same answer is told from that, for a long answer has many cells to look up.
 */
export const storyOf = async (
  selection: Selection | undefined,
  port: Port,
  catalogue: readonly AnyDefinition[],
  before?: Story,
): Promise<Story> => {
  if (!selection) return { tells: "nothing selected" };
  if (before?.tells === "calls" && isSameAnswer(before.selection, selection))
    return { tells: "calls", selection, calls: before.calls.map((call) => seenFrom(selection, call)) };
  const { calls, strangers } = readFormula(selection.formula, catalogue);
  if (calls.length === 0) return { tells: "ordinary cell", selection, strangers };
  const isOnly = (definition: AnyDefinition) => calls.filter((call) => call.definition === definition).length === 1;
  const resolved = calls.map((call) => resolve(call, selection, port, isOnly(call.definition)));
  return { tells: "calls", selection, calls: await Promise.all(resolved) };
};

const isSameAnswer = (a: Selection, b: Selection): boolean => a.formula === b.formula && homeOf(a) === homeOf(b);
