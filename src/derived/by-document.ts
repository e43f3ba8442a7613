import type { PublishedTable, Source } from "../metrology/source";

/** Several places in one document that stand alike become one line. */
export const byDocument = (sources: readonly Source[]): Source[] => {
  const lines = new Map<string, { source: Source; places: Set<string>; tables: Set<PublishedTable> }>();
  for (const source of sources) {
    const key = [source.document, source.edition, source.standing].join("|");
    const line = lines.get(key) ?? { source, places: new Set(), tables: new Set() };
    if (source.place) line.places.add(source.place);
    for (const table of source.tables ?? []) line.tables.add(table);
    lines.set(key, line);
  }
  return [...lines.values()].map(({ source: { document, edition, standing }, places, tables }) => ({
    document,
    edition,
    standing,
    ...(places.size === 0 ? {} : { place: [...places].join("; ") }),
    tables: [...tables],
  }));
};
