import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hasDisplay } from "../../../src/hosts/workbench/open-browser";

const serve = join(__dirname, "../../../dist/workbench/serve.mjs");
const run = (...args: string[]) => spawnSync(process.execPath, [serve, ...args], { encoding: "utf8", timeout: 25_000 });

test("with --once it prints the judged log of the example and ends", () => {
  const { status, stdout, stderr } = run("--once");
  expect([status, stderr]).toEqual([0, ""]);
  expect(stdout).toMatch(/^test-log\.xlsx, recalculated, sheet Log\n/);
  expect(stdout).toMatch(/Breaker +Current, A +Time, s +Outcome +Shortest, s +Longest, s +Verdict/);
  expect(stdout).toMatch(/in range\n/);
  expect(stdout).not.toContain("http://");
});

test("a workbook that is not there, and one that is none, end in one sentence and exit code 2", () => {
  const folder = mkdtempSync(join(tmpdir(), "bimetal-serve-"));
  const file = join(folder, "none.xlsx");
  writeFileSync(file, "not a zip");
  const runs = [run("--once", file), run("--once", join(folder, "missing.xlsx"))];
  rmSync(folder, { recursive: true });
  for (const { status, stdout, stderr } of runs) {
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^[^\n]+\.?\n$/);
    expect(stderr).not.toContain("    at ");
  }
  expect(runs[1]?.stderr).toContain("missing.xlsx cannot be read");
});

describe("a browser is opened only where its window can be seen", () => {
  test.each([
    ["linux", {}, false],
    ["linux", { DISPLAY: ":0" }, true],
    ["linux", { WAYLAND_DISPLAY: "wayland-0" }, true],
    ["darwin", {}, true],
    ["darwin", { SSH_CONNECTION: "somewhere" }, false],
    ["win32", {}, true],
  ] as const)("%s %p: %p", (platform, env, expected) => {
    expect(hasDisplay({ platform, env })).toBe(expected);
  });
});
