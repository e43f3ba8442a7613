// The first half of every npm script: `node .setup/prepare.mjs [bundle …] [browser]` installs the packages and builds
// the named bundles, each only where its inputs have changed. `--all` stands for every bundle there is.
//
// It is not a `pre` script, because `ignore-scripts=true` in a user's settings silently skips those.
// It runs before anything is installed, so it uses what Node brings and nothing else.
// All it says goes to stderr: stdout belongs to the second half.

import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { bundles, entriesOf, fingerprint, isFresh, markFresh } from "./bundles.mjs";
import { installBrowserWhereMissing } from "./find-browser.mjs";
import { holdingLock } from "./lock.mjs";
import { packagesAreInstalled } from "./packages.mjs";
import { npmScript, run } from "./run.mjs";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "..");
const oldestNode = 20;

function installPackages() {
  if (packagesAreInstalled(root)) return;
  process.stderr.write("Installing packages (half a minute or so, only when package-lock.json has changed) …\n");
  // Development packages build the bundles, so they are wanted even under NODE_ENV=production.
  run(root, "npm ci", [npmScript(), "ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"]);
}

function buildBundles(names) {
  const stale = names.filter((name) => !isFresh(root, name));
  if (stale.length === 0) return;
  process.stderr.write(`Building ${stale.join(", ")} …\n`);
  const madeFrom = stale.map((name) => fingerprint(root, name));
  const webpack = join(root, "node_modules", "webpack", "bin", "webpack.js");
  run(root, "webpack", [webpack, ...stale.flatMap((name) => ["--config-name", name])]);
  stale.forEach((name, index) => {
    markFresh(root, name, madeFrom[index]);
  });
}

/** The bundles asked for on the command line, refused in a sentence where this copy has no such thing. */
function bundlesAskedFor(words) {
  if (words.includes("--all"))
    return Object.keys(bundles).filter((name) => !bundles[name].onlyByName && entriesOf(root, name).length > 0);
  const names = words.filter((word) => word !== "browser");
  for (const name of names) {
    if (!(name in bundles))
      throw new Error(`No bundle is called ${name}: there are ${Object.keys(bundles).join(", ")}.`);
    if (entriesOf(root, name).length === 0)
      throw new Error(`This copy has no ${name}: ${bundles[name].entries[0]} is not there.`);
  }
  return names;
}

try {
  const node = process.versions.node;
  if (Number.parseInt(node, 10) < oldestNode)
    throw new Error(`Bimetal needs Node ${oldestNode} or newer; this is ${node}.`);
  const words = process.argv.slice(2);
  const names = bundlesAskedFor(words);
  await holdingLock(join(root, "dist", ".lock"), () => {
    installPackages();
    buildBundles(names);
    if (words.includes("browser")) installBrowserWhereMissing();
  });
} catch (error) {
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}
