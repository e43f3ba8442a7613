import { setTimeout as pause } from "node:timers/promises";
import axe from "axe-core";
import type { Page } from "puppeteer-core";
import { insertAction } from "../../../src/hosts/excel/ribbon";
import { openBrowser, type TestBrowser, type WatchedPage } from "../../support/browser";
import { serveBuiltPages } from "./built-pages";
import { ExcelHost } from "./excel-host";
import { ScriptedWorkbook } from "./scripted-workbook";

// The built add-in in a browser that takes itself for a pane of Excel: office.js, functions, port and pane together.

let browser: TestBrowser;
let pages: { address: string; close(): void };

beforeAll(async () => {
  [browser, pages] = await Promise.all([openBrowser(), serveBuiltPages()]);
});
afterAll(async () => {
  await browser.close();
  pages.close();
});

const cell = (address: string, formula: string, value: unknown) => ({
  "GetActiveCell()": {
    Address: address,
    Formulas: [[formula]],
    Values: [[value]],
    ValueTypes: [[typeof value === "number" ? "Double" : "String"]],
    RowIndex: 1,
    ColumnIndex: 5,
  },
});
const asking = '=BIMETAL.TRIP.RANGE(51,20,"C")';
const spilled = {
  "GetActiveCell().GetSpillParentOrNullObject()": null,
  "GetActiveCell().GetSpillingToRangeOrNullObject()": { Address: "Log!F2:G2" },
};

interface Pane extends WatchedPage {
  readonly host: ExcelHost;
  text(): Promise<string>;
  shows(words: string): Promise<void>;
}

/** As much of the host as office.js asks for on its way to Office.onReady, by the names of its questions. */
const hostFacts = ({ ground = "#FFFFFF", excelApi = "1.15" }): Record<string, unknown> => ({
  GetAppType: 1,
  GetAppVersionMajor: 16,
  GetAppVersionMinor: 1,
  GetSolutionToken: '<t aid="add-in" oid="person"/>',
  GetFeaturesForSolution: "{}",
  GetSupportedMatrix: JSON.stringify({ ExcelApi: excelApi, CustomFunctionsRuntime: "1.3", CustomFunctions: "1.7" }),
  // A colour is a number here, blue first; a grey is the same either way.
  GetOfficeThemeInfo: JSON.stringify({ bodyBackgroundColor: Number.parseInt(ground.slice(1), 16) }),
});

/** Opens the pane as Excel on Windows does: the host's name in the address, a bridge for messages, facts about the host. */
const openInExcel = async (
  objects: Record<string, object | null>,
  facts: { ground?: string; excelApi?: string } = {},
  from = pages.address,
): Promise<Pane> => {
  const watched = await browser.openPage();
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
  await page.setViewport({ width: 350, height: 700 });
  await page.goto(`${from}/taskpane.html?_host_Info=Excel$Win32$16.01$en-US$$$$0`);
  const shows = async (words: string) => {
    // Quantities are held together by spaces that do not break.
    const isShown = (wanted: string) => document.body.textContent?.replace(/\s+/g, " ").includes(wanted);
    await page.waitForFunction(isShown, { timeout: 10_000 }, words);
  };
  return { ...watched, host, shows, text: () => textOf(page) };
};

const textOf = (page: Page): Promise<string> =>
  page.$eval("#pane", (pane) => pane.textContent?.replace(/\s+/g, " ") ?? "");

interface Bridged {
  _richApiNativeBridge: { sendMessageToHost(text: string): void; onMessageFromHost?(text: string): void };
  tellExcel(text: string): void;
  external: { GetContext(): unknown };
}

test("the pane explains the selected cell, with no complaint and no request to anywhere", async () => {
  const pane = await openInExcel({ ...cell("Log!F2", asking, 1), ...spilled });
  await pane.shows("2.55");
  const text = await pane.text();
  expect(text).toContain(asking);
  expect(text).toContain("60 s");
  expect(text).toMatch(/IEC 60898-1/);
  expect(pane.strayRequests).toEqual([]);
  // office.js looks for its telemetry, which is not served, and goes on without.
  expect(pane.complaints.filter((complaint) => !complaint.includes("office/telemetry/oteljs_agave.js"))).toEqual([]);
});

test("a function called by Excel is answered, and its cell is explained from what it was given", async () => {
  const pane = await openInExcel({
    ...cell("Log!D2", "=BIMETAL.CONTACT.WATTS(B2*1,C2*1)", 3.2),
    "GetActiveCell().GetSpillParentOrNullObject()": null,
    "GetActiveCell().GetSpillingToRangeOrNullObject()": null,
  });
  await pane.shows("Cell D2");
  const [reply] = await pane.host.callAll([{ id: "CONTACT.WATTS", handed: [[[20]], [[0.16]]], address: "Log!D2" }]);
  expect(reply?.value).toEqual([[3.2]]);
  pane.host.tell("calculated");
  await pane.shows("The pole makes 3.2 W of heat at 20 A.");
});

test("where the pane's own part does not come, the functions answer all the same and a sentence says so", async () => {
  const lacking = await serveBuiltPages(/^\/pane\./);
  const pane = await openInExcel({ ...cell("Log!F2", asking, 1), ...spilled }, {}, lacking.address);
  await pane.shows("The pane could not be loaded: close it and open it again.");
  const [reply] = await pane.host.callAll([{ id: "CONTACT.WATTS", handed: [[[20]], [[0.16]]], address: "Log!D2" }]);
  expect(reply?.value).toEqual([[3.2]]);
  lacking.close();
});

test("the pane has no faults of accessibility and stays within its width", async () => {
  const pane = await openInExcel({ ...cell("Log!F2", asking, 1), ...spilled });
  await pane.shows("2.55");
  await pane.page.evaluate(axe.source);
  const violations = await pane.page.evaluate(async () => {
    const { axe: inPage } = window as unknown as { axe: typeof axe };
    const tags = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"];
    const found = await inPage.run({ runOnly: { type: "tag", values: tags } });
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  });
  expect(violations).toEqual([]);
  const excess = await pane.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(excess).toBeLessThanOrEqual(0);
});

test("the pane follows Excel's dark theme", async () => {
  const pane = await openInExcel({ ...cell("Log!F2", asking, 1), ...spilled }, { ground: "#262626" });
  await pane.shows("Cell F2");
  expect(await pane.page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe("dark");
});

test("the ribbon's Insert shows the list of functions, from which one goes into the selected cell", async () => {
  const pane = await openInExcel({ ...cell("Log!F2", "", ""), ...spilled });
  await pane.shows("Cell F2");
  pane.host.press(insertAction);
  await pane.shows("Find a function by what it is about");
  await pane.page.locator("::-p-text(TRIP.CHARACTERISTICS)").click();
  await pane.page.locator("::-p-text(Insert into Log!F2)").click();
  const put = 'GetActiveCell().Formulas = [["=BIMETAL.TRIP.CHARACTERISTICS()"]]';
  for (let tries = 0; tries < 300 && !pane.host.workbook?.done.includes(put); tries++) await pause(10);
  expect(pane.host.workbook?.done).toContain(put);
});

test("an Excel that cannot tell spills is told to be too old", async () => {
  const pane = await openInExcel({ ...cell("Log!F2", asking, 1), ...spilled }, { excelApi: "1.11" });
  await pane.shows("This Excel is too old for the pane, which needs Excel 2021 or Microsoft 365.");
});

test("outside Excel the page is the add-in's help", async () => {
  const { page, strayRequests } = await browser.openPage();
  await page.goto(`${pages.address}/taskpane.html`);
  await page.waitForFunction(() => "Office" in window);
  expect(await textOf(page)).toContain("When a cell shows an error");
  expect(strayRequests).toEqual([]);
});
