import { unzipSync } from "fflate";
import { compareSheets } from "./compare-sheets";
import { attribute, attributesOf, isOpening, tagName, tokensOf, unescaped } from "./xml-tokens";

export const textOf = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString("utf8");

/** The sheets' parts by the names of the sheets. */
export const sheetParts = (parts: Readonly<Record<string, Uint8Array>>): Map<string, string> => {
  const find = (path: string) => Object.keys(parts).find((name) => name.toLowerCase() === path.toLowerCase());
  const relations = (path: string) =>
    tokensOf(textOf(parts[find(path) ?? ""])).filter((token) => tagName(token) === "Relationship");
  const root = relations("_rels/.rels").find((token) => attribute(token, "Type")?.endsWith("/officeDocument"));
  const workbook = (attribute(root ?? "", "Target") ?? "").replace(/^\//, "");
  const [, folder = "", file = ""] = /^(.*\/)?([^/]*)$/.exec(workbook) ?? [];
  // A sheet of another kind holds no cells that are calculated.
  const isSheet = (token: string) => attribute(token, "Type")?.endsWith("/worksheet");
  // Of two with one name the first counts, so it is set last.
  const targets = new Map(
    relations(`${folder}_rels/${file}.rels`)
      .filter(isSheet)
      .reverse()
      .map((token) => [attribute(token, "Id"), attribute(token, "Target") ?? ""]),
  );
  const sheets = tokensOf(textOf(parts[find(workbook) ?? ""])).filter((token) => tagName(token) === "sheet");
  return new Map(
    sheets.flatMap((token): [string, string][] => {
      const id = attributesOf(token).find(([name]) => name.endsWith(":id"))?.[1];
      const target = targets.get(id);
      if (target === undefined) return [];
      const path = new URL(target.startsWith("/") ? target : folder + target, "file:///").pathname.slice(1);
      return [[unescaped(attribute(token, "name") ?? ""), find(path) ?? path]];
    }),
  );
};

/**
 * What a recalculation changed that it may not change, in words. `kept` are the cells ("Log!A1") whose formulas were not calculated;
 * of a part that holds none of the sheets' cells not a byte may differ.
 */
export const surprises = (before: Uint8Array, after: Uint8Array, kept: readonly string[]): string[] => {
  const [old, now] = [unzipSync(before), unzipSync(after)];
  const found: string[] = [];
  const sheets = sheetParts(old);
  const names = new Map([...sheets].map(([name, part]) => [part, name]));
  let marked = 0;
  const changed = new Set<string>();
  for (const part of new Set([...Object.keys(old), ...Object.keys(now)])) {
    if (Buffer.from(old[part] ?? []).equals(Buffer.from(now[part] ?? [])) && part in old && part in now) continue;
    const sheet = names.get(part);
    if (sheet === undefined || !(part in old) || !(part in now)) {
      changed.add(part);
      continue;
    }
    const cells = kept.filter((place) => sheetOf(place) === sheet).map(cellOf);
    const compared = compareSheets(textOf(old[part]), textOf(now[part]), new Set(cells));
    marked += compared.marked;
    found.push(...compared.surprises.map((what) => `${part}: ${what}`));
  }
  for (const part of changed) {
    const is = marked > 0 ? forMarks(textOf(old[part]), textOf(now[part]), part) : undefined;
    if (is !== "known") found.push(`${part} differs${marked > 0 ? ", and not for a mark" : ""}`);
  }
  return found;
};

export const sheetOf = (place: string): string =>
  place.slice(0, place.lastIndexOf("!")).replace(/^'|'$/g, "").replaceAll("''", "'");

export const cellOf = (place: string): string => place.slice(place.lastIndexOf("!") + 1);

/** What formulas that are newly marked as dynamic arrays ask of the package: the part that knows marks, and none that lists formulas. */
const forMarks = (before: string, after: string, part: string): "known" | undefined => {
  // A list that goes need not even be well-formed.
  if (after === "") return /calcChain/i.test(part) ? "known" : undefined;
  const [old, now] = [tokensOf(before), tokensOf(after)];
  if (before === "") return now.some((token) => attribute(token, "name") === "XLDAPR") ? "known" : undefined;
  const uncounted = (token: string) => token.replace(/ count="\d*"/, "").replace(/\/>$/, ">");
  const isAdded = (token: string) => !old.some((known) => uncounted(known) === uncounted(token));
  const isAboutMarks = (token: string) =>
    /metadata|calcChain|XLDAPR|dynamicArray|^<\/?(bk|rc|ext|extLst)\b/i.test(token);
  const gone = old.filter((token) => isOpening(token) && !now.some((known) => uncounted(known) === uncounted(token)));
  const added = now.filter((token) => isOpening(token) && isAdded(token));
  return [...gone, ...added].every(isAboutMarks) ? "known" : undefined;
};
