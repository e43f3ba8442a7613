import { Memory, mostCalls } from "../../src/definition/memory";
import contactWatts from "../../src/functions/contact.watts";
import tripRange from "../../src/functions/trip.range";

test("a cell's last call of each function is remembered", () => {
  const memory = new Memory();
  memory.remember("Log!F2", contactWatts, [20, 0.16]);
  memory.remember("Log!F2", tripRange, [51, 20, "C"]);
  memory.remember("Log!F2", contactWatts, [20, 0.2]);
  expect(memory.recall("Log!F2", contactWatts)?.args).toEqual([20, 0.2]);
  expect(memory.recall("Log!F2", tripRange)?.args).toEqual([51, 20, "C"]);
  expect(memory.recall("Log!F3", contactWatts)).toBeUndefined();
});

test("the oldest calls are forgotten, so that it never grows without end; one that is made again is young again", () => {
  const memory = new Memory();
  const cell = (row: number) => `Log!A${row}`;
  for (let row = 1; row <= mostCalls; row++) memory.remember(cell(row), contactWatts, [row, 0.1]);
  memory.remember(cell(1), contactWatts, [1, 0.1]);
  memory.remember(cell(mostCalls + 1), contactWatts, [7, 0.1]);
  expect(memory.recall(cell(2), contactWatts)).toBeUndefined();
  for (const row of [1, 3, mostCalls + 1]) expect(memory.recall(cell(row), contactWatts)).toBeDefined();
});
