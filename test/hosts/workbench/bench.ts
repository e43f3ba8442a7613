import { spawn } from "node:child_process";
import { readFile, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import axe from "axe-core";
import type { Page } from "puppeteer-core";

const root = join(__dirname, "../../..");

/** The workbench as `npm start` runs it, on the example log or another workbook. */
export const startBench = async (
  ...args: string[]
): Promise<{ address: string; printed: string; stop: () => void }> => {
  const serve = join(root, "dist/workbench/serve.mjs");
  await stat(serve).catch(() => {
    throw new Error("The workbench is not built: run npm test, which builds it first.");
  });
  const server = spawn(process.execPath, [serve, "--no-open", ...args], { stdio: ["ignore", "pipe", "inherit"] });
  let printed = "";
  const address = await new Promise<string>((resolve, reject) => {
    server.stdout.on("data", (text) => {
      printed += text;
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed);
      if (found) resolve(found[0]);
    });
    server.on("exit", (code) => reject(new Error(`The workbench ended with ${code}.`)));
  });
  return { address, printed, stop: () => server.kill() };
};

/** What a person finds on the page, by its own words. */
export const visit = async (page: Page, address: string) => {
  await page.setViewport({ width: 1280, height: 800 });
  await page.goto(address);
  const text = (id: string): Promise<string> =>
    page.$eval(`#${id}`, (element) => (element.textContent ?? "").replace(/\s+/g, " "));
  const shows = async (id: string, words: string): Promise<void> => {
    const isShown = (id: string, words: string) =>
      document.getElementById(id)?.textContent?.replace(/\s+/g, " ").includes(words);
    await page.waitForFunction(isShown, { timeout: 15_000 }, id, words).catch(async () => {
      throw new Error(`"${words}" was not shown in ${id}: ${await text(id)}`);
    });
  };
  await shows("said", "Log!");
  return {
    text,
    shows,
    /** A sheet with nothing on it, its first cell selected and the keyboard in the grid. */
    takeFreshSheet: async () => {
      await page.click('[aria-label="Fresh sheet"]');
      await shows("said", "'Scratch 1'!A1: blank");
    },
    type: async (formula: string) => {
      await page.keyboard.type(formula, { delay: 5 });
      await page.keyboard.press("Enter");
    },
    /** Sentences of axe on the whole page. */
    faults: async (): Promise<string[]> => {
      await page.evaluate(axe.source);
      return page.evaluate(async () => {
        const { axe: inPage } = window as unknown as { axe: typeof axe };
        const values = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"];
        const { violations } = await inPage.run({ runOnly: { type: "tag", values } });
        return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
      });
    },
    /** Presses a button that saves, and gives the bytes. */
    download: async (button: string, folder: string): Promise<Uint8Array> => {
      const session = await page.createCDPSession();
      await session.send("Browser.setDownloadBehavior", {
        behavior: "allow",
        downloadPath: folder,
        eventsEnabled: true,
      });
      const saved = new Promise<string>((resolve) => {
        let name = "";
        session.on("Browser.downloadWillBegin", ({ suggestedFilename }) => {
          name = suggestedFilename;
        });
        session.on("Browser.downloadProgress", ({ state }) => {
          if (state === "completed") resolve(join(folder, name));
        });
      });
      await page.click(button);
      const file = await saved;
      const bytes = await readFile(file);
      await rm(file);
      return new Uint8Array(bytes);
    },
  };
};

export type Visit = Awaited<ReturnType<typeof visit>>;
