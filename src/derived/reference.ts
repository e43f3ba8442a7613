import type { AnyDefinition } from "../definition/define";
import { framed } from "./reference-frame";
import { functionPage } from "./reference-function";
import { functionIndex } from "./reference-index";
import { publishedValues } from "./reference-published";
import { pageOf, proseOn } from "./reference-text";
import { roomsOf } from "./rooms";

/**
 * The reference of a catalogue as static pages, by file name: a page a function, `index.html` and `published-values.html`.
 * They lie in one folder, beside `reference.css` and `favicon.svg`.
 */
export const referencePages = (catalogue: readonly AnyDefinition[]): Readonly<Record<string, string>> => {
  const names = new Set(catalogue.map(({ name }) => name));
  const rooms = roomsOf(catalogue);
  const pages: Record<string, string> = {
    "index.html": framed({ title: "Functions", path: "index.html", body: functionIndex(rooms, proseOn(names)) }),
    "published-values.html": framed({
      title: "Published values",
      path: "published-values.html",
      body: publishedValues(catalogue, proseOn(names)),
    }),
  };
  for (const room of rooms)
    for (const definition of room.functions) {
      const path = pageOf(definition.name);
      const body = functionPage(definition, room, proseOn(names, definition.name));
      pages[path] = framed({ title: definition.name, path, body });
    }
  return pages;
};
