// node test/hosts/engine/corpus/in-libreoffice.mjs [workbook …]: recalculates the corpus (or the workbooks named) with the built
// command, has LibreOffice open each result and print its sheets as CSV, and compares every cell that LibreOffice can know.
// It wants `soffice`; it is no part of npm test.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, extname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { unzipSync } from "fflate";

const corpus = fileURLToPath(new URL(".", import.meta.url));
const root = join(corpus, "../../../..");
const named = process.argv.slice(2).map((path) => resolve(path));
const files =
  named.length > 0
    ? named
    : readdirSync(corpus)
        .filter((name) => /\.xls[xm]$/.test(name))
        .map((name) => join(corpus, name));

const folder = mkdtempSync(join(tmpdir(), "bimetal-libreoffice-"));

const command = (...words) =>
  spawnSync(process.execPath, [join(root, "dist/workbook/recalculate.mjs"), ...words], { encoding: "utf8" });

/** A line of CSV that LibreOffice wrote; its cells hold no line breaks here. */
const cellsOf = (line) =>
  [...`,${line.replace(/\r$/, "")}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, plain]) =>
    quoted === undefined ? plain : quoted.replaceAll('""', '"'),
  );

/** The sheets of a workbook by LibreOffice: UTF-8, values as they are and not as they look, one file a sheet. */
const byLibreOffice = (path) => {
  const out = join(folder, `csv-${basename(path)}`);
  const filter = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";
  execFileSync(
    "soffice",
    ["--headless", `-env:UserInstallation=file://${folder}/profile`, "--convert-to", filter, "--outdir", out, path],
    { stdio: "ignore", timeout: 120_000 },
  );
  const stem = basename(path, extname(path));
  return new Map(
    readdirSync(out).map((name) => [
      name.slice(stem.length + 1, -".csv".length),
      readFileSync(join(out, name), "utf8").split("\n").map(cellsOf),
    ]),
  );
};

/** A sheet as the command prints it. */
const byCommand = (path, sheet) => {
  const { status, stdout, stderr } = command(path, "--csv", sheet);
  // A sheet of macros is none with cells.
  if (/^There is no sheet/.test(stderr)) return [];
  if (status === null || status > 1) throw new Error(`${basename(path)}: ${stderr}`);
  return stdout.split("\n").map((line) => cellsOf(line).map((cell) => cell.replace(/^'(?=[=+\-@])/, "")));
};

/** Dates come as they look, not as they count. */
const isDate = /^(\d{4}-\d\d-\d\d|\d\d\/\d\d\/\d{4})/;

const isEqual = (ours, theirs) => {
  if (ours === theirs) return true;
  if (ours !== "" && Number.isFinite(Number(ours)))
    return (
      isDate.test(theirs) ||
      (theirs !== "" && Math.abs(Number(theirs) - Number(ours)) <= 1e-9 * Math.max(1, Math.abs(Number(ours))))
    );
  // LibreOffice numbers some errors, and shows truth without a format of its own as 1 and 0.
  if (ours.startsWith("#")) return /^(Err:\d+|#.*)$/.test(theirs) && theirs !== "#NAME?";
  return { TRUE: "1", FALSE: "0" }[ours] === theirs;
};

const columnNumber = (name) => [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** Tells whether a cell lies in an array formula with a function that LibreOffice does not know: ours, and those of younger spreadsheets. */
const unknownIn = (path) => {
  const blocks = Object.values(unzipSync(readFileSync(path))).flatMap((part) =>
    [
      ...Buffer.from(part)
        .toString("utf8")
        .matchAll(/<f[^>]*t="array"[^>]*ref="([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?"[^>]*>([^<]*)/g),
    ]
      .filter((found) => /BIMETAL|_xlfn\./i.test(found[5]))
      .map(([, left, top, right = left, bottom = top]) => [
        Number(top) - 1,
        Number(bottom) - 1,
        columnNumber(left),
        columnNumber(right),
      ]),
  );
  return (row, column) =>
    blocks.some(([top, bottom, left, right]) => row >= top && row <= bottom && column >= left && column <= right);
};

/** Cells that differ for a reason of their own: file, sheet, row and column from 1, the reason. */
const reasons = [
  ["by-exceljs.xlsx", "Bench log", 11, 1, "LibreOffice does not turn _x0041_ into a letter"],
  ["by-hand-spelling.xlsx", "Log", 6, 1, "LibreOffice does not turn _x0041_ into a letter"],
  ["by-hand-spelling.xlsx", "Log", 6, 2, "LibreOffice does not turn _x0041_ into a letter"],
  ["by-hand-rich.xlsx", "Log", 2, 4, "LibreOffice knows no answers that lack room"],
  ["by-libreoffice.xlsx", "Bench log", 5, 7, "it reads a cell of ours"],
  ["by-libreoffice.xlsm", "Bench log", 5, 7, "it reads a cell of ours"],
  ["by-libreoffice-1904.xlsx", "Bench log", 5, 7, "it reads a cell of ours"],
  ["by-openpyxl.xlsx", "Bench log", 3, 8, "the file holds no value, and dates are not reckoned from 1904 here"],
  ["by-openpyxl.xlsx", "Bench log", 4, 8, "the file holds no value, and dates are not reckoned from 1904 here"],
];
const isKnownToDiffer = (file, sheet, row, column) =>
  reasons.some(([f, s, r, c]) => f === file && s === sheet && r === row + 1 && c === column + 1);

const bad = [];
const total = { alike: 0, unknown: 0 };
try {
  for (const file of files) {
    const result = join(folder, basename(file));
    const { status, stderr } = command(file, "--out", result);
    if (status === null || status > 1) throw new Error(`${basename(file)}: ${stderr}`);
    const isUnknown = unknownIn(result);
    const counts = { alike: 0, unknown: 0 };
    for (const [sheet, theirs] of byLibreOffice(result))
      byCommand(result, sheet).forEach((row, r) => {
        row.forEach((ours, c) => {
          const shown = theirs[r]?.[c] ?? "";
          if (isUnknown(r, c) || isKnownToDiffer(basename(file), sheet, r, c)) counts.unknown += 1;
          else if (isEqual(ours, shown)) counts.alike += ours === "" ? 0 : 1;
          else
            bad.push(`${basename(file)}, ${sheet}, row ${r + 1}, column ${c + 1}: ${ours}; LibreOffice shows ${shown}`);
        });
      });
    total.alike += counts.alike;
    total.unknown += counts.unknown;
    console.log(`${basename(file)}: ${counts.alike} cells alike, ${counts.unknown} left out.`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
for (const sentence of bad) console.log(sentence);
console.log(`${files.length} workbooks: ${total.alike} cells alike, ${total.unknown} left out, ${bad.length} differ.`);
process.exitCode = bad.length > 0 ? 1 : 0;
