import type { Book } from "../../../src/hosts/engine/book";
import { renamed, renamedInFormula } from "../../../src/hosts/workbench/page/renamed";
import { cellsFrom } from "../engine/cells-from";

describe("a renamed sheet in a formula", () => {
  test.each([
    ["=SUM(Log!B2:B5)", "=SUM('Bench log'!B2:B5)"],
    ["=log!B:B+Log!$C$3", "='Bench log'!B:B+'Bench log'!$C$3"],
    ["=BIMETAL.TRIP.RANGE(Log!F2#,20)", "=BIMETAL.TRIP.RANGE('Bench log'!F2#,20)"],
    ["=Log!Load*2", "='Bench log'!Load*2"],
  ])("%s becomes %s", (before, after) => {
    expect(renamedInFormula(before, "Log", "Bench log")).toBe(after);
  });

  test.each(['=INDIRECT("Log!A1")', "=Logbook!A1", "=[Other.xlsx]Log!A1", "=A1+Log", "=Breakers!A1"])(
    "%s stays: it does not refer to the sheet",
    (formula) => {
      expect(renamedInFormula(formula, "Log", "Bench log")).toBe(formula);
    },
  );
});

test("in a workbook its cells, names and names of its own follow", () => {
  const book: Book = {
    sheets: [
      { name: "Log", cells: cellsFrom([[1]]), tables: [] },
      { name: "Sum", cells: cellsFrom([["=Log!A1", 2]]) },
    ],
    names: [{ name: "First", formula: "Log!$A$1", sheet: "Log" }],
  };
  const { sheets, names } = renamed(book, "Log", "Trials");
  expect(sheets.map(({ name }) => name)).toEqual(["Trials", "Sum"]);
  expect(sheets[1]?.cells.map(({ formula, value }) => formula ?? value)).toEqual(["=Trials!A1", 2]);
  expect(names).toEqual([{ name: "First", formula: "Trials!$A$1", sheet: "Trials" }]);
});
