/** Markup, escaped already. */
export class Html {
  constructor(readonly text: string) {}
}

/** What may stand in a template: text is escaped, markup is not, a list is put down piece by piece, nothing leaves nothing. */
export type Piece = string | number | Html | undefined | false | readonly Piece[];

/** Markup from a template. Everything put into it is escaped, so that a text cannot end an element or an attribute. */
export const html = (literals: TemplateStringsArray, ...pieces: readonly Piece[]): Html =>
  new Html(literals.map((literal, i) => literal + markupOf(pieces[i])).join(""));

const markupOf = (piece: Piece): string => {
  if (piece === undefined || piece === false) return "";
  if (piece instanceof Html) return piece.text;
  if (typeof piece === "object") return piece.map(markupOf).join("");
  return String(piece).replace(/[&<>"']/g, (sign) => escapes[sign] as string);
};

const escapes: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** Pieces with something between each two: a list in a sentence. */
export const joined = (pieces: readonly Piece[], between: Piece): Piece =>
  pieces.flatMap((piece, i) => (i === 0 ? [piece] : [between, piece]));
