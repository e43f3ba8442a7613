import { readReference } from "../../../src/hosts/excel/reference";
import { partsOf, wholeAddress } from "../../../src/hosts/excel/whole-address";

test.each([
  ["B2:B20", { kind: "cells", sheet: "Log", cells: "B2:B20", isSpill: false }],
  ["$B$2", { kind: "cells", sheet: "Log", cells: "$B$2", isSpill: false }],
  ["'Bench log'!F2", { kind: "cells", sheet: "Bench log", cells: "F2", isSpill: false }],
  ["'O''Malley'!A1:B2", { kind: "cells", sheet: "O'Malley", cells: "A1:B2", isSpill: false }],
  ["A2#", { kind: "cells", sheet: "Log", cells: "A2", isSpill: true }],
  ["Rating", { kind: "name", sheet: "Log", name: "Rating" }],
  ["Bench!Rating", { kind: "name", sheet: "Bench", name: "Rating" }],
  ["Trials[current]", { kind: "columns", table: "Trials", from: "current", to: undefined, isThisRow: false }],
  ["Trials[[current]:[time]]", { kind: "columns", table: "Trials", from: "current", to: "time", isThisRow: false }],
  ["Trials[@current]", { kind: "columns", table: "Trials", from: "current", to: undefined, isThisRow: true }],
  ["[@[start state]]", { kind: "columns", table: "", from: "start state", to: undefined, isThisRow: true }],
])("%s is read as it stands in a formula of the sheet Log", (reference, place) => {
  expect(readReference(reference, "Log")).toEqual(place);
});

test.each([
  ["A:A", "A:A takes in whole rows or columns, so its values are not looked up."],
  ["2:3", "2:3 takes in whole rows or columns, so its values are not looked up."],
  ["[Old.xlsx]Log!B2", "[Old.xlsx]Log!B2 lies in another workbook, so its values are not looked up."],
  ["Jan:Dec!B2", "Jan:Dec!B2 spans several sheets, so its values are not looked up."],
  ["Trials[#All]", "Trials[#All] takes in the headings or totals of a table, so its values are not looked up."],
  ["B2+1", "B2+1 is not a plain reference, so its values are not looked up."],
])("%s is refused with a sentence", (reference, sentence) => {
  expect(() => readReference(reference, "Log")).toThrow(sentence);
});

test("the sheet is taken as the pane writes it, with quotes where the name needs them", () => {
  expect(readReference("B2", "'Bench log'")).toMatchObject({ sheet: "Bench log" });
});

test("one cell has one whole address, however Excel writes it", () => {
  const ways = ["Bench log!F2", "'Bench log'!F2", "'Bench log'!$F$2", "'[Trials.xlsx]Bench log'!F2"];
  expect(new Set(ways.map(wholeAddress))).toEqual(new Set(["Bench log!F2"]));
});

test("an exclamation mark in a sheet's name is part of the name", () => {
  expect(partsOf("'Done!'!A1")).toEqual({ sheet: "Done!", cell: "A1" });
});
