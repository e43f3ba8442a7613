import type { AnyDefinition } from "../definition/define";
import { exampleTable, workedExample } from "./reference-examples";
import { shapeOf } from "./reference-formula";
import { type Html, html, joined, type Piece } from "./reference-html";
import { sourceList } from "./reference-sources";
import { argumentTable, resultTable } from "./reference-tables";
import { bullets, type Prose, pageOf } from "./reference-text";
import type { Room } from "./rooms";

/** The page of one function: all that its definition says. */
export const functionPage = (definition: AnyDefinition, room: Room, prose: Prose): Html => {
  const { name, summary, cautions, sources, examples } = definition;
  const first = examples[0];
  return html`${roomLinks(room, name)}
<article>
<h1><span class="prefix">BIMETAL.</span>${name}</h1>
<p class="summary">${prose(summary)}</p>
${shape(definition)}
${section("arguments", "Arguments", argumentTable(definition, prose))}
${section("answer", "Answer", resultTable(definition, prose))}
<section class="cautions" aria-labelledby="cautions">
<h2 id="cautions">Cautions</h2>
${bullets(cautions, prose)}
</section>
${first && section("worked", "Worked example", workedExample(definition, first, prose))}
${section("examples", examples.length === 1 ? "Checked example" : "Checked examples", exampleTable(definition, prose))}
${section("sources", "Sources", sourceList(sources, prose))}
</article>
${neighbours(room, name)}`;
};

const section = (anchor: string, title: string, body: Piece): Html => html`<section aria-labelledby="${anchor}">
<h2 id="${anchor}">${title}</h2>
${body}
</section>`;

/** The formula with its arguments; it breaks between two of them, not inside one. */
const shape = (definition: AnyDefinition): Html => {
  const parts = shapeOf(definition);
  const pieces = parts.map((part, i) => html`<span class="part">${part}${i < parts.length - 1 && ","}</span>`);
  return html`<p class="typed"><code>=BIMETAL.${definition.name}(${joined(pieces, " ")})</code></p>`;
};

const roomLinks = ({ name: room, about, functions }: Room, here: string): Piece =>
  functions.length > 1 &&
  html`<nav class="room" aria-label="Functions of ${room}">
<p>${about}</p>
<ul>${functions.map(({ name }) => roomLink(name, here))}</ul>
</nav>`;

const roomLink = (name: string, here: string): Html => {
  const current = name === here && html` aria-current="page"`;
  return html`<li><a class="room-link" href="${pageOf(name)}"${current}>${name.split(".").at(-1)}</a></li> `;
};

/** The way to the function before and the one after it, for reading on. */
const neighbours = ({ functions }: Room, here: string): Piece => {
  const place = functions.findIndex(({ name }) => name === here);
  const [before, after] = [functions[place - 1], functions[place + 1]];
  return (
    (before || after) &&
    html`<nav class="neighbours" aria-label="Before and after">
${before && html`<a rel="prev" href="${pageOf(before.name)}">Before: ${before.name}</a>`}
${after && html`<a rel="next" href="${pageOf(after.name)}">Next: ${after.name}</a>`}
</nav>`
  );
};
