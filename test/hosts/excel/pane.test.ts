import { setTimeout as pause } from "node:timers/promises";
import { insertAction } from "../../../src/hosts/excel/ribbon";
import { faults } from "../../support/faults";
import { serveBuiltPages } from "./built-pages";
import { cell, panesInExcel, paneText, spilled } from "./pane-in-excel";

// The built add-in in a browser that takes itself for a pane of Excel: office.js, functions, port and pane together.

const excel = panesInExcel();

const asking = '=BIMETAL.TRIP.RANGE(51,20,"C")';

test("the pane explains the selected cell, with no complaint and no request to anywhere", async () => {
  const pane = await excel.openPane({ ...cell("Log!F2", asking, 1), ...spilled });
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
  const pane = await excel.openPane({
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
  const pane = await excel.openPane({ ...cell("Log!F2", asking, 1), ...spilled }, {}, lacking.address);
  await pane.shows("The pane could not be loaded: close it and open it again.");
  const [reply] = await pane.host.callAll([{ id: "CONTACT.WATTS", handed: [[[20]], [[0.16]]], address: "Log!D2" }]);
  expect(reply?.value).toEqual([[3.2]]);
  lacking.close();
});

test("the pane has no faults of accessibility and stays within its width", async () => {
  const pane = await excel.openPane({ ...cell("Log!F2", asking, 1), ...spilled });
  await pane.shows("2.55");
  expect(await faults(pane.page)).toEqual([]);
  const excess = await pane.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(excess).toBeLessThanOrEqual(0);
});

test("the pane follows Excel's dark theme", async () => {
  const pane = await excel.openPane({ ...cell("Log!F2", asking, 1), ...spilled }, { ground: "#262626" });
  await pane.shows("Cell F2");
  expect(await pane.page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe("dark");
});

test("the ribbon's Insert shows the list of functions, from which one goes into the selected cell", async () => {
  const pane = await excel.openPane({ ...cell("Log!F2", "", ""), ...spilled });
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
  const pane = await excel.openPane({ ...cell("Log!F2", asking, 1), ...spilled }, { excelApi: "1.11" });
  await pane.shows("This Excel is too old for the pane, which needs Excel 2021 or Microsoft 365.");
});

test("outside Excel the page is the add-in's help", async () => {
  const { page, strayRequests } = await excel.openPage();
  await page.goto(`${excel.address()}/taskpane.html`);
  await page.waitForFunction(() => "Office" in window);
  expect(await paneText(page)).toContain("When a cell shows an error");
  expect(strayRequests).toEqual([]);
});
