import { byDocument } from "../../../derived/by-document";
import { citation, type Source } from "../../../metrology/source";
import { tied } from "./tied";

/** What the answer rests on, and how far each has been followed to its page. */
export const SourcesPart = ({ sources }: { sources: readonly Source[] }) =>
  sources.length === 0 ? null : (
    <section class="pane-part" aria-label="Sources">
      <h3 class="pane-heading">Sources</h3>
      <ul class="pane-list pane-sources">
        {byDocument(sources).map((source) => (
          <li key={citation(source)}>{tied(citation(source))}</li>
        ))}
      </ul>
    </section>
  );
