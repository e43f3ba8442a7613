import { citation, type Source } from "../../../metrology/source";

/** What the answer rests on, and how far each has been followed to its page. */
export const SourcesPart = ({ sources }: { sources: readonly Source[] }) =>
  sources.length === 0 ? null : (
    <section class="pane-part" aria-label="Sources">
      <h3 class="pane-heading">Sources</h3>
      <ul class="pane-list pane-sources">
        {byDocument(sources).map((source) => (
          <li key={citation(source)}>{citation(source)}</li>
        ))}
      </ul>
    </section>
  );

/** Several places in one document that stand alike become one line. */
const byDocument = (sources: readonly Source[]): Source[] => {
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
