import { ProgressLine, sayProgress } from "../../../src/hosts/workbook/progress-line";

/** What is written to a terminal, or to a file, while seconds go by. */
const stream = (isTTY: boolean, columns?: number) => {
  const written: string[] = [];
  return { written, isTTY, ...(columns && { columns }), write: (text: string) => written.push(text) };
};

beforeEach(() => jest.useFakeTimers());
afterEach(() => jest.useRealTimers());

test("a line says what is done, how far it is, and for how long", () => {
  expect(sayProgress({ doing: "Calculating formulas", done: 1500, of: 20_000 }, 12.9)).toBe(
    "Calculating formulas: 1500 of 20000, 12 s …",
  );
  expect(sayProgress({ doing: "Reading log.xlsx" }, 3)).toBe("Reading log.xlsx, 3 s …");
});

test("on a terminal one line is drawn over and over while nothing new is told, and taken away at the end", () => {
  const terminal = stream(true);
  const line = new ProgressLine(terminal);
  line.show({ doing: "Calculating formulas", done: 500, of: 9000 });
  jest.advanceTimersByTime(1000);
  expect(terminal.written).toEqual([]);
  jest.advanceTimersByTime(2000);
  expect(terminal.written.at(-1)).toBe("\rCalculating formulas: 500 of 9000, 3 s …\u001b[K");
  line.clear();
  expect(terminal.written.at(-1)).toBe("\r\u001b[K");
  const lines = terminal.written.length;
  jest.advanceTimersByTime(5000);
  expect(terminal.written).toHaveLength(lines);
});

test("a line never passes the edge of a narrow terminal, nor obeys what a file is called", () => {
  const terminal = stream(true, 20);
  new ProgressLine(terminal).show({ doing: "Reading \u001b[2J a file with a long name.xlsx" });
  jest.advanceTimersByTime(2000);
  expect(terminal.written.at(-1)).toBe("\rReading \ufffd[2J a file\u001b[K");
});

test("elsewhere a quick run says nothing, and a slow one a line now and then", () => {
  const file = stream(false);
  const line = new ProgressLine(file);
  line.show({ doing: "Calculating formulas", done: 0, of: 9 });
  jest.advanceTimersByTime(9000);
  expect(file.written).toEqual([]);
  jest.advanceTimersByTime(52_000);
  expect(file.written).toEqual(["Calculating formulas: 0 of 9, 10 s …\n", "Calculating formulas: 0 of 9, 40 s …\n"]);
  line.clear();
  expect(file.written).toHaveLength(2);
});
