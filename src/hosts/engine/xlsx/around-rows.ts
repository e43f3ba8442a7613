import type { Sheet } from "../book";
import { around, type Block, overlap, readBlock, sayBlock } from "../place";
import { CannotKeep } from "./cannot-keep";
import { keptTag, tag } from "./cell-text";
import { type ColumnWish, columnSplices } from "./column-splices";
import { listSplices } from "./list-splices";
import type { Walk } from "./sheet-walk";
import type { Splice } from "./splice";
import { pane } from "./write-sheet";
import type { Opened } from "./xml";

/** What is asked of a sheet's part outside its rows; left out, it stays. */
export interface AroundWish {
  readonly columns?: ReadonlyMap<number, ColumnWish>;
  readonly frozen?: Sheet["frozen"];
  /** Blocks that become one cell each. */
  readonly merged?: readonly Block[];
}

/** What may stand between the rows and the merged cells (ECMA-376 part 1, CT_Worksheet). */
const beforeMerged =
  /^(sheetData|sheetCalcPr|sheetProtection|protectedRanges|scenarios|autoFilter|sortState|dataConsolidate|customSheetViews)$/;

/** Hears what stands around the rows of a sheet's part, and says what is to be done to it. */
export class AroundRows implements Pick<Walk, "element" | "elementEnd"> {
  readonly #columns: Opened[] = [];
  readonly #inView: Opened[] = [];
  readonly #merged: Block[] = [];
  #dimension: Opened | undefined;
  #cols: { open: Opened; closeFrom: number } | undefined;
  #view: Opened | undefined;
  #isInView = false;
  #mergeCells: { open: Opened; closeFrom: number } | undefined;
  #sheetData = -1;
  #afterRows = -1;

  element(element: Opened): void {
    const { name, attributes } = element;
    if (name === "dimension") this.#dimension = element;
    if (name === "cols") this.#cols = { open: element, closeFrom: element.from };
    if (name === "col") this.#columns.push(element);
    if (name === "sheetView" && !this.#view) {
      this.#view = element;
      this.#isInView = true;
    }
    if (this.#isInView && (name === "pane" || name === "selection")) this.#inView.push(element);
    if (name === "sheetData") this.#sheetData = element.from;
    if (name === "mergeCells") this.#mergeCells = { open: element, closeFrom: element.from };
    const block = name === "mergeCell" ? readBlock(attributes.ref ?? "") : undefined;
    if (block) this.#merged.push(block);
  }

  elementEnd(name: string, from: number, to: number): void {
    if (name === "cols" && this.#cols) this.#cols.closeFrom = from;
    if (name === "sheetView") this.#isInView = false;
    if (name === "mergeCells" && this.#mergeCells) this.#mergeCells.closeFrom = from;
    if (beforeMerged.test(name)) this.#afterRows = Math.max(this.#afterRows, to);
  }

  /** The look that a cell has in a column before it has one of its own. */
  styleOfColumn(column: number): string | undefined {
    const has = ({ attributes }: Opened) => Number(attributes.min) <= column + 1 && Number(attributes.max) > column;
    return this.#columns.find(has)?.attributes.style;
  }

  /** `filled`: cells that the part did not have. */
  splices({ columns, frozen, merged }: AroundWish, filled: Block | undefined): Splice[] {
    if (this.#sheetData < 0) throw new CannotKeep("one of its sheets has no place for cells");
    const written = { ...this.#cols, columns: this.#columns, otherwise: this.#sheetData };
    return [
      ...(filled ? this.#widened(filled) : []),
      ...(frozen ? this.#frozen(frozen) : []),
      ...(columns ? columnSplices(written, columns) : []),
      ...(merged ? this.#mergedToo(merged) : []),
    ];
  }

  #widened(filled: Block): Splice[] {
    const said = this.#dimension;
    const block = said && readBlock(said.attributes.ref ?? "");
    if (!said || !block) return [];
    const ref = sayBlock(around(block, filled));
    if (ref === sayBlock(block)) return [];
    return [
      {
        from: said.from,
        to: said.to,
        put: keptTag("dimension", { ...said.attributes, ref }, said.isSelfClosing ? "/>" : ">"),
      },
    ];
  }

  #frozen(frozen: NonNullable<Sheet["frozen"]>): Splice[] {
    const view = this.#view;
    if (!view) throw new CannotKeep("one of its sheets has no view to freeze rows in");
    const gone = this.#inView.map(({ from, to, isSelfClosing }) => {
      if (!isSelfClosing) throw new CannotKeep("one of its sheets has a view with more in it than is known here");
      return { from, to, put: "" };
    });
    const put = pane({ frozen });
    if (!view.isSelfClosing) return [{ from: view.to, to: view.to, put }, ...gone];
    return [{ from: view.from, to: view.to, put: `${keptTag("sheetView", view.attributes)}${put}</sheetView>` }];
  }

  /** Cells that are merged already stay as they are: no two blocks may share a cell. */
  #mergedToo(blocks: readonly Block[]): Splice[] {
    const free = blocks.filter((block) => !this.#merged.some((other) => overlap(block, other)));
    const put = free.map((block) => tag("mergeCell", { ref: sayBlock(block) }, "/>")).join("");
    const count = String(this.#merged.length + free.length);
    return listSplices("mergeCells", { ...this.#mergeCells, otherwise: this.#afterRows }, put, { count });
  }
}
