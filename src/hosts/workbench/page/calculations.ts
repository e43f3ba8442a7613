import type { Grid } from "./start-grid";

/** So long after a change the engine begins to calculate, and a little. */
const beginsAfterMs = 150;
const lookEveryMs = 30;

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Knows whether the engine calculates, or is about to. */
export class Calculations {
  #isOn = false;

  constructor({ api }: Grid) {
    const formula = api.getFormula();
    formula.calculationStart(() => {
      this.#isOn = true;
    });
    formula.calculationEnd(() => {
      this.#isOn = false;
    });
  }

  /** Resolves once all that was typed has been calculated. */
  async over(): Promise<void> {
    do await pause(this.#isOn ? lookEveryMs : beginsAfterMs);
    while (this.#isOn);
  }
}
