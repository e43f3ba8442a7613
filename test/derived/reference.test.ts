import { explained } from "../../src/definition/explained";
import { type Parameter, sheetName } from "../../src/definition/parameter";
import { referencePages } from "../../src/derived/reference";
import { pageOf } from "../../src/derived/reference-text";
import { catalogue } from "../../src/functions";
import { attribute, plain, type Read, read, shown, textOf } from "./read-page";

// The pages of the whole catalogue, read with a parser of the HTML standard.

const pages = referencePages(catalogue);
const names = Object.keys(pages);

const trees = new Map(Object.entries(pages).map(([name, html]) => [name, read(html)]));
const treeOf = (name: string): Read => trees.get(name) as Read;

test("there is a page for every function of the catalogue, and two that lead to them", () => {
  expect(names.sort()).toEqual(
    [...catalogue.map(({ name }) => pageOf(name)), "index.html", "published-values.html"].sort(),
  );
});

describe.each(catalogue.map((definition) => [definition.name, definition] as const))(
  "the page of %s",
  (_, definition) => {
    const { text } = treeOf(pageOf(definition.name));

    test("holds its summary and all its cautions", () => {
      for (const said of [definition.summary, ...definition.cautions]) expect(text).toContain(shown(said));
    });

    test("holds every argument: name, unit, meaning, what holds when it is left out, the words it knows", () => {
      for (const [key, parameter] of Object.entries(definition.parameters as Record<string, Parameter>)) {
        const { unit, meaning, otherwise, choices = [] } = parameter;
        expect(text).toContain(plain(`${sheetName(key)}${unit}${shown(meaning)}`));
        if (otherwise !== undefined) expect(text).toContain(shown(otherwise));
        for (const word of choices) expect(text).toContain(`"${word}"`);
      }
    });

    test("holds every answer: name, unit, meaning", () => {
      for (const { name, unit, meaning } of definition.results)
        expect(text).toContain(plain(`${name}${unit}${shown(meaning)}`));
    });

    test("holds every source with its standing", () => {
      for (const { document: title, edition, place, standing } of definition.sources) {
        for (const part of [edition ? `${title} (${edition})` : title, place ?? ""])
          expect(text).toContain(plain(part));
        expect(text).toContain(standing);
      }
    });

    test("tells its first example step by step, with the cautions of that answer, and how each example was worked", () => {
      const [first] = definition.examples;
      const told = explained(
        definition,
        (first?.cells ?? []).map((cell) => cell ?? undefined),
      );
      for (const said of [told.answer, ...told.cautions]) expect(text).toContain(shown(said));
      for (const { sentence, plain: line } of told.steps)
        expect(text).toContain(shown(line ? `${sentence}:${line}` : sentence));
      for (const { worked } of definition.examples) expect(text).toContain(shown(worked));
    });
  },
);

test("a formula stands as it is typed: array constants down and across, what is left out empty", () => {
  const { text } = treeOf("enclosure.panel.html");
  expect(text).toContain('=BIMETAL.ENCLOSURE.PANEL({20;20},4,{20;10},0.6,0.4,0.12,"wall",40,,"flat")');
  expect(treeOf("trip.range.html").text).toContain(
    "=BIMETAL.TRIP.RANGE(current, rating, characteristic, [preload], [ambient], [setting], [trip rise])",
  );
  expect(treeOf("explain.html").text).toContain("=BIMETAL.EXPLAIN(name, [arguments …])");
});

test("an answer of several rows is a table of them", () => {
  const { elements } = treeOf("enclosure.panel.html");
  const table = elements.find((element) => element.tagName === "table" && attribute(element, "class") === "cells");
  const cells = read(
    `<!DOCTYPE html>${pages["enclosure.panel.html"]?.split('class="cells"')[1]?.split("</table>")[0]}`,
  );
  expect(table).toBeDefined();
  // 5 ÷ (5.5 × 0.5328) K above 40 °C, and 20 A × √((110 − 41.70625) ÷ 80), by hand.
  expect(cells.text).toMatch(/41\.7063/);
  expect(cells.text).toMatch(/18\.4789.*18\.4789/);
});

test("the index has every function once, with its summary, under its room", () => {
  const { elements, text } = treeOf("index.html");
  for (const { name, summary } of catalogue) {
    const links = elements.filter((one) => attribute(one, "href") === pageOf(name));
    expect(links.map(textOf)).toContain(name);
    expect(text).toContain(`${name}${shown(summary)}`);
  }
});

test("published values lists every source of every function, and leads to the function", () => {
  const { text, elements } = treeOf("published-values.html");
  for (const { name, sources } of catalogue) {
    for (const { document: title, place } of sources) {
      expect(text).toContain(plain(title));
      if (place) expect(text).toContain(shown(place));
    }
    expect(elements.some((one) => attribute(one, "href") === pageOf(name))).toBe(true);
  }
});

/** Elements that are not closed where they were opened, so that a parser mends the page. */
const leftOpen = ({ elements }: Read): string[] =>
  elements
    .filter(({ tagName }) => !["meta", "link", "wbr"].includes(tagName))
    .filter(({ sourceCodeLocation: place }) => !place?.startTag || !place.endTag)
    .map(({ tagName }) => tagName);

test("the parser finds nothing to complain of and nothing to mend", () => {
  for (const name of names) expect([name, treeOf(name).faults, leftOpen(treeOf(name))]).toEqual([name, [], []]);
});

test("the parser would complain of an attribute given twice, and mend a list in a paragraph", () => {
  const wrapped = (body: string) => read(`<!DOCTYPE html><html><head></head><body>${body}</body></html>`);
  expect(wrapped("<p class=a class=b>one</p>").faults).toEqual(["duplicate-attribute"]);
  expect(leftOpen(wrapped("<p>one<ul><li>two</li></ul></p>"))).toEqual(["p", "p"]);
});

test("ids are given once, and what is named by an id is there", () => {
  for (const name of names) {
    const { elements } = treeOf(name);
    const ids = elements.flatMap((one) => attribute(one, "id") ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const one of elements) {
      const label = attribute(one, "aria-labelledby");
      if (label) expect(ids).toContain(label);
    }
  }
});

test("every link leads to a page or a part of one", () => {
  const beside = ["reference.css", "favicon.svg"];
  for (const name of names)
    for (const one of treeOf(name).elements) {
      const href = attribute(one, "href");
      if (href === undefined) continue;
      const [path = "", anchor] = href.split("#");
      if (beside.includes(path)) continue;
      const target = trees.get(path || name);
      expect([name, href, target !== undefined]).toEqual([name, href, true]);
      if (anchor)
        expect([name, href, target?.elements.some((other) => attribute(other, "id") === anchor)]).toContain(true);
    }
});

test("no page has a script, a style of its own, or anything from another place", () => {
  for (const name of names) {
    const { elements } = treeOf(name);
    expect(elements.filter(({ tagName }) => ["script", "style", "img", "iframe", "form"].includes(tagName))).toEqual(
      [],
    );
    for (const one of elements)
      for (const { name: key, value } of one.attrs) {
        expect(key).not.toMatch(/^(style|on.*|src)$/);
        if (key === "href") expect(value).not.toMatch(/^[a-z]+:|^\//i);
      }
    expect(elements.filter((one) => attribute(one, "rel") === "stylesheet")).toHaveLength(1);
  }
});

test("headings begin with one h1 and skip no level", () => {
  for (const name of names) {
    const levels = treeOf(name).elements.flatMap(({ tagName }) => /^h([1-6])$/.exec(tagName)?.[1] ?? []);
    expect([name, levels[0], levels.filter((level) => level === "1").length]).toEqual([name, "1", 1]);
    levels.slice(1).forEach((level, i) => {
      expect(Number(level)).toBeLessThanOrEqual(Number(levels[i]) + 1);
    });
  }
});

test("what a definition says can be no markup", () => {
  const [first] = catalogue;
  if (!first) throw new Error("the catalogue is empty");
  const strange = "<script>alert(\"1\")</script> & <b class='x'>";
  const page = referencePages([{ ...first, summary: strange, cautions: [strange] }])[pageOf(first.name)] ?? "";
  const { elements, text, faults } = read(page);
  expect(faults).toEqual([]);
  expect(elements.filter(({ tagName }) => ["script", "b"].includes(tagName))).toEqual([]);
  expect(text).toContain(strange);
});
