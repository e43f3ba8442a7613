import { type Visit, visits } from "./visits";

// The workbench by keyboard alone, and what comes from other programs: by the clipboard, and dropped on the page.

const visit = visits();
let person: Visit;
beforeEach(async () => {
  person = await visit();
});

test("a cell is typed, changed by F2, left by Escape, emptied by Delete, and all of it is taken back and done again", async () => {
  const { page } = person;
  await person.takeFreshSheet();
  await page.keyboard.type("12");
  await person.press("Enter", "ArrowUp");
  await person.shows("said", "'Scratch 1'!A1: 12");
  await person.press("F2");
  await page.keyboard.type("5");
  await person.press("Enter", "ArrowUp");
  await person.shows("said", "'Scratch 1'!A1: 125");
  await page.keyboard.type("99");
  await person.press("Escape");
  await person.shows("said", "'Scratch 1'!A1: 125");
  await person.press("Delete");
  await person.shows("said", "'Scratch 1'!A1: blank");
  await person.holding("Control", "KeyZ");
  await person.shows("said", "'Scratch 1'!A1: 125");
  await person.holding("Control", "KeyZ");
  await person.shows("said", "'Scratch 1'!A1: 12");
  await person.holding("Control", "KeyY");
  await person.shows("said", "'Scratch 1'!A1: 125");
});

test("a comma or a unit that is typed with a number is not guessed at: the cell keeps the text", async () => {
  const { page } = person;
  await person.takeFreshSheet();
  for (const [typed, at] of [
    ["0,157", "A1"],
    ["5 A", "A2"],
  ] as const) {
    await page.keyboard.type(typed);
    await person.press("Enter", "ArrowUp");
    await person.shows("said", `'Scratch 1'!${at}: ${typed}`);
    await person.press("ArrowDown");
  }
  await page.keyboard.type("=BIMETAL.CONTACT.WATTS(20,A1)");
  await person.press("Enter", "ArrowUp");
  await person.shows("note", 'drop: a number in V is wanted, not the text "0,157"');
});

test("completion and argument help in the grid are legible to axe", async () => {
  const { page } = person;
  await person.takeFreshSheet();
  /** Once it has come into sight: half there it is pale. */
  const offers = async (words: string) => {
    await page.waitForFunction((words) => document.body.textContent?.includes(words), { timeout: 15_000 }, words);
    const isThere = () => {
      const list = document.querySelector(".univer-w-\\[250px\\]");
      let opacity = list ? 1 : 0;
      for (let part = list; part; part = part.parentElement) opacity *= Number(getComputedStyle(part).opacity);
      return opacity === 1 && document.getAnimations().every(({ playState }) => playState !== "running");
    };
    await page.waitForFunction(isThere, { timeout: 15_000 });
  };
  await page.keyboard.type("=BIMETAL.CONTACT.WA", { delay: 5 });
  await offers("The heat a pole makes");
  expect(await person.faults()).toEqual([]);
  await page.keyboard.type("TTS(20,", { delay: 20 });
  await offers("BIMETAL.CONTACT.WATTS(current,drop");
  expect(await person.faults()).toEqual([]);
  await person.press("Escape", "Escape");
});

test("Tab and Shift+Tab, Home, Page Down and Control with Home and End move the selection; Alt with Page Up and Down the sheet", async () => {
  await person.takeFreshSheet();
  await person.page.keyboard.type("7");
  await person.press("Tab", "Tab");
  await person.shows("said", "'Scratch 1'!C1: blank");
  await person.holding("Shift", "Tab");
  await person.shows("said", "'Scratch 1'!B1: blank");
  await person.press("Home");
  await person.shows("said", "'Scratch 1'!A1: 7");
  await person.press("PageDown");
  await person.page.waitForFunction(() => /'!A[12]\d: blank/.test(document.getElementById("said")?.textContent ?? ""));
  await person.holding("Control", "Home");
  await person.shows("said", "'Scratch 1'!A1: 7");
  await person.holding("Alt", "PageUp");
  await person.shows("said", "'Try it'!A1");
  await person.holding("Control", "PageUp");
  await person.shows("said", "'Read me'!A1");
  await person.holding("Alt", "PageDown", "PageDown");
  await person.shows("said", "'Scratch 1'!A1: 7");
});

test("a cell with a list offers its words, by keyboard too, and the keyboard comes back to the grid", async () => {
  const { page } = person;
  await person.holding("Control", "Home");
  await person.shows("said", "Log!A1");
  await person.press("ArrowDown", "ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight");
  await person.shows("said", "Log!E2: B");
  const words = () => page.$$eval("#words:not([hidden]) option", (all) => all.map((word) => word.textContent));
  expect(await words()).toEqual(["B", "C", "D", "IEC 60947-2", "IEC 60947-2 typical", "UL 489", "UL 489 typical"]);
  expect(await person.faults()).toEqual([]);
  await person.holding("Alt", "ArrowDown");
  await person.press("ArrowDown", "Enter");
  await person.shows("said", "Log!E2: C");
  expect(await page.evaluate(() => document.activeElement?.closest("#grid")?.id)).toBe("grid");
  await person.holding("Control", "KeyZ");
  await person.shows("said", "Log!E2: B");
  await person.press("ArrowRight");
  await person.shows("said", "Log!F2: 1");
  expect(await words()).toEqual([]);
});

test("the keys are listed behind a button, legible to axe", async () => {
  const { page } = person;
  await page.click('[popovertarget="keys"]');
  await page.waitForSelector("#keys:popover-open");
  expect(await person.text("keys")).toContain("Ctrl+O, Ctrl+S");
  expect(await person.faults()).toEqual([]);
  await person.press("Escape");
  expect(await page.$("#keys:popover-open")).toBeNull();
});

/** As the browser hands over what another program has put on the clipboard. */
const paste = (items: Readonly<Record<string, string>>) =>
  person.page.evaluate((items) => {
    const clipboardData = new DataTransfer();
    for (const [type, value] of Object.entries(items)) clipboardData.setData(type, value);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }),
    );
  }, items);

test("lines between tabs fill cells: numbers, days and formulas as such; a comma is not guessed at", async () => {
  await person.takeFreshSheet();
  await paste({ "text/plain": '20\tC\t2026-06-09\r\n0,157\t"a\tb"\t=1+2\r\n' });
  await person.shows("said", "'Scratch 1'!A1: 20");
  await person.press("Home", "ArrowRight");
  await person.shows("said", "'Scratch 1'!B1: C");
  await person.press("ArrowRight");
  await person.shows("said", "'Scratch 1'!C1: 2026-06-09");
  await person.press("ArrowDown");
  await person.shows("said", "'Scratch 1'!C2: 3; formula =1+2");
  await person.press("ArrowLeft");
  await person.shows("said", "'Scratch 1'!B2: a\tb".replace("\t", " "));
  await person.press("ArrowLeft");
  await person.shows("said", "'Scratch 1'!A2: 0,157");
  await person.holding("Control", "KeyZ");
  await person.shows("said", "'Scratch 1'!A1: blank");
});

/** Tables as two families of office programs write them, each with a style element that the page's policy refuses. */
const office = {
  openDocument: `<html><head><style type="text/css">td { font-family: "Liberation Sans" }</style></head><body><table border="0">
    <tr><td sdval="0.157123" sdnum="1033;0;0.00">0.16</td><td>held</td></tr>
    <tr><td sdval="46182" sdnum="1033;0;YYYY-MM-DD"><b>2026-06-09</b></td><td>two<br>words</td></tr></table></body></html>`,
  openXml: `<html xmlns:x="urn:schemas-microsoft-com:office:excel"><head><style><!-- .xl65 {mso-number-format:"Short Date";} --></style></head>
    <body><table><!--StartFragment--><tr><td class=xl65>2026-06-09</td><td align=right>51</td></tr><!--EndFragment--></table></body></html>`,
};

test("tables from office programs come with whole numbers and days, without their fonts and colours", async () => {
  await person.takeFreshSheet();
  await paste({ "text/html": office.openDocument, "text/plain": "0.16\theld\n2026-06-09\ttwo words\n" });
  await person.shows("said", "'Scratch 1'!A1: 0.157123");
  await person.press("Home", "ArrowDown");
  await person.shows("said", "'Scratch 1'!A2: 2026-06-09");
  await person.press("ArrowDown");
  await paste({ "text/html": office.openXml, "text/plain": "2026-06-09\t51\r\n" });
  await person.shows("said", "'Scratch 1'!A3: 2026-06-09");
  await person.press("Home", "ArrowRight");
  await person.shows("said", "'Scratch 1'!B3: 51");
});

/** Drops the page's own workbook under another name. */
const drop = async (name: string) => {
  const { page } = person;
  const dropped = await page.evaluateHandle(async (name) => {
    const bytes = await (await fetch("workbook")).arrayBuffer();
    const data = new DataTransfer();
    data.items.add(new File([bytes], name));
    return data;
  }, name);
  await page.evaluate((dataTransfer) => {
    for (const kind of ["dragover", "drop"])
      document
        .getElementById("grid")
        ?.dispatchEvent(new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer }));
  }, dropped);
};

test("a workbook dropped on the page is opened; where work would be lost a question comes first", async () => {
  const { page } = person;
  await drop("dropped.xlsx");
  // Nothing but its name once it is open; "Calculating …" before.
  await page.waitForFunction(() => document.getElementById("file")?.textContent === "dropped.xlsx");
  await person.takeFreshSheet();
  await drop("again.xlsx");
  await page.waitForSelector(".shop-question");
  expect(await page.$eval(".shop-question-words", (words) => words.textContent)).toBe(
    "Open again.xlsx? What was done in dropped.xlsx and not saved is given up.",
  );
  expect(await person.faults()).toEqual([]);
  // Keep it has the keyboard.
  await person.press("Enter");
  await page.waitForFunction(() => !document.querySelector(".shop-question"));
  expect(await person.text("file")).toBe("dropped.xlsx");
  expect(await person.text("sheets")).toContain("Scratch 1");
});

test("Control with S saves a copy, and then nothing is unsaved", async () => {
  await person.takeFreshSheet();
  await person.holding("Control", "KeyS");
  await person.shows("file", "test-log.xlsx: saved as a copy.");
  await drop("next.xlsx");
  await person.shows("file", "next.xlsx");
});

test("in a contrast theme page and grid are legible to axe", async () => {
  const { page } = person;
  const session = await page.createCDPSession();
  const features = [{ name: "forced-colors", value: "active" }];
  await session.send("Emulation.setEmulatedMedia", { features });
  await person.shows("pane", "BIMETAL.TRIP.VERDICT");
  expect(await page.evaluate(() => matchMedia("(forced-colors: active)").matches)).toBe(true);
  expect(await person.faults()).toEqual([]);
});
