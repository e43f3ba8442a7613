import { useEffect, useState } from "preact/hooks";
import type { Port } from "../port";
import { SheetCard } from "./sheet-card";
import type { shelves } from "./shelf";

/** Ready sheets, each to be put into the open workbook as a sheet of its own. */
export const SheetsView = ({ port }: { port: Port }) => {
  const shelves = useShelves();
  if (typeof shelves === "string") return <p class="pane-note">{shelves}</p>;
  return (
    <div class="pane-card">
      <p class="pane-lead-line">
        A ready sheet goes into the open workbook as a new sheet of its own. Nothing that is there is written over.
      </p>
      {shelves.map(({ name, about, sheets }) => (
        <section key={name} class="pane-part" aria-label={name}>
          <h2 class="pane-heading">{name}</h2>
          <p class="pane-shelf-about">{about}</p>
          <ul class="pane-shelf">
            {sheets.map((shelved) => (
              <SheetCard key={shelved.sheet.name} shelved={shelved} port={port} />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
};

/** The sheets come when they are asked for: most who open the pane never want one. */
const useShelves = (): typeof shelves | string => {
  const [found, setFound] = useState<typeof shelves | string>("One moment …");
  useEffect(() => {
    let isWanted = true;
    const show = (next: typeof shelves | string) => isWanted && setFound(next);
    import("./shelf").then(
      ({ shelves }) => show(shelves),
      () => show("The ready sheets could not be loaded: close the pane and open it again."),
    );
    return () => {
      isWanted = false;
    };
  }, []);
  return found;
};
