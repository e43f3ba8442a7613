import { keptTag } from "./cell-text";
import type { Splice } from "./splice";
import type { Opened } from "./xml";

/** A list of a part as it is written, or the place where it may stand when it is not. */
export interface WrittenList {
  readonly open?: Opened | undefined;
  /** The place of its end tag. */
  readonly closeFrom?: number;
  readonly otherwise: number;
}

/** Splices that put elements behind those of a list; `says` is what its tag is to say beside or other than it does. */
export const listSplices = (
  name: string,
  { open, closeFrom = 0, otherwise }: WrittenList,
  added: string,
  says: Readonly<Record<string, string>> = {},
): Splice[] => {
  if (added === "") return [];
  const opening = keptTag(name, { ...open?.attributes, ...says });
  if (!open) return [{ from: otherwise, to: otherwise, put: `${opening}${added}</${name}>` }];
  if (open.isSelfClosing) return [{ from: open.from, to: open.to, put: `${opening}${added}</${name}>` }];
  return [
    { from: open.from, to: open.to, put: opening },
    { from: closeFrom, to: closeFrom, put: added },
  ];
};
