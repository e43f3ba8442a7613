import { ask } from "./ask";
import type { OpenBook } from "./open-book";
import { deleteSheet, filledCells, renameSheet } from "./sheet-deeds";
import { faultOfName } from "./sheet-name";

interface Renaming {
  readonly names: readonly string[];
  readonly here: string;
  readonly say: (sentence?: string) => void;
  /** Called once it is over, with what there is to tell. */
  readonly done: (sentence?: string) => void;
}

/** A field in place of a sheet's tab: Enter renames the sheet, Esc leaves its name as it is. */
export const nameField = (book: OpenBook, { names, here, say, done }: Renaming): HTMLInputElement => {
  const field = document.createElement("input");
  field.className = "shop-sheet-name";
  field.value = here;
  field.setAttribute("aria-label", `New name of sheet ${here}`);
  field.autocomplete = "off";
  field.spellcheck = false;
  const others = names.filter((name) => name !== here);
  let isOver = false;
  const end = (sentence?: string) => {
    isOver = true;
    done(sentence);
  };
  const take = (): boolean => {
    const name = field.value.trim();
    const fault = faultOfName(name, others);
    if (fault) {
      say(fault);
      field.setAttribute("aria-invalid", "true");
      return false;
    }
    isOver = true;
    if (name !== here) renameSheet(book, here, name);
    end();
    return true;
  };
  field.addEventListener("keydown", (event) => {
    event.stopPropagation();
    if (event.key === "Enter") take();
    if (event.key === "Escape") end();
  });
  // A press elsewhere takes a name that will do, and gives up one that will not.
  field.addEventListener("blur", () => {
    if (!isOver && !take()) end(`The sheet keeps its name ${here}.`);
  });
  return field;
};

/** Asks, then deletes a sheet; true when it is gone. */
export const askAndDelete = async (book: OpenBook, name: string): Promise<boolean> => {
  const cells = filledCells(book, name);
  const what = cells === 0 ? "It is empty." : `${cells} filled ${cells === 1 ? "cell goes" : "cells go"} with it.`;
  const question = `Delete the sheet ${name}? ${what} Formulas elsewhere that read it will show #REF!. Undo brings it back.`;
  if (!(await ask(question, `Delete ${name}`))) return false;
  deleteSheet(book, name);
  return true;
};
