import { useEffect, useMemo, useState } from "preact/hooks";
import type { AnyDefinition } from "../../../definition/define";
import type { ReferencePage } from "../../../derived/reference";
import { PageText } from "./page-text";
import { contents, type HelpPlace, publishedValues, sayPlace } from "./trail";
import type { Help } from "./use-help";

/** The reference inside the pane, page after page; Escape or the button goes back the way one came. */
export const HelpView = ({ catalogue, help }: { catalogue: readonly AnyDefinition[]; help: Help }) => {
  const { trail, askedFrom, returned } = help;
  const place = trail.at(-1) ?? contents;
  const before = trail.at(-2);
  const page = usePage(catalogue, place);
  const canGoBack = before !== undefined || askedFrom !== undefined;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape does what a button in it does.
    <div
      class="pane-help"
      onKeyDown={(event) => {
        if (event.key !== "Escape" || !canGoBack) return;
        event.preventDefault();
        help.back();
      }}
    >
      <nav class="pane-help-ways" aria-label="Help">
        {canGoBack && (
          <button type="button" class="pane-step-button" title="Or press Escape" onClick={help.back}>
            Back to {before ? sayPlace(before) : askedFrom}
          </button>
        )}
        <Way to={contents} here={place} onFollow={help.follow}>
          All pages
        </Way>
        <Way to={publishedValues} here={place} onFollow={help.follow}>
          Published values
        </Way>
      </nav>
      {typeof page === "string" ? (
        <p class="pane-part pane-note">{page}</p>
      ) : (
        <PageText page={page} place={place} returned={returned} onFollow={help.follow} />
      )}
    </div>
  );
};

const Way = ({ to, here, onFollow, children }: WayProps) => (
  <button
    type="button"
    class="pane-go"
    aria-current={to.path === here.path ? "page" : undefined}
    onClick={() => onFollow(to)}
  >
    {children}
  </button>
);

interface WayProps {
  readonly to: HelpPlace;
  readonly here: HelpPlace;
  readonly onFollow: (place: HelpPlace) => void;
  readonly children: string;
}

/** The reference is fetched when it is first asked for; each page is made when it is opened. */
const usePage = (catalogue: readonly AnyDefinition[], { path }: HelpPlace): ReferencePage | string => {
  const [reference, setReference] = useState<ReadonlyMap<string, () => ReferencePage> | string>("One moment …");
  useEffect(() => {
    let isWanted = true;
    import(/* webpackChunkName: "help" */ "../../../derived/reference").then(
      ({ referenceOf }) => isWanted && setReference(referenceOf(catalogue)),
      () => isWanted && setReference("The help could not be loaded: close the pane and open it again."),
    );
    return () => {
      isWanted = false;
    };
  }, [catalogue]);
  return useMemo(
    () => (typeof reference === "string" ? reference : (reference.get(path)?.() ?? "There is no such page.")),
    [reference, path],
  );
};
