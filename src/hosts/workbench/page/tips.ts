import { cutText } from "./cut-text";
import type { OpenBook } from "./open-book";

/** Shows the sentence of a refusal, or the whole of a text that is cut off, beside the pointer while it rests on the cell. */
export const showTips = (container: HTMLElement, book: OpenBook): void => {
  const tip = document.createElement("div");
  tip.className = "shop-tip";
  tip.hidden = true;
  document.body.append(tip);
  let pointer = { x: 0, y: 0 };
  container.addEventListener("pointermove", ({ clientX, clientY }) => {
    pointer = { x: clientX, y: clientY };
  });
  container.addEventListener("pointerleave", () => {
    tip.hidden = true;
  });
  const { api } = book.grid;
  api.addEvent(api.Event.CellHover, ({ row, column, worksheet }) => {
    const place = { sheet: worksheet.getSheetName(), row, column };
    const refusal = book.view?.messageAt(place);
    const sentence = refusal ?? cutText(book, place);
    tip.hidden = sentence === undefined;
    tip.textContent = sentence ?? "";
    tip.classList.toggle("shop-tip-refusal", refusal !== undefined);
    tip.style.left = `${Math.min(pointer.x + 14, window.innerWidth - 370)}px`;
    tip.style.top = `${pointer.y + 18}px`;
  });
};
