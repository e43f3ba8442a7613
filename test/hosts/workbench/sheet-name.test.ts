import { faultOfName } from "../../../src/hosts/workbench/page/sheet-name";

// The rules are those of the spreadsheets that have to open the file: Microsoft, "Rename a worksheet" (support pages, from memory).

describe("a sheet's name", () => {
  test.each(["Log", "Bench log", "O'Brien", "Übung 2", "a".repeat(31), "2026-06-09"])("%p will do", (name) => {
    expect(faultOfName(name, ["Breakers"])).toBeUndefined();
  });

  test.each([
    ["", /needs a name/],
    ["a".repeat(32), /at most 31 characters; this has 32/],
    ["Log: evening", /cannot hold :/],
    ["a/b", /cannot hold \//],
    ["[1]", /cannot hold \[/],
    ["'Log", /apostrophe/],
    ["History", /for themselves/],
    ["BREAKERS", /There is a sheet Breakers already/],
  ])("%p will not: %p", (name, why) => {
    expect(faultOfName(name, ["Breakers"])).toMatch(why);
  });
});
