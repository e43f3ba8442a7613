import { type Html, html, joined, type Piece } from "./reference-html";

/** Where the page of a function lies, from the folder of the pages. */
export const pageOf = (name: string): string => `${name.toLowerCase()}.html`;

/** Prose of a definition as a page shows it: names of functions lead to their pages, `words of a cell` stand out. */
export type Prose = (text: string) => Piece;

/** `names`: the functions that have a page; `own`: the one whose page it is, which needs no way to itself. */
export const proseOn = (names: ReadonlySet<string>, own?: string): Prose => {
  const piece = (part: string): Piece => {
    if (part.startsWith("`")) return html`<code>${part.slice(1, -1)}</code>`;
    const name = part.replace("BIMETAL.", "");
    return names.has(name) && name !== own ? html`<a href="${pageOf(name)}">${part}</a>` : tied(part);
  };
  return (text) => text.split(/(`[^`]+`|\b(?:BIMETAL\.)?[A-Z]+\.[A-Z]+\b)/).map(piece);
};

/** A figure keeps to the line of the unit, or any short word, that follows it. */
const tied = (text: string): string => text.replace(/(\d) (?=\S{1,3}(?!\S))/g, "$1\u00a0");

/** Ways to the pages of functions, or to a part of them. */
export const functionLinks = (names: readonly string[], part = ""): Piece =>
  names.length > 0 &&
  html`<ul class="names">${names.map((name) => html`<li><a href="${pageOf(name)}${part}">${name}</a></li> `)}</ul>`;

/** Words as they are typed into a cell, in a sentence. */
export const words = (choices: readonly string[]): Piece =>
  joined(
    choices.map((choice) => html`<code class="word">"${choice}"</code>`),
    ", ",
  );

/** "a, b and c". */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;

/** A sentence that ends as one. */
export const ended = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** Sentences that may stand in one another's place, one below the other. */
export const bullets = (texts: readonly string[], prose: Prose): Html =>
  html`<ul>${texts.map((text) => html`<li>${prose(text)}</li>`)}</ul>`;
