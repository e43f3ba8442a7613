import type { Argument } from "./cells";
import type { AnyDefinition } from "./define";

/** The last call of a cell, so that it can be explained with what it was really given. */
export interface Remembered {
  readonly definition: AnyDefinition;
  readonly args: readonly Argument[];
}

/** About as many cells as a person comes back to; beyond them the oldest calls are forgotten. */
export const mostCalls = 5000;

/**
 * The last calls by calling cell ("Log!F2"; any text the host uses for a cell), newest last. Kept in memory only and bounded.
 * A cell that calls two of our functions keeps one call of each.
 */
export class Memory {
  readonly #calls = new Map<string, Remembered>();

  /** Cells are told apart by address; several calls of one cell by the function's name. */
  remember(cell: string, definition: AnyDefinition, args: readonly Argument[]): void {
    const key = `${cell} ${definition.name}`;
    this.#calls.delete(key);
    this.#calls.set(key, { definition, args });
    if (this.#calls.size > mostCalls) this.#calls.delete(this.#calls.keys().next().value as string);
  }

  recall(cell: string, definition: AnyDefinition): Remembered | undefined {
    return this.#calls.get(`${cell} ${definition.name}`);
  }
}
