import { call } from "../definition/call";
import type { Answer } from "../definition/cells";
import type { AnyDefinition, Example, Result, Row } from "../definition/define";
import { type Explained, explained } from "../definition/explained";
import type { Step } from "../definition/step";
import { say } from "../metrology/say";
import { citation } from "../metrology/source";
import { argumentsOf, formulaCode, typedFormula } from "./reference-formula";
import { type Html, html, type Piece } from "./reference-html";
import { sourceList } from "./reference-sources";
import { bullets, ended, type Prose } from "./reference-text";

/** More rows than this tell nothing more on a page. */
const mostRows = 12;

/** One example step by step, as the pane explains it. */
export const workedExample = (definition: AnyDefinition, example: Example, prose: Prose): Html => {
  const args = argumentsOf(example);
  const told = explained(definition, args);
  return html`<p class="typed">${formulaCode(typedFormula(definition, args))}</p>
<div class="answer">
<p class="answer-words">${prose(told.answer)}</p>
${definition.answers === "rows" ? answerTable(definition, call(definition, args) as Row[]) : answerList(told)}
</div>
<ol class="steps">
${told.steps.map((step) => stepItem(step, prose))}</ol>
${inThisCase(definition, told, prose)}`;
};

const stepItem = ({ sentence, plain }: Step, prose: Prose): Html =>
  html`<li>${prose(plain ? `${sentence}:` : ended(sentence))}${plain && html`<span class="plain">${prose(plain)}</span>`}</li>
`;

const answerList = ({ results }: Explained): Html => html`<dl class="results">
${results.map(
  ({ name, shown }) => html`<div><dt>${name}</dt><dd>${shown}</dd></div>
`,
)}</dl>`;

const answerTable = (
  { results }: AnyDefinition,
  rows: readonly Row[],
): Html => html`<div class="wide" tabindex="0" role="region" aria-label="The answer, cell by cell">
<table class="cells">
<thead><tr>${results.map(resultHead)}</tr></thead>
<tbody>
${rows.slice(0, mostRows).map(
  (row) => html`<tr>${row.map(answerCell)}</tr>
`,
)}</tbody>
</table>
</div>
${rows.length > mostRows && html`<p class="note">The first ${mostRows} of ${rows.length} rows.</p>`}`;

/** What an explanation says of this one answer beyond what holds for every answer of the function. */
const inThisCase = (definition: AnyDefinition, told: Explained, prose: Prose): Piece => {
  const cautions = told.cautions.filter((caution) => !definition.cautions.includes(caution));
  const general = definition.sources.map(citation);
  const own = told.sources.some((source) => !general.includes(citation(source)));
  return [
    cautions.length > 0 &&
      html`<div class="cautions">
<p><strong>Cautions of this answer</strong></p>
${bullets(cautions, prose)}
</div>
`,
    own &&
      html`<p class="rests">This answer rests on</p>
${sourceList(told.sources, prose)}
`,
  ];
};

/** All examples, each with the answer that was worked out without this program, and how. */
export const exampleTable = (definition: AnyDefinition, prose: Prose): Html => {
  const { results, examples } = definition;
  return html`<div class="wide" tabindex="0" role="region" aria-label="Examples">
<table class="cells">
<thead><tr><th scope="col">Formula, and how its answer was worked out</th>${results.map(resultHead)}</tr></thead>
${examples.map((example) => exampleRows(definition, example, prose))}</table>
</div>`;
};

const exampleRows = (definition: AnyDefinition, example: Example, prose: Prose): Html => {
  const rows = (Array.isArray(example.gives[0]) ? example.gives : [example.gives]) as readonly Row[];
  const shown = rows.slice(0, mostRows);
  const formula = html`<th class="example" scope="rowgroup" rowspan="${shown.length}">${formulaCode(typedFormula(definition, argumentsOf(example)))}<span class="worked">${prose(ended(example.worked))}</span></th>`;
  return html`<tbody>
${shown.map(
  (
    row,
    i,
  ) => html`<tr>${i === 0 && formula}${definition.results.map((_, column) => answerCell(row[column] ?? "…"))}</tr>
`,
)}</tbody>
`;
};

const resultHead = ({ name, unit }: Result): Html =>
  html`<th scope="col">${name}${unit && html` <span class="unit">${unit}</span>`}</th>`;

/** As a cell shows it, to six figures; a column's unit stands in its head. */
const answerCell = (answer: Answer): Html => {
  const shown = say(answer, "", 6);
  if (typeof answer === "number") return html`<td class="number">${shown}</td>`;
  return shown.length > 20 ? html`<td class="sentence">${shown}</td>` : html`<td>${shown}</td>`;
};
