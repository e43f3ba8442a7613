import { faults } from "../../support/faults";
import { cell, panesInExcel, spilled } from "./pane-in-excel";

// Ready sheets in the built add-in, in a browser that takes itself for a pane of Excel.

const excel = panesInExcel();

test("a ready sheet goes from the pane into the workbook, also by keyboard", async () => {
  const pane = await excel.openPane({
    ...cell("Log!F2", "", ""),
    ...spilled,
    Worksheets: { _Items: [{ Name: "Log" }, { Name: "Test log" }] },
    Tables: { _Items: [] },
    Names: { _Items: [] },
    "Worksheets.Add(Test log 2)": { Id: "{9}" },
  });
  const { page, host } = pane;
  await pane.shows("Cell F2");
  await page.click("#pane-tab-Sheets");
  await pane.shows("a chart: trials in the band of a sound breaker");
  expect(await faults(page)).toEqual([]);
  await page.focus('[aria-label="Insert Test log"]');
  await page.keyboard.press("Enter");
  await pane.shows("It stands in the new sheet “Test log 2”. Nothing else was touched.");
  const done = host.workbook?.done ?? [];
  expect(done).toContain('Worksheets.Add(Test log 2).Tables.Add(A1:P201,true).Name = "Trials"');
  expect(done.filter((one) => one.includes("Formulas")).join()).toContain("BIMETAL.TRIP.VERDICT(H2:H201");
  expect(pane.strayRequests).toEqual([]);
});

test("what Excel refuses is told beside the sheet that was asked for", async () => {
  const pane = await excel.openPane({ ...cell("Log!F2", "", ""), ...spilled });
  await pane.shows("Cell F2");
  await pane.page.click("#pane-tab-Sheets");
  await pane.shows("Bench plan");
  if (pane.host.workbook) pane.host.workbook.refusal = "AccessDenied";
  await pane.page.click('[aria-label="Insert Bench plan"]');
  await pane.shows("The workbook or the sheet is protected: unprotect it, then try again.");
});
