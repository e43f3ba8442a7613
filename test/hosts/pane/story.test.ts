import { CellError, type Range } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import type { ResolvedCall } from "../../../src/hosts/pane/explain/resolved";
import { storyOf } from "../../../src/hosts/pane/explain/story";
import { told } from "../../../src/hosts/pane/explain/told";
import type { Port, Selection } from "../../../src/hosts/pane/port";
import { scriptedPort, selected } from "./scripted-port";

const callsAt = async (selection: Selection, port: Port): Promise<readonly ResolvedCall[]> => {
  const story = await storyOf(selection, port, catalogue);
  if (story.tells !== "calls") throw new Error(`calls are wanted, not: ${story.tells}`);
  return story.calls;
};

const onlyCall = async (selection: Selection, port: Port) => (await callsAt(selection, port))[0] as ResolvedCall;

const heat = "=BIMETAL.CONTACT.WATTS(B2,0.16)";

describe("what an argument was", () => {
  test("what the last calculation was given counts while the cells still hold it", async () => {
    const port = scriptedPort({ values: { B2: [[20]] }, remembered: { cell: "Log!F2", args: [20, 0.16] } });
    expect((await onlyCall(selected(heat), port)).args).toEqual([20, 0.16]);
  });

  test("once a cell holds something else, the cells are told and not the memory", async () => {
    const port = scriptedPort({ values: { B2: [[99]] }, remembered: { cell: "Log!F2", args: [20, 0.16] } });
    expect((await onlyCall(selected(heat), port)).args).toEqual([99, 0.16]);
  });

  test("one changed cell of a column is enough, and a column that has grown", async () => {
    const column = "=BIMETAL.CONTACT.WATTS(B2:B4,0.1)";
    const remembered = { cell: "Log!F2", args: [[[10], [20], [30]], 0.1] };
    for (const now of [
      [[10], [21], [30]],
      [[10], [20], [30], [40]],
    ]) {
      const port = scriptedPort({ values: { "B2:B4": now }, remembered });
      expect((await onlyCall(selected(column), port)).args).toEqual([now, 0.1]);
    }
  });

  test("with one changed cell a calculation beside it is no longer known either", async () => {
    const port = scriptedPort({ values: { C2: [[0.2]] }, remembered: { cell: "Log!F2", args: [40, 0.1] } });
    const call = await onlyCall(selected("=BIMETAL.CONTACT.WATTS(B2*2,C2)"), port);
    expect(call.origins[0]?.unknown).toMatch(/^a calculation/);
    expect(call.args[1]).toBe(0.2);
  });

  test("a blank cell, which some hosts hand over as 0, is no change; an error cell is itself", async () => {
    const refused = new CellError("#N/A");
    const port = scriptedPort({
      values: { "B2:B4": [[10], [null], [new CellError("#N/A")]] },
      remembered: { cell: "Log!F2", args: [[[10], [0], [refused]], 0.1] },
    });
    const call = await onlyCall(selected("=BIMETAL.CONTACT.WATTS(B2:B4,0.1)"), port);
    expect(call.args[0]).toEqual([[10], [0], [refused]]);
  });

  test("what a formula leaves out is left out, whatever is remembered in its place", async () => {
    const port = scriptedPort({ remembered: { cell: "Log!F2", args: [51, 20, "C", 0, 35] } });
    const call = await onlyCall(selected('=BIMETAL.TRIP.RANGE(51,20,"C",,35)'), port);
    expect(call.args).toEqual([51, 20, "C", undefined, 35]);
  });

  test("a memory of another formula in this cell is left aside", async () => {
    const port = scriptedPort({ values: { B2: [[20]] }, remembered: { cell: "Log!F2", args: [20, 0.2] } });
    expect((await onlyCall(selected(heat), port)).args).toEqual([20, 0.16]);
  });

  test("of a function that stands twice in a formula memory holds one call, so the formula is read", async () => {
    const port = scriptedPort({ values: { B2: [[10]] }, remembered: { cell: "Log!F2", args: [20, 0.16] } });
    const calls = await callsAt(selected(`${heat}+BIMETAL.CONTACT.WATTS(20,0.16)`), port);
    expect(calls.map(({ args }) => args)).toEqual([
      [10, 0.16],
      [20, 0.16],
    ]);
  });

  test("a calculation that nobody remembers is named as one, and nothing is made up", async () => {
    const call = await onlyCall(selected("=BIMETAL.CONTACT.WATTS(B2*2,0.16)"), scriptedPort({}));
    const { inputs, results, steps, refusal, cautions } = told(call, 0);
    expect(inputs[0]?.shown).toBe("a calculation: put it in a cell of its own to see it");
    expect([results, steps, refusal]).toEqual([[], [], undefined]);
    expect(cautions.length).toBeGreaterThan(0);
  });

  test("a name that the host cannot follow is such a calculation too", async () => {
    const call = await onlyCall(selected("=BIMETAL.CONTACT.WATTS(Load,0.16)"), scriptedPort({}));
    expect(call.origins[0]?.unknown).toMatch(/^a calculation/);
  });

  test("a remembered calculation has its value", async () => {
    const port = scriptedPort({ remembered: { cell: "Log!F2", args: [40, 0.1] } });
    const call = await onlyCall(selected("=BIMETAL.CONTACT.WATTS(B2*2,0.1)"), port);
    // 40 A × 0.1 V, by hand.
    expect(told(call, 0).results[0]?.shown).toBe("4 W");
  });
});

describe("which row a cell shows", () => {
  const spilled = (row: number, column: number) => ({ spill: { anchor: "Log!F2", row, column } });
  const values = { "B2:B4": [[10], [20], ["x"]], "B2:D2": [[10, 20, 30]] };

  test("inside a spill that of the cell; memory is asked for the first cell of the answer", async () => {
    const port = scriptedPort({ remembered: { cell: "Log!F2", args: [values["B2:B4"], 0.1] } });
    const selection = selected("=BIMETAL.CONTACT.WATTS(B2:B4,0.1)", { address: "Log!F3", ...spilled(1, 0) });
    const call = await onlyCall(selection, port);
    expect([call.row, call.column]).toEqual([1, 0]);
    // 20 A × 0.1 V, by hand.
    expect(told(call, call.row).results[0]?.shown).toBe("2 W");
  });

  test("a refused row is told with its refusal, its neighbours are not", async () => {
    const selection = selected("=BIMETAL.CONTACT.WATTS(B2:B4,0.1)", spilled(2, 0));
    const call = await onlyCall(selection, scriptedPort({ values }));
    expect(told(call, 2).refusal?.code).toBe("#VALUE!");
    expect(told(call, 1).refusal).toBeUndefined();
  });

  test("ranges that lie across give a column for each of their cells", async () => {
    const selection = selected('=BIMETAL.TRIP.RANGE(B2:D2,20,"C")', spilled(1, 2));
    const call = await onlyCall(selection, scriptedPort({ values }));
    expect([call.row, call.column]).toEqual([2, 1]);
  });

  test("of an answer in rows from one set of inputs the results of the cell's own row are told", async () => {
    const formula = "=BIMETAL.THERMAL.PROFILE({0;60},{40;40},20,100)";
    const call = await onlyCall(selected(formula, spilled(2, 0)), scriptedPort({}));
    expect([call.row, call.column, call.answerRow]).toEqual([0, 0, 2]);
    const [first, last] = [told({ ...call, answerRow: 0 }, 0), told(call, 0)];
    // The first row is the start: 0 s, cold.
    expect(first.results.map(({ shown }) => shown)).toEqual(["0 s", "0"]);
    // 40 A is twice the pickup: it trips after τ·ln(4/(4 − 1)) = 100 s × 0.28768 = 28.77 s, by hand.
    expect(last.results[0]?.shown).toBe("28.77 s");
  });

  test("a call inside another formula begins with its first row", async () => {
    const selection = selected("=SUM(BIMETAL.CONTACT.WATTS(B2:B4,0.1))", {});
    expect((await onlyCall(selection, scriptedPort({ values }))).row).toBe(0);
  });
});

describe("from one cell of an answer to another", () => {
  const formula = "=BIMETAL.CONTACT.WATTS(B2:B4,0.1)";
  const at = (row: number) =>
    selected(formula, { address: `Log!F${2 + row}`, spill: { anchor: "Log!F2", row, column: 0 } });
  const port = (cells: Range) => scriptedPort({ values: { "B2:B4": cells } });

  test("what was looked up still holds and is not looked up again", async () => {
    const before = await storyOf(at(0), port([[10], [20], [30]]), catalogue);
    const after = await storyOf(at(2), port([]), catalogue, before);
    if (after.tells !== "calls") throw new Error("calls are wanted");
    const [call] = after.calls as readonly [ResolvedCall];
    // 30 A × 0.1 V, by hand.
    expect([call.row, told(call, call.row).results[0]?.shown]).toEqual([2, "3 W"]);
  });

  test("another formula, or the same one in another cell, is looked up", async () => {
    const before = await storyOf(at(0), port([[10], [20], [30]]), catalogue);
    for (const selection of [selected(formula, { address: "Log!G2" }), selected("=BIMETAL.CONTACT.WATTS(B2:B4,0.2)")]) {
      const after = await storyOf(selection, port([[1], [2], [3]]), catalogue, before);
      expect(after).toMatchObject({ calls: [{ args: [[[1], [2], [3]], expect.any(Number)] }] });
    }
  });
});

describe("below a formula, where Enter leads", () => {
  const above = selected('=BIMETAL.TRIP.RANGE(51,20,"C")', { address: "Log!F1", value: 1 });
  const port = scriptedPort({ cells: [above, selected("=SUM(A1)", { address: "Log!G1" })] });

  test("a blank cell is told from the one above it, and says which is which", async () => {
    const story = await storyOf(selected(""), port, catalogue);
    expect(story).toMatchObject({ selection: above, below: { address: "Log!F2" } });
  });

  test.each([
    ["a cell that holds something", { value: 3 }],
    ["a cell below another formula", { address: "Log!G2" }],
    ["a cell of the first row", { address: "Log!F1" }],
    ["a cell below one that is not there", { address: "Log!H9" }],
  ])("%s is told as what it is", async (_, cell) => {
    expect((await storyOf(selected("", cell), port, catalogue)).tells).toBe("ordinary cell");
  });
});

test("no cell, and a cell without our functions, are told apart", async () => {
  expect((await storyOf(undefined, scriptedPort({}), catalogue)).tells).toBe("nothing selected");
  expect((await storyOf(selected("=SUM(A1)"), scriptedPort({}), catalogue)).tells).toBe("ordinary cell");
});
