import type { AnyDefinition } from "../../src/definition/define";
import { catalogue } from "../../src/functions";

/** A function of the catalogue by its name. */
export const catalogued = (name: string): AnyDefinition => {
  const found = catalogue.find((definition) => definition.name === name);
  if (!found) throw new Error(`${name} is not in the catalogue.`);
  return found;
};
