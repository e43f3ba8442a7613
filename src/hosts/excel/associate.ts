import { call } from "../../definition/call";
import type { AnyDefinition } from "../../definition/define";
import type { Memory } from "../../definition/memory";
import { readHanded } from "./handed";
import { type Shown, safely } from "./safe";
import { wholeAddress } from "./whole-address";

/**
 * Ties every sheet function to its id in functions.json. To be called while the script is first run: a function that Excel calls
 * before it is tied shows #NAME? or stays at #BUSY!.
 */
export const associate = (catalogue: readonly AnyDefinition[], memory: Memory): void => {
  for (const definition of catalogue) CustomFunctions.associate(definition.name, sheetFunction(definition, memory));
};

const sheetFunction =
  (definition: AnyDefinition, memory: Memory) =>
  (...handed: unknown[]): Shown[][] =>
    safely(definition, () => {
      const { args, address } = readHanded(definition, handed);
      if (address) memory.remember(wholeAddress(address), definition, args);
      return call(definition, args);
    });
