import type { AnyDefinition } from "../../../definition/define";
import { type Parameter, sheetName } from "../../../definition/parameter";
import { kinOf, wordsOf } from "./words";

/**
 * The functions that are about each of the words typed, the nearest first: a word counts most in a name, then in a summary, then
 * among arguments and results, and less where only a word of its kin stands. None when nothing is typed that matters.
 */
export const find = (typed: string, catalogue: readonly AnyDefinition[]): AnyDefinition[] => {
  const words = wordsOf(typed);
  if (words.length === 0) return [];
  return catalogue
    .map((definition) => ({ definition, nearness: words.map((word) => nearnessOf(word, definition)) }))
    .filter(({ nearness }) => !nearness.includes(0))
    .map(({ definition, nearness }) => ({ definition, near: nearness.reduce((sum, one) => sum + one, 0) }))
    .sort((a, b) => b.near - a.near)
    .map(({ definition }) => definition);
};

const nearnessOf = (word: string, definition: AnyDefinition): number => {
  const texts = [definition.name, definition.summary, othersOf(definition)].map((text) => text.toLowerCase());
  const near = (words: readonly string[], worth: readonly number[]): number =>
    worth[texts.findIndex((text) => words.some((one) => beginsAWord(text, one)))] ?? 0;
  return Math.max(near([word], [8, 4, 2]), near(kinOf(word), [5, 2, 1]));
};

const beginsAWord = (text: string, word: string): boolean =>
  text.match(/[\p{L}\p{N}]+/gu)?.some((one) => one.startsWith(word)) ?? false;

const othersOf = ({ parameters, results }: AnyDefinition): string =>
  [
    ...Object.entries(parameters as Record<string, Parameter>).map(
      ([key, { meaning }]) => `${sheetName(key)} ${meaning}`,
    ),
    ...results.map(({ name, meaning }) => `${name} ${meaning}`),
  ].join(" ");
