import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { KeyInput } from "puppeteer-core";
import { browserOfFile, type WatchedPage } from "../../support/browser";
import { faults } from "../../support/faults";
import { type Bench, startBench } from "./bench";

/** What a person finds on the page, by its own words. */
const visitTo = async (watched: WatchedPage, address: string) => {
  const { page } = watched;
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
  // The first cell is told once the workbook is there.
  await shows("said", "!");
  const press = async (...keys: KeyInput[]): Promise<void> => {
    for (const key of keys) await page.keyboard.press(key);
  };
  return {
    ...watched,
    text,
    shows,
    /** A sheet with nothing on it, its first cell selected and the keyboard in the grid. */
    takeFreshSheet: async () => {
      await page.click('[aria-label="Fresh sheet"]');
      await shows("said", "'Scratch 1'!A1: blank");
    },
    type: async (formula: string) => {
      await page.keyboard.type(formula, { delay: 5 });
      await press("Enter");
    },
    press,
    holding: async (held: KeyInput, ...keys: KeyInput[]) => {
      await page.keyboard.down(held);
      await press(...keys);
      await page.keyboard.up(held);
    },
    faults: () => faults(page),
    /** Saves a copy, and gives its bytes. */
    save: async (): Promise<Uint8Array> => {
      const folder = await mkdtemp(join(tmpdir(), "bimetal-saved-"));
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
      await page.click("#save");
      const bytes = await readFile(await saved);
      await rm(folder, { recursive: true });
      return new Uint8Array(bytes);
    },
  };
};

export type Visit = Awaited<ReturnType<typeof visitTo>>;

/**
 * For the tests of a file: the way to visit the workbench on the example log, or on the workbook of a path, each visit on a page of its
 * own. No page may complain (of its policy, of an error) or ask another machine, whatever was done there.
 */
export const visits = (): ((workbook?: string) => Promise<Visit>) => {
  const openPage = browserOfFile();
  let onLog: Promise<Bench> | undefined;
  const forOneTest: Bench[] = [];
  const visited: Visit[] = [];

  afterEach(async () => {
    for (const { stop } of forOneTest.splice(0)) stop();
    for (const { page, complaints, strayRequests } of visited.splice(0)) {
      expect({ complaints, strayRequests }).toEqual({ complaints: [], strayRequests: [] });
      await page.close();
    }
  });
  afterAll(async () => (await onLog)?.stop());

  const benchOn = async (workbook: string | undefined): Promise<Bench> => {
    if (workbook === undefined) {
      onLog ??= startBench();
      return onLog;
    }
    const bench = await startBench(workbook);
    forOneTest.push(bench);
    return bench;
  };
  return async (workbook) => {
    const { address } = await benchOn(workbook);
    const visit = await visitTo(await openPage(), address);
    visited.push(visit);
    return visit;
  };
};
