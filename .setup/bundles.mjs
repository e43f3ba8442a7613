// The bundles that webpack.config.js builds: what each is made from, and whether the one in dist is still true to that.

import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * By name: the folder a bundle is built into, its entry files, the hosts it is made from, other
 * folders it is made from, and whether it is built only when asked for by name (`--all` passes it over).
 */
export const bundles = {
  excel: {
    output: "dist/excel",
    entries: ["src/hosts/excel/main.ts"],
    hosts: ["excel", "pane"],
  },
  workbench: {
    output: "dist/workbench/page",
    entries: ["src/hosts/workbench/page/main.ts"],
    hosts: ["engine", "pane", "workbench"],
  },
  "workbench-server": {
    output: "dist/workbench",
    entries: ["src/hosts/workbench/serve.ts"],
    hosts: ["engine", "pane", "workbench"],
  },
  workbook: {
    output: "dist/workbook",
    entries: ["src/hosts/workbook/cell.ts", "src/hosts/workbook/recalculate.ts"],
    hosts: ["engine", "workbook"],
  },
  reference: {
    output: "dist/reference",
    entries: ["src/hosts/pane/reference/pages.ts"],
    hosts: ["pane"],
    onlyByName: true,
  },
  benchmark: {
    output: "dist/benchmark",
    entries: ["test/benchmark/main.ts"],
    hosts: ["engine"],
    folders: ["test/benchmark", "test/hosts/engine", "test/hosts/excel", "test/support"],
    onlyByName: true,
  },
  fuzz: {
    output: "dist/fuzz",
    entries: ["test/fuzz/main.ts"],
    hosts: [],
    folders: ["test/fuzz"],
    onlyByName: true,
  },
  "fuzz-workbooks": {
    output: "dist/fuzz-workbooks",
    entries: ["test/hosts/workbook/fuzz/workbooks.ts"],
    hosts: ["engine", "workbook"],
    folders: ["test/hosts/workbook/fuzz", "test/hosts/engine"],
    onlyByName: true,
  },
  examples: {
    output: "dist/examples",
    entries: ["examples/source/make.ts"],
    hosts: ["engine", "pane"],
    folders: ["examples/source"],
    onlyByName: true,
  },
};

/** The entry files that are there: none when the host has been taken out of this copy. */
export function entriesOf(root, name) {
  return bundles[name].entries.filter((entry) => existsSync(join(root, entry)));
}

/**
 * A hash of everything the bundle is made from. Contents, not times: git sets those anew. A change in another host
 * leaves it alone, since hosts do not import each other.
 */
export function fingerprint(root, name) {
  const hash = createHash("sha256");
  const others = readdirSync(join(root, "src", "hosts")).filter((host) => !bundles[name].hosts.includes(host));
  const skipped = new Set(others.map((host) => `src/hosts/${host}`));
  const add = (path) => {
    if (skipped.has(path)) return;
    const full = join(root, path);
    if (!existsSync(full)) return;
    const inside = foldersContent(full);
    if (inside) for (const child of inside) add(`${path}/${child}`);
    else hash.update(`${path}\0`).update(readFileSync(full)).update("\0");
  };
  const shared = ["src", ".setup", "webpack.config.js", "tsconfig.json", "package-lock.json", "manifest.xml"];
  for (const path of [...shared, ...(bundles[name].folders ?? [])]) add(path);
  return hash.digest("hex");
}

function foldersContent(path) {
  try {
    return readdirSync(path).sort();
  } catch {
    return undefined;
  }
}

// The stamp lies in the folder it vouches for, so that both go together.
const stampFile = (root, name) => join(root, bundles[name].output, `.${name}-made-from`);

export function isFresh(root, name) {
  const file = stampFile(root, name);
  return existsSync(file) && readFileSync(file, "utf8") === fingerprint(root, name);
}

/** To be called last, with the fingerprint taken before the build: a file saved meanwhile makes the bundle stale. */
export function markFresh(root, name, madeFrom) {
  writeFileSync(stampFile(root, name), madeFrom);
}
