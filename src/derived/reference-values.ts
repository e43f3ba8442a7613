import { sayNumber } from "../metrology/say";
import { type PublishedTable, type Source, type Standing, standingsOf } from "../metrology/source";
import type { RestingTable } from "./reference-documents";
import { type Html, html, type Piece } from "./reference-html";
import { standingMark, tableAnchor } from "./reference-sources";
import { functionLinks, type Prose } from "./reference-text";

type Entry = PublishedTable["rows"][number][number];

/** One table of values: from where, how it stands, who rests on it, and the test that guards it. */
export const valueTable = ({ table, source, functions }: RestingTable, prose: Prose): Html => {
  const standings = [...new Set(standingsOf(table, source))];
  const anchor = tableAnchor(source, table);
  const isBroad = table.columns.length > 4 || table.columns.length === 1;
  return html`<div class="values${isBroad && " broad"}">
<h3 id="${anchor}">${prose(table.title)}</h3>
<p class="from">${prose(whence(source))} ${standings.length === 1 && standingMark(standings[0] as Standing, "")}</p>
${table.columns.length === 1 ? run(table) : grid(table, source, anchor)}
<p class="guard">Second copy in <code>${table.guard}</code>; used by</p>
${functionLinks([...functions])}
</div>\n`;
};

const whence = ({ document, edition, place, standing }: Source): string => {
  const parts = [edition && `edition ${edition}`, place].filter(Boolean);
  return standing === "common practice, no source" ? [document, ...parts].join(", ") : parts.join(", ");
};

/** Values of one kind, one after the other. */
const run = ({ columns: [column], rows }: PublishedTable): Html =>
  html`<p class="run">${rows.map(([value]) => shown(value as Entry)).join(", ")} ${column?.[1]}</p>`;

const grid = (table: PublishedTable, source: Source, anchor: string): Html => {
  const { columns, rows } = table;
  const standings = standingsOf(table, source);
  const differs = new Set(standings).size > 1;
  const region = columns.length > 4 && html` tabindex="0" role="region" aria-labelledby="${anchor}"`;
  return html`<div class="wide"${region}>
<table class="cells" aria-labelledby="${anchor}">
<thead><tr>${columns.map(columnHead)}${differs && html`<th scope="col">standing</th>`}</tr></thead>
<tbody>
${rows.map(
  (row, i) =>
    html`<tr>${row.map(cell)}${differs && html`<td>${standingMark(standings[i] as Standing, "")}</td>`}</tr>\n`,
)}</tbody>
</table>
</div>`;
};

const columnHead = ([name, unit]: PublishedTable["columns"][number]): Html =>
  html`<th scope="col">${name}${unit && html` <span class="unit">${unit}</span>`}</th>`;

const cell = (entry: Entry): Piece =>
  typeof entry === "number" ? html`<td class="number">${shown(entry)}</td>` : html`<td>${shown(entry)}</td>`;

/** All the digits that are computed with. */
const shown = (entry: Entry): string =>
  entry === null ? "–" : typeof entry === "number" ? sayNumber(entry, 12) : entry;
