import { readFileSync } from "node:fs";
import { join } from "node:path";

interface Lock {
  packages: Record<string, { license?: string; version?: string; dev?: boolean }>;
}
const root = join(__dirname, "../../..");
const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8")) as Lock;
const listed = Object.entries(packages).filter(([path]) => path !== "");

/** A licence that leaves a choice passes on its permissive arm. */
const demandsGpl = (licence: string): boolean =>
  licence
    .replace(/[()]/g, "")
    .split(/\s+OR\s+/i)
    .every((arm) => /\b(A|L)?GPL/i.test(arm));

describe("the packages that this program is built from", () => {
  test("are many, so that the list below is the real one", () => expect(listed.length).toBeGreaterThan(300));

  test("hold none of the grid engine's packages that are sold", () => {
    expect(listed.filter(([path]) => /@univerjs-pro|@univerjs\/preset/.test(path))).toEqual([]);
  });

  test("hold the grid engine in one version only", () => {
    const versions = listed.filter(([path]) =>
      /node_modules\/@univerjs\/(core|engine|sheets|docs|ui|design)[^/]*$/.test(path),
    );
    expect(new Set(versions.map(([, { version }]) => version))).toEqual(new Set(["0.25.1"]));
  });

  test("none demands the GPL of those who use it", () => {
    expect(listed.filter(([, { license }]) => license && demandsGpl(license)).map(([path]) => path)).toEqual([]);
    expect(demandsGpl("GPL-3.0-only")).toBe(true);
    expect(demandsGpl("(MIT OR GPL-3.0-or-later)")).toBe(false);
  });
});
