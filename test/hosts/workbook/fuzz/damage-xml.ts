import type { Chance } from "./chance";
import { someFormula } from "./some-formula";

/** Values that have broken readers of files before. */
const strangeValues = [
  ...[
    "",
    " ",
    "0",
    "-1",
    "1",
    "2",
    "1e9",
    "1e400",
    "NaN",
    "Infinity",
    "0x10",
    "2147483648",
    "4294967296",
    "1048576",
    "1048577",
  ],
  ...[
    "A1",
    "A0",
    "a1",
    "$A$1",
    "B2",
    "XFD1048576",
    "XFE1",
    "A1:A2",
    "A1:XFD1048576",
    "A:A",
    "1:1",
    "B2:A1",
    "A1 B2",
    "A1:A2:A3",
  ],
  ...["__proto__", "constructor", "toString", "hasOwnProperty", "null", "undefined", "true", "false"],
  ...["shared", "array", "dataTable", "normal", "s", "str", "e", "b", "d", "n", "inlineStr", "External", "preserve"],
  ...[
    "rId1",
    "rId2",
    "../../../../etc/passwd",
    "/etc/passwd",
    "file:///etc/passwd",
    "https://example.org/",
    "worksheets/sheet1.xml",
  ],
  ...[
    "Log",
    "Bench log",
    "'Log'",
    "Log!A1",
    "#REF!",
    "#N/A",
    "=1+1",
    "@x",
    "+cmd|' /C calc'!A0",
    "_x0000_",
    "_x001B_[2J",
    "_xD800_",
  ],
  ...["&amp;", "&lt;", "&#x1F600;", "&#0;", "&boom;", "]]&gt;", "\u202e", "\ufffe", "x".repeat(300)],
];

/** Pieces that belong into no workbook, and pieces that belong elsewhere. */
const strangePieces = [
  '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]>',
  '<!DOCTYPE x SYSTEM "file:///etc/passwd">',
  "<?xml-stylesheet href='x'?>",
  "<!-- a remark -->",
  "<![CDATA[<c r='A1'/>]]>",
  "<sheetData>",
  "</sheetData>",
  "</row>",
  "<row>",
  '<row r="3"/>',
  '<c r="A1"><v>1</v></c>',
  '<c r="Z9" t="e"><v>=1+1</v></c>',
  "<c><f>A1</f></c>",
  "<x:row xmlns:x='urn:x'/>",
  '<f t="array" ref="A1:C3">A1</f>',
  '<f t="shared" si="0"/>',
  "<f>BIMETAL.CONTACT.WATTS(A2,B2)</f>",
  "<is><t>x</t></is>",
  "<v>1</v>",
  "&nbsp;",
  "\u0000",
  "<",
  ">",
  '"',
];

const tag = /<[^<>]*>/g;

/** A part's text with a few changes, each of them small; most leave it well-formed. */
export const damagedXml = (xml: string, chance: Chance): string => {
  let text = xml;
  for (let times = chance.pick([1, 1, 2, 4]); times > 0; times--) text = once(text, chance);
  return text;
};

const once = (xml: string, chance: Chance): string => {
  const tags = [...xml.matchAll(tag)];
  if (tags.length === 0) return xml + chance.pick(strangePieces);
  const found = chance.pick(tags);
  const from = found.index;
  const to = from + found[0].length;
  const put = (text: string, start = from, end = to) => xml.slice(0, start) + text + xml.slice(end);
  const formulas = [...xml.matchAll(/<f[^>]*>([^<]*)<\/f>/g)];
  const formula = formulas.length > 0 ? chance.pick(formulas) : undefined;
  return chance.pick([
    ...Array.from({ length: 6 }, () => () => put(withAttribute(found[0], chance))),
    ...Array.from({ length: 12 }, () => () => {
      if (!formula) return xml;
      const text = chance.oneIn(4) ? chance.pick(strangeValues) : escaped(someFormula(chance));
      const attributes = chance.pick([
        "",
        "",
        ` t="array" ref="${chance.pick(strangeValues).replace(/[<"]/g, "")}"`,
        ' t="shared" si="0" ref="A1:A9"',
      ]);
      return `${xml.slice(0, formula.index)}<f${attributes}>${text}</f>${xml.slice(formula.index + formula[0].length)}`;
    }),
    () => textAfter(xml, to, chance.pick(strangeValues)),
    () => textAfter(xml, to, chance.pick(strangeValues)),
    () => put(""),
    () => put(found[0] + found[0]),
    () => put(chance.pick(strangePieces), to, to),
    () => element(xml, found, (whole) => whole + whole),
    () => element(xml, found, () => ""),
    () => put(found[0].replace(/^<(\/?)(\w)/, "<$1x:$2")),
    () => put("<a>".repeat(chance.pick([1, 5, 3000])), to, to),
    () => xml.slice(0, chance.below(xml.length)),
  ])();
};

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** One attribute with another value, another name, twice, or gone; or one more. */
const withAttribute = (opening: string, chance: Chance): string => {
  const value = chance.pick(strangeValues).replace(/[<"]/g, "");
  const attributes = [...opening.matchAll(/\s([\w:]+)="([^"]*)"/g)];
  if (attributes.length === 0 || chance.oneIn(6))
    return opening.replace(
      /\s*(\/?>)$/,
      ` ${chance.pick(["r", "t", "s", "cm", "vm", "ref", "si", "spans", "name", "count"])}="${value}"$1`,
    );
  const found = chance.pick(attributes);
  const [whole, name] = found;
  const put = chance.pick([
    ` ${name}="${value}"`,
    ` ${name}="${value}"`,
    ` ${name}="${value}"`,
    "",
    ` x${name}="${found[2]}"`,
    whole + whole,
  ]);
  return opening.slice(0, found.index) + put + opening.slice(found.index + whole.length);
};

/** The text that follows a tag, in other words. */
const textAfter = (xml: string, at: number, text: string): string => {
  const end = xml.indexOf("<", at);
  return end < 0 ? xml : xml.slice(0, at) + text + xml.slice(end);
};

/** An element as a whole, as far as a plain search finds its end. */
const element = (xml: string, opening: RegExpMatchArray, change: (whole: string) => string): string => {
  const [text] = opening;
  const from = opening.index ?? 0;
  const name = /^<([\w:]+)/.exec(text)?.[1];
  if (!name) return xml;
  const close = `</${name}>`;
  const end = text.endsWith("/>") ? from + text.length : xml.indexOf(close, from) + close.length;
  return end <= from + close.length - 1 ? xml : xml.slice(0, from) + change(xml.slice(from, end)) + xml.slice(end);
};
