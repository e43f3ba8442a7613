import type { AnyDefinition } from "../../../definition/define";
import { type Parameter, sheetName } from "../../../definition/parameter";
import { introduced } from "../../../derived/wanted";
import { sheetFunction } from "../../engine/functions";

const most = 8;

/** The functions that a half-typed name may become, as options of a list box. */
export const optionsFor = (candidates: readonly AnyDefinition[], chosen: number): HTMLElement[] =>
  candidates.slice(0, most).map((definition, i) => {
    const option = piece("div", "shop-option");
    option.id = `option-${i}`;
    option.setAttribute("role", "option");
    option.setAttribute("aria-selected", String(i === chosen));
    option.append(piece("span", "shop-option-name", sheetFunction(definition)), piece("span", "", definition.summary));
    return option;
  });

/** How many options are shown of so many candidates. */
export const shownOf = (candidates: readonly AnyDefinition[]): number => Math.min(most, candidates.length);

/** A function's arguments in a row, the one being typed marked and told. */
export const helpFor = (definition: AnyDefinition, place: number): HTMLElement[] => {
  const parameters = Object.entries(definition.parameters as Record<string, Parameter>);
  const at = parameters.at(-1)?.[1].repeating ? Math.min(place, parameters.length - 1) : place;
  const names = parameters.flatMap(([key, { otherwise }], i) => {
    const name = otherwise === undefined ? sheetName(key) : `[${sheetName(key)}]`;
    const shown = i === at ? piece("strong", "shop-help-here", name) : name;
    return i === 0 ? [shown] : [", ", shown];
  });
  const signature = piece("p", "shop-help-names", `${sheetFunction(definition)}(`);
  signature.append(...names, ")");
  const now = parameters[at];
  if (!now) return [signature];
  const [key, parameter] = now;
  return [signature, piece("p", "shop-help-now", `${sheetName(key)}: ${introduced(parameter)}`)];
};

const piece = (kind: string, className: string, text = ""): HTMLElement => {
  const made = document.createElement(kind);
  made.className = className;
  made.textContent = text;
  return made;
};
