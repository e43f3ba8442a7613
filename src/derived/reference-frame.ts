import { type Html, html, type Piece } from "./reference-html";

interface Frame {
  /** What the browser's tab and a bookmark say. */
  readonly title: string;
  /** The page's own name among the pages; undefined for one that the header does not lead to. */
  readonly path: string;
  readonly body: Piece;
}

const chapters = [
  { path: "index.html", name: "Functions" },
  { path: "published-values.html", name: "Published values" },
];

/** A whole page: no script, one style sheet, nothing from another place. */
export const framed = ({ title, path, body }: Frame): string =>
  html`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title} · Bimetal reference</title>
<link rel="icon" href="favicon.svg" type="image/svg+xml">
<link rel="stylesheet" href="reference.css">
</head>
<body>
<a class="skip" href="#page">To the text</a>
<header class="head">
<p class="mark">Bimetal <span>reference</span></p>
<nav aria-label="Reference">${chapters.map((chapter) => chapterLink(chapter, path))}</nav>
</header>
<main id="page">
${body}
</main>
<footer class="foot">
<p>Bimetal tells what published limits and measurements say about a breaker on the bench. It is no release to service.</p>
</footer>
</body>
</html>
`.text;

const chapterLink = ({ path, name }: (typeof chapters)[number], here: string): Html =>
  path === here
    ? html`<a class="chapter" href="${path}" aria-current="page">${name}</a>`
    : html`<a class="chapter" href="${path}">${name}</a>`;
