// node test/hosts/engine/corpus/in-libreoffice.mjs [workbook …]: recalculates the corpus (or the workbooks named) with the built
// command into both kinds of copy, has LibreOffice open each and print its sheets as CSV, and compares with what the command prints of
// the workbook: in a copy of values every cell, in a copy with formulas every cell that LibreOffice can know.
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
  const out = `${path}-csv`;
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
  return stdout.split("\n").map((line) => cellsOf(line).map((cell) => cell.replace(/^'(?=\s*[=+\-@])/, "")));
};

/** Dates, times and shares come as they look: as the days since the last of 1899 or, where they count from 1904, since its first; as numbers. */
const numbersOf = (shown) => {
  const dashed = /^(\d{4})-(\d\d)-(\d\d)/.exec(shown);
  const slashed = /^(\d\d)\/(\d\d)\/(\d{4})/.exec(shown);
  const days = (year, month, day) => Date.UTC(year, month - 1, day) / 86_400_000;
  const count = slashed ? days(slashed[3], slashed[1], slashed[2]) : dashed && days(dashed[1], dashed[2], dashed[3]);
  if (count !== null) return [count + 25_569, count + 24_107];
  const [, hour, minute, second, half] = /^(\d\d?):(\d\d):(\d\d) ([AP])M$/.exec(shown) ?? [];
  if (half) return [((hour % 12) + (half === "P" ? 12 : 0)) / 24 + minute / 1440 + second / 86_400];
  if (/^-?[\d.]+%$/.test(shown)) return [Number(shown.slice(0, -1)) / 100];
  return shown === "" ? [] : [Number(shown)];
};

const isEqual = (ours, theirs) => {
  if (ours === theirs) return true;
  if (ours !== "" && Number.isFinite(Number(ours)))
    return numbersOf(theirs).some(
      (number) => Math.abs(number - Number(ours)) <= 1e-9 * Math.max(1, Math.abs(Number(ours))),
    );
  // LibreOffice numbers some errors, files spell younger ones #VALUE!, and truth without a format of its own shows as 1 and 0.
  if (ours.startsWith("#")) return /^Err:\d+$/.test(theirs) || (/SPILL|CALC/.test(ours) && theirs === "#VALUE!");
  return { TRUE: "1", FALSE: "0" }[ours] === theirs;
};

const columnNumber = (name) => [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** Tells whether a cell of a sheet lies in an array formula whose text a pattern finds. */
const arraysOf = (path, pattern) => {
  const parts = unzipSync(readFileSync(path));
  const text = (name) => Buffer.from(parts[name] ?? []).toString("utf8");
  const targets = new Map(
    [...text("xl/_rels/workbook.xml.rels").matchAll(/<Relationship\b[^>]*>/g)].map(([tag]) => [
      /\bId=["']([^"']*)/.exec(tag)?.[1],
      /\bTarget=["']\/?(?:xl\/)?([^"']*)/.exec(tag)?.[1],
    ]),
  );
  const blocks = new Map(
    [...text("xl/workbook.xml").matchAll(/<sheet\b[^>]*>/g)].map(([tag]) => [
      unescaped(/\bname=("[^"]*"|'[^']*')/.exec(tag)?.[1]?.slice(1, -1) ?? ""),
      blocksIn(text(`xl/${targets.get(/:id=["']([^"']*)/.exec(tag)?.[1])}`), pattern),
    ]),
  );
  return (sheet, row, column) =>
    (blocks.get(sheet) ?? []).some(
      ([top, bottom, left, right]) => row >= top && row <= bottom && column >= left && column <= right,
    );
};

const unescaped = (text) => text.replaceAll("&quot;", '"').replaceAll("&apos;", "'").replaceAll("&amp;", "&");

const blocksIn = (xml, pattern) =>
  [...xml.matchAll(/<f[^>]*t="array"[^>]*ref="([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?"[^>]*>([^<]*)/g)]
    .filter((found) => pattern.test(found[5]))
    .map(([, left, top, right = left, bottom = top]) => [
      Number(top) - 1,
      Number(bottom) - 1,
      columnNumber(left),
      columnNumber(right),
    ]);

/** LibreOffice calculates array formulas anew, and does not know the functions of younger spreadsheets. */
const YOUNG = /_xlfn\./i;

/** Cells that differ for a reason of their own: file, sheet, row and column from 1, the reason; the copy, when it is one of both. */
const reasons = [
  ["by-exceljs.xlsx", "Bench log", 11, 1, "LibreOffice does not turn _x0041_ into a letter"],
  ["by-hand-spelling.xlsx", "Log", 6, 1, "LibreOffice does not turn _x0041_ into a letter"],
  ["by-hand-spelling.xlsx", "Log", 6, 2, "LibreOffice does not turn _x0041_ into a letter"],
  ["by-hand-rich.xlsx", "Log", 2, 4, "LibreOffice knows no answers that lack room"],
  ["by-libreoffice.xlsx", "Bench log", 5, 7, "it reads a cell of ours", "--out"],
  ["by-libreoffice.xlsm", "Bench log", 5, 7, "it reads a cell of ours", "--out"],
  ["by-libreoffice-1904.xlsx", "Bench log", 5, 7, "it reads a cell of ours", "--out"],
  ["by-openpyxl.xlsx", "Bench log", 3, 8, "the file holds no value, and dates are not reckoned from 1904 here"],
  ["by-openpyxl.xlsx", "Bench log", 4, 8, "the file holds no value, and dates are not reckoned from 1904 here"],
];
const reasonOf = (file, sheet, row, column, kind) =>
  reasons.find(
    ([f, s, r, c, , only = kind]) => f === file && s === sheet && r === row + 1 && c === column + 1 && only === kind,
  )?.[4];

const bad = [];
const kinds = ["--out", "--values"];
const total = Object.fromEntries(kinds.map((kind) => [kind, { alike: 0, ours: 0, left: new Map() }]));
try {
  for (const file of files) {
    const name = basename(file);
    const own = mkdtempSync(join(folder, "file-"));
    const copies = kinds.map((kind) => join(own, `${kind.slice(2)}-${name}`));
    const { status, stderr } = command(file, ...kinds.flatMap((kind, place) => [kind, copies[place]]));
    if (status === null || status > 1) throw new Error(`${name}: ${stderr}`);
    const isOurs = arraysOf(copies[0], /BIMETAL/i);
    kinds.forEach((kind, place) => {
      const isYoung = arraysOf(copies[place], YOUNG);
      for (const [sheet, theirs] of byLibreOffice(copies[place]))
        byCommand(file, sheet).forEach((row, r) => {
          row.forEach((ours, c) => {
            const why =
              (kind === "--out" && isOurs(sheet, r, c) && "functions of ours") ||
              (isYoung(sheet, r, c) && "functions of younger spreadsheets") ||
              reasonOf(name, sheet, r, c, kind);
            const shown = theirs[r]?.[c] ?? "";
            const count = total[kind];
            if (why) count.left.set(why, (count.left.get(why) ?? 0) + 1);
            else if (!isEqual(ours, shown))
              bad.push(
                `${name}, ${kind}, ${sheet}, row ${r + 1}, column ${c + 1}: ${ours}; LibreOffice shows ${shown}`,
              );
            else if (ours !== "") {
              count.alike += 1;
              if (isOurs(sheet, r, c)) count.ours += 1;
            }
          });
        });
    });
    console.log(`${name} was compared.`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
for (const sentence of bad) console.log(sentence);
for (const kind of kinds) {
  const { alike, ours, left } = total[kind];
  const whys = [...left].map(([why, cells]) => `${cells} left out (${why})`);
  console.log([`${kind}: ${alike} cells alike, ${ours} of them ours`, ...whys].join("; "));
}
console.log(`${files.length} workbooks, twice: ${bad.length} cells differ.`);
process.exitCode = bad.length > 0 ? 1 : 0;
