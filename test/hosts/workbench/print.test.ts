import { visits } from "./visits";

// Explanations printed from the built workbench: one page each, whatever the paper.

const visit = visits();

/** Opens a workbook of the examples on its first answer, explained and typeset. */
const explained = async (workbook: string) => {
  const person = await visit(`examples/${workbook}`);
  await person.page.waitForSelector(".pane-mathematics math");
  return person;
};

test.each([
  ["test-log.xlsx", "TRIP.VERDICT"],
  ["panel-estimate.xlsx", "ENCLOSURE.PANEL"],
  ["breaker-study.xlsx", "THERMAL.FIT"],
])("the first answer of %s, by %s, fits one page of A4 and one of Letter", async (workbook, name) => {
  const { page } = await explained(workbook);
  expect(await page.$eval("#pane", (pane) => pane.textContent)).toContain(`BIMETAL.${name}`);
  for (const format of ["A4", "Letter"] as const) {
    const pdf = Buffer.from(await page.pdf({ format })).toString("latin1");
    expect([format, pdf.match(/\/Type\s*\/Page\b/g)?.length]).toEqual([format, 1]);
  }
});

test("on paper stands all that matters and nothing that is pressed, in light colours, also where the host is dark", async () => {
  const { page } = await explained("test-log.xlsx");
  await page.evaluate(() => {
    document.documentElement.style.colorScheme = "dark";
  });
  await page.emulateMediaType("print");
  const seen = (selector: string) =>
    page.$$eval(selector, (elements) => elements.map((element) => element.checkVisibility()));
  const parts = ".pane-answer, .pane-drawing, .pane-cautions, .pane-inputs, .pane-steps, .pane-sources, .pane-on-paper";
  expect(await seen(parts)).toEqual(Array.from({ length: 7 }, () => true));
  expect(await page.$eval(".pane-on-paper", (title) => title.textContent)).toBe("Cell S2, sheet Log");
  expect(new Set(await seen("button:not(.pane-go), input, summary, #grid"))).toEqual(new Set([false]));
  expect(await page.$eval("html", (root) => getComputedStyle(root).colorScheme)).toBe("light");
  expect(await page.$eval(".pane", (pane) => getComputedStyle(pane).backgroundColor)).toBe("rgba(0, 0, 0, 0)");
});

test("the Print button opens the browser's own dialogue, and says so where a host lets nothing be printed", async () => {
  const { page } = await explained("test-log.xlsx");
  const press = () => page.locator("::-p-xpath(//button[.='Print'])").click();
  await page.evaluate(() => {
    window.print = () => window.dispatchEvent(new Event("beforeprint"));
  });
  await press();
  expect(await page.$eval(".pane-said", (said) => said.textContent)).toBe("");
  await page.evaluate(() => {
    window.print = () => {};
  });
  await press();
  const said = () => document.querySelector(".pane-said")?.textContent?.startsWith("Nothing was printed");
  await page.waitForFunction(said, { timeout: 5000 });
});
