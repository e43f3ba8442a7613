import { prefix } from "./formula";
import type { Story } from "./story";

/** Any cell without one of our functions: what can be done here, in two lines. */
export const OrdinaryCell = ({ story }: { story: Exclude<Story, { tells: "calls" }> }) => {
  const { strangers, bare, isBroken } =
    story.tells === "ordinary cell" ? story : { strangers: [], bare: [], isBroken: false };
  return (
    <article class="pane-card">
      {strangers.length > 0 && (
        <p class="pane-refusal pane-part">
          There is no function called {strangers.join(" or ")}. Look for the one you mean under Functions.
        </p>
      )}
      {bare.length > 0 && (
        <p class="pane-refusal pane-part">
          The names of these functions begin with {prefix} Write {bare.map((name) => prefix + name).join(" and ")}.
        </p>
      )}
      {isBroken && (
        <p class="pane-refusal pane-part">
          This formula cannot be read. Arguments are parted by commas, decimals are written with a point, and words
          stand in quotes.
        </p>
      )}
      <p class="pane-lead-line">
        Select a cell whose formula holds a BIMETAL function to see how its answer comes about.
      </p>
      <p class="pane-lead-line">
        To ask something new, type into an empty cell, for example{" "}
        <code class="pane-code">=BIMETAL.TRIP.RANGE(51,20,"C")</code>: how long a 20 A breaker of characteristic C may
        take at 51 A.
      </p>
    </article>
  );
};
