import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bytesOf, corpusWorkbooks } from "../../engine/corpus-workbooks";
import { damaged, tried } from "./trial";

const workbooks = corpusWorkbooks.map(bytesOf);

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "bimetal-fuzz-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// Long runs with other seeds: npm run fuzz-workbooks.
test("damaged workbooks end in one sentence or in a copy that differs in calculated values only", async () => {
  const codes = { 0: 0, 1: 0, 2: 0, 3: 0 } as Record<number, number>;
  for (let seed = 1; seed <= 60; seed++) {
    const { code, faults } = await tried(damaged(workbooks, seed), folder);
    expect([seed, faults]).toEqual([seed, []]);
    codes[code] = (codes[code] ?? 0) + 1;
  }
  // Enough of them are refused, and enough go all the way, that both are tried.
  expect(codes[2]).toBeGreaterThan(15);
  expect((codes[0] ?? 0) + (codes[1] ?? 0)).toBeGreaterThan(15);
});
