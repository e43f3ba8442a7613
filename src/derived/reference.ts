import type { AnyDefinition } from "../definition/define";
import { framed } from "./reference-frame";
import { functionPage } from "./reference-function";
import type { Html } from "./reference-html";
import { functionIndex } from "./reference-index";
import { publishedValues } from "./reference-published";
import { pageOf, proseOn } from "./reference-text";
import { roomsOf } from "./rooms";

/** One page of the reference without its frame. */
export interface ReferencePage {
  readonly title: string;
  readonly body: Html;
}

/**
 * The reference of a catalogue page by page, each made when it is asked for, by file name: `index.html`, `published-values.html`
 * and a page a function.
 */
export const referenceOf = (catalogue: readonly AnyDefinition[]): ReadonlyMap<string, () => ReferencePage> => {
  const names = new Set(catalogue.map(({ name }) => name));
  const rooms = roomsOf(catalogue);
  const page = (title: string, body: () => Html) => () => ({ title, body: body() });
  return new Map([
    ["index.html", page("Functions", () => functionIndex(rooms, proseOn(names)))],
    ["published-values.html", page("Published values", () => publishedValues(catalogue, proseOn(names)))],
    ...rooms.flatMap((room) =>
      room.functions.map((definition): [string, () => ReferencePage] => [
        pageOf(definition.name),
        page(definition.name, () => functionPage(definition, room, proseOn(names, definition.name))),
      ]),
    ),
  ]);
};

/** The reference as static pages by file name. They lie in one folder, beside `reference.css` and `favicon.svg`. */
export const referencePages = (catalogue: readonly AnyDefinition[]): Readonly<Record<string, string>> =>
  Object.fromEntries([...referenceOf(catalogue)].map(([path, make]) => [path, framed({ path, ...make() })]));
