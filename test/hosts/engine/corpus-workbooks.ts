import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** The folder of workbooks by other writers; its README.md says who wrote each and what it holds. */
export const corpus = join(process.cwd(), "test/hosts/engine/corpus");

/** Their names, in the same order everywhere: seeds choose among them. */
export const corpusWorkbooks: readonly string[] = readdirSync(corpus)
  .filter((name) => /\.xls[xm]$/.test(name))
  .sort();

export const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(corpus, name)));

/** What exceljs stumbles over in some of them: rows that do not say their numbers, drawings without a prefix. */
export const notByExceljs: Readonly<Record<string, string>> = {
  "by-hand-spelling.xlsx": "Invalid row number",
  "by-openpyxl.xlsx": "anchors",
};
