import { serveBuiltPages } from "../hosts/excel/built-pages";
import { cell, openPaneInExcel, spilled } from "../hosts/excel/pane-in-excel";
import { openBrowser } from "../support/browser";
import type { Comparison } from "./compare";

const runs = 9;
const asking = '=BIMETAL.TRIP.RANGE(51,20,"C")';

/** The page's own clock, from its navigation, when the explanation of the selected cell had been painted and when Office was ready. */
interface Times {
  explained?: number;
  ready?: number;
}

/** From opening the pane in Excel to the selected cell's explanation on the screen: the built add-in in Chromium, Excel scripted. */
export const firstPaint = async (): Promise<Comparison[]> => {
  const [browser, pages] = await Promise.all([openBrowser(), serveBuiltPages()]);
  const times: Required<Times>[] = [];
  // The first run fills the browser's cache, as an add-in that has been open before.
  for (let run = 0; run <= runs; run++) {
    const objects = { ...cell("Log!F2", asking, 1), ...spilled };
    const before = (page: { evaluateOnNewDocument(script: () => void): Promise<unknown> }) =>
      page.evaluateOnNewDocument(watchTheClock);
    const { page } = await openPaneInExcel(await browser.openPage(), pages.address, objects, { before });
    await page.waitForFunction(() => (window as unknown as { times: Times }).times.explained);
    const took = await page.evaluate(() => (window as unknown as { times: Required<Times> }).times);
    if (run > 0) times.push(took);
    await page.close();
  }
  await browser.close();
  pages.close();
  return [
    {
      what: "first paint: the pane opened in a scripted Excel, the selected cell explained",
      against: "office.js alone, until it says that Excel is ready, in the same run",
      ratios: times.map(({ explained, ready }) => explained / ready),
      goal: "≤ 300 ms",
      ms: times.map(({ explained }) => explained),
    },
  ];
};

/** Runs in the page before its own scripts. */
const watchTheClock = () => {
  const times: Times = {};
  Object.assign(window, { times });
  const look = () => {
    const { Office } = window as unknown as { Office?: { onReady?(tell: () => void): unknown } };
    if (Office?.onReady && times.ready === undefined) {
      times.ready = Number.NaN;
      Office.onReady(() => {
        times.ready = performance.now();
      });
    }
    if (!document.querySelector(".pane-answer")) return;
    observer.disconnect();
    // A frame later it has been painted.
    requestAnimationFrame(() => setTimeout(() => Object.assign(times, { explained: performance.now() })));
  };
  const observer = new MutationObserver(look);
  observer.observe(document, { childList: true, subtree: true });
};
