import type { Page } from "puppeteer-core";
import { browserOfFile, type WatchedPage } from "../../support/browser";
import { type BuiltPages, serveBuiltPages } from "./built-pages";
import { ExcelHost } from "./excel-host";
import { ScriptedWorkbook } from "./scripted-workbook";

/** The built add-in's page, open as Excel's pane. */
export interface PaneInExcel extends WatchedPage {
  readonly host: ExcelHost;
  text(): Promise<string>;
  shows(words: string): Promise<void>;
}

export const cell = (address: string, formula: string, value: unknown) => ({
  "GetActiveCell()": {
    Address: address,
    Formulas: [[formula]],
    Values: [[value]],
    ValueTypes: [[typeof value === "number" ? "Double" : "String"]],
    RowIndex: 1,
    ColumnIndex: 5,
  },
});

/** The selected cell begins an answer of two cells. */
export const spilled = {
  "GetActiveCell().GetSpillParentOrNullObject()": null,
  "GetActiveCell().GetSpillingToRangeOrNullObject()": { Address: "Log!F2:G2" },
};

interface Facts {
  readonly ground?: string;
  readonly excelApi?: string;
  /** What is run in the page before any of its own scripts. */
  readonly before?: (page: Page) => Promise<unknown>;
}

/** As much of the host as office.js asks for on its way to Office.onReady, by the names of its questions. */
const hostFacts = ({ ground = "#FFFFFF", excelApi = "1.15" }: Facts): Record<string, unknown> => ({
  GetAppType: 1,
  GetAppVersionMajor: 16,
  GetAppVersionMinor: 1,
  GetSolutionToken: '<t aid="add-in" oid="person"/>',
  GetFeaturesForSolution: "{}",
  GetSupportedMatrix: JSON.stringify({ ExcelApi: excelApi, CustomFunctionsRuntime: "1.3", CustomFunctions: "1.7" }),
  // A colour is a number here, blue first; a grey is the same either way.
  GetOfficeThemeInfo: JSON.stringify({ bodyBackgroundColor: Number.parseInt(ground.slice(1), 16) }),
});

/** Opens the page at `address` as Excel on Windows does: the host's name in the address, a bridge for messages, facts about the host. */
export const openPaneInExcel = async (
  watched: WatchedPage,
  address: string,
  objects: Record<string, object | null>,
  facts: Facts = {},
): Promise<PaneInExcel> => {
  const { page } = watched;
  const send = (message: object) =>
    page.evaluate(
      (text) => (window as unknown as Bridged)._richApiNativeBridge.onMessageFromHost?.(text),
      JSON.stringify(message),
    );
  const host = new ExcelHost(send, new ScriptedWorkbook({ Worksheets: {}, ...objects }));
  await page.exposeFunction("tellExcel", (text: string) => host.receive(text));
  await page.evaluateOnNewDocument((known) => {
    const inside = window as unknown as Bridged;
    inside._richApiNativeBridge = { sendMessageToHost: (text) => inside.tellExcel(text) };
    const noSettings = new Proxy({}, { get: () => () => {} });
    inside.external.GetContext = () =>
      new Proxy({}, { get: (_, asked: string) => () => (asked === "GetSettings" ? noSettings : (known[asked] ?? "")) });
  }, hostFacts(facts));
  await facts.before?.(page);
  await page.setViewport({ width: 350, height: 700 });
  await page.goto(`${address}/taskpane.html?_host_Info=Excel$Win32$16.01$en-US$$$$0`);
  const shows = async (words: string) => {
    // Quantities are held together by spaces that do not break.
    const isShown = (wanted: string) => document.body.textContent?.replace(/\s+/g, " ").includes(wanted);
    await page.waitForFunction(isShown, { timeout: 10_000 }, words);
  };
  return { ...watched, host, shows, text: () => paneText(page) };
};

export const paneText = (page: Page): Promise<string> =>
  page.$eval("#pane", (pane) => pane.textContent?.replace(/\s+/g, " ") ?? "");

/** For the tests of a file: the pages of the built add-in, and the way to open the pane in one browser. */
export const panesInExcel = () => {
  const openPage = browserOfFile();
  let pages: BuiltPages;
  beforeAll(async () => {
    pages = await serveBuiltPages();
  });
  afterAll(() => pages.close());
  return {
    openPage,
    address: () => pages.address,
    /** On other pages than those of the whole add-in where `at` says so. */
    openPane: async (objects: Record<string, object | null>, facts: Facts = {}, at = pages.address) =>
      openPaneInExcel(await openPage(), at, objects, facts),
  };
};

interface Bridged {
  _richApiNativeBridge: { sendMessageToHost(text: string): void; onMessageFromHost?(text: string): void };
  tellExcel(text: string): void;
  external: { GetContext(): unknown };
}
