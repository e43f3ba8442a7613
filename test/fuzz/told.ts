import { explained } from "../../src/definition/explained";
import type { Axis, Plot } from "../../src/definition/plot";
import { lanesOf, type Question } from "./question";
import { count, demand, isHandedNonsense, nonsense } from "./road";

/** What every explanation owes; throws with a sentence where it is not kept. `die` chooses the row. */
export const isWellExplained = (question: Question, die: number): void => {
  count.calls++;
  const row = Math.floor(die * (lanesOf(question)?.rows ?? 1));
  const told = explained(question.definition, question.args, row);
  const { refusal, steps, answer, results, cautions, inputs, sources, plot } = told;
  const words = JSON.stringify([steps, answer, results, cautions, inputs, told.row, told.of]);
  const found = isHandedNonsense(question) ? null : nonsense.exec(words);
  demand(
    found === null,
    `The explanation says: ${words.slice(Math.max(0, (found?.index ?? 0) - 80), (found?.index ?? 0) + 40)}`,
  );
  demand(
    answer.length > 0 && sources.length > 0 && cautions.length > 0,
    "The explanation lacks answer, sources or cautions.",
  );
  if (!refusal && answer !== "The row is blank, so the answer is blank.")
    demand(steps.length > 0, "The explanation has no steps.");
  const lines = [
    answer,
    ...cautions,
    ...inputs.map(({ shown }) => shown),
    ...steps.flatMap(({ sentence, plain = "" }) => [sentence, plain]),
  ];
  for (const line of lines) demand(!line.includes("\n"), `A plain line is not one: ${line}`);
  for (const { tex, plain } of steps) demand(!tex || Boolean(plain), "A typeset step has no plain line.");
  if (plot) isInItsFrame(plot);
};

const isInItsFrame = ({ x, y, bands = [], lines = [], points = [] }: Plot): void => {
  for (const axis of [x, y]) {
    demand(Number.isFinite(axis.from) && Number.isFinite(axis.to), `The axis of ${axis.quantity} has no ends.`);
    demand(axis.from < axis.to, `The axis of ${axis.quantity} goes from ${axis.from} to ${axis.to}.`);
    demand(
      axis.scale === "linear" || axis.from > 0,
      `The axis of ${axis.quantity} starts at ${axis.from}, on a log scale.`,
    );
  }
  for (const { name, samples } of bands)
    for (const { x: at, low, high } of samples) {
      isOn(x, at, name);
      isOn(y, low, name);
      isOn(y, high, name);
      demand(low <= high, `The band "${name}" is upside down at ${at}.`);
    }
  for (const { name, samples } of lines)
    for (const sample of samples) {
      isOn(x, sample.x, name);
      isOn(y, sample.y, name);
    }
  for (const { name, x: at, y: up } of points) {
    isOn(x, at, name);
    isOn(y, up, name);
  }
};

const isOn = ({ quantity, from, to }: Axis, value: number, name: string): void => {
  const slack = 1e-6 * Math.max(Math.abs(from), Math.abs(to));
  demand(
    value >= from - slack && value <= to + slack,
    `"${name}" lies at ${value} ${quantity}, outside ${from} to ${to}.`,
  );
};
