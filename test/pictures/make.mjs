// npm run pictures: the pictures of the README and of the walk-through, taken from the workbench as a person sees it.

import { spawn } from "node:child_process";
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { launch } from "puppeteer-core";
import { findBrowser } from "../../.setup/find-browser.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const pictures = `${root}examples/pictures/`;

/** The workbench on one of the examples. */
async function serve(workbook) {
  const args = [`${root}dist/workbench/serve.mjs`, "--no-open", `${root}examples/${workbook}`];
  const server = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "inherit"] });
  let printed = "";
  for await (const text of server.stdout) {
    printed += text;
    const [address] = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed) ?? [];
    if (address) return { address, stop: () => server.kill() };
  }
  throw new Error(`The workbench ended: ${printed}`);
}

const browser = await launch({
  executablePath: findBrowser(),
  args: ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-sync"],
});
const page = await browser.newPage();
const screen = { width: 1440, height: 900 };
await page.setViewport(screen);
// The page asks before work is left behind.
page.on("dialog", (dialog) => dialog.accept());

const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
const shown = (id, words) =>
  page.waitForFunction(
    (id, words) => document.getElementById(id)?.textContent?.replace(/\s+/g, " ").includes(words),
    { timeout: 20_000 },
    id,
    words,
  );
const press = async (label) => {
  await page.evaluate((label) => {
    const found = [...document.querySelectorAll("button, [role=tab]")].find(
      (element) => element.textContent.trim() === label,
    );
    if (!found) throw new Error(`Nothing is called ${label}.`);
    found.click();
  }, label);
  await pause(800);
};
const take = async (path) => {
  await pause(1500);
  await page.screenshot({ path });
  process.stdout.write(`${path}\n`);
};
const toGrid = () => page.evaluate(() => document.querySelector("#grid [contenteditable]").focus());
/** As the browser hands over what another program has copied; then the second line's first cell is selected. */
const paste = async (text) => {
  await page.evaluate((text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    const event = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
    document.activeElement.dispatchEvent(event);
  }, text);
  await pause(1500);
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowDown");
};
/** Invented: trial, date, breaker, rating, characteristic, poles, state, current, drop, time, outcome, carried, rest, air, leads, remarks. */
const ownTrials = [
  ["1", "2026-07-01", "FT-21", "20", "C", "1", "as found", "22.6", "0.186", "3600", "held", "", "600", "24", "2.5 mm²"],
  [
    "2",
    "2026-07-01",
    "FT-21",
    "20",
    "C",
    "1",
    "as found",
    "29",
    "0.239",
    "410",
    "tripped",
    "22.6",
    "0",
    "24",
    "2.5 mm²",
  ],
  ["3", "2026-07-01", "FT-21", "20", "C", "1", "as found", "51", "0.424", "17.6", "tripped", "", "60", "24", "2.5 mm²"],
  [
    "4",
    "2026-07-01",
    "FT-22",
    "16",
    "B",
    "1",
    "as found",
    "40,8",
    "0.397",
    "14",
    "tripped",
    "",
    "600",
    "24",
    "2.5 mm²",
  ],
]
  .map((line) => line.join("\t"))
  .join("\n");
const open = async (workbook, show) => {
  const { address, stop } = await serve(workbook);
  try {
    await page.goto(address);
    await shown("said", "!");
    await pause(3000);
    await show();
  } finally {
    stop();
  }
};

try {
  mkdirSync(pictures, { recursive: true });
  await open("test-log.xlsx", async () => {
    for (let row = 2; row < 11; row++) await page.keyboard.press("ArrowDown");
    await take(`${root}examples/workbench.png`);
    for (let row = 11; row < 15; row++) await page.keyboard.press("ArrowDown");
    await take(`${pictures}outside-the-band.png`);
    for (let row = 15; row < 24; row++) await page.keyboard.press("ArrowDown");
    await take(`${pictures}refusal.png`);
    await press("Functions");
    await take(`${pictures}functions.png`);
    await press("Sheets");
    await take(`${pictures}sheets.png`);
    await page.click('[aria-label="Insert Test log"]');
    await shown("said", "'Test log'!A1");
    await press("Explain");
    await toGrid();
    await page.keyboard.press("ArrowDown");
    await paste(ownTrials);
    for (let column = 0; column < 18; column++) await page.keyboard.press("ArrowRight");
    await shown("said", "'Test log'!S3");
    await take(`${pictures}own-log.png`);
    await press("Fresh sheet");
    await shown("said", "blank");
    await page.keyboard.type('=BIMETAL.TRIP.RANGE(51,20,"C")', { delay: 5 });
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowUp");
    await shown("pane", "2.55");
    await take(`${pictures}first-formula.png`);
  });
  await open("panel-estimate.xlsx", async () => {
    await take(`${pictures}panel.png`);
    // A sheet of A4 at 96 dots an inch, with the margins of its style sheet.
    await page.setViewport({ width: 794, height: 1123 });
    await page.emulateMediaType("print");
    await page.evaluate(() => {
      document.body.style.padding = "12mm 13mm";
      document.body.style.background = "white";
    });
    await take(`${pictures}on-paper.png`);
    await page.emulateMediaType("screen");
    await page.setViewport(screen);
  });
  await open("breaker-study.xlsx", () => take(`${pictures}breaker-study.png`));
} finally {
  await browser.close();
}
