import type { Cell } from "../../../../definition/cells";
import { type Column, listCells, listLooks } from "../list";
import { broken, linesDown, note, one, title, yours } from "../looks";
import type { ReadyCell, ReadySheet } from "../ready-sheet";

/** A worked example in cells: a question, cells to change, formulas with their answers, what they say, what to try, and the explanation. */
interface Lesson<Input extends string> {
  /** Of the sheet. */
  readonly name: string;
  readonly title: string;
  readonly question: string;
  readonly inputs: Readonly<Record<Input, LessonInput>>;
  readonly tables: readonly LessonTable<Input>[];
  readonly says: readonly string[];
  /** What to change, and what to look for then. */
  readonly changes: (at: At<Input>) => readonly (readonly [change: string, see: string])[];
  readonly mind: string;
  /** The arguments of EXPLAIN. */
  readonly explains: (at: At<Input>) => string;
}

interface LessonInput {
  readonly label: string;
  readonly value: Cell;
  readonly remark?: string;
  /** The words its cell offers. */
  readonly words?: readonly string[];
}

/** Where things stand: the cell of each input ("B5"), and of each table the first and last row as a sheet counts them. */
interface At<Input extends string> {
  readonly cell: Readonly<Record<Input, string>>;
  readonly tables: readonly Rows[];
}

interface Rows {
  readonly top: number;
  readonly bottom: number;
}

/** A list whose columns know where it stands. */
interface LessonTable<Input extends string> {
  readonly lines: number;
  readonly placed: (at: At<Input>, first: number) => Placed;
}

type Placed = Required<Pick<ReadySheet, "widths" | "choices">> & {
  readonly cells: readonly ReadyCell[];
  /** The formulas that answer in it, in words: "C12: =…". */
  readonly formulas: readonly string[];
};

/** `columns` is given its own rows as a range maker ("A12:A17" for "A"), and where everything stands. */
export const table = <Input extends string, Entry>(
  entries: readonly Entry[],
  columns: (down: (column: string) => string, at: At<Input>) => readonly Column<Entry>[],
): LessonTable<Input> => ({
  lines: entries.length,
  placed: (at, first) => {
    const down = (column: string): string => `${column}${first + 2}:${column}${first + 1 + entries.length}`;
    const list = { columns: columns(down, at), entries, first };
    const { widths = new Map(), choices = [] } = listLooks(list);
    const cells = listCells(list);
    const formulas = cells
      .filter(({ row, formula }) => formula && row === first + 1)
      .map(({ column, formula }) => `${String.fromCharCode(65 + column)}${first + 2}   ${formula}`);
    return { cells, widths, choices, formulas };
  },
});

const textLength = 105;
const firstInput = 4;

/** The lesson as a sheet, from top to bottom. */
export const lessonSheet = <Input extends string>(lesson: Lesson<Input>): ReadySheet => {
  const question = broken(lesson.question, textLength);
  const inputs = Object.entries(lesson.inputs) as [Input, LessonInput][];
  const inputRow = firstInput + question.length - 1;
  const firsts = firstsOf(lesson.tables, inputRow + inputs.length + 1);
  const at: At<Input> = {
    cell: Object.fromEntries(inputs.map(([key], i) => [key, `B${inputRow + i + 1}`])) as Record<Input, string>,
    tables: lesson.tables.map(({ lines }, i) => ({ top: (firsts[i] ?? 0) + 2, bottom: (firsts[i] ?? 0) + 1 + lines })),
  };
  const placed = lesson.tables.map((own, i) => own.placed(at, firsts[i] ?? 0));
  const below = Math.max(inputRow + inputs.length, ...at.tables.map(({ bottom }) => bottom)) + 1;
  return {
    name: lesson.name,
    cells: [
      ...one(0, 0, lesson.title, title),
      ...linesDown(1, 0, question),
      ...one(inputRow - 1, 0, inputs.length > 0 ? "Yours to change" : "All that is yellow is yours", yours),
      ...inputs.flatMap(([, { label, value, remark = "" }], i) => [
        ...one(inputRow + i, 0, label),
        ...one(inputRow + i, 1, value, yours),
        ...(remark ? one(inputRow + i, 2, remark, note) : []),
      ]),
      ...placed.flatMap(({ cells }) => cells),
      ...textsBelow(
        lesson,
        at,
        placed.flatMap(({ formulas }) => formulas),
        below,
      ),
    ],
    widths: widest(placed.map(({ widths }) => widths)),
    choices: [
      ...inputs.flatMap(([, { words }], i) =>
        words ? [{ block: { row: inputRow + i, column: 1, rows: 1, columns: 1 }, words }] : [],
      ),
      ...placed.flatMap(({ choices }) => choices),
    ],
  };
};

/** The heading row of each table: they stand below each other, a row apart. */
const firstsOf = <Input extends string>(tables: readonly LessonTable<Input>[], start: number): number[] =>
  tables.map((_, i) => tables.slice(0, i).reduce((row, { lines }) => row + lines + 2, start));

const textsBelow = <Input extends string>(
  { says, changes, mind, explains }: Lesson<Input>,
  at: At<Input>,
  formulas: readonly string[],
  start: number,
): ReadyCell[] => {
  const paragraphs: readonly (readonly [heading: string, lines: readonly string[], look?: typeof note])[] = [
    ["The formulas", formulas, note],
    ["What it says", says.flatMap((text) => broken(text, textLength))],
    [
      "Change this and see",
      changes(at).flatMap(([change, see]) => [
        ...broken(`→ ${change}`, textLength),
        ...broken(see, textLength - 5).map((line) => `     ${line}`),
      ]),
    ],
    ["Mind", broken(mind, textLength)],
  ];
  let row = start;
  const cells = paragraphs.flatMap(([heading, lines, look]) => {
    const own = [...one(row, 0, heading, title), ...linesDown(row + 1, 0, lines, look)];
    row += lines.length + 2;
    return own;
  });
  return [
    ...cells,
    ...one(row, 0, "How it comes about", title),
    ...one(row + 1, 0, `=BIMETAL.EXPLAIN(${explains(at)})`),
  ];
};

const widest = (all: readonly ReadonlyMap<number, number>[]): Map<number, number> => {
  // The names of our functions, at the head of an explanation, want this much.
  const widths = new Map([[0, 24]]);
  for (const own of all)
    for (const [column, width] of own) widths.set(column, Math.max(width, widths.get(column) ?? 0));
  return widths;
};
