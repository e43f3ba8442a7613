import { SaxesParser } from "saxes";
import { UnreadableWorkbook } from "./unreadable";

/** An element as it opens. `from` is the place of its "<", `to` that after its ">". */
export interface Opened {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly from: number;
  readonly to: number;
  readonly isSelfClosing: boolean;
}

interface Listener {
  open?(element: Opened): void;
  /** `from` is the place of "</", `to` that after ">"; of an element closed in itself both are its end. */
  close?(name: string, from: number, to: number): void;
  text?(text: string): void;
}

/** No part of a workbook is nearly as deep. */
const MOST_DEPTH = 256;

/** Reads a part of a package once, telling its elements and where in the text they stand. Throws UnreadableWorkbook. */
export const readXml = (xml: string, part: string, listener: Listener): void => {
  const parser = new SaxesParser();
  const stop = (why: string): never => {
    throw new UnreadableWorkbook(`This workbook cannot be read: ${part} ${why}.`);
  };
  parser.on("doctype", () => stop("declares a document type, which no workbook needs"));
  parser.on("error", () => stop("is not well-formed XML"));
  parser.on("xmldecl", ({ encoding }) => {
    if (encoding && !/^utf-?8$/i.test(encoding)) stop(`is written in ${encoding}, not in UTF-8`);
  });
  let depth = 0;
  parser.on("opentag", ({ name, attributes, isSelfClosing }) => {
    depth += 1;
    if (depth > MOST_DEPTH) stop(`nests its elements more than ${MOST_DEPTH} deep`);
    if (listener.open) {
      const to = parser.position;
      // No "<" may stand inside a tag, so the last one before its end begins it.
      listener.open({
        name,
        attributes: attributes as Record<string, string>,
        from: xml.lastIndexOf("<", to - 1),
        to,
        isSelfClosing,
      });
    }
  });
  parser.on("closetag", ({ name, isSelfClosing }) => {
    depth -= 1;
    if (listener.close) {
      const to = parser.position;
      listener.close(name, isSelfClosing ? to : xml.lastIndexOf("<", to - 1), to);
    }
  });
  if (listener.text) {
    parser.on("text", (text) => listener.text?.(text));
    parser.on("cdata", (text) => listener.text?.(text));
  }
  parser.write(xml).close();
};

/** A part's text, lossless: it gives the same bytes when it is written back. */
export const decodeXml = (bytes: Uint8Array, part: string): string => {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new UnreadableWorkbook(`This workbook cannot be read: ${part} is not written in UTF-8.`);
  }
};

/** Text between tags. Characters that XML cannot hold are written as workbooks do: _x0007_. */
export const escapeText = (text: string): string =>
  [...text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")].map(escapeCharacter).join("");

const escapeCharacter = (character: string): string => {
  const code = character.charCodeAt(0);
  if (code === 0x26) return "&amp;";
  if (code === 0x3c) return "&lt;";
  if (code === 0x3e) return "&gt;";
  const allowed = (code >= 0x20 && code < 0xfffe) || code === 0x09 || code === 0x0a;
  return allowed ? character : `_x${code.toString(16).toUpperCase().padStart(4, "0")}_`;
};

/** What a part begins with. */
export const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export const escapeAttribute = (text: string): string => escapeText(text).replaceAll('"', "&quot;");

/** An attribute's value as it was read, with nothing done to it but what XML asks. */
export const quoteAttribute = (value: string): string =>
  value.replace(/[&<>"\t\n\r]/g, (character) => references[character] ?? `&#${character.charCodeAt(0)};`);

const references: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** The other way: _x0041_ as the character it stands for. */
export const unescapeText = (text: string): string =>
  text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    : text;
