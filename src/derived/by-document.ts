import type { Source } from "../metrology/source";

/** Several places in one document that stand alike become one line. */
export const byDocument = (sources: readonly Source[]): Source[] => {
  const lines = new Map<string, Source & { places: Set<string> }>();
  for (const source of sources) {
    const key = [source.document, source.edition, source.standing].join("|");
    const line = lines.get(key) ?? { ...source, places: new Set() };
    if (source.place) line.places.add(source.place);
    lines.set(key, line);
  }
  return [...lines.values()].map(({ places, ...source }) =>
    places.size === 0 ? source : { ...source, place: [...places].join("; ") },
  );
};
