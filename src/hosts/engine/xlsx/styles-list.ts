import { CannotKeep } from "./cannot-keep";
import { listSplices } from "./list-splices";
import { checkRoot } from "./parts";
import type { Splice } from "./splice";
import { type Opened, readXml } from "./xml";

/** A list of the part of looks ("fonts", "cellXfs"), to which entries can be added; those that stand in it keep their numbers. */
export class StylesList {
  readonly #entries: string[] = [];
  #written = 0;
  #open: Opened | undefined;
  #closeFrom = 0;

  constructor(readonly name: string) {}

  get isThere(): boolean {
    return this.#open !== undefined;
  }

  opens(open: Opened): void {
    this.#open = open;
  }

  closes(from: number): void {
    this.#closeFrom = from;
  }

  /** Takes in an entry of the file. */
  reads(entry: string): void {
    this.#entries.push(entry);
    this.#written += 1;
  }

  entry(number: number): string | undefined {
    return this.#entries[number];
  }

  get entries(): readonly string[] {
    return this.#entries;
  }

  /** The number of an entry, which is added when there is none like it. */
  numberOf(entry: string): number {
    const known = this.#entries.indexOf(entry);
    return known >= 0 ? known : this.#entries.push(entry) - 1;
  }

  /** What is to be done to the part; a list that is not there is put at `otherwise`. */
  splices(otherwise: number): Splice[] {
    const added = this.#entries.slice(this.#written).join("");
    const count = String(this.#entries.length);
    return listSplices(this.name, { open: this.#open, closeFrom: this.#closeFrom, otherwise }, added, { count });
  }
}

/** The lists of the part of looks, and where its first list may stand. */
export const readLists = (xml: string, part: string, lists: readonly StylesList[]): number => {
  let depth = 0;
  let start = 0;
  let list: StylesList | undefined;
  let entryFrom = 0;
  readXml(xml, part, {
    open: (element) => {
      depth += 1;
      if (depth === 1) {
        checkRoot(element.name, element.attributes, part);
        if (element.name !== "styleSheet" || element.isSelfClosing)
          throw new CannotKeep(`${part} is written in a way that nothing can be added to`);
        start = element.to;
      }
      if (depth === 2) {
        list = lists.find(({ name, isThere }) => name === element.name && !isThere);
        list?.opens(element);
      }
      if (depth === 3) entryFrom = element.from;
    },
    close: (_, from, to) => {
      if (depth === 3) list?.reads(xml.slice(entryFrom, to));
      if (depth === 2) list?.closes(from);
      depth -= 1;
    },
  });
  return start;
};
