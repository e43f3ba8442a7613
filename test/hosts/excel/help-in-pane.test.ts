import { faults } from "../../support/faults";
import { serveBuiltPages } from "./built-pages";
import { cell, type PaneInExcel, panesInExcel, spilled } from "./pane-in-excel";

// The reference inside the built pane, in a browser that takes itself for a pane of Excel, by keyboard alone.

const excel = panesInExcel();

const open = async (address?: string): Promise<PaneInExcel> => {
  const selected = cell("Log!F2", '=BIMETAL.TRIP.RANGE(51,20,"C")', 1);
  const pane = await excel.openPane({ ...selected, ...spilled }, {}, address);
  await pane.shows("2.55");
  return pane;
};

/** Waits until what has the keyboard, also inside the reference, is called so. */
const reaches = ({ page }: PaneInExcel, name: string) =>
  page.waitForFunction(
    (wanted) => {
      const outside = document.activeElement;
      const focused = outside?.shadowRoot?.activeElement ?? outside;
      return (focused?.getAttribute("aria-label") ?? focused?.textContent) === wanted;
    },
    { timeout: 5000 },
    name,
  );

/** Presses Tab until something called so has the keyboard. */
const tabTo = async (pane: PaneInExcel, name: string) => {
  for (let presses = 0; presses < 80; presses++) {
    await pane.page.keyboard.press("Tab");
    const focused = await pane.page.evaluate(() => {
      const outside = document.activeElement;
      return (outside?.shadowRoot?.activeElement ?? outside)?.textContent;
    });
    if (focused === name) return;
  }
  throw new Error(`Tab never came to "${name}".`);
};

const textOf = ({ page }: PaneInExcel): Promise<string> =>
  page.$eval(".pane-help-page", ({ shadowRoot }) => (shadowRoot?.textContent ?? "").replace(/\s+/g, " "));
const excessOf = ({ page }: PaneInExcel): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
/** office.js looks for its telemetry, which is not served; axe tries a style of its own. */
const complaintsOf = ({ complaints }: PaneInExcel): string[] =>
  complaints.filter((complaint) => !/office\/telemetry|pptr:evaluate/.test(complaint));

test("from an explanation to the function's page, on to its published values, and back by Escape to where one was", async () => {
  const pane = await open();
  const { page } = pane;
  await page.setViewport({ width: 320, height: 600 });
  await tabTo(pane, "Help for TRIP.RANGE");
  await page.keyboard.press("Enter");
  await reaches(pane, "BIMETAL.TRIP.RANGE");
  const text = await textOf(pane);
  for (const part of [
    "Arguments",
    "the steady current through all poles",
    "Cautions",
    "Worked example",
    "corroborated",
  ])
    expect(text).toContain(part);
  expect(await excessOf(pane)).toBeLessThanOrEqual(0);
  expect(await faults(page)).toEqual([]);

  await tabTo(pane, "Trip times of B, C and D");
  await page.keyboard.press("Enter");
  await reaches(pane, "Trip times of B, C and D");
  expect(await textOf(pane)).toContain("Second copy in");
  expect(await excessOf(pane)).toBeLessThanOrEqual(0);
  expect(await faults(page)).toEqual([]);

  await page.keyboard.press("Escape");
  await reaches(pane, "Trip times of B, C and D");
  expect(await textOf(pane)).toContain("Worked example");
  await page.keyboard.press("Escape");
  await reaches(pane, "Help for TRIP.RANGE");
  expect(pane.strayRequests).toEqual([]);
  expect(complaintsOf(pane)).toEqual([]);
});

test("from a form to help and back, what was filled in is still there; and goes into the cell", async () => {
  const pane = await open();
  const { page } = pane;
  await page.focus("#pane-tab-Explain");
  await page.keyboard.press("ArrowRight");
  await tabTo(pane, "");
  await page.keyboard.type("how long to wait");
  await page.keyboard.press("Enter");
  await reaches(pane, "BIMETAL.THERMAL.REST");
  await tabTo(pane, "Fill in an example");
  await page.keyboard.press("Enter");
  const filled = await page.$$eval("#pane-panel-Functions .pane-field", (fields) =>
    fields.map((field) => (field as HTMLInputElement).value),
  );
  expect(filled.some((value) => value !== "")).toBe(true);
  await page.keyboard.down("Shift");
  await page.keyboard.press("Tab");
  await page.keyboard.up("Shift");
  await reaches(pane, "Help for THERMAL.REST");
  await page.keyboard.press("Enter");
  await reaches(pane, "BIMETAL.THERMAL.REST");
  expect(await textOf(pane)).toContain("Worked example");
  await page.keyboard.press("Escape");
  await reaches(pane, "Help for THERMAL.REST");
  const kept = await page.$$eval("#pane-panel-Functions .pane-field", (fields) =>
    fields.map((field) => (field as HTMLInputElement).value),
  );
  expect(kept).toEqual(filled);
  await tabTo(pane, "Insert into Log!F2");
  await page.keyboard.press("Enter");
  // The cell holds a formula of ours, which may be replaced.
  await pane.shows("It stands in the selected cell.");
  await page.keyboard.press("Escape");
  await page.waitForFunction(() => document.activeElement?.id === "pane-find", { timeout: 5000 });
});

test("where the reference's part does not come, a sentence says so", async () => {
  const lacking = await serveBuiltPages(/^\/help\./);
  const pane = await open(lacking.address);
  await pane.page.click("#pane-tab-Help");
  await pane.shows("The help could not be loaded: close the pane and open it again.");
  lacking.close();
});
