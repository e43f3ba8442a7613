import { CellError } from "../../../src/definition/cells";
import type { Book, Sheet } from "../../../src/hosts/engine/book";
import { type Calculated, calculate } from "../../../src/hosts/engine/calculate";
import { readPlace } from "../../../src/hosts/engine/place";
import { cellsFrom } from "./cells-from";

const book = (cells: Sheet["cells"], more: Partial<Sheet> = {}, names: Book["names"] = []): Book => ({
  sheets: [{ name: "S", cells, ...more }],
  names,
});

const shown = (grid: Calculated, ...addresses: string[]) =>
  addresses.map((address) => {
    const value = grid.valueAt(readPlace(address, "S") ?? { sheet: "", row: 0, column: 0 });
    return value instanceof CellError ? value.code : value;
  });

const whys = (grid: Calculated) => grid.kept.map(({ place, why }) => `${place.row},${place.column} ${why}`);

test("SORT leaves the cells it sorts alone, in whatever order formulas are calculated", async () => {
  const rows = [[60], [5], [20]];
  const grid = await calculate(
    book([
      ...cellsFrom(rows),
      ...cellsFrom([["=SUM(TAKE(A1:A3,2))", "=SORT(A1:A3)", "=SUM(TAKE(A1:A3,2))"]], { column: 2 }),
    ]),
    [],
  );
  expect(shown(grid, "C1", "D1", "D2", "D3", "E1")).toEqual([65, 5, 20, 60, 65]);
});

test("a workbook calculated after another in the same process gets none of its values", async () => {
  const chain = (length: number) => book(cellsFrom([[1], ...Array.from({ length }, (_, row) => [`=A${row + 1}+1`])]));
  expect(shown(await calculate(chain(800), []), "A801")).toEqual([801]);
  expect(shown(await calculate(chain(1200), []), "A1201")).toEqual([1201]);
});

// Excel rounds away what a last subtraction leaves near zero (0.1+0.2-0.3 is 0) but keeps it within a longer formula: (0.5-0.4-0.1) is
// -2.8E-17 there, as people report. Here it is 0 in both.
test("what is nothing but the last place of a larger number is 0, within a longer formula too", async () => {
  const grid = await calculate(book(cellsFrom([["=0.1+0.2-0.3", "=1*(0.5-0.4-0.1)", "=0.1+0.2=0.3"]])), []);
  expect(shown(grid, "A1", "B1", "C1")).toEqual([0, 0, true]);
});

test("answers that read each other's spilled cells settle, however long the chain and whatever the order", async () => {
  // Each column adds 1 to the whole answer of the column to its right; the last one counts 10, 20, 30.
  const columns = ["A", "C", "E", "G", "I"];
  const cells = columns.map((_, place) => ({
    row: 0,
    column: place * 2,
    value: null,
    formula: place === 4 ? "=SEQUENCE(3)*10" : `=${columns[place + 1]}1:${columns[place + 1]}3+1`,
  }));
  const grid = await calculate(book([...cells, ...cellsFrom([["=A3*2"]], { row: 9 })]), []);
  expect(shown(grid, "A1", "A2", "A3", "A10")).toEqual([14, 24, 34, 68]);
});

test("an answer larger than the sheet it was loaded with gets its room", async () => {
  const grid = await calculate(book(cellsFrom([["=SEQUENCE(5000,30)"]])), []);
  expect(shown(grid, "A1", "AD5000")).toEqual([1, 150_000]);
});

test("table references are read as the cells they stand for", async () => {
  const cells = [
    ...cellsFrom(
      [
        ["current", "drop [V]"],
        [20, 0.16],
        [10, 0.2],
        [30, 0.1],
      ],
      { row: 1, column: 1 },
    ),
    ...cellsFrom(
      [["=SUM(Trials[current])"], ["=ROWS(Trials)"], ["=Trials[[#Headers],[current]]"], ["=COUNTA(Trials[#All])"]],
      {
        column: 5,
      },
    ),
    ...cellsFrom([["=[@current]*2"], ["=Trials[@[drop '[V']]]"]], { row: 2, column: 3 }),
    ...cellsFrom([["=SUM(Nowhere[a])"], ["=Trials[ohms]"]], { row: 10 }),
  ];
  const block = { row: 1, column: 1, rows: 4, columns: 3 };
  const grid = await calculate(
    book(cells, { tables: [{ name: "Trials", block, columns: ["current", "drop [V]", "twice"] }] }),
    [],
  );
  expect(shown(grid, "F1", "F2", "F3", "F4", "D3", "D4")).toEqual([60, 3, "current", 10, 40, 0.2]);
  expect(grid.kept.map(({ why }) => why)).toEqual([
    'There is no table "Nowhere".',
    'The table "Trials" has no column "ohms".',
  ]);
});

test("what the engine cannot calculate keeps its value, and what reads it goes on from there", async () => {
  const kept = (formula: string, value: number) => ({ row: 0, column: value, value, formula });
  const grid = await calculate(
    book([
      kept("=[1]Log!A1", 0),
      kept("=NOSUCH(1)", 1),
      kept("=SUM((A1,B1))", 2),
      kept("=SUM(S:T!A1)", 3),
      kept("=Unknown+1", 4),
      kept("=1+", 5),
      kept("=SUM(A1:B2 B1:C2)", 6),
      ...cellsFrom([["=SUM(A1:F1)"]], { row: 1 }),
    ]),
    [],
  );
  expect(shown(grid, "A1", "B1", "C1", "D1", "E1", "F1", "A2")).toEqual([0, 1, 2, 3, 4, 5, 15]);
  expect(whys(grid)).toEqual([
    "0,0 It refers to another workbook ([1]Log!A1).",
    "0,1 The function NOSUCH is not known here.",
    "0,2 It joins separate ranges into one.",
    "0,3 It takes cells of several sheets at once (S:T!A1).",
    "0,4 The name Unknown is not known here.",
    "0,5 It cannot be read as a formula.",
    "0,6 It asks for the cells that two ranges share.",
  ]);
});

test("a name that one sheet alone knows is not mistaken for another sheet's", async () => {
  const sheet = (name: string, value: number) => ({ name, cells: cellsFrom([[value], ["=Rate*10"]]) });
  const names = [
    { name: "Rate", formula: "S!$A$1", sheet: "S" },
    { name: "Rate", formula: "T!$A$1", sheet: "T" },
  ];
  const grid = await calculate({ sheets: [sheet("S", 1), sheet("T", 2), sheet("U", 3)], names }, []);
  expect(shown(grid, "A2", "T!A2")).toEqual([10, 20]);
  expect(whys(grid)).toEqual(["1,0 The name Rate is not known here."]);
});

test("a name stands for its whole meaning, names within names and table columns too", async () => {
  const names = [
    { name: "Two", formula: "1+1" },
    { name: "Four", formula: "Two*2" },
    { name: "Sum", formula: "SUM(Trials[a])" },
    { name: "Loop", formula: "Loop+1" },
  ];
  const table = { name: "Trials", block: { row: 0, column: 5, rows: 3, columns: 1 }, columns: ["a"] };
  const cells = [
    ...cellsFrom([["a"], [5], [6]], { column: 5 }),
    ...cellsFrom([["=Two*3"], ["=-Two"], ["=Four+1"], ["=Sum"], ["=Loop"]]),
  ];
  const grid = await calculate(book(cells, { tables: [table] }, names), []);
  expect(shown(grid, "A1", "A2", "A3", "A4")).toEqual([6, -2, 5, 11]);
  expect(grid.kept.map(({ formula }) => formula)).toEqual(["=Loop"]);
});

// ECMA-376 Part 1, 18.2.5: a name's references without $ are relative; that files write them for A1 is from memory.
test("a name without $ stands for other cells in each cell that uses it", async () => {
  const names = [
    { name: "Left", formula: "S!XFD1" },
    { name: "Above", formula: "S!A1048576+S!$D$1" },
    { name: "LeftTwice", formula: "Left*2" },
  ];
  const cells = [
    ...cellsFrom([
      [1, "=Left*10"],
      [2, "=Left*10", "=LeftTwice"],
      [3, "=Above"],
    ]),
    ...cellsFrom([[100]], { column: 3 }),
  ];
  const grid = await calculate(book(cells, {}, names), []);
  expect(shown(grid, "B1", "B2", "C2", "B3")).toEqual([10, 20, 40, 120]);
  expect(grid.kept).toEqual([]);
});

test("two workbooks at once keep their own names and their own LET", async () => {
  const with3 = (formula: string) =>
    book(cellsFrom([[3], ["=LET(x,A1,x*2)"], ["=Rate+0"]]), {}, [{ name: "Rate", formula }]);
  const [one, two] = [await calculate(with3("S!$A$1"), []), await calculate(with3("70"), [])];
  expect([...shown(one, "A2", "A3"), ...shown(two, "A2", "A3")]).toEqual([6, 3, 6, 70]);
});

test("cells and ranges beyond what is filled are blank, and those of impossible size are not calculated", async () => {
  const cells = cellsFrom([["=B70000+1"], ["=ROWS(B1:B1048576)"], ["=SUM(B1:XFD1048576)"], ["=SEQUENCE(1048576,100)"]]);
  const grid = await calculate(book(cells), []);
  expect(shown(grid, "A1", "A2")).toEqual([1, 1_048_576]);
  expect(whys(grid)).toEqual(["2,0 The engine cannot calculate it.", "3,0 The engine cannot calculate it."]);
});

test("a formula over which the engine breaks keeps its value, and the others are calculated all the same", async () => {
  const cells = [
    { row: 0, column: 0, value: 7, formula: "=DROP(0,LAMBDA(a,b,a))" },
    ...cellsFrom([["=A1+1"]], { row: 1 }),
  ];
  const grid = await calculate(book(cells), []);
  expect(whys(grid)).toEqual(["0,0 The engine cannot calculate it."]);
  expect(shown(grid, "A1", "A2")).toEqual([7, 8]);
});

test("formulas that go in a circle keep their values and are named; the rest is calculated", async () => {
  const cells = [
    { row: 0, column: 0, value: 7, formula: "=B1+1" },
    { row: 0, column: 1, value: 8, formula: "=A1+1" },
    { row: 0, column: 2, value: null, formula: "=SUM(C1:C5)" },
    ...cellsFrom([["=A1*10"], ["=1+1"]], { row: 1 }),
  ];
  const grid = await calculate(book(cells), []);
  expect(shown(grid, "A1", "B1", "A2", "A3")).toEqual([7, 8, 70, 2]);
  expect(whys(grid)).toEqual(["0,0", "0,1", "0,2"].map((place) => `${place} It leads back to itself.`));
});

test("circles over a name and over spilled answers are found too", async () => {
  const circle = async (cells: Sheet["cells"], names: Book["names"] = []) => {
    const grid = await calculate(book([...cells, ...cellsFrom([["=1+1"]], { row: 20 })], {}, names), []);
    return [...whys(grid), ...shown(grid, "A21")];
  };
  const kept = (column: number, formula: string) => ({ row: 0, column, value: 7, formula });
  const names = [{ name: "Back", formula: "S!$A$1" }];
  expect(await circle([kept(0, "=Back+1")], names)).toEqual(["0,0 It leads back to itself.", 2]);
  const spilled = ["0,0 It may lead back to itself.", "0,3 It may lead back to itself."];
  expect(await circle([kept(0, "=VSTACK(1,D2+1)"), kept(3, "=VSTACK(1,A2+1)")])).toEqual([...spilled, 2]);
});

test("circles over INDIRECT and OFFSET are found, and what such formulas only pass by is none", async () => {
  const kept = (row: number, formula: string) => ({ row, column: 0, value: 7, formula });
  const cells = [
    kept(0, '=INDIRECT("A1")+1'),
    kept(1, "=OFFSET(A4,C1,0)+1"),
    kept(2, "=A2*2"),
    kept(5, "=A7+1"),
    kept(6, '=INDIRECT("A"&B1)'),
    kept(8, '=SUM(INDIRECT("A"&B1+2&":A"&B1+4))'),
    ...cellsFrom([["=2*3", "=-3+2"], ["=OFFSET(A1,B1+3,0)"]], { column: 1 }),
    ...cellsFrom([[5]], { row: 9 }),
  ];
  const grid = await calculate(book(cells), []);
  expect(whys(grid)).toEqual(
    ["0,0", "1,0", "2,0", "5,0", "6,0", "8,0"].map((place) => `${place} It leads back to itself.`),
  );
  expect(shown(grid, "B1", "C1", "B2")).toEqual([6, -1, 5]);
});

test("where dates count from 1904, what reckons with dates keeps its value and says so", async () => {
  const kept = (row: number, formula: string) => ({ row, column: 0, value: 7, formula });
  const formulas = ["=YEAR(B1)", '="2023-03-15"+1', '=COUNTIF(B1:B2,">=3/15/2023")', "=VALUE(B2)", "=COUPNUM(B1,B2,2)"];
  const cells = [
    ...formulas.map((formula, row) => kept(row, formula)),
    ...cellsFrom([[40000, '=B1+1&" 20 A"']], { column: 1 }),
  ];
  const grid = await calculate({ ...book(cells), countsFrom1904: true }, []);
  expect(grid.kept.map(({ place }) => place.row)).toEqual([0, 1, 2, 3, 4]);
  expect(grid.kept[1]?.why).toBe('The workbook counts its dates from 1904, and "2023-03-15" here from 1900.');
  expect(shown(grid, "C1")).toEqual(["40001 20 A"]);
});

describe("formulas as files store them", () => {
  test("one that is stored for one cell takes one value of a range, that of its own row", async () => {
    const single = (formula: string, row: number) => ({
      row,
      column: 3,
      value: null,
      formula,
      stored: "single" as const,
    });
    const grid = await calculate(
      book([
        ...cellsFrom([
          [1, 10],
          [2, 20],
          [3, 30],
        ]),
        single("=A1:A3*2", 1),
        single("=SUMPRODUCT(A1:A3*B1:B3)", 2),
        single("=SUM(A1:A3)", 3),
      ]),
      [],
    );
    expect(shown(grid, "D2", "D3", "D4")).toEqual([4, 140, 6]);
    expect(grid.spillsOn("S")).toEqual([]);
  });

  test("an array formula of the old kind fills its block: rows repeat, what is missing is #N/A", async () => {
    const fixed = (formula: string, column: number, rows: number, columns: number) => ({
      ...{ row: 0, column, value: null, formula, stored: "fixed" as const, spill: { rows, columns } },
    });
    const grid = await calculate(
      book([
        ...cellsFrom([[1], [2], [3]]),
        fixed("=A1:A3*2", 2, 2, 1),
        fixed("=A1:A2*2", 4, 3, 2),
        fixed("=SUM(A1:A3*2)", 8, 1, 1),
        fixed("=A1:A3", 10, 1, 1),
      ]),
      [],
    );
    expect(shown(grid, "C1", "C2", "C3")).toEqual([2, 4, null]);
    expect(shown(grid, "E1", "F1", "E2", "F2", "E3", "F3")).toEqual([2, 2, 4, 4, "#N/A", "#N/A"]);
    expect(shown(grid, "I1", "K1", "K2")).toEqual([12, 1, null]);
  });

  test("old spilled values do not stand in the way of new ones", async () => {
    const grid = await calculate(
      book([
        { row: 0, column: 0, value: 1, formula: "=SEQUENCE(2)", spill: { rows: 4, columns: 1 } },
        ...cellsFrom([[99], [99], [99]], { row: 1 }),
        ...cellsFrom([["=SUM(A1:A9)"]], { column: 2 }),
      ]),
      [],
    );
    expect(shown(grid, "A1", "A2", "A3", "C1")).toEqual([1, 2, null, 3]);
  });
});
