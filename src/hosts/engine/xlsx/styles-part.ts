import type { Style } from "../book";
import type { Draft } from "./draft";
import type { CellEdit } from "./edits";
import { MoreStyles } from "./more-styles";
import { OFFICE } from "./namespaces";
import type { OpenedWorkbook } from "./open-workbook";
import { firstFree } from "./package-edits";
import { relationsOf } from "./parts";
import { StyleSheet } from "./write-styles";
import { SHEET_TYPE } from "./write-workbook";

/** The part of a workbook's looks: read once a cell asks for another look, written when one had to be added. */
export class StylesPart {
  readonly #path: string | undefined;
  #more: { readonly before: string; readonly styles: MoreStyles } | undefined;

  constructor(readonly opened: OpenedWorkbook) {
    const { pack, workbookPart } = opened;
    const of = relationsOf(pack, workbookPart).find(({ type, target }) => type === "styles" && pack.has(target));
    this.#path = of?.target;
  }

  changed = (base: number, { from, to }: NonNullable<CellEdit["looks"]>): number =>
    this.#styles().changed(base, from, to);

  numberOf = (style: Style | undefined): string | undefined => (style ? this.#styles().numberOf(style) : undefined);

  putInto(draft: Draft): void {
    const after = this.#more?.styles.xml();
    if (after === undefined || after === this.#more?.before) return;
    if (this.#path !== undefined) draft.put(this.#path, after);
    else {
      const path = draft.folder + firstFree("styles", ".xml", (name) => draft.has(draft.folder + name));
      draft.add(path, `${SHEET_TYPE}.styles+xml`, after);
      draft.relate(this.opened.workbookPart, `${OFFICE}/styles`, path.slice(draft.folder.length));
    }
  }

  #styles(): MoreStyles {
    if (!this.#more) {
      const before = this.#path === undefined ? new StyleSheet().xml() : this.opened.pack.text(this.#path);
      this.#more = { before, styles: new MoreStyles(before, this.#path ?? "styles.xml") };
    }
    return this.#more.styles;
  }
}
