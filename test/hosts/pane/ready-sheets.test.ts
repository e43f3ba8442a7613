import { type Cell, CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { type Calculated, calculate } from "../../../src/hosts/engine/calculate";
import { isIn, readPlace } from "../../../src/hosts/engine/place";
import { freeName } from "../../../src/hosts/pane/sheets/free-name";
import type { ReadyCell, ReadySheet } from "../../../src/hosts/pane/sheets/ready-sheet";
import { shelves } from "../../../src/hosts/pane/sheets/shelf";

// The ready sheets as data that any host can write, and what they answer once something is typed into them.

const sheets = shelves.flatMap((shelf) => shelf.sheets.map(({ sheet }) => sheet));
const called = (name: string): ReadySheet => {
  const found = sheets.find((sheet) => sheet.name === name);
  if (!found) throw new Error(`There is no ready sheet ${name}.`);
  return found;
};
const allCells = ({ cells, chart }: ReadySheet): readonly ReadyCell[] => [...cells, ...(chart?.cells ?? [])];

/** Calculates a sheet with more typed into it, by address; `read` gives what a cell answers. */
const withTyped = async (sheet: ReadySheet, typed: Readonly<Record<string, Cell>>) => {
  const more = Object.entries(typed).map(([address, value]) => ({ ...placeOf(address), value }));
  const isOver = (cell: ReadyCell) => more.some(({ row, column }) => row === cell.row && column === cell.column);
  const cells = [...allCells(sheet).filter((cell) => !isOver(cell)), ...more];
  const view = await calculate({ sheets: [{ ...sheet, cells }] }, catalogue);
  return { view, read: (address: string) => view.valueAt({ sheet: sheet.name, ...placeOf(address) }) };
};
const placeOf = (address: string): { row: number; column: number } => {
  const place = readPlace(address);
  if (!place) throw new Error(`${address} is no cell.`);
  return { row: place.row, column: place.column };
};

describe.each(sheets.map((sheet) => [sheet.name, sheet] as const))("%s", (name, sheet) => {
  let view: Calculated;
  beforeAll(async () => {
    view = await calculate({ sheets: [sheet] }, catalogue);
  });
  afterAll(() => view.close());

  test("calculates every formula, and an error in it has its sentence", () => {
    expect(view.kept).toEqual([]);
    expect(view.defects).toEqual([]);
    const silent = sheet.cells
      .map(({ row, column }) => ({ sheet: name, row, column }))
      .filter((place) => view.valueAt(place) instanceof CellError && !view.messageAt(place));
    expect(silent).toEqual([]);
  });

  test("can stand in any workbook under any name: its formulas name no sheet, its own name is one", () => {
    for (const { formula = "" } of allCells(sheet)) expect(formula).not.toContain("!");
    expect(name.length).toBeLessThanOrEqual(31);
    expect(name).not.toMatch(/[[\]:*?/\\]/);
  });

  test("says each cell once, and no typed text that a spreadsheet would take for a formula", () => {
    const places = allCells(sheet).map(({ row, column }) => `${row} ${column}`);
    expect(new Set(places).size).toBe(places.length);
    for (const { value } of allCells(sheet)) if (typeof value === "string") expect(value).not.toMatch(/^[=+\-@']/);
  });

  test("offers words that fit a spreadsheet's list", () => {
    for (const { words } of sheet.choices ?? []) {
      expect(words.length).toBeGreaterThan(1);
      expect(words.join(",").length).toBeLessThanOrEqual(255);
      for (const word of words) expect(word).not.toContain(",");
    }
  });

  test("has tables of what is typed, under their headings, with no formula inside", () => {
    for (const { block, columns } of sheet.tables ?? []) {
      const headings = columns.map((_, i) =>
        sheet.cells.find(({ row, column }) => row === block.row && column === block.column + i),
      );
      expect(headings.map((cell) => cell?.value)).toEqual(columns);
      expect(new Set(columns).size).toBe(columns.length);
      expect(sheet.cells.filter((cell) => cell.formula && isIn(block, cell))).toEqual([]);
    }
  });
});

test("no two ready sheets have the same name", () => {
  expect(new Set(sheets.map(({ name }) => name)).size).toBe(sheets.length);
});

test("a name that is taken is numbered, in whatever case, and kept within a spreadsheet's 31 characters", () => {
  expect(freeName("Test log", ["Log"])).toBe("Test log");
  expect(freeName("Test log", ["TEST LOG", "Test log 2"])).toBe("Test log 3");
  expect(freeName("Trials", ["trials"], "")).toBe("Trials2");
  const long = "A name of thirty-one characters";
  expect(freeName(long, [long])).toBe("A name of thirty-one characte 2");
});

describe("the test log", () => {
  test("asks for all without which trials cannot be compared", () => {
    const headings = called("Test log").tables?.[0]?.columns ?? [];
    for (const wanted of [
      ...["Breaker", "Rating, A", "Characteristic", "Poles", "State", "Current, A", "Drop, V", "Time, s", "Outcome"],
      ...["Carried before, A", "Rest, min", "Air, °C", "Leads", "Remarks"],
    ])
      expect(headings).toContain(wanted);
  });

  test("judges a line once it is typed, counts it for its breaker, and leaves empty lines empty", async () => {
    const line = { C2: "X-1", D2: 20, E2: "C", H2: 51, I2: 0.4, J2: 14, K2: "tripped", N2: 30 };
    const quick = { C3: "X-1", D3: 20, E3: "C", H3: 51, J3: 0.5, K3: "tripped", N3: 30 };
    const { view, read } = await withTyped(called("Test log"), { ...line, ...quick });
    // IEC 60898-1 Table 7, test c: 2.55 × from cold, not within 1 s, within 60 s up to 32 A, at 30 °C; 51 A ÷ 20 A = 2.55.
    expect([read("Q2"), read("R2"), read("S2"), read("S3")]).toEqual([1, 60, "in range", "early"]);
    expect(read("U2")).toBeCloseTo(51 * 0.4, 10);
    expect([read("Q4"), read("S4"), read("U4")]).toEqual(["", "", ""]);
    expect(["Z2", "AA2", "AB2", "AC2"].map(read)).toEqual(["X-1", 2, 1, 1]);
    view.close();
  });

  test("refuses a line in which the air was forgotten, and no other", async () => {
    const forgotten = { C2: "X-1", D2: 20, E2: "C", H2: 51, J2: 14, K2: "tripped" };
    const { view, read } = await withTyped(called("Test log"), forgotten);
    expect(read("S2")).toEqual(new CellError("#VALUE!"));
    expect(view.messageAt({ sheet: "Test log", ...placeOf("S2") })).toBe(
      "no air temperature: type it in each row, or leave the argument out for all of them.",
    );
    view.close();
  });
});

describe("the breaker study", () => {
  const study = called("Breaker study");
  /** The worked trials of THERMAL.FIT: pickup 24.982856, time constant 105.09169 by mpmath and by R's survreg. */
  const trials: readonly (readonly [number, number, string])[] = [
    ...(
      [
        [30, 125],
        [30, 118],
        [40, 49.4],
        [40, 56.4],
        [51, 28.8],
        [51, 30.6],
        [80, 10.5],
        [80, 10.6],
      ] as const
    ).map(([current, time]) => [current, time, "tripped"] as const),
    ...(
      [
        [25, 600],
        [25, 600],
        [22.6, 3600],
      ] as const
    ).map(([current, time]) => [current, time, "held"] as const),
  ];
  const typed = Object.fromEntries(
    trials.flatMap(([current, time, outcome], i) => [
      [`B${i + 7}`, current],
      [`C${i + 7}`, time],
      [`D${i + 7}`, outcome],
    ]),
  );

  test("answers nothing before the first trial, and learns the breaker from them then", async () => {
    const empty = await withTyped(study, {});
    expect(empty.read("F7")).toBe("Type or paste the trials of one breaker.");
    expect(["N7", "O14", "Q19"].map(empty.read)).toEqual(["", "", ""]);
    empty.view.close();
    const { view, read } = await withTyped(study, typed);
    expect(read("F7")).toBe("pickup");
    expect(read("G7")).toBeCloseTo(24.982856318251628, 6);
    expect(read("G8")).toBeCloseTo(105.09169000569732, 4);
    expect(read("U19")).toBe("thermal rides through, magnetic not known");
    view.close();
  });

  test("its chart draws what has a place on logarithmic axes, for ever beyond the top and nothing else wrong", async () => {
    const { view, read } = await withTyped(study, typed);
    const { chart } = study;
    const [shortest, longest, own, tripped, held] = chart?.series ?? [];
    const drawn = (series: typeof shortest) =>
      Array.from({ length: series?.y.rows ?? 0 }, (_, i) =>
        view.valueAt({ sheet: study.name, row: (series?.y.row ?? 0) + i, column: series?.y.column ?? 0 }),
      ).filter((cell) => typeof cell === "number");
    for (const series of [shortest, longest, own]) {
      expect(drawn(series).length).toBeGreaterThan(40);
      for (const value of drawn(series)) expect(value).toBeGreaterThanOrEqual(0.001);
    }
    // At the rating a sound breaker holds for ever: beyond the 10,000 s at which the axis ends. Above 5 × the magnet leaves no minimum.
    expect([drawn(shortest)[0], drawn(longest)[0]]).toEqual([1e6, 1e6]);
    expect(drawn(shortest).at(-1)).toBe(0.001);
    expect([drawn(tripped).length, drawn(held).length]).toEqual([8, 3]);
    expect(read("Z7")).toBe(20);
    view.close();
  });

  test("its chart lies over no cell that says something", () => {
    const at = study.chart?.at;
    expect(at).toBeDefined();
    expect(study.cells.filter((cell) => at && isIn(at, cell))).toEqual([]);
  });
});

test("the bench plan tells what source and leads must bear", async () => {
  const { view, read } = await withTyped(called("Bench plan"), {});
  expect(["A19", "B19", "C19", "D19"].map(read)).toEqual(["trip at 2.55 × (test c)", 51, 1, 60]);
  // By hand: 2.5 mm² at 75 °C has 7.41 Ω/km × 309.5 ÷ 254.5 = 9.0114 Ω/km; 51 A × (2 m of that + 0.2 V ÷ 20 A) = 1.4292 V.
  expect(read("B35")).toBeCloseTo(1.4292, 3);
  expect(read("C35")).toBeCloseTo(51 * 1.4292, 1);
  // 200 A for 0.1 s in 2.5 mm²: x = 200² × 0.1 ÷ (226² × 2.5²) = 0.012530; (234.5 + 30) K × (e^x − 1) = 3.335 K, by hand.
  expect(read("E37")).toBeCloseTo(3.335, 3);
  view.close();
});

test("the bench plan takes the setting that is marked on a breaker whose document prints no band", async () => {
  const { view, read } = await withTyped(called("Bench plan"), { B4: 32, B5: "IEC 60947-2", B11: 320 });
  const currents = Array.from({ length: 14 }, (_, i) => read(`B${i + 14}`)).filter(
    (value) => typeof value === "number",
  );
  // IEC 60947-2: the magnetic release is tried at 80 % and 120 % of its setting: 0.8 × 320 A and 1.2 × 320 A.
  expect(currents).toEqual(expect.arrayContaining([256, 384]));
  view.close();
});

test("the motor sheet holds each start against its breaker", async () => {
  const { view, read } = await withTyped(called("Motor starts"), {});
  // NEC 430.248: 2 hp at 230 V, 12 A. 430.7(B), letter J: up to 7.99 kVA a hp; 7990 × 2 ÷ 230 = 69.48 A. IEC 60898-1: 5 × 32 A ÷ 69.48 A.
  expect(read("H4")).toBe(12);
  expect(read("J4")).toBeCloseTo(69.478, 3);
  expect(read("V4")).toBeCloseTo(160 / 69.478, 4);
  expect(read("X4")).toBe("may trip");
  view.close();
});

test("the panel sheet answers for its ways and leaves empty ones empty", async () => {
  const { view, read } = await withTyped(called("Panel estimate"), {});
  // Joule, by hand: 3.1 × 0.7² + 1.9 × 0.4² + 2.5 × (13 ÷ 16)² + 5 W = 8.4734 W.
  expect(read("L10")).toBeCloseTo(8.4734, 4);
  expect(read("N12")).toMatch(/^first below margin 1/);
  expect(read("H13")).toBe("");
  view.close();
});
