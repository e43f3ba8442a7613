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
${definition.answers === "rows" ? answerTable(definition, call(definition, args) as Row[], prose) : answerList(told, prose)}
</div>
<ol class="steps">
${told.steps.map((step) => stepItem(step, prose))}</ol>
${inThisCase(definition, told, prose)}`;
};

const stepItem = ({ sentence, plain }: Step, prose: Prose): Html =>
  html`<li>${prose(plain ? `${sentence}:` : ended(sentence))}${plain && html`<span class="plain">${prose(plain)}</span>`}</li>\n`;

const answerList = ({ results }: Explained, prose: Prose): Html => html`<dl class="results">
${results.map(({ name, shown }) => html`<div><dt>${name}</dt><dd>${prose(shown)}</dd></div>\n`)}</dl>`;

const answerTable = (
  { results }: AnyDefinition,
  rows: readonly Row[],
  prose: Prose,
): Html => html`<div class="wide" tabindex="0" role="region" aria-label="The answer, cell by cell">
<table class="cells">
<thead><tr>${results.map(resultHead)}</tr></thead>
<tbody>
${rows.slice(0, mostRows).map((row) => html`<tr>${row.map((answer) => answerCell(answer, prose))}</tr>\n`)}</tbody>
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
</div>\n`,
    own &&
      html`<p class="rests">This answer rests on</p>
${sourceList(told.sources, prose)}
`,
  ];
};

/** All examples, each with the answer that was worked out without this program, and how. */
export const exampleTable = (definition: AnyDefinition, prose: Prose): Html => {
  const { results, examples } = definition;
  return html`<p class="note">${legend(definition)}</p>
<div class="wide" tabindex="0" role="region" aria-label="Examples">
<table class="cells">
<thead><tr><th scope="col">Formula, and how its answer was worked out</th>${results.map(resultHead)}</tr></thead>
${examples.map((example) => exampleRows(definition, example, prose))}</table>
</div>`;
};

const exampleRows = (definition: AnyDefinition, example: Example, prose: Prose): Html => {
  const rows = rowsGiven(example);
  const formula = formulaCode(typedFormula(definition, argumentsOf(example)));
  const head = html`<th class="example" scope="rowgroup" rowspan="${rows.length}">${formula}<span class="worked">${prose(ended(example.worked))}</span></th>`;
  const cells = (row: Row): Html[] =>
    definition.results.map((_, column) => answerCell(row[column] ?? notWorked, prose));
  return html`<tbody>
${rows.map((row, i) => html`<tr>${i === 0 && head}${cells(row)}</tr>\n`)}</tbody>\n`;
};

const rowsGiven = ({ gives }: Example): readonly Row[] => (Array.isArray(gives[0]) ? gives : [gives]) as readonly Row[];

const notWorked = "…";

const legend = ({ results, examples }: AnyDefinition): string => {
  const isPartly = examples.flatMap(rowsGiven).some((row) => row.length < results.length);
  return `Each answer was worked out without this program, in the way that stands under its formula; the function is tested against it.${
    isPartly ? ` ${notWorked} stands in a cell that was not worked out.` : ""
  }`;
};

const resultHead = ({ name, unit }: Result): Html =>
  html`<th scope="col">${name}${unit && html` <span class="unit">${unit}</span>`}</th>`;

/** As a cell shows it, to six figures; a column's unit stands in its head. */
const answerCell = (answer: Answer, prose: Prose): Html => {
  const shown = say(answer, "", 6);
  if (typeof answer === "number") return html`<td class="number">${shown}</td>`;
  return shown.length > 20 ? html`<td class="sentence">${prose(shown)}</td>` : html`<td>${prose(shown)}</td>`;
};
