import { EditingRenderController } from "@univerjs/sheets-ui";
import { demand } from "../../engine/demand";

interface Editing {
  _submitEdit: (this: Editing, ...given: unknown[]) => Promise<boolean>;
  _lexerTreeBuilder: object;
}

let kept = false;

/**
 * The engine writes a formula anew as it leaves the cell's editor. Behind a number that it shortens or lengthens ("3.20", "1.5%") it
 * takes its words from the wrong letters: =IF(A1<3.20,"yes","no") said ye. What it finds no parts in it leaves alone.
 */
export const keepLetters = (): void => {
  if (kept) return;
  const editing = EditingRenderController.prototype as unknown as Editing;
  const submit = editing._submitEdit;
  demand(typeof submit === "function", "its cells are edited in another way");
  editing._submitEdit = function (...given) {
    const lexer = this._lexerTreeBuilder as { sequenceNodesBuilder?: unknown };
    demand(typeof lexer.sequenceNodesBuilder === "function", "its editor finds the parts of a formula in another way");
    if (!Object.hasOwn(lexer, "sequenceNodesBuilder"))
      this._lexerTreeBuilder = Object.create(lexer, { sequenceNodesBuilder: { value: () => undefined } });
    return submit.apply(this, given);
  };
  kept = true;
};
