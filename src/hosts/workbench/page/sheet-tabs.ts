import { dressEdges, usualLook } from "./dress-sheet";
import { focusGrid } from "./focus-grid";
import { goTo } from "./go-to";
import type { OpenBook } from "./open-book";
import { askAndDelete, nameField } from "./sheet-changes";

interface Strip {
  readonly place: HTMLElement;
  /** Where what went amiss is said. */
  readonly said: HTMLElement;
}

/** The sheets by name, and ways to take a fresh one, to rename the one in sight and to delete it. */
export const showSheets = ({ place, said }: Strip, book: OpenBook): void => {
  const say = (sentence = "") => {
    said.textContent = sentence;
  };
  const draw = () => {
    const workbook = book.grid.api.getActiveWorkbook();
    const here = workbook?.getActiveSheet().getSheetName();
    const names = workbook?.getSheets().map((sheet) => sheet.getSheetName()) ?? [];
    const wanted = JSON.stringify([names, here]);
    if (here === undefined || place.dataset.drawn === wanted) return;
    place.dataset.drawn = wanted;
    say();
    const tabs = names.map((name) => tabCalled(name, () => goTo(book, { sheet: name, row: 0, column: 0 })));
    const current = tabs[names.indexOf(here)];
    const rename = () => {
      const done = (sentence?: string) => {
        place.dataset.drawn = "";
        draw();
        say(sentence);
        place.querySelector<HTMLElement>("[aria-current]")?.focus();
      };
      const field = nameField(book, { names, here, say, done });
      current?.replaceWith(field);
      field.select();
    };
    const remove = async () => {
      const deleted = await askAndDelete(book, here);
      // The question took the keyboard with it.
      if (deleted) focusGrid();
      else place.querySelector<HTMLElement>("[aria-current]")?.focus();
    };
    current?.setAttribute("aria-current", "true");
    current?.setAttribute("aria-keyshortcuts", "F2 Delete");
    current?.addEventListener("dblclick", rename);
    current?.addEventListener("keydown", ({ key }) => {
      if (key === "F2") rename();
      if (key === "Delete" && names.length > 1) void remove();
    });
    const hadFocus = place.contains(document.activeElement);
    const deed = deedCalled("Delete", `Delete sheet ${here}`, () => void remove());
    deed.disabled = names.length === 1;
    place.replaceChildren(
      ...tabs,
      deedCalled("Fresh sheet", "Fresh sheet", () => takeFreshSheet(book, names)),
      deedCalled("Rename", `Rename sheet ${here}`, rename),
      deed,
    );
    if (hadFocus) current?.focus();
  };
  book.onMoved(draw);
};

const tabCalled = (name: string, onPress: () => void): HTMLButtonElement => {
  const tab = buttonCalled(name, "shop-sheet");
  tab.addEventListener("click", ({ detail }) => {
    onPress();
    // After the mouse what is typed goes into the sheet; the keyboard stays on the tabs.
    if (detail > 0) focusGrid();
  });
  return tab;
};

const deedCalled = (text: string, label: string, onPress: () => void): HTMLButtonElement => {
  const button = buttonCalled(text, "shop-sheet-deed");
  button.setAttribute("aria-label", label);
  button.addEventListener("click", onPress);
  return button;
};

const buttonCalled = (text: string, className: string): HTMLButtonElement => {
  const button = document.createElement("button");
  button.type = "button";
  button.className = className;
  button.textContent = text;
  return button;
};

const takeFreshSheet = (book: OpenBook, taken: readonly string[]): void => {
  let n = 1;
  while (taken.includes(`Scratch ${n}`)) n++;
  const fresh = book.grid.api
    .getActiveWorkbook()
    ?.create(`Scratch ${n}`, 200, 26, { sheet: { defaultStyle: usualLook } });
  if (fresh) dressEdges(fresh);
  goTo(book, { sheet: `Scratch ${n}`, row: 0, column: 0 });
  focusGrid();
};
