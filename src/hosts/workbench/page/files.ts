import type { AnyDefinition } from "../../../definition/define";
import { type OpenedWorkbook, openWorkbook } from "../../engine/xlsx/open-workbook";
import { ask } from "./ask";
import { Calculations } from "./calculations";
import { firstAnswer } from "./first-answer";
import { goTo } from "./go-to";
import { stateOf } from "./grid-state";
import { Moves } from "./moves";
import type { OpenBook } from "./open-book";
import type { OpenedFile } from "./opened-file";
import { copyOf, download } from "./save-copy";
import { nameOfCopy, sayCopy } from "./say-copy";
import { showWorkbook } from "./show-workbook";

/** Opening and saving, each with a sentence that says how it went. */
export class Files {
  #name = "workbook.xlsx";
  #opened: OpenedWorkbook | undefined;
  readonly #moves: Moves;
  readonly #calculations: Calculations;

  constructor(
    readonly book: OpenBook,
    readonly catalogue: readonly AnyDefinition[],
    readonly say: (sentence: string) => Promise<void>,
  ) {
    this.#moves = new Moves(book.grid.univer);
    this.#calculations = new Calculations(book.grid);
  }

  /** Opens a workbook in the place of the one there is, after a question where work would be lost. */
  async openInstead(file: OpenedFile): Promise<void> {
    const question = `Open ${file.name}? What was done in ${this.#name} and not saved is given up.`;
    if (!this.book.isChanged || (await ask(question, `Open ${file.name}`))) await this.open(file);
  }

  open(fetching: OpenedFile | Promise<OpenedFile>): Promise<void> {
    return this.#try(async () => {
      await this.say("Opening …");
      const { name, bytes } = await fetching;
      await this.say(`Calculating ${name} …`);
      const opened = openWorkbook(bytes, this.catalogue);
      const kept = await showWorkbook(this.book, opened.book, this.catalogue);
      this.#opened = opened;
      this.#name = name;
      document.title = `${name} – Bimetal workbench`;
      // A newcomer sees an answer and its explanation at once.
      const first = firstAnswer(opened.book);
      if (first) goTo(this.book, first);
      const [one] = kept;
      if (!one) return name;
      return kept.length === 1
        ? `${name}: one formula is not calculated here and keeps its value: ${one.why}`
        : `${name}: ${kept.length} formulas are not calculated here and keep their values, the first because: ${one.why}`;
    });
  }

  save(): Promise<void> {
    return this.#try(async () => {
      await this.say(`Writing ${this.#name} …`);
      if (!this.#opened) throw new Error("No workbook is open.");
      // What was typed a moment ago is calculated first.
      await this.#calculations.over();
      const { bytes, how } = copyOf(this.#opened, stateOf(this.book, this.#moves), this.catalogue);
      const name = nameOfCopy(this.#name, how);
      download(name, bytes);
      this.book.settle();
      return `${name}: ${sayCopy(this.#opened, how)}`;
    });
  }

  async #try(work: () => Promise<string>): Promise<void> {
    try {
      await this.say(await work());
    } catch (reason) {
      await this.say(reason instanceof Error ? reason.message : String(reason));
    }
  }
}
