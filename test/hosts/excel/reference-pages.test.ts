import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import functionsJson from "../../../src/hosts/excel/functions-json";
import pagesByName from "../../../src/hosts/pane/reference/pages";

// The reference pages as the add-in is built with them, and Excel's way to them.

const built = join(__dirname, "../../../dist/excel");

test("the add-in is built with every reference page, its style sheet and its icon", () => {
  for (const [name, html] of Object.entries(pagesByName()))
    expect([name, readFileSync(join(built, "reference", name), "utf8") === html]).toEqual([name, true]);
  expect(readFileSync(join(built, "reference/reference.css"), "utf8")).toMatch(/--paper:.*\.cautions \{/s);
  expect(existsSync(join(built, "reference/favicon.svg"))).toBe(true);
});

test("Excel is led to a function's page where the build is served, by https", () => {
  const { functions } = JSON.parse(readFileSync(join(built, "functions.json"), "utf8"));
  for (const { helpUrl } of functions) {
    const { protocol, pathname } = new URL(helpUrl);
    expect(protocol).toBe("https:");
    expect([pathname, existsSync(join(built, pathname))]).toEqual([pathname, true]);
  }
  expect(functions.length).toBeGreaterThan(40);
});

test("a build for another place leads there", () => {
  const [first] = functionsJson("https://example.org/bimetal/reference").functions;
  expect(first?.helpUrl).toBe("https://example.org/bimetal/reference/trip.range.html");
});
