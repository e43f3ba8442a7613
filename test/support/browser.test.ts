import { setTimeout as pause } from "node:timers/promises";
import { openBrowser, type TestBrowser } from "./browser";

let browser: TestBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser?.close());

test("the browser under test refuses every other machine, and tells of it", async () => {
  const { page, complaints, strayRequests } = await browser.openPage();
  await page.setContent('<img src="http://example.org/picture.png">');
  expect(strayRequests).toEqual(["http://example.org/picture.png"]);
  expect(complaints).toEqual([expect.stringMatching(/^Failed to load .* http:\/\/example\.org\/picture\.png$/)]);
});

test("the browser under test tells of exceptions and of what a content security policy forbids", async () => {
  const { page, complaints } = await browser.openPage();
  await page.setContent(
    `<meta http-equiv="Content-Security-Policy" content="style-src 'none'"><style>p { color: red }</style>`,
  );
  await page.evaluate(() => setTimeout(() => Promise.reject(new Error("nobody caught this"))));
  while (complaints.length < 2) await pause(20);
  expect(complaints).toContainEqual(expect.stringContaining("style-src 'none'"));
  expect(complaints).toContainEqual(expect.stringContaining("nobody caught this"));
});
