import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { packagesAreInstalled } from "../../.setup/packages.mjs";

const root = mkdtempSync(join(tmpdir(), "bimetal-packages-"));
afterAll(() => rmSync(root, { recursive: true }));

function write(file: string, packages: object) {
  mkdirSync(join(root, "node_modules"), { recursive: true });
  writeFileSync(join(root, file), JSON.stringify({ packages }));
}

const record = join("node_modules", ".package-lock.json");
const strip = { version: "1.0.0", integrity: "sha512-a" };

beforeEach(() => {
  write("package-lock.json", {
    "": { name: "asked" },
    "node_modules/strip": strip,
    "node_modules/only-on-mac": { ...strip, optional: true },
  });
});

test("packages are installed when npm's record says what the lock file says", () => {
  write(record, { "node_modules/strip": strip });
  expect(packagesAreInstalled(root)).toBe(true);
});

test("an install that was broken off left no record, and is made again", () => {
  rmSync(join(root, record), { force: true });
  expect(packagesAreInstalled(root)).toBe(false);
});

test.each([
  ["a package is missing", {}],
  ["a version differs", { "node_modules/strip": { ...strip, version: "1.0.1" } }],
  ["the same version has other contents", { "node_modules/strip": { ...strip, integrity: "sha512-b" } }],
  [
    "an optional package is there in another version",
    { "node_modules/strip": strip, "node_modules/only-on-mac": { ...strip, version: "0.9.0" } },
  ],
])("packages are installed anew when %s", (_case, installed) => {
  write(record, installed);
  expect(packagesAreInstalled(root)).toBe(false);
});

test("a copy without its lock file is refused, not guessed at", () => {
  rmSync(join(root, "package-lock.json"));
  expect(() => packagesAreInstalled(root)).toThrow("package-lock.json is missing or damaged");
});
