import { readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Whether node_modules holds what package-lock.json asks for, by comparing it with the record npm leaves in
 * node_modules as its last act. An install that was broken off has no such record. Optional packages are passed over:
 * npm leaves out those made for other systems.
 */
export function packagesAreInstalled(root) {
  const asked = readPackages(join(root, "package-lock.json"));
  const installed = readPackages(join(root, "node_modules", ".package-lock.json"));
  if (!asked) throw new Error("package-lock.json is missing or damaged: restore it from the repository.");
  if (!installed) return false;
  return Object.entries(asked).every(([place, { version, integrity, optional }]) => {
    const found = installed[place];
    if (place === "" || (optional && !found)) return true;
    return found?.version === version && found.integrity === integrity;
  });
}

function readPackages(file) {
  try {
    return JSON.parse(readFileSync(file, "utf8")).packages;
  } catch {
    return undefined;
  }
}
