import { render } from "preact";
import type { AnyDefinition } from "../../definition/define";
import "./look/all";
import { Pane } from "./pane";
import type { Port } from "./port";
import type { View } from "./views";

/** A pane that stands in a host's page. */
export interface Mounted {
  /** Shows one of its views, as a press on that view's tab does. */
  show(view: View): void;
}

/** Puts the pane into an element of the host's page. */
export const mountPane = (element: HTMLElement, port: Port, catalogue: readonly AnyDefinition[]): Mounted => {
  const show = (view: View) => render(<Pane port={port} catalogue={catalogue} view={view} onView={show} />, element);
  show("Explain");
  return { show };
};
