import { sayPlace } from "../../engine/place";
import { formulaAsRead } from "./formula-as-read";
import type { OpenBook } from "./open-book";
import { sayTyped } from "./typed-value";

/** Tells the selected cell in words: the grid is drawn on a canvas, which has none. */
export const announceCell = (said: HTMLElement, book: OpenBook): void => {
  const tell = () => {
    const { place, view } = book;
    if (!place || !view) return;
    const formula = formulaAsRead(book, place);
    const value = sayTyped(view.valueAt(place), book.formatAt(place)) || "blank";
    const refusal = view.messageAt(place);
    const text = [`${sayPlace(place)}: ${value}`, refusal, formula && `formula ${formula}`].filter(Boolean).join("; ");
    if (said.textContent !== text) said.textContent = text;
  };
  book.onMoved(tell);
  book.onCalculated(tell);
};
