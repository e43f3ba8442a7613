import axe, { type RunOptions } from "axe-core";
import type { Page } from "puppeteer-core";

const wcag22AA: RunOptions = { runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"] } };

/** Faults of accessibility that axe finds on a page, each with the elements that have it. */
export const faults = async (page: Page, options: RunOptions = wcag22AA): Promise<string[]> => {
  await page.evaluate(axe.source);
  return page.evaluate(async (options) => {
    const { axe: inPage } = window as unknown as { axe: typeof axe };
    const { violations } = await inPage.run(options);
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  }, options);
};
