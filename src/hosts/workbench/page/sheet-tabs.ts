import { dressEdges } from "./dress-sheet";
import { focusGrid } from "./focus-grid";
import { goTo } from "./go-to";
import type { OpenBook } from "./open-book";

/** The sheets by name, and a way to take a fresh one. */
export const showSheets = (place: HTMLElement, book: OpenBook): void => {
  const draw = () => {
    const workbook = book.grid.api.getActiveWorkbook();
    const here = workbook?.getActiveSheet().getSheetName();
    const names = workbook?.getSheets().map((sheet) => sheet.getSheetName()) ?? [];
    const wanted = JSON.stringify([names, here]);
    if (place.dataset.drawn === wanted) return;
    place.dataset.drawn = wanted;
    const tabs = names.map((name) => {
      const tab = tabCalled(name, () => goTo(book, { sheet: name, row: 0, column: 0 }));
      if (name === here) tab.setAttribute("aria-current", "true");
      return tab;
    });
    const fresh = tabCalled("Fresh sheet", () => takeFreshSheet(book, names));
    fresh.classList.add("shop-sheet-fresh");
    const hadFocus = place.contains(document.activeElement);
    place.replaceChildren(...tabs, fresh);
    if (hadFocus) tabs.find((tab) => tab.hasAttribute("aria-current"))?.focus();
  };
  book.onMoved(draw);
};

const tabCalled = (name: string, onPress: () => void): HTMLButtonElement => {
  const tab = document.createElement("button");
  tab.type = "button";
  tab.className = "shop-sheet";
  tab.textContent = name;
  tab.addEventListener("click", onPress);
  return tab;
};

const takeFreshSheet = (book: OpenBook, taken: readonly string[]): void => {
  let n = 1;
  while (taken.includes(`Scratch ${n}`)) n++;
  const fresh = book.grid.api.getActiveWorkbook()?.create(`Scratch ${n}`, 200, 26);
  if (fresh) dressEdges(fresh);
  goTo(book, { sheet: `Scratch ${n}`, row: 0, column: 0 });
  focusGrid();
};
