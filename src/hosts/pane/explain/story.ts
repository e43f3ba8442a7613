import type { AnyDefinition } from "../../../definition/define";
import { cellAbove } from "../address";
import type { Port, Selection } from "../port";
import { type OwnCall, type Reading, readFormula } from "./formula";
import { homeOf, type ResolvedCall, resolve, seenFrom } from "./resolved";

/** What there is to tell about the selected cell. */
export type Story =
  | { readonly tells: "nothing selected" }
  | ({ readonly tells: "ordinary cell"; readonly selection: Selection } & Pick<
      Reading,
      "strangers" | "bare" | "isBroken"
    >)
  | {
      readonly tells: "calls";
      readonly selection: Selection;
      readonly calls: readonly ResolvedCall[];
      /** The blank cell that is really selected, below the one that is told: there Enter leads from a new formula. */
      readonly below?: Selection;
    };

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
  const { calls, ...rest } = readFormula(selection.formula, catalogue);
  if (calls.length > 0) return { tells: "calls", selection, calls: await resolved(calls, selection, port) };
  const above = await formulaAbove(selection, port);
  const found = above ? readFormula(above.formula, catalogue).calls : [];
  if (!above || found.length === 0)
    return {
      tells: "ordinary cell",
      selection,
      ...rest,
      isBroken: rest.isBroken || isBrokenText(selection, catalogue),
    };
  return { tells: "calls", selection: above, calls: await resolved(found, above, port), below: selection };
};

const resolved = (calls: readonly OwnCall[], selection: Selection, port: Port): Promise<ResolvedCall[]> => {
  const isOnly = (definition: AnyDefinition) => calls.filter((call) => call.definition === definition).length === 1;
  return Promise.all(calls.map((call) => resolve(call, selection, port, isOnly(call.definition))));
};

/** A formula that could not be read may stand as text. */
const isBrokenText = ({ formula, value }: Selection, catalogue: readonly AnyDefinition[]): boolean =>
  formula === "" && typeof value === "string" && readFormula(value, catalogue).isBroken;

/** The cell above a blank one. */
const formulaAbove = async ({ address, value, formula }: Selection, port: Port): Promise<Selection | undefined> => {
  const above = value === null || value === "" ? cellAbove(address) : undefined;
  if (formula !== "" || above === undefined) return undefined;
  return port.selectionAt(above).catch(() => undefined);
};

const isSameAnswer = (a: Selection, b: Selection): boolean => a.formula === b.formula && homeOf(a) === homeOf(b);
