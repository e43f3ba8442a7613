import type { AnyDefinition } from "../../../definition/define";
import { isIn } from "../../engine/place";
import { focusGrid } from "./focus-grid";
import type { OpenBook } from "./open-book";
import { putInto } from "./put-into";

/** Offers the words that a workbook lists for the selected cell. Returns the way to open that list, which is false where there is none. */
export const offerWords = (
  choice: HTMLSelectElement,
  book: OpenBook,
  catalogue: readonly AnyDefinition[],
): (() => boolean) => {
  const draw = () => {
    const words = wordsHere(book);
    choice.hidden = words.length === 0;
    if (choice.hidden || !book.place) return;
    const value = book.view?.valueAt(book.place) ?? "";
    const isListed = words.some((word) => word === value);
    choice.replaceChildren(
      ...(isListed ? [] : [optionCalled(value === "" ? "choose a word" : "choose another word", "")]),
      ...words.map((word) => optionCalled(word, word)),
    );
    choice.value = isListed ? String(value) : "";
  };
  book.onMoved(draw);
  book.onCalculated(draw);
  let isListOpen = false;
  choice.addEventListener("pointerdown", () => {
    isListOpen = true;
  });
  choice.addEventListener("change", () => {
    if (choice.value !== "" && book.place) putInto(book, book.place, choice.value, catalogue);
    // Arrow keys on a closed list step from word to word; the keyboard stays then.
    if (isListOpen) focusGrid();
    isListOpen = false;
  });
  choice.addEventListener("keydown", ({ key }) => {
    if (key === "Enter" || key === "Escape") focusGrid();
  });
  return () => {
    if (choice.hidden) return false;
    choice.focus();
    choice.showPicker();
    isListOpen = true;
    return true;
  };
};

const optionCalled = (text: string, value: string): HTMLOptionElement => new Option(text, value);

/** The grid does not move the lists when rows or columns are put in or taken out, so then none is offered. */
const wordsHere = (book: OpenBook): readonly string[] => {
  const { place, asRead, grid } = book;
  const sheet = place && grid.api.getActiveWorkbook()?.getSheetByName(place.sheet);
  const size = place && book.sizeAtFirst(place.sheet);
  if (!sheet || !size || sheet.getMaxRows() !== size.rows || sheet.getMaxColumns() !== size.columns) return [];
  const lists = asRead?.sheets.find(({ name }) => name === place.sheet)?.choices ?? [];
  return lists.find(({ block }) => isIn(block, place))?.words ?? [];
};
