import type { OpenedWorkbook } from "../../engine/xlsx/open-workbook";

/** What a file may hold that the grid does not show: found by the parts of the package, or by what stands in them. */
const byPart: readonly [RegExp, string][] = [
  [/^xl\/charts\/chart\d*\.xml$/i, "charts"],
  [/^xl\/chartsheets\//i, "sheets that are one chart"],
  [/^xl\/media\//i, "pictures"],
  [/^xl\/(threadedC|c)omments?/i, "comments"],
  [/^xl\/pivotTables\//i, "pivot tables"],
  [/^xl\/slicers\//i, "slicers"],
  [/^xl\/(ctrlProps|activeX)\//i, "form controls"],
  [/^xl\/vbaProject/i, "macros"],
];

const HIDDEN = "hidden rows and columns";

const inSheets: readonly [RegExp, string][] = [
  [elementCalled("conditionalFormatting"), "conditional formats"],
  [elementCalled("mergeCell"), "merged cells"],
  [elementCalled("hyperlink"), "links"],
  [elementCalled("autoFilter"), "filters"],
  [elementCalled("sheetProtection"), "protection"],
  [/<(\w+:)?dataValidation\s(?![^>]*type="list")/, "rules for what may be typed"],
  [/<(\w+:)?(row|col)\s[^>]*hidden="(1|true)"/, HIDDEN],
  [/<(\w+:)?row\s[^>]*customHeight="(1|true)"/, "heights of rows"],
  [/<(\w+:)?(headerFooter|printOptions|rowBreaks)\b/, "page set-up"],
];

const inStyles: readonly [RegExp, string][] = [
  [/<(\w+:)?(left|right|top|bottom)\s[^>]*style="(?!none)/, "borders of cells"],
  [/<(\w+:)?alignment\s[^>]*(horizontal|textRotation|indent)=/, "alignment"],
  [/<(\w+:)?(sz\s[^>]*val="(?!11")|name\s[^>]*val="(?!Calibri")|u[\s/>]|strike[\s/>])/, "fonts and their sizes"],
];

function elementCalled(name: string): RegExp {
  return new RegExp(`<(\\w+:)?${name}[\\s>/]`);
}

/** What of a workbook as it was read a copy lacks that is written anew, in words; none for a file that this program has written itself. */
export const leftBehind = (opened: OpenedWorkbook): string[] =>
  beyondGrid(opened).map((what) => (what === HIDDEN ? `${what} (they show)` : what));

/** What of a workbook as it was read the grid does not show, in words. */
export const beyondGrid = ({ pack, sheetParts, workbookPart }: OpenedWorkbook): string[] => {
  const styles = workbookPart.replace(/[^/]*$/, "styles.xml");
  const named = ([pattern]: (typeof byPart)[number]) => pack.entries.some(({ name }) => pattern.test(name));
  const found = (list: typeof byPart, parts: readonly string[]) => {
    const texts = parts.filter((part) => pack.has(part)).map((part) => pack.text(part));
    return list.filter(([pattern]) => texts.some((text) => pattern.test(text)));
  };
  return [...byPart.filter(named), ...found(inSheets, sheetParts), ...found(inStyles, [styles])].map(
    ([, what]) => what,
  );
};
