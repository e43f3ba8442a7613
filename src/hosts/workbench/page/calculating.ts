import type { Grid } from "./start-grid";

const patienceMs = 500;

interface Status {
  /** Says that a calculation is going on; empty while none is. */
  readonly said: HTMLElement;
  /** How much of it is done. */
  readonly bar: HTMLProgressElement;
}

/** Tells of a calculation that takes longer than half a second, and how far it is. */
export const tellCalculations = ({ api }: Grid, { said, bar }: Status): void => {
  const formula = api.getFormula();
  let began: number | undefined;
  let wasLong = false;
  const passed = () => (began === undefined ? 0 : performance.now() - began);
  const show = (isOn: boolean) => {
    // The same words said again would be read out again.
    if (bar.hidden !== isOn) return;
    said.textContent = isOn ? "Calculating …" : "";
    bar.hidden = !isOn;
  };
  formula.calculationStart(() => {
    began ??= performance.now();
    bar.removeAttribute("value");
    // One long formula leaves the page no time to draw in between, so what was long last time is told from the start.
    if (wasLong) show(true);
    setTimeout(() => passed() >= patienceMs && show(true), patienceMs);
  });
  // Comes between one bundle of formulas and the next, when the page can draw.
  formula.calculationProcessing((stage) => {
    bar.max = Math.max(1, stage.totalFormulasToCalculate + stage.totalArrayFormulasToCalculate);
    bar.value = stage.completedFormulasCount + stage.completedArrayFormulasCount;
    if (passed() >= patienceMs) show(true);
  });
  formula.calculationEnd(() => {
    wasLong = passed() >= patienceMs;
    began = undefined;
    show(false);
  });
};
