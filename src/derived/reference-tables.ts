import type { AnyDefinition, Result } from "../definition/define";
import { type Parameter, sheetName } from "../definition/parameter";
import { type Html, html, type Piece } from "./reference-html";
import { ended, listed, type Prose, words } from "./reference-text";
import { limited } from "./wanted";

/** What a function takes: a row an argument, then how it meets ranges. */
export const argumentTable = (definition: AnyDefinition, prose: Prose): Html => {
  const parameters = Object.entries(definition.parameters as Record<string, Parameter>);
  if (parameters.length === 0) return html`<p>It takes none: the brackets stay empty.</p>`;
  return html`<div class="wide" tabindex="0" role="region" aria-label="Table of arguments">
<table class="arguments">
<thead><tr><th scope="col">Argument</th><th scope="col">Unit</th><th scope="col">Meaning</th><th scope="col">When left out</th></tr></thead>
<tbody>
${parameters.map(([key, parameter]) => argumentRow(key, parameter, prose))}
</tbody>
</table>
</div>
<p class="note">${rangesTaken(definition)}</p>`;
};

const argumentRow = (key: string, parameter: Parameter, prose: Prose): Html => {
  const { unit, meaning, otherwise } = parameter;
  const whenLeftOut =
    otherwise === undefined
      ? html`<td><span class="takes">must be given</span></td>`
      : html`<td class="otherwise">${prose(otherwise)}</td>`;
  return html`<tr><th scope="row">${sheetName(key)}</th><td>${unit}</td><td>${prose(meaning)}${wordsOrLimits(parameter)}</td>${whenLeftOut}</tr>\n`;
};

const wordsOrLimits = (parameter: Parameter): Piece => {
  if (parameter.choices) return html` <span class="takes">${words(parameter.choices)}</span>`;
  const limits = limited(parameter);
  return limits !== "" && html` <span class="takes">(${limits})</span>`;
};

/** How the arguments meet cells and ranges, in a sentence or two. */
const rangesTaken = ({ parameters, answers }: AnyDefinition): string => {
  const entries = Object.entries(parameters as Record<string, Parameter>);
  const named = (...spreads: Parameter["spread"][]) =>
    entries.filter(([, { spread }]) => spreads.includes(spread)).map(([key]) => sheetName(key));
  const [perRow, together, own] = [named("row"), named("column"), named("whole")];
  const others = perRow.length < entries.length;
  return [
    together.length === 1 && `${listed(together)} takes a list.`,
    together.length > 1 && `${listed(together)} take lists of one length; one cell stands for every row.`,
    own.length > 0 && `${listed(own)} ${own.length === 1 ? "takes a list of its" : "take lists of their"} own length.`,
    answers === "rows" && perRow.length > 0 && `${others ? "Every other argument" : "Each argument"} takes one cell.`,
    answers === "row" &&
      perRow.length > 0 &&
      `${others ? "Every other argument" : "Each argument"} takes one cell or a range; ranges of one shape are answered row by row, and one cell stands for every row.`,
  ]
    .filter((sentence) => sentence !== false)
    .map((sentence) => sentence.replace(/^./, (first) => first.toUpperCase()))
    .join(" ");
};

/** What a function gives: a row for each cell of the answer, from left to right. */
export const resultTable = ({ results, answers }: AnyDefinition, prose: Prose): Html => html`<div class="wide">
<table>
<thead><tr><th scope="col">Answer</th><th scope="col">Unit</th><th scope="col">Meaning</th></tr></thead>
<tbody>
${results.map((result) => resultRow(result, prose))}
</tbody>
</table>
</div>
<p class="note">${ended(resultShape(results.length, answers))}</p>`;

const resultRow = ({ name, unit, meaning }: Result, prose: Prose): Html =>
  html`<tr><th scope="row">${name}</th><td>${unit}</td><td>${prose(meaning)}</td></tr>\n`;

const resultShape = (count: number, answers: "row" | "rows"): string => {
  const across = count === 1 ? "One cell" : `${count} cells from left to right, in this order`;
  return answers === "rows" ? `${across}, in as many rows as the answer needs` : across;
};
