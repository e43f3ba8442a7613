import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import pagesByName from "../../../src/hosts/pane/reference/pages";
import { browserOfFile } from "../../support/browser";
import { faults } from "../../support/faults";

// The reference pages with their style sheet, opened as files in a browser.

const folder = mkdtempSync(join(tmpdir(), "bimetal-reference-"));
const pane = join(__dirname, "../../../src/hosts/pane");
const openPage = browserOfFile();

beforeAll(() => {
  for (const [name, html] of Object.entries(pagesByName())) writeFileSync(join(folder, name), html);
  const styles = ["look/colours.css", "reference/reference.css"].map((file) => readFileSync(join(pane, file), "utf8"));
  writeFileSync(join(folder, "reference.css"), styles.join("\n"));
  writeFileSync(join(folder, "favicon.svg"), readFileSync(join(pane, "icons/bimetal.svg")));
});
afterAll(() => rmSync(folder, { recursive: true }));

const open = async (name: string, features: Record<string, string>, width = 1100) => {
  const watched = await openPage();
  await watched.page.setViewport({ width, height: 900 });
  await watched.page.emulateMediaFeatures(Object.entries(features).map(([key, value]) => ({ name: key, value })));
  await watched.page.goto(pathToFileURL(join(folder, name)).href);
  return watched;
};

test.each(["trip.verdict.html", "enclosure.panel.html", "published-values.html"])(
  "%s has no faults of accessibility, light or dark, and the policy of the page lets its styles in",
  async (name) => {
    for (const scheme of ["light", "dark"]) {
      const { page, complaints, strayRequests } = await open(name, { "prefers-color-scheme": scheme });
      expect(await faults(page, { resultTypes: ["violations"], preload: false })).toEqual([]);
      const [paper, ink] = await page.evaluate(() => {
        const { color } = getComputedStyle(document.body);
        return [getComputedStyle(document.documentElement).backgroundColor, color];
      });
      // The lightness of paper and ink change places.
      expect(lightness(paper ?? "") > lightness(ink ?? "")).toBe(scheme === "light");
      expect({ complaints, strayRequests }).toEqual({ complaints: [], strayRequests: [] });
      await page.close();
    }
  },
);

test.each(["index.html", "trip.verdict.html", "enclosure.panel.html", "published-values.html"])(
  "%s fits a window of 320 px: what is wider scrolls by itself",
  async (name) => {
    const { page } = await open(name, {}, 320);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    await page.close();
  },
);

test("cautions are in sight, on paper too", async () => {
  const { page } = await open("trip.verdict.html", {});
  for (const media of ["screen", "print"] as const) {
    await page.emulateMediaType(media);
    expect(await page.$$eval(".cautions li", (items) => items.map((item) => item.checkVisibility()))).toEqual([
      true,
      true,
      true,
      true,
    ]);
  }
  await page.close();
});

test("in a contrast theme the boxes of cautions and answer still have their edges", async () => {
  const { page } = await open("trip.verdict.html", {});
  const session = await page.createCDPSession();
  await session.send("Emulation.setEmulatedMedia", { features: [{ name: "forced-colors", value: "active" }] });
  for (const box of [".cautions", ".answer", ".standing"]) {
    const edge = await page.$eval(box, (element) => {
      const { borderLeftStyle, borderLeftWidth, borderLeftColor, backgroundColor } = getComputedStyle(element);
      return { borderLeftStyle, borderLeftWidth, isSeen: borderLeftColor !== backgroundColor };
    });
    expect([box, edge]).toMatchObject([box, { isSeen: true }]);
    expect(Number.parseFloat(edge.borderLeftWidth)).toBeGreaterThanOrEqual(1);
  }
  await page.close();
});

test.each(["trip.verdict.html", "trip.range.html", "contact.watts.html"])("%s prints on two pages", async (name) => {
  const { page } = await open(name, {});
  const pdf = Buffer.from(await page.pdf({ format: "A4" })).toString("latin1");
  expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(2);
  await page.close();
});

test("published values fit the width of a sheet of paper, table by table", async () => {
  // A4 without the page's own margins: 182 mm at 96 pixels to the inch.
  const { page } = await open("published-values.html", {}, 687);
  await page.emulateMediaType("print");
  const wider = await page.$$eval(
    "main *",
    (all) =>
      all.filter((one) => one.scrollWidth > one.clientWidth && getComputedStyle(one).display !== "inline").length,
  );
  expect(wider).toBe(0);
  expect(await page.$$eval(".values", (all) => all.length)).toBeGreaterThan(50);
  await page.close();
});

/** The sum of red, green and blue of "rgb(251, 249, 244)". */
const lightness = (colour: string): number =>
  (colour.match(/[\d.]+/g) ?? []).slice(0, 3).reduce((sum, part) => sum + Number(part), 0);
