import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type ConsoleMessage, type HTTPRequest, launch, type Page } from "puppeteer-core";
import { findBrowser } from "../../.setup/find-browser.mjs";

/** A browser with a profile of its own: nothing shared, nothing fetched from anywhere but this machine. */
export interface TestBrowser {
  /** A blank page whose complaints and requests are watched. */
  openPage(): Promise<WatchedPage>;
  close(): Promise<void>;
}

export interface WatchedPage {
  page: Page;
  /** Errors on the console, exceptions nobody caught, requests that failed; CSP violations are among the first. */
  complaints: string[];
  /** Requests for another machine. They are refused, and a test should find none. */
  strayRequests: string[];
}

const localHosts = new Set(["127.0.0.1", "localhost", "[::1]"]);

const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--disable-dev-shm-usage",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
  "--font-render-hinting=none",
];

/** Starts an installed Chromium, Chrome or Edge. Throws where there is none: a test that needs one must not pass without. */
export async function openBrowser(): Promise<TestBrowser> {
  const userDataDir = await mkdtemp(join(tmpdir(), "bimetal-browser-"));
  const browser = await launch({ executablePath: findBrowser(), headless: true, args: flags, userDataDir });
  return {
    openPage: async () => watch(await browser.newPage()),
    close: async () => {
      await browser.close();
      await rm(userDataDir, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** One browser for all tests of a file; gives the way to open a page in it. */
export function browserOfFile(): () => Promise<WatchedPage> {
  let browser: TestBrowser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());
  return () => browser.openPage();
}

async function watch(page: Page): Promise<WatchedPage> {
  const complaints: string[] = [];
  const strayRequests: string[] = [];
  page.on("console", (message: ConsoleMessage) => {
    if (message.type() === "error") complaints.push(`${message.text()} ${message.location().url ?? ""}`.trim());
  });
  page.on("pageerror", (error) => complaints.push(error instanceof Error ? error.message : String(error)));
  page.on("request", (request: HTTPRequest) => {
    const { protocol, hostname } = new URL(request.url());
    const isLocal = !protocol.startsWith("http") || localHosts.has(hostname);
    if (!isLocal) strayRequests.push(request.url());
    void (isLocal ? request.continue() : request.abort("blockedbyclient"));
  });
  await page.setRequestInterception(true);
  return { page, complaints, strayRequests };
}
