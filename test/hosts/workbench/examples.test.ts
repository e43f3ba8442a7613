import { join } from "node:path";
import type { ElementHandle } from "puppeteer-core";
import { openBrowser, type TestBrowser, type WatchedPage } from "../../support/browser";
import { startBench, type Visit, visit } from "./bench";

// Every example as a person opens it: the first answer, every sheet, the words its cells offer.

let browser: TestBrowser;
let bench: Awaited<ReturnType<typeof startBench>>;
let watched: WatchedPage;
let person: Visit;

beforeAll(async () => {
  [browser, bench] = await Promise.all([openBrowser(), startBench()]);
  watched = await browser.openPage();
  person = await visit(watched.page, bench.address);
});
afterAll(async () => {
  bench.stop();
  await browser.close();
});

const open = async (workbook: string) => {
  const chosen = (await watched.page.$("#chosen")) as ElementHandle<HTMLInputElement> | null;
  await chosen?.uploadFile(join("examples", workbook));
  await watched.page.waitForFunction(
    (name) => document.getElementById("file")?.textContent === name,
    { timeout: 20_000 },
    workbook,
  );
};
const goToSheet = (name: string) => watched.page.locator(`::-p-xpath(//nav//button[.="${name}"])`).click();

test.each([
  ["test-log.xlsx", "Log!S2: in range", "TRIP.VERDICT", ["Log", "Breakers", "Read me", "Try it"]],
  ["motor-starts.xlsx", "Machines!H2: 17", "INRUSH.MOTOR", ["Machines", "Starts", "Again and again", "Read me"]],
  ["breaker-study.xlsx", "Study!F2: pickup", "THERMAL.FIT", ["Study", "Questions", "Read me"]],
  ["panel-estimate.xlsx", "Board!H10: ", "ENCLOSURE.PANEL", ["Board", "Week", "Read me"]],
  [
    "lessons.xlsx",
    "'1 Two mechanisms'!C10: holds",
    "TRIP.RANGE",
    [
      "1 Two mechanisms",
      "2 Why 1.13 and 1.45",
      "3 The slow ramp",
      "4 Hot and cold",
      "5 Drop and watts",
      "6 A motor start",
      "7 A warm panel",
      "8 How sure are we",
      "Read me",
    ],
  ],
])(
  "%s opens on an answer, explained, and each of its sheets is shown without fault",
  async (workbook, first, explained, sheets) => {
    await open(workbook);
    // The numbers stand beside each workbook, worked out without this program.
    await person.shows("said", first);
    await person.shows("pane", explained);
    const tabs = await watched.page.$$eval(".shop-sheet", (all) => all.map((tab) => tab.textContent));
    expect(tabs).toEqual(sheets);
    for (const sheet of sheets) {
      await goToSheet(sheet);
      const said = /^\w+$/.test(sheet) ? `${sheet}!A1: ` : `'${sheet}'!A1: `;
      await person.shows("said", said);
      const value = (await person.text("said")).slice(said.length);
      expect(value).toMatch(/\S/);
      expect(value).not.toMatch(/^(blank|#)/);
    }
    expect(await person.faults()).toEqual([]);
    expect(watched.complaints).toEqual([]);
    expect(watched.strayRequests).toEqual([]);
  },
);
