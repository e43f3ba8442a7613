import { referenceOf } from "../../../src/derived/reference";
import { catalogue } from "../../../src/functions";
import { contents, placeOfFunction, placeOfLink, publishedValues, sayPlace } from "../../../src/hosts/pane/help/trail";

// The ways through the reference inside the pane.

const reference = referenceOf(catalogue);

test("every function, the list of all and the published values are pages of it", () => {
  const places = [contents, publishedValues, ...catalogue.map(({ name }) => placeOfFunction(name))];
  expect(places.filter(({ path }) => !reference.has(path))).toEqual([]);
  expect(reference.size).toBe(places.length);
});

test("a link leads to a page, to a part of one, or to a part of its own page", () => {
  expect(placeOfLink("trip.range.html", "index.html")).toEqual({ path: "trip.range.html", part: "" });
  expect(placeOfLink("published-values.html#from-memory", "x.html")).toEqual({
    ...publishedValues,
    part: "from-memory",
  });
  expect(placeOfLink("#examples", "trip.range.html")).toEqual({ path: "trip.range.html", part: "examples" });
});

test("what is no page of the reference is no place in it", () => {
  for (const href of ["https://example.org/a.html", "/a.html", "../a.html", "javascript:void 0", ""])
    expect([href, placeOfLink(href, "index.html")]).toEqual([href, undefined]);
});

test("every link of every page is followed inside the pane", () => {
  for (const [path, make] of reference)
    for (const [, href = ""] of make().body.text.matchAll(/<a [^>]*href="([^"]*)"/g)) {
      const place = placeOfLink(href, path);
      expect([path, href, place && reference.has(place.path)]).toEqual([path, href, true]);
    }
});

test("a way is called by the function it leads to, or by what the page is", () => {
  expect([contents, publishedValues, placeOfFunction("TRIP.RANGE")].map(sayPlace)).toEqual([
    "all pages",
    "published values",
    "TRIP.RANGE",
  ]);
});
