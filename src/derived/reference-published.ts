import type { AnyDefinition } from "../definition/define";
import { type Standing, standingsOf } from "../metrology/source";
import { type ReferredDocument, type Resting, referredDocuments } from "./reference-documents";
import { type Html, html, type Piece } from "./reference-html";
import { anchorOf, kinds, placeOf, standingMark } from "./reference-sources";
import { functionLinks, type Prose } from "./reference-text";
import { valueTable } from "./reference-values";

const howMade =
  "The tables are made of the very numbers that the functions compute with, so they can be read beside the page of the document. A second reader has typed each of them again, apart from the first, into the test named under it, and the two must agree. Under that stand the functions that rest on the table: their pages name it, or the explanation of one of their examples does.";

const withoutValues = { anchor: "rules", title: "Rules, laws and methods" };

/** Every published value of the catalogue, document by document, and every source that gives a rule and no value. */
export const publishedValues = (catalogue: readonly AnyDefinition[], prose: Prose): Html => {
  const documents = referredDocuments(catalogue);
  const withTables = documents.filter(({ tables }) => tables.length > 0);
  const others = documents.filter(({ tables }) => tables.length === 0);
  return html`<h1>Published values</h1>
<p class="summary">What the answers rest on, and how far each value has been followed to its page.</p>
${legend(withTables)}
<p class="note">${howMade}</p>
<nav class="room documents" aria-label="Documents">
<ul>${withTables.map(({ name }) => documentLink(anchorOf(name), name))}${documentLink(withoutValues.anchor, withoutValues.title)}</ul>
</nav>
${withTables.map((one) => documentSection(one, prose))}
<section aria-labelledby="${withoutValues.anchor}">
<h2 id="${withoutValues.anchor}">${withoutValues.title}</h2>
${places("Source", others, prose)}
</section>`;
};

/** What each standing says, and how many rows of values stand so. */
const legend = (documents: readonly ReferredDocument[]): Html => {
  const standings = documents.flatMap(({ tables }) =>
    tables.flatMap(({ table, source }) => standingsOf(table, source)),
  );
  const count = (standing: Standing): Piece => {
    const rows = standings.filter((one) => one === standing).length;
    return rows > 0 && html` <span class="count">${rows} ${rows === 1 ? "row" : "rows"}</span>`;
  };
  return html`<dl class="kinds">
${kinds.map(
  ({ standing, anchor, says }) =>
    html`<div class="term" id="${anchor}"><dt>${standingMark(standing, "")}${count(standing)}</dt><dd>${says}</dd></div>\n`,
)}</dl>`;
};

const documentLink = (anchor: string, name: string): Html =>
  html`<li><a class="room-link" href="#${anchor}">${name}</a></li> `;

const documentSection = (referred: ReferredDocument, prose: Prose): Html => {
  const { name, tables, places: others } = referred;
  const anchor = anchorOf(name);
  return html`<section aria-labelledby="${anchor}">
<h2 id="${anchor}">${prose(name)}</h2>
<div class="tables">
${tables.map((table) => valueTable(table, prose))}</div>
${others.length > 0 ? places("Also cited", [referred], prose) : checking(referred)}
</section>\n`;
};

/** Places without a table of their own. */
const places = (head: string, documents: readonly ReferredDocument[], prose: Prose): Html => html`<div class="wide">
<table class="published">
<thead><tr><th scope="col">${head}</th><th scope="col">Functions that rest on it</th></tr></thead>
${documents.map(
  (one) => html`<tbody>
${one.places.map((place, i) => placeRow(place, i === one.places.length - 1 && checking(one), prose))}</tbody>\n`,
)}</table>
</div>`;

const placeRow = ({ source, functions }: Resting, after: Piece, prose: Prose): Html =>
  html`<tr><th class="place" scope="row">${prose(placeOf(source))} ${standingMark(source.standing, "")}</th><td>${functionLinks([...functions])}${after}</td></tr>\n`;

const checking = ({ checks }: ReferredDocument): Piece =>
  checks.length > 0 && html`<div class="checks">It checks the examples of ${functionLinks(checks, "#examples")}</div>`;
