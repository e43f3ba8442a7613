import { render } from "preact";
import type { AnyDefinition } from "../../definition/define";
import "./look/colours.css";
import "./look/controls.css";
import "./look/functions.css";
import "./look/pane.css";
import "./look/picture.css";
import "./look/print.css";
import { Pane } from "./pane";
import type { Port } from "./port";

/** Puts the pane into an element of the host's page. */
export const mountPane = (element: HTMLElement, port: Port, catalogue: readonly AnyDefinition[]): void =>
  render(<Pane port={port} catalogue={catalogue} />, element);
