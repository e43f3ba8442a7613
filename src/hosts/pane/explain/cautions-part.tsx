import { tied } from "./tied";

/** Cautions are always in sight: never folded away, never behind a tab. */
export const CautionsPart = ({ cautions }: { cautions: readonly string[] }) =>
  cautions.length === 0 ? null : (
    <section class="pane-part pane-cautions" aria-label="Cautions">
      <h3 class="pane-heading">Cautions</h3>
      <ul class="pane-list">
        {cautions.map((caution) => (
          <li key={caution}>{tied(caution)}</li>
        ))}
      </ul>
    </section>
  );
