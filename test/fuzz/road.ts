import { BadInput, type Refusal } from "../../src/definition/bad-input";
import { type Called, call } from "../../src/definition/call";
import type { Answer } from "../../src/definition/cells";
import { NoAnswer } from "../../src/metrology/no-answer";
import { type Lanes, lanesOf, type Question, withRows } from "./question";

/** Characters that a cell of a spreadsheet holds. */
const longestText = 32_767;
export const nonsense = /NaN|Infinity|undefined|\[object|null/;
const sentence = /^\S[^\n]{3,1500}[.!?)]$/;

/** Longer than this a person waits for a row of an answer: ms of the processor. In the tests, cold and beside others, all takes longer. */
export const patience = { ms: 250 };

export const demand = (isKept: boolean, broken: string): void => {
  if (!isKept) throw new Error(broken);
};

/** Counts what was called. */
export const count = { calls: 0, slowest: { ms: 0, question: undefined as Question | undefined } };

export const ask = ({ definition, args }: Question): Called => {
  count.calls++;
  return call(definition, args);
};

/** Time of the processor, not of the clock: other programs run beside this one. */
const milliseconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** The answer of a call, asked in good time. One slow run may be the machine's: the quickest of three counts. */
const askInTime = (question: Question, rows: number): Called => {
  const most = rows * patience.ms;
  let quickest = Infinity;
  for (let tries = 0; ; tries++) {
    const start = milliseconds();
    const called = ask(question);
    quickest = Math.min(quickest, milliseconds() - start);
    if (quickest > most && tries < 2) continue;
    if (quickest > count.slowest.ms) count.slowest = { ms: quickest, question };
    demand(quickest <= most, `The call takes ${quickest.toFixed(0)} ms.`);
    return called;
  }
};

export const isRefusal = (cell: Answer | Refusal): cell is Refusal =>
  cell instanceof BadInput || cell instanceof NoAnswer;

/** Cells as they are compared: a refusal by its kind and sentence, −0 as 0. */
export const plain = (called: Called): string =>
  JSON.stringify(
    called.map((row) => row.map((cell) => (cell instanceof Error ? `${cell.name}: ${cell.message}` : cell))),
  );

/** Whether a row of the answer is one: neither refused nor blank. */
export const isAnswered = (question: Question, called: Called): boolean => {
  const rows = rowwise(question, called, lanesOf(question));
  return rows.some(
    (row) => !row.some((cell) => isRefusal(cell)) && row.some((cell) => cell !== "") && row[0] !== "refused",
  );
};

const rowwise = ({ definition }: Question, called: Called, lanes: Lanes | undefined): Called => {
  if (!lanes?.across || definition.answers === "rows" || isRefusedWhole(called)) return called;
  return (called[0] ?? []).map((_, i) => called.map((row) => row[i] as Answer));
};

/** One refusal stands in all cells of a call that is refused as a whole. */
const isRefusedWhole = (called: Called): boolean => {
  const [first] = called[0] ?? [];
  return called.length === 1 && first instanceof Error && (called[0] ?? []).every((cell) => cell === first);
};

/** A number that is none, handed in, may be named by what answers it. */
export const isHandedNonsense = ({ args }: Question): boolean =>
  args.flat(2).some((cell) => typeof cell === "number" && !Number.isFinite(cell));

const isCell = (cell: Answer | Refusal): boolean => {
  if (typeof cell === "number") return Number.isFinite(cell);
  if (typeof cell === "string") return cell.length <= longestText;
  return typeof cell === "boolean" || (isRefusal(cell) && sentence.test(cell.message));
};

/** What every call owes; throws with a sentence where it is not kept. Gives the answer. */
export const keepsToTheRoad = (question: Question): Called => {
  const lanes = lanesOf(question);
  const called = askInTime(question, lanes?.rows ?? 1);
  holdsOnlyCells(question, called);
  hasItsShape(question, called, lanes);
  const text = plain(called);
  demand(plain(ask(question)) === text, "The same call gives another answer the second time.");
  if (lanes && lanes.rows > 1 && question.definition.answers === "row" && !isRefusedWhole(called))
    rowsStandAlone(question, rowwise(question, called, lanes), lanes);
  return called;
};

const holdsOnlyCells = (question: Question, called: Called): void => {
  const mayNameIt = isHandedNonsense(question);
  for (const cell of called.flat()) {
    demand(isCell(cell), `It answers with ${typeof cell}: ${String(cell)}`);
    const text = cell instanceof Error ? cell.message : String(cell);
    demand(mayNameIt || !nonsense.test(text), `It says: ${text}`);
  }
};

const hasItsShape = ({ definition }: Question, called: Called, lanes: Lanes | undefined): void => {
  const [first] = called;
  demand(first !== undefined && first.length > 0, "The answer has no cells.");
  demand(
    called.every(({ length }) => length === first?.length),
    "The answer has rows of different lengths.",
  );
  const width = definition.results.length;
  if (isRefusedWhole(called))
    demand(first?.length === width, `A refused call has ${first?.length} cells, not ${width}.`);
  else if (definition.answers === "rows")
    demand(first?.length === width, `A row has ${first?.length} cells, not ${width}.`);
  else {
    demand(lanes !== undefined, "Arguments that do not fit are answered.");
    const [rows, columns] = lanes?.across ? [width, lanes.rows] : [lanes?.rows, width];
    demand(
      called.length === rows && first?.length === columns,
      `The answer has ${called.length} × ${first?.length} cells, not ${rows} × ${columns}.`,
    );
  }
};

const isBlank = (cell: unknown): boolean => cell === null || cell === 0 || cell === "";

const rowsStandAlone = (question: Question, called: Called, lanes: Lanes): void => {
  const all = Array.from({ length: lanes.rows }, (_, row) => row);
  const backwards = withRows(question, lanes, [...all].reverse());
  const turned = rowwise(backwards, ask(backwards), lanes);
  demand(plain([...turned].reverse()) === plain(called), "The order of the rows makes a difference.");
  for (const row of all) {
    const cells = [...lanes.cells.values()].map((lane) => lane[row]);
    const own = plain([called[row] ?? []]);
    if (cells.every(isBlank))
      demand(called[row]?.every((cell) => cell === "") === true, `Row ${row + 1} is blank, its answer is not.`);
    // A blank cell has a meaning of its own in a range only.
    else if (!cells.some(isBlank))
      demand(plain(ask(withRows(question, lanes, [row]))) === own, `Row ${row + 1} alone gives another answer.`);
  }
};
