import type { AnyDefinition } from "../../../definition/define";
import { sheetFunction } from "../../engine/functions";
import { type Typing, typingIn } from "./typing";
import { helpFor, optionsFor, shownOf } from "./typing-help";

/** Completion of our functions' names in the formula line, and help with the argument being typed. */
export class Completion {
  #typing: Typing;
  #chosen = 0;

  constructor(
    readonly line: HTMLInputElement,
    readonly list: HTMLElement,
    readonly help: HTMLElement,
    readonly catalogue: readonly AnyDefinition[],
  ) {
    line.addEventListener("input", () => this.#read());
    line.addEventListener("click", () => this.#read());
    line.addEventListener("keyup", ({ key }) => /^(Arrow(Left|Right)|Home|End)$/.test(key) && this.#read());
    line.addEventListener("blur", () => this.close());
    // Before the line loses the focus to the pointer.
    list.addEventListener("pointerdown", (event) => {
      event.preventDefault();
      const option = (event.target as HTMLElement).closest<HTMLElement>(".shop-option");
      if (option) this.#take([...list.children].indexOf(option));
    });
  }

  /** Takes a key that is meant for the list; false when it is not. */
  takesKey(key: string): boolean {
    if (this.#typing?.typing !== "name") return false;
    const shown = shownOf(this.#typing.candidates);
    if (key === "ArrowDown") this.#chosen = (this.#chosen + 1) % shown;
    else if (key === "ArrowUp") this.#chosen = (this.#chosen + shown - 1) % shown;
    else if (key === "Enter" || key === "Tab") return this.#take(this.#chosen);
    else if (key === "Escape") return this.close();
    else return false;
    this.#draw();
    return true;
  }

  close(): true {
    this.#typing = undefined;
    this.#draw();
    return true;
  }

  #read(): void {
    this.#typing = typingIn(this.line.value, this.line.selectionStart ?? 0, this.catalogue);
    this.#chosen = 0;
    this.#draw();
  }

  #take(index: number): boolean {
    const typing = this.#typing;
    const definition = typing?.typing === "name" ? typing.candidates[index] : undefined;
    if (typing?.typing !== "name" || !definition) return false;
    const { line } = this;
    const caret = line.selectionStart ?? line.value.length;
    line.setRangeText(`${sheetFunction(definition)}(`, typing.from, caret, "end");
    this.#read();
    return true;
  }

  #draw(): void {
    const { line, list, help } = this;
    const candidates = this.#typing?.typing === "name" ? this.#typing.candidates : [];
    list.hidden = candidates.length === 0;
    list.replaceChildren(...optionsFor(candidates, this.#chosen));
    line.setAttribute("aria-expanded", String(!list.hidden));
    if (list.hidden) line.removeAttribute("aria-activedescendant");
    else line.setAttribute("aria-activedescendant", `option-${this.#chosen}`);
    help.hidden = this.#typing?.typing !== "argument";
    help.replaceChildren(
      ...(this.#typing?.typing === "argument" ? helpFor(this.#typing.definition, this.#typing.place) : []),
    );
  }
}
