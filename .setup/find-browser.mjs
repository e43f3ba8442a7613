// Where an installed Chrome, Edge or Chromium is. The tests drive one; nothing else in the project needs it.

import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const advice = "No Chrome, Edge or Chromium was found: install one, or name it in BIMETAL_BROWSER=/path/to/browser.";

/** The path of a browser. Throws one line that says what to do where there is none. */
export function findBrowser() {
  const named = process.env.BIMETAL_BROWSER || process.env.CHROME_PATH;
  if (named && !existsSync(named)) throw new Error(`There is no browser at ${named} (BIMETAL_BROWSER or CHROME_PATH).`);
  const found = named ?? placesToLook().find((place) => existsSync(place));
  if (!found) throw new Error(advice);
  return found;
}

/** Debian's own Chromium, and a font without which the text drawn on a canvas stays blank, where root may fetch them. */
export function installBrowserWhereMissing() {
  try {
    return findBrowser();
  } catch (reason) {
    const mayInstall = process.platform === "linux" && process.getuid() === 0 && existsSync("/etc/debian_version");
    if (!mayInstall || process.env.BIMETAL_BROWSER || process.env.CHROME_PATH) throw reason;
  }
  process.stderr.write("Installing Debian's chromium and fonts-liberation for the browser tests …\n");
  aptGet("update", "-qq");
  aptGet("install", "-qq", "--no-install-recommends", "chromium", "fonts-liberation");
  return findBrowser();
}

function aptGet(...args) {
  const { status, error } = spawnSync("apt-get", ["-y", ...args], {
    stdio: ["ignore", 2, 2],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  });
  if (error || status !== 0) throw new Error(`apt-get ${args.join(" ")} failed. ${advice}`);
}

function placesToLook() {
  if (process.platform === "darwin") {
    const apps = ["Google Chrome", "Microsoft Edge", "Chromium"];
    const homes = ["/Applications", join(process.env.HOME ?? "", "Applications")];
    return homes.flatMap((home) => apps.map((app) => join(home, `${app}.app`, "Contents", "MacOS", app)));
  }
  if (process.platform === "win32") {
    const homes = [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA];
    const programs = ["Google/Chrome/Application/chrome.exe", "Microsoft/Edge/Application/msedge.exe"];
    return homes.filter(Boolean).flatMap((home) => programs.map((program) => join(home, program)));
  }
  const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
  return (process.env.PATH ?? "").split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
}
