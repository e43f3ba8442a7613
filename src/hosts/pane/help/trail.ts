import { pageOf } from "../../../derived/reference-text";

/** A place in the reference: a page, and a part of it. */
export interface HelpPlace {
  /** As the reference names its pages: "trip.range.html". */
  readonly path: string;
  /** The id of an element of that page; "" for its top. */
  readonly part: string;
  /** Which link of the page before led here, counted from 0: the way back ends there. */
  readonly link?: number;
}

/** The two pages that every other can be found from. */
export const contents: HelpPlace = { path: "index.html", part: "" };
export const publishedValues: HelpPlace = { path: "published-values.html", part: "" };

export const placeOfFunction = (name: string): HelpPlace => ({ path: pageOf(name), part: "" });

/** Where a link of a page leads: "trip.range.html#examples", "#rules" on the page itself. Undefined for what is no page of the reference. */
export const placeOfLink = (href: string, from: string): HelpPlace | undefined => {
  const [, path = "", part = ""] = /^([\w.-]+\.html)?(?:#([\w-]+))?$/.exec(href) ?? [];
  return path || part ? { path: path || from, part } : undefined;
};

/** What a way to a place is called in a sentence: "TRIP.RANGE", "all pages". */
export const sayPlace = ({ path }: HelpPlace): string => {
  if (path === contents.path) return "all pages";
  return path === publishedValues.path ? "published values" : path.replace(/\.html$/, "").toUpperCase();
};
