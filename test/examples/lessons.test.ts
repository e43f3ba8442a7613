import { type Cell, CellError } from "../../src/definition/cells";
import { catalogue } from "../../src/functions";
import { calculate } from "../../src/hosts/engine/calculate";
import { readPlace } from "../../src/hosts/engine/place";
import { lessons } from "../../src/hosts/pane/sheets/lessons";

// Each lesson tells what to change and what to look for. Here it is changed, and looked for.

const lesson = (number: number) => {
  const found = lessons[number - 1];
  if (!found) throw new Error(`There is no lesson ${number}.`);
  return found.sheet;
};

/** The lesson after some cells were changed: what stands in others, by address. */
const changed = async (number: number, typed: Readonly<Record<string, Cell>>, ...asked: readonly string[]) => {
  const sheet = lesson(number);
  const more = Object.entries(typed).map(([address, value]) => ({ ...placeOf(address), value }));
  for (const { row, column } of more)
    expect(sheet.cells).toContainEqual(expect.objectContaining({ row, column, value: expect.anything() }));
  const isOver = ({ row, column }: { row: number; column: number }) =>
    more.some((cell) => cell.row === row && cell.column === column);
  const cells = [...sheet.cells.filter((cell) => !isOver(cell)), ...more];
  const view = await calculate({ sheets: [{ ...sheet, cells }] }, catalogue);
  const answers = asked.map((address) => view.valueAt({ sheet: sheet.name, ...placeOf(address) }));
  const messages = asked.map((address) => view.messageAt({ sheet: sheet.name, ...placeOf(address) }));
  view.close();
  return { answers, messages };
};
const placeOf = (address: string): { row: number; column: number } => {
  const place = readPlace(address);
  if (!place) throw new Error(`${address} is no cell.`);
  return { row: place.row, column: place.column };
};
const numbers = async (...args: Parameters<typeof changed>): Promise<number[]> =>
  (await changed(...args)).answers.map(Number);

/** What a lesson says, in one line. */
const saidIn = (number: number): string =>
  lesson(number)
    .cells.map(({ value }) => value)
    .filter((value) => typeof value === "string")
    .join(" ")
    .replace(/\s+/g, " ");

test("1: the letter moves the magnet alone; of UL 489 the magnet is not known", async () => {
  expect(saidIn(1)).toContain("type B into B7; then D. Look for: the lines up to 51 A stay as they are.");
  const slow = ["C10", "C11", "C12", "D12", "E12"];
  const [b, c, d] = [
    await changed(1, { B7: "B" }, ...slow, "E13"),
    await changed(1, {}, ...slow, "E13"),
    await changed(1, { B7: "D" }, ...slow, "E15"),
  ];
  expect(b.answers.slice(0, 5)).toEqual(c.answers.slice(0, 5));
  expect(d.answers.slice(0, 5)).toEqual(c.answers.slice(0, 5));
  // 100 A is 5 ×, the end of B's range and the beginning of C's; 200 A is the beginning of D's.
  expect([b.answers[5], c.answers[5], d.answers[5]]).toEqual(["trips, magnetic", "trips, thermal", "trips, thermal"]);
  expect((await changed(1, { B7: "UL 489" }, "E13")).answers).toEqual(["trips, magnetic not known"]);
});

test("2: from cold 1.45 × may take longer than the hour; at 1.5 × it must trip, at 1.1 × not within the hour, at 0.95 × never", async () => {
  expect(saidIn(2)).toContain("make the 1.13 in C11 a 0. Look for: the longest time leaves the hour.");
  expect((await numbers(2, { C11: 0 }, "G11"))[0]).toBeGreaterThan(3600);
  expect(saidIn(2)).toContain("Make the 1.3 in B13 1.5, then 1.1, then 0.95.");
  expect((await changed(2, { B13: 1.5 }, "H13")).answers).toEqual(["trips, thermal"]);
  expect((await changed(2, { B13: 1.1 }, "F13", "H13")).answers).toEqual([3600, "may hold or trip"]);
  expect((await changed(2, { B13: 0.95 }, "H13")).answers).toEqual(["holds"]);
  // IEC 60898-1 Table 7: one hour up to 63 A, two above.
  expect(await numbers(2, { B6: 80 }, "F10", "G11")).toEqual([7200, 7200]);
});

test("3: the time constant is this breaker's own; a hurried hand ends at the magnet; a very slow one 1 % above the pickup", async () => {
  expect(saidIn(3)).toContain("make B9 120. Look for: this breaker alone");
  const before = await numbers(3, {}, "B15", "C15", "E12", "E15");
  const after = await numbers(3, { B9: 120 }, "B15", "C15", "E12", "E15");
  expect(after.slice(0, 2)).toEqual(before.slice(0, 2));
  const [slowBefore = 0, quickBefore = 0, slowAfter = 0, quickAfter = 0] = [...before.slice(2), ...after.slice(2)];
  expect(quickAfter - quickBefore).toBeGreaterThan(slowAfter - slowBefore);
  expect(slowAfter).toBeGreaterThan(slowBefore);
  // 10 × 20 A: the end of C's range.
  expect(await numbers(3, { A15: 20 }, "C15")).toEqual([200]);
  const [above, seconds] = await numbers(3, { A12: 0.004 }, "F12", "D12");
  expect(above).toBeCloseTo(0.01, 3);
  expect(seconds).toBeGreaterThan(1.5 * 3600);
});

test("4: a current before leaves little to go; degrees of the other kind are refused; a slow strip rests long", async () => {
  expect(saidIn(4)).toContain("type 19 into B15.");
  const [cold = 0, warm = 0] = await numbers(4, { B15: 19 }, "E12", "E15");
  expect(warm).toBeLessThan(cold);
  const refused = await changed(4, { A12: 77 }, "C12");
  expect(refused.answers).toEqual([new CellError("#VALUE!")]);
  expect(refused.messages[0]).toContain("was °F meant?");
  expect((await numbers(4, { B9: 300 }, "B21"))[0]).toBeGreaterThan(20 * 60);
});

test("5: half as much again in current is more than twice the heat and the same share; exactly 1.5 is alike; a smaller rating has less to lose", async () => {
  expect(saidIn(5)).toContain("type 30 into A9 and 0.24 into B9.");
  const [watts, share] = await numbers(5, { A9: 30, B9: 0.24 }, "C9", "E9");
  expect(watts).toBeCloseTo(7.2, 10);
  // 7.2 W × (20 ÷ 30)² ÷ 4.5 W, by hand.
  expect(share).toBeCloseTo(3.2 / 4.5, 10);
  expect((await changed(5, { C17: 0.165 }, "F17")).answers).toEqual(["alike"]);
  // 3.5 W at 16 A (from memory): 3.2 W × (16 ÷ 20)² ÷ 3.5 W.
  expect((await numbers(5, { B6: 16 }, "E9"))[0]).toBeCloseTo(2.048 / 3.5, 10);
});

test("6: a shorter start mends the 32 A breakers; the compressor asks more of the magnet; a lagging start has a higher first peak", async () => {
  expect(saidIn(6)).toContain("type 1.2 into F8.");
  const [thermal, thermalD] = await numbers(6, { F8: 1.2 }, "D13", "D15");
  expect(thermal).toBeGreaterThan(1);
  expect(thermalD).toBe(thermal);
  const [strip = 0, magnet = 0] = await numbers(6, {}, "D13", "E13");
  const compressor = await numbers(6, { B8: 3, E8: "G", F8: 0.6, G8: 0.6 }, "D13", "E13");
  expect(compressor[0]).toBeGreaterThan(strip);
  expect(compressor[1]).toBeLessThan(magnet);
  const [peakBefore = 0, marginBefore = 0] = await numbers(6, {}, "K8", "F13");
  const [peak, margin] = await numbers(6, { G8: 0.2 }, "K8", "F13");
  expect(peak).toBeGreaterThan(peakBefore);
  expect(margin).toBeLessThan(marginBefore);
});

test("7: a free back and more depth cool; beyond 60 °C there is no re-rating, and it says so", async () => {
  const [rise = 0] = await numbers(7, {}, "B21");
  expect(saidIn(7)).toContain("type free into B9.");
  expect((await numbers(7, { B9: "free" }, "B21"))[0]).toBeLessThan(rise);
  expect((await numbers(7, { B8: 0.3 }, "B21"))[0]).toBeLessThan(rise);
  expect(saidIn(7)).toContain("Make A21 90.");
  const hot = await changed(7, { A21: 90 }, "E21");
  expect(hot.answers[0]).toBeInstanceOf(CellError);
  expect(hot.messages[0]).toContain("60 °C");
});

test("8: a perfect voltmeter decides nothing, a better clamp does, ten turns help the counts only", async () => {
  expect(saidIn(8)).toContain("0.01 in B9 and 0 in B10. Look for: the verdict does not change.");
  expect((await changed(8, { B9: 0.01, B10: 0 }, "K15")).answers).toEqual(["too close to call"]);
  expect((await changed(8, { B6: 0.5, B8: 0.01 }, "K15")).answers).toEqual(["conforms"]);
  const [before = 0] = await numbers(8, {}, "D15");
  const turns = await changed(8, { B8: 0.01 }, "D15", "K15");
  // (0.3 + 0.02) ÷ (0.3 + 0.2), by hand: down by about a third.
  expect(Number(turns.answers[0]) / before).toBeCloseTo(0.64, 10);
  expect(turns.answers[1]).toBe("too close to call");
});

test("every lesson explains one of its answers, with cautions and sources, and marks what is to be changed", async () => {
  for (const { sheet } of lessons) {
    const start = sheet.cells.find(({ formula }) => formula?.startsWith("=BIMETAL.EXPLAIN("));
    if (!start) throw new Error(`${sheet.name} explains nothing.`);
    const view = await calculate({ sheets: [sheet] }, catalogue);
    const { rows } = view.spillAt({ sheet: sheet.name, ...start }) ?? { rows: 0 };
    const kinds = Array.from({ length: rows }, (_, i) =>
      view.valueAt({ sheet: sheet.name, row: start.row + i, column: 0 }),
    );
    const texts = kinds.map((_, i) => String(view.valueAt({ sheet: sheet.name, row: start.row + i, column: 1 })));
    view.close();
    // Cells that an answer spills into do not wrap: no line is longer than a page is wide.
    expect(Math.max(...texts.map((text) => text.length))).toBeLessThanOrEqual(110);
    expect(kinds).toContain("");
    for (const kind of ["input", "step", "answer", "caution", "source"]) expect(kinds).toContain(kind);
    expect(sheet.cells.filter(({ style, value }) => style?.fill === "FFF2A8" && value !== null).length).toBeGreaterThan(
      1,
    );
  }
});
