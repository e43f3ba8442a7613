import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";

const views = ["Explain", "Functions", "Sheets", "Help"] as const;
export type View = (typeof views)[number];

/** Which part of the pane is shown: one tab stop, the arrow keys go from one to the next. */
export const ViewTabs = ({ view, onView }: { view: View; onView: (view: View) => void }) => {
  const list = useRef<HTMLDivElement>(null);
  const step = (event: KeyboardEvent) => {
    const by = { ArrowRight: 1, ArrowLeft: views.length - 1 }[event.key];
    if (by === undefined) return;
    const next = views[(views.indexOf(view) + by) % views.length] as View;
    onView(next);
    list.current?.querySelector<HTMLElement>(`#pane-tab-${next}`)?.focus();
  };
  return (
    <div ref={list} class="pane-views" role="tablist" aria-label="Views" onKeyDown={step}>
      {views.map((name) => (
        <button
          key={name}
          id={`pane-tab-${name}`}
          type="button"
          role="tab"
          class="pane-view"
          aria-selected={name === view}
          aria-controls={`pane-panel-${name}`}
          tabIndex={name === view ? 0 : -1}
          onClick={() => onView(name)}
        >
          {name}
        </button>
      ))}
    </div>
  );
};

/** One of the views. It is made when it is first shown, and kept: what was filled in or opened is there when one comes back. */
export const ViewPanel = ({ of, view, children }: { of: View; view: View; children: ComponentChildren }) => {
  const wasShown = useRef(false);
  if (of === view) wasShown.current = true;
  return (
    <div id={`pane-panel-${of}`} role="tabpanel" aria-labelledby={`pane-tab-${of}`} hidden={of !== view}>
      {wasShown.current && children}
    </div>
  );
};
