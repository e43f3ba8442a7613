import { isFunction } from "@borgar/fx";
import { tokenize } from "@borgar/fx/xlsx";
import type { AnyDefinition } from "../../definition/define";
import { NAMESPACE, sheetFunction } from "./functions";

/** What files write before a function of an add-in, whose dots become underscores. */
export const ADD_IN = "_xldudf_";

/** Our functions' names between the two spellings. No name holds an underscore, so the way back is without doubt. */
export class Spelling {
  readonly #typed = new Map<string, string>();
  readonly #stored = new Map<string, string>();

  constructor(catalogue: readonly AnyDefinition[]) {
    for (const definition of catalogue) {
      const typed = sheetFunction(definition);
      const stored = `${ADD_IN}${typed.replaceAll(".", "_")}`;
      this.#typed.set(stored.toUpperCase(), typed).set(typed, typed);
      this.#stored.set(typed, stored);
    }
  }

  /** "BIMETAL.TRIP.RANGE" for either spelling in any case; undefined for a function that is not ours. */
  typed = (name: string): string | undefined => this.#typed.get(name.toUpperCase());
  stored = (name: string): string | undefined => this.#stored.get(name.toUpperCase());

  /** Whether a formula calls one of our functions, in either spelling, or one that wears our namespace. */
  isOurs = (formula: string): boolean => this.calls(formula).length > 0;

  /** Our functions in a formula, as they are typed, also those of the namespace that the catalogue does not know. */
  calls = (formula: string): string[] =>
    mayBeOurs.test(formula)
      ? tokenize(formula).flatMap((token) => {
          if (!isFunction(token)) return [];
          const name = bare(token.value);
          return this.typed(name) ?? (mayBeOurs.test(name) ? [name] : []);
        })
      : [];
}

const mayBeOurs = new RegExp(`${NAMESPACE}[._]`, "i");
const youngPrefix = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i;
/** A function's name without the prefixes that files put before young ones. */
export const bare = (name: string): string => name.replace(youngPrefix, "");
