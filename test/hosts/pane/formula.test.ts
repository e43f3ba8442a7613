import { CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { readFormula } from "../../../src/hosts/pane/explain/formula";

const only = (formula: string) => {
  const { calls } = readFormula(formula, catalogue);
  expect(calls).toHaveLength(1);
  return calls[0] as (typeof calls)[number];
};

describe("our functions in a formula", () => {
  test("a call is found with its arguments as they are written", () => {
    const { definition, isWhole, written, text } = only('=BIMETAL.TRIP.RANGE(B2:B4,20,"C",,-Log!A1)');
    expect(definition.name).toBe("TRIP.RANGE");
    expect(isWhole).toBe(true);
    expect(text).toBe('BIMETAL.TRIP.RANGE(B2:B4,20,"C",,-Log!A1)');
    expect(written).toEqual([
      { as: "reference", text: "B2:B4" },
      { as: "typed", text: "20", value: 20 },
      { as: "typed", text: '"C"', value: "C" },
      { as: "left out" },
      { as: "calculation", text: "-Log!A1" },
    ]);
  });

  test("letter case does not matter", () => {
    expect(only("=bimetal.contact.watts(1,2)").definition.name).toBe("CONTACT.WATTS");
  });

  test("calls inside others are found, the outer one first", () => {
    const { calls } = readFormula(
      "=IF(A1>0,BIMETAL.CONTACT.WATTS(BIMETAL.CONTACT.OHMS(2,0.1),1),LET(x,2,BIMETAL.CONTACT.LIMIT(x)))",
      catalogue,
    );
    expect(calls.map(({ definition }) => definition.name)).toEqual(["CONTACT.WATTS", "CONTACT.OHMS", "CONTACT.LIMIT"]);
    expect(calls.map(({ isWhole }) => isWhole)).toEqual([false, false, false]);
  });

  test("signs, per cent, array constants and errors are typed values", () => {
    const { written } = only("=BIMETAL.TRIP.RANGE({30;-36},+20%,TRUE,#N/A)");
    expect(written.map((argument) => (argument.as === "typed" ? argument.value : argument))).toEqual([
      [[30], [-36]],
      0.2,
      true,
      new CellError("#N/A"),
    ]);
  });

  test("the whole of another answer is a reference", () => {
    expect(only("=BIMETAL.CONTACT.WATTS(Log!F2#,1)").written[0]).toEqual({ as: "reference", text: "Log!F2#" });
  });

  test("names that begin like ours and are none are told", () => {
    const { calls, strangers } = readFormula("=BIMETAL.TRIP.RNAGE(1)+SUM(1)", catalogue);
    expect(calls).toHaveLength(0);
    expect(strangers).toEqual(["BIMETAL.TRIP.RNAGE"]);
  });

  test.each(["", "=SUM(A1)", "=BIMETAL.TRIP.RANGE(", "BIMETAL. as a text"])("nothing is found in %p", (formula) => {
    expect(readFormula(formula, catalogue).calls).toEqual([]);
  });
});
