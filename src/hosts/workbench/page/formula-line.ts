import { sayCellOf } from "../../engine/place";
import type { Completion } from "./completion";
import { cutText } from "./cut-text";
import { focusGrid } from "./focus-grid";
import { formulaAsRead } from "./formula-as-read";
import type { OpenBook } from "./open-book";
import { putInto } from "./put-into";
import { sayTyped } from "./typed-value";

interface FormulaLine {
  readonly address: HTMLElement;
  readonly line: HTMLInputElement;
  readonly note: HTMLElement;
  readonly completion: Completion;
}

/** The line above the grid: the selected cell's formula or value to read and to change, the sentence of a refusal, the whole of a text that is cut off. */
export const showFormulaLine = (book: OpenBook, { address, line, note, completion }: FormulaLine): void => {
  const draw = () => {
    const { place, view } = book;
    address.textContent = place ? sayCellOf(place) : "No cell";
    line.disabled = !place;
    if (!place || !view) return;
    const refusal = view.messageAt(place);
    note.textContent = refusal ?? cutText(book, place) ?? "";
    note.classList.toggle("shop-note-refusal", refusal !== undefined);
    if (document.activeElement !== line)
      line.value = formulaAsRead(book, place) || sayTyped(view.valueAt(place), book.formatAt(place));
  };
  book.onMoved(() => {
    line.blur();
    draw();
  });
  book.onCalculated(draw);
  line.addEventListener("keydown", (event) => {
    if (completion.takesKey(event.key)) event.preventDefault();
    else if (event.key === "Enter" && book.place) {
      putInto(book, book.view?.spillAt(book.place) ?? book.place, line.value, completion.catalogue);
      line.blur();
      focusGrid();
    } else if (event.key === "Escape") {
      line.blur();
      draw();
      focusGrid();
    }
  });
  line.addEventListener("blur", draw);
};
