import type { AnyDefinition } from "../../../definition/define";
import { type Parameter, sheetName } from "../../../definition/parameter";

/** The functions in whose name, summary, arguments or results each of the words stands; those that have them in the name first. */
export const find = (words: string, catalogue: readonly AnyDefinition[]): AnyDefinition[] => {
  const wanted = words
    .toLowerCase()
    .split(/[\s.]+/)
    .filter(Boolean);
  const ranked = catalogue.flatMap((definition) => {
    const name = definition.name.toLowerCase();
    const text = `${name} ${textOf(definition)}`.toLowerCase();
    if (!wanted.every((word) => text.includes(word))) return [];
    const rank = wanted.every((word) => name.includes(word)) ? 0 : 1;
    return [{ definition, rank }];
  });
  return ranked.sort((a, b) => a.rank - b.rank).map(({ definition }) => definition);
};

const textOf = ({ summary, parameters, results }: AnyDefinition): string =>
  [
    summary,
    ...Object.entries(parameters as Record<string, Parameter>).map(
      ([key, { meaning }]) => `${sheetName(key)} ${meaning}`,
    ),
    ...results.map(({ name, meaning }) => `${name} ${meaning}`),
  ].join(" ");
