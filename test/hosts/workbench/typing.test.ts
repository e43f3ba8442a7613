import { catalogue } from "../../../src/functions";
import { typingIn } from "../../../src/hosts/workbench/page/typing";

/** The caret stands at "|". */
const at = (text: string) => typingIn(text.replace("|", ""), text.indexOf("|"), catalogue);
const namesAt = (text: string) => {
  const typing = at(text);
  return typing?.typing === "name" ? typing.candidates.map(({ name }) => name) : [];
};
const argumentAt = (text: string) => {
  const typing = at(text);
  return typing?.typing === "argument" ? [typing.definition.name, typing.place] : undefined;
};

describe("a half-typed name", () => {
  test("is completed from its whole beginning, in any case", () => {
    expect(namesAt("=bimetal.contact.wa|")).toEqual(["CONTACT.WATTS"]);
  });

  test("is found without BIMETAL. as well, also by a word inside the name", () => {
    expect(namesAt("=contact.w|")).toEqual(["CONTACT.WATTS"]);
    expect(namesAt("=2*ohms|")).toContain("CONTACT.OHMS");
  });

  test("says where it starts, so that it can be replaced", () => {
    expect(at("=IF(A1>0,contact.w|")).toMatchObject({ typing: "name", from: "=IF(A1>0,".length });
  });

  test.each(["contact.w|", "=c|", '="contact.w|', "=SUM(A1|"])("%s is none of ours", (text) => {
    expect(namesAt(text)).toEqual([]);
  });
});

describe("an argument", () => {
  test("is counted from the bracket of its own function", () => {
    expect(argumentAt("=BIMETAL.TRIP.RANGE(|")).toEqual(["TRIP.RANGE", 0]);
    expect(argumentAt('=BIMETAL.TRIP.RANGE(51,20,"C"|')).toEqual(["TRIP.RANGE", 2]);
  });

  test("commas inside other functions, arrays and texts do not count", () => {
    expect(argumentAt('=BIMETAL.TRIP.RANGE(MAX(1,2),{1,2},"a,b",|')).toEqual(["TRIP.RANGE", 3]);
  });

  test("inside a function of the sheet the outer one of ours is meant", () => {
    expect(argumentAt("=BIMETAL.TRIP.RANGE(51,MAX(1,|")).toEqual(["TRIP.RANGE", 1]);
  });

  test("after the closing bracket there is none", () => {
    expect(at("=BIMETAL.TRIP.RANGE(51,20,1)|")).toBeUndefined();
  });
});
