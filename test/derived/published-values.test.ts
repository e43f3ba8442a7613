import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { DefaultTreeAdapterTypes as Tree } from "parse5";
import { referencePages } from "../../src/derived/reference";
import { referredDocuments } from "../../src/derived/reference-documents";
import { tableAnchor } from "../../src/derived/reference-sources";
import { pageOf } from "../../src/derived/reference-text";
import { catalogue } from "../../src/functions";
import { citation, type PublishedTable, type Source, standingsOf } from "../../src/metrology/source";
import { attribute, plain, type Read, read, textOf, within } from "./read-page";

// The page of published values against the trade itself: every table that a trade folder holds is on it, as it stands.

const root = resolve(__dirname, "../..");
const trade = ["thermal", "contact", "trip", "inrush", "enclosure", "bench"];

const isSource = (value: object): value is Source => "document" in value && "standing" in value;

/** Every source that a module of the trade exports, by itself or inside something else. */
const sourcesIn = (value: unknown, seen: Set<unknown>): Source[] => {
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  return [...(isSource(value) ? [value] : []), ...Object.values(value).flatMap((part) => sourcesIn(part, seen))];
};

const seen = new Set<unknown>();
const exported = trade.flatMap((room) =>
  readdirSync(join(root, "src", room)).flatMap((file) => sourcesIn(require(join(root, "src", room, file)), seen)),
);
const tablesOf = (sources: readonly Source[]): PublishedTable[] => [
  ...new Set(sources.flatMap(({ tables = [] }) => tables)),
];

const onPage = referredDocuments(catalogue).flatMap(({ tables }) => tables);
const pages = referencePages(catalogue);
const trees = new Map(Object.entries(pages).map(([name, html]) => [name, read(html)]));
const treeOf = (name: string): Read => trees.get(name) as Read;
const page = treeOf("published-values.html");

/** The part of the page that shows a table: the element around its heading. */
const shownAt = (anchor: string): Tree.Element => {
  const heading = page.elements.find((one) => attribute(one, "id") === anchor);
  if (!heading?.parentNode) throw new Error(`nothing is shown at ${anchor}`);
  return heading.parentNode as Tree.Element;
};

test("every table of values in the trade is reached from the functions, and no other is", () => {
  const titles = (tables: Iterable<PublishedTable>) =>
    [...tables].map(({ title, guard }) => `${title}, ${guard}`).sort();
  expect(titles(onPage.map(({ table }) => table))).toEqual(titles(tablesOf(exported)));
  expect(new Set(onPage.map(({ table }) => table))).toEqual(new Set(tablesOf(exported)));
  expect(onPage.length).toBeGreaterThan(50);
});

test("a source of the trade has values, but for these rules, laws and procedures", () => {
  const without = exported.filter(({ tables }) => tables === undefined).map(citation);
  expect([...new Set(without)].sort()).toEqual([
    "29 CFR 1910.333, 1910.334(b)(2), low voltage that burns; no closing again and again: corroborated",
    "IEC 60255-149 (2013), thermal equation, cold and hot curve: t = τ·ln((I² − I₀²)/(I² − Iₚ²)): corroborated",
    "NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.2, maximum likelihood with censored times: handbook",
    "NRC Information Notice 93-64, what exercising does to late breakers: corroborated",
    "Statistical Methods for Reliability Data (1998), chapter 8, likelihood-ratio intervals: from memory, compare with the page",
    "TM 5-683, 5-5 (look, operate, insulation): corroborated",
  ]);
});

describe.each(onPage.map((one) => [`${one.source.document}: ${one.table.title}`, one] as const))("%s", (_, one) => {
  const { table, source, functions } = one;
  const anchor = tableAnchor(source, table);
  const part = shownAt(anchor);
  const standings = standingsOf(table, source);
  const differs = new Set(standings).size > 1;

  test("has a cell for each column and a standing for each row", () => {
    expect(table.rows.length).toBeGreaterThan(0);
    for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
    expect(standings).toHaveLength(table.rows.length);
  });

  test("is shown row by row, with how each row stands", () => {
    const marks = differs ? standings : [];
    const rows = within(part)
      .filter(({ tagName }) => tagName === "tr")
      .slice(1);
    const cells = table.rows.map((row, i) => [...row.map((entry) => String(entry ?? "–")), ...marks.slice(i, i + 1)]);
    if (table.columns.length === 1)
      expect(plain(textOf(part))).toContain(`${cells.join(", ")} ${table.columns[0]?.[1]}`);
    else
      expect(
        rows.map((row) =>
          within(row)
            .filter(({ tagName }) => tagName === "td")
            .map(textOf),
        ),
      ).toEqual(cells);
    if (!differs)
      expect(
        within(part)
          .filter((two) => attribute(two, "class")?.startsWith("standing"))
          .map(textOf),
      ).toEqual([standings[0]]);
  });

  test("names a test that holds the second reader's copy and names the document", () => {
    expect(plain(textOf(part))).toContain(table.guard);
    expect(table.guard).toMatch(/^test\/.*\.test\.ts$/);
    expect(existsSync(join(root, table.guard))).toBe(true);
    const told = readFileSync(join(root, table.guard), "utf8");
    expect({ table: table.title, isNamed: told.includes(source.document) }).toEqual({
      table: table.title,
      isNamed: true,
    });
  });

  test("leads to the functions that rest on it, and they lead back", () => {
    for (const name of functions) {
      expect(within(part).some((two) => attribute(two, "href") === pageOf(name))).toBe(true);
      const { elements } = treeOf(pageOf(name));
      // An explanation of an example other than the first names sources that stand on no page of their own.
      const cited = catalogue.find((definition) => definition.name === name)?.sources ?? [];
      if (tablesOf(cited).includes(table))
        expect(elements.some((two) => attribute(two, "href") === `published-values.html#${anchor}`)).toBe(true);
    }
    expect(functions.size).toBeGreaterThan(0);
  });
});

// Read off the documents' columns by a second reader: nothing has changed places.
test.each([
  ["iec-60898-1-trip-times-of-b-c-and-d", ["c", "above 32 A up to 63 A", "2.55", "cold", "1", "120"]],
  ["iec-60898-1-magnetic-trip-tests-d-and-e-ranges-of-table-2", ["C", "5", "10", "0.1"]],
  ["iec-60947-2-trip-times", ["above 63 A", "1.3", "straight after", "–", "7200"]],
  ["ul-489-longest-trip-times-at-2", ["above 30 A up to 50 A", "240", "corroborated"]],
  ["ansi-neta-ats-and-mts-longest-time-to-trip-at-300-of-the-rating", ["401", "600", "–", "450"]],
  [
    "nfpa-70-full-load-currents-three-phase-squirrel-cage-and-wound-rotor-motors",
    ["20", "–", "62.1", "59.4", "54", "27", "22"],
  ],
  ["iec-60898-1-largest-power-loss-of-one-pole-at-the-rating", ["25", "4.5"]],
  ["iec-tr-60890-surface-factors", ["roof", "1.4", "0.7"]],
])("%s holds the row %p", (anchor, row) => {
  const rows = within(shownAt(anchor)).filter(({ tagName }) => tagName === "tr");
  const cells = rows.map((one) =>
    within(one)
      .filter(({ tagName }) => tagName === "td")
      .map(textOf),
  );
  expect(cells).toContainEqual(row);
});

test("a source that is from memory says so wherever it is listed", () => {
  const linesOf = (name: string) =>
    treeOf(name)
      .elements.filter(({ tagName }) => tagName === "li" || tagName === "tr")
      .map((one) => plain(textOf(one)));
  const published = linesOf("published-values.html");
  for (const { name, sources } of catalogue) {
    const own = linesOf(pageOf(name));
    for (const source of sources.filter(({ standing }) => standing === "from memory")) {
      const place = plain(source.place ?? source.document);
      for (const lines of source.tables ? [own] : [own, published])
        expect(lines.some((line) => line.includes(place) && line.includes("from memory"))).toBe(true);
    }
  }
});
