import { type Html, html } from "./reference-html";
import { type Prose, pageOf } from "./reference-text";
import type { Room } from "./rooms";

/** All functions room by room, a line each. */
export const functionIndex = (rooms: readonly Room[], prose: Prose): Html => html`<h1>Functions</h1>
<p class="summary">Sheet functions for people who bench-test small thermal-magnetic circuit breakers. Every page is made from the definition that the function itself runs on.</p>
<nav class="room" aria-label="Rooms">
<ul>${rooms.map(({ name, about }) => html`<li><a class="room-link" href="#${anchorOf(name)}">${about}</a></li> `)}<li><a class="room-link" href="#reading">How to read a formula</a></li></ul>
</nav>
${rooms.map((room) => roomSection(room, prose))}
<section class="reading" aria-labelledby="reading">
<h2 id="reading">How to read a formula</h2>
<dl>
<div class="term"><dt><code>[preload]</code></dt><dd>An argument in brackets may be left out; its page says what holds then.</dd></div>
<div class="term"><dt><code>,</code></dt><dd>Arguments are parted by commas. A sheet that writes decimals with a comma parts them by semicolons.</dd></div>
<div class="term"><dt><code>{30;36}</code></dt><dd>Two cells, one below the other, typed into the formula. A range such as <code>A2:A9</code> may stand in its place.</dd></div>
<div class="term"><dt><code>#VALUE!</code></dt><dd>A cell cannot be taken. The pane says in a sentence which, and what is wanted.</dd></div>
<div class="term"><dt><code>#N/A</code></dt><dd>A fair question that the sources do not answer. The pane says where they end.</dd></div>
</dl>
</section>`;

const anchorOf = (room: string): string => room.toLowerCase() || "others";

const roomSection = ({ name, about, functions }: Room, prose: Prose): Html => {
  const anchor = anchorOf(name);
  return html`<section class="room-list" aria-labelledby="${anchor}">
<h2 id="${anchor}">${about}${name && html` <span class="room-name">${name}</span>`}</h2>
<dl>
${functions.map(
  (definition) =>
    html`<div class="term"><dt><a href="${pageOf(definition.name)}">${definition.name}</a></dt><dd>${prose(definition.summary)}</dd></div>\n`,
)}</dl>
</section>\n`;
};
