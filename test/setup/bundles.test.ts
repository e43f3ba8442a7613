import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { bundles, entriesOf, fingerprint, isFresh, markFresh } from "../../.setup/bundles.mjs";

const root = mkdtempSync(join(tmpdir(), "bimetal-bundles-"));
afterAll(() => rmSync(root, { recursive: true }));

function write(file: string, text: string) {
  mkdirSync(dirname(join(root, file)), { recursive: true });
  writeFileSync(join(root, file), text);
}

beforeEach(() => {
  write("src/trip/envelope.ts", "export const held = true;");
  write("src/hosts/workbook/cell.ts", "console.log();");
  write("src/hosts/excel/main.ts", "console.log();");
  mkdirSync(join(root, bundles.workbook.output), { recursive: true });
  markFresh(root, "workbook", fingerprint(root, "workbook"));
});

test("a bundle just built is fresh, and stays so when git sets new times on its sources", () => {
  utimesSync(join(root, "src/trip/envelope.ts"), new Date(0), new Date(0));
  expect(isFresh(root, "workbook")).toBe(true);
});

test.each(["src/trip/envelope.ts", "src/hosts/workbook/cell.ts", "package-lock.json", "webpack.config.js"])(
  "a change in %s makes it stale",
  (file) => {
    write(file, "changed");
    expect(isFresh(root, "workbook")).toBe(false);
    rmSync(join(root, file));
  },
);

test("a file moved makes it stale, though no file's contents changed", () => {
  rmSync(join(root, "src/trip/envelope.ts"));
  write("src/trip/band.ts", "export const held = true;");
  expect(isFresh(root, "workbook")).toBe(false);
  rmSync(join(root, "src/trip/band.ts"));
});

test("a change in a host it does not use leaves it fresh", () => {
  write("src/hosts/excel/main.ts", "changed");
  expect(isFresh(root, "workbook")).toBe(true);
});

test("sweeping its folder away makes it stale", () => {
  rmSync(join(root, bundles.workbook.output), { recursive: true });
  expect(isFresh(root, "workbook")).toBe(false);
});

test("a host taken out of the copy has nothing to build", () => {
  rmSync(join(root, "src/hosts/excel"), { recursive: true });
  expect(entriesOf(root, "excel")).toEqual([]);
  expect(entriesOf(root, "workbook")).toEqual(["src/hosts/workbook/cell.ts"]);
});
