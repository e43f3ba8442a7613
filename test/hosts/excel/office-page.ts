import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { createContext, runInContext } from "node:vm";

/** A page inside Excel on Windows, as far as Microsoft's own office.js looks at one, with office.js and its runtime run in it. */
export interface OfficePage {
  readonly globals: {
    readonly CustomFunctions: typeof CustomFunctions;
    readonly Excel: typeof Excel;
    readonly Office: typeof Office;
  };
  /** Hands a message of Excel's to the page. */
  send(message: object): void;
  close(): void;
}

const officeFolder = join(dirname(require.resolve("@microsoft/office-js/package.json")), "dist");
const officeAddress = "http://localhost/office/";
const pageAddress = new URL("http://localhost/taskpane.html?_host_Info=Excel$Win32$16.01$en-US$$$$0");

/** `receive` is told every message that the page sends to Excel. */
export const openOfficePage = (receive: (text: string) => void): OfficePage => {
  const timers = new Set<NodeJS.Timeout>();
  // A long batch is put off with arguments of its own, so those are handed on.
  const later = (work: (...given: unknown[]) => void, milliseconds?: number, ...given: unknown[]) => {
    const timer = setTimeout(work, milliseconds, ...given);
    timers.add(timer);
    return timer;
  };
  const run = (address: string) => {
    const file = address.slice(officeAddress.length);
    runInContext(readFileSync(join(officeFolder, file), "utf8"), window, { filename: file });
  };
  // office.js puts script elements into the page's head to load its other files.
  const load = ({ src, onload }: { src: string; onload?: () => void }) => {
    run(src);
    later(() => onload?.());
  };
  const window = createContext({ ...page(load), setTimeout: later, clearTimeout, performance, URL }) as OfficeWindow;
  for (const itself of ["window", "self", "top", "parent"] as const) window[itself] = window;
  window._richApiNativeBridge = { sendMessageToHost: receive };
  run(`${officeAddress}office.js`);

  return {
    globals: window,
    send: (message) => window._richApiNativeBridge.onMessageFromHost?.(JSON.stringify(message)),
    close() {
      // office.js waits for answers that never come here and complains of them seconds later.
      for (const timer of timers) clearTimeout(timer);
    },
  };
};

interface OfficeWindow extends Record<"window" | "self" | "top" | "parent", unknown> {
  CustomFunctions: typeof CustomFunctions;
  Excel: typeof Excel;
  Office: typeof Office;
  _richApiNativeBridge: { sendMessageToHost(text: string): void; onMessageFromHost?(text: string): void };
}

const page = (load: (script: { src: string; onload?: () => void }) => void) => {
  const nothing = () => {};
  const element = () => ({
    setAttribute: nothing,
    getAttribute: () => null,
    appendChild: nothing,
    addEventListener: nothing,
    getElementsByTagName: () => [],
    style: {},
  });
  const head = { appendChild: load, insertBefore: nothing };
  const scripts = [{ src: `${officeAddress}office.js`, getAttribute: () => null, parentNode: head }];
  const byTag: Record<string, unknown[]> = { head: [head], script: scripts };
  const { href, search, hash, protocol, host, hostname, pathname, origin } = pageAddress;
  const location = { href, search, hash, protocol, host, hostname, pathname, origin };
  return {
    location,
    name: "",
    history: {},
    external: {},
    navigator: { userAgent: "node", appVersion: "" },
    console: { log: nothing, warn: nothing, error: nothing },
    setInterval: () => 0,
    clearInterval: nothing,
    addEventListener: nothing,
    removeEventListener: nothing,
    postMessage: nothing,
    document: {
      readyState: "complete",
      location,
      URL: href,
      cookie: "",
      body: element(),
      documentElement: element(),
      createElement: element,
      getElementById: () => null,
      addEventListener: nothing,
      getElementsByTagName: (name: string) => byTag[name] ?? [],
    },
  };
};
