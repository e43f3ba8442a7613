import type { PublishedTable, Source, Standing } from "../metrology/source";
import { byDocument } from "./by-document";
import { type Html, html, type Piece } from "./reference-html";
import type { Prose } from "./reference-text";

interface Kind {
  readonly standing: Standing;
  /** Its place on the page of published values, and its look. */
  readonly anchor: string;
  readonly says: string;
}

/** How far values are followed to their page, the firmest first. */
export const kinds: readonly Kind[] = [
  {
    standing: "corroborated",
    anchor: "corroborated",
    says: "Independent public sources agree on the value. The page of the document itself has not been read.",
  },
  {
    standing: "handbook",
    anchor: "handbook",
    says: "A law or a method that general texts of physics and metrology carry.",
  },
  { standing: "derived", anchor: "derived", says: "Follows by arithmetic from values that have a source." },
  {
    standing: "from memory",
    anchor: "from-memory",
    says: "Recalled, and not yet compared with the page. Compare it before you rely on it.",
  },
  {
    standing: "common practice, no source",
    anchor: "common-practice",
    says: "What people of the trade do. No document stands behind it.",
  },
];

/** "IEC 60898-1 (2015 + A1:2019)". */
const titleOf = ({ document: title, edition }: Source): string => (edition ? `${title} (${edition})` : title);

/** "IEC 60898-1 (2015 + A1:2019), Table 7", without its standing. */
export const placeOf = (source: Source): string => [titleOf(source), source.place].filter(Boolean).join(", ");

/** A name as a part of an address. */
export const anchorOf = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

/** Where a table stands on the page of published values. */
export const tableAnchor = ({ document }: Source, { title }: PublishedTable): string =>
  anchorOf(`${document} ${title}`);

/** A standing as a small mark that leads to what it says; on the page of published values itself to its list. */
export const standingMark = (standing: Standing, page = "published-values.html"): Piece =>
  kinds
    .filter((kind) => kind.standing === standing)
    .map(({ anchor }) => html`<a class="standing ${anchor}" href="${page}#${anchor}">${standing}</a>`);

/** Sources line by line, each with how far it was followed and the way to its values. */
export const sourceList = (sources: readonly Source[], prose: Prose): Html =>
  html`<ul class="sources">
${byDocument(sources).map((source) => html`<li>${prose(placeOf(source))} ${standingMark(source.standing)}${valuesOf(source)}</li>\n`)}</ul>`;

const valuesOf = (source: Source): Piece =>
  source.tables?.map(
    (table) =>
      html` <a class="to-values" href="published-values.html#${tableAnchor(source, table)}">${table.title}</a>`,
  );
