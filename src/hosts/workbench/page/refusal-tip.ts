import type { OpenBook } from "./open-book";

/** Shows the sentence of a refusal beside the pointer while it rests on the cell. */
export const showRefusalTips = (container: HTMLElement, book: OpenBook): void => {
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
    const sentence = book.view?.messageAt({ sheet: worksheet.getSheetName(), row, column });
    tip.hidden = sentence === undefined;
    tip.textContent = sentence ?? "";
    tip.style.left = `${Math.min(pointer.x + 14, window.innerWidth - 370)}px`;
    tip.style.top = `${pointer.y + 18}px`;
  });
};
