import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";

/** Runs a script with this Node, its output on stderr; throws a sentence when it fails. */
export function run(folder, what, args) {
  const { status, signal, error } = spawnSync(process.execPath, args, {
    cwd: folder,
    env: plainEnvironment(),
    stdio: ["ignore", 2, 2],
  });
  if (error) throw error;
  if (status !== 0) throw new Error(`${what} failed (${signal ?? `exit code ${status}`}): its own words stand above.`);
}

/**
 * The environment without what npm hands down to a script: `--silent`, `--omit` or `--ignore-scripts` given to the
 * outer npm would change what an inner `npm ci` does. Where the packages come from is kept.
 */
function plainEnvironment() {
  const keep =
    /^npm_config_(registry|@.+:registry|userconfig|globalconfig|cache|ca|cafile|strict[-_]ssl|proxy|https?[-_]proxy|noproxy)$/i;
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_/i.test(name) || keep.test(name)));
}

/** npm's own script, for `node` to run: on Windows `npm` is a batch file, which does not start without a shell. */
export function npmScript() {
  const folders = [dirname(process.execPath), ...(process.env.PATH ?? "").split(delimiter)];
  const below = ["node_modules/npm", "../lib/node_modules/npm", "../share/nodejs/npm"];
  const places = [
    process.env.npm_execpath,
    ...folders.flatMap((folder) => below.map((path) => join(folder, path, "bin", "npm-cli.js"))),
  ];
  const found = places.find((place) => place && /npm-cli\.[cm]?js$/.test(place) && existsSync(place));
  if (!found) throw new Error("npm was not found beside Node: install npm, then try again.");
  return found;
}
