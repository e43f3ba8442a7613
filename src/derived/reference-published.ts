import type { AnyDefinition } from "../definition/define";
import { explained } from "../definition/explained";
import { citation, type Source } from "../metrology/source";
import { argumentsOf } from "./reference-formula";
import { type Html, html } from "./reference-html";
import { kinds, placeOf, standingMark, titleOf } from "./reference-sources";
import { functionLinks, type Prose } from "./reference-text";

/** A place in a document and the functions that rest on it. */
interface Resting {
  readonly source: Source;
  readonly functions: Set<string>;
}

const howFound =
  "A function rests on a source when its page names it, or when the explanation of one of its examples does. The numbers taken from a source stand in the steps of each explanation; TRIP.CHARACTERISTICS lists those that a breaker is judged by. A source checks the examples that name it as what their answers were worked out from.";

/** Every source of the catalogue by its standing, who rests on it, and whose examples were worked out from it. */
export const publishedValues = (catalogue: readonly AnyDefinition[], prose: Prose): Html => {
  const all = restingOn(catalogue);
  const present = kinds
    .map((kind) => ({ ...kind, resting: all.filter(({ source }) => source.standing === kind.standing) }))
    .filter(({ resting }) => resting.length > 0);
  return html`<h1>Published values</h1>
<p class="summary">What the answers rest on, and how far each value has been followed to its page.</p>
<dl class="kinds">
${present.map(
  ({ standing, says, resting }) =>
    html`<div class="term"><dt>${standingMark(standing, "")} <span class="count">${resting.length}</span></dt><dd>${says}</dd></div>\n`,
)}</dl>
<p class="note">${prose(howFound)}</p>
${present.map(
  ({ anchor, standing, resting }) => html`<section aria-labelledby="${anchor}">
<h2 id="${anchor}">${standing.replace(/^./, (first) => first.toUpperCase())}</h2>
<div class="wide">
<table class="published">
<thead><tr><th scope="col">Source</th><th scope="col">Functions that rest on it</th></tr></thead>
${documentsOf(resting).map((places) => documentRows(places, catalogue, prose))}</table>
</div>
</section>\n`,
)}`;
};

/** All that a definition rests on: its own sources, and those of the explanations of its examples. */
const sourcesOf = (definition: AnyDefinition): Source[] => [
  ...definition.sources,
  ...definition.examples.flatMap((example) => explained(definition, argumentsOf(example)).sources),
];

const restingOn = (catalogue: readonly AnyDefinition[]): Resting[] => {
  const found = new Map<string, Resting>();
  for (const definition of catalogue)
    for (const source of sourcesOf(definition)) {
      const resting = found.get(citation(source)) ?? { source, functions: new Set() };
      found.set(citation(source), resting);
      resting.functions.add(definition.name);
    }
  const inOrder = new Intl.Collator("en", { numeric: true });
  return [...found.values()].sort((a, b) => inOrder.compare(placeOf(a.source), placeOf(b.source)));
};

/** The places of one document together. */
const documentsOf = (resting: readonly Resting[]): Resting[][] => {
  const documents = new Map<string, Resting[]>();
  for (const one of resting) {
    const title = titleOf(one.source);
    documents.set(title, [...(documents.get(title) ?? []), one]);
  }
  return [...documents.values()];
};

const documentRows = (places: readonly Resting[], catalogue: readonly AnyDefinition[], prose: Prose): Html => {
  const [first] = places as [Resting, ...Resting[]];
  const checks = checkedBy(places, catalogue);
  const checking =
    checks.length > 0 &&
    html`<div class="checks">It checks the examples of ${functionLinks(checks, "#examples")}</div>`;
  if (places.length === 1)
    return html`<tbody>
<tr><th class="place" scope="row">${prose(placeOf(first.source))}</th><td>${functionLinks([...first.functions])}${checking}</td></tr>
</tbody>\n`;
  return html`<tbody>
<tr><th class="place" scope="rowgroup">${prose(titleOf(first.source))}</th><td>${checking}</td></tr>
${places.map(
  ({ source, functions }) =>
    html`<tr class="within"><th class="place" scope="row">${prose(source.place ?? "as a whole")}</th><td>${functionLinks([...functions])}</td></tr>\n`,
)}</tbody>\n`;
};

/** Of the functions that rest on a document, those with an example that names it as what the answer was worked out from. */
const checkedBy = (places: readonly Resting[], catalogue: readonly AnyDefinition[]): string[] =>
  catalogue
    .filter(({ name }) => places.some(({ functions }) => functions.has(name)))
    .filter(({ examples }) =>
      examples.some(({ worked }) => places.some(({ source }) => worked.includes(source.document))),
    )
    .map(({ name }) => name);
