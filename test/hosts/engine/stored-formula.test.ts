import { catalogue } from "../../../src/functions";
import { Spelling } from "../../../src/hosts/engine/spelling";
import { storedFormula, typedFormula } from "../../../src/hosts/engine/stored-formula";

const spelling = new Spelling(catalogue);

// The stored forms are Excel's, as [MS-XLSX] 2.2.2 lists prefixes and as public reports of saved files show add-in functions.
test.each([
  ["=BIMETAL.CONTACT.WATTS(A2,0.16)", "_xldudf_BIMETAL_CONTACT_WATTS(A2,0.16)"],
  ["=SUM(F2#)*2", "SUM(_xlfn.ANCHORARRAY(F2))*2"],
  ["=@F2:F9+1", "_xlfn.SINGLE(F2:F9)+1"],
  ["=FILTER(A1:A3,A1:A3>1)", "_xlfn._xlws.FILTER(A1:A3,A1:A3>1)"],
  ["=XLOOKUP(1,A:A,B:B)", "_xlfn.XLOOKUP(1,A:A,B:B)"],
  ["=LET(x,A1,y,x*2,x+y)", "_xlfn.LET(_xlpm.x,A1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)"],
  ["=MAP(A1:A3,LAMBDA(v,v*2))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v*2))"],
  ['=IF(A1>0,"_xlfn.x",SUM(A1:A2))', 'IF(A1>0,"_xlfn.x",SUM(A1:A2))'],
])("%s is stored as %s, and read back", (typed, stored) => {
  expect(storedFormula(typed, spelling)).toBe(stored);
  expect(typedFormula(stored, spelling)).toBe(typed);
});

test.each([
  ["=@(F2:F9)+1", "_xlfn.SINGLE((F2:F9))+1"],
  ["=(@((F2:F9)*2)+1)*3", "(_xlfn.SINGLE(((F2:F9)*2))+1)*3"],
  ["=(F2)#*2", "(_xlfn.ANCHORARRAY(F2))*2"],
  ["=SUM((F2#))", "SUM((_xlfn.ANCHORARRAY(F2)))"],
  [
    "=@BIMETAL.CONTACT.WATTS(@A2:A3,B2#)",
    "_xlfn.SINGLE(_xldudf_BIMETAL_CONTACT_WATTS(_xlfn.SINGLE(A2:A3),_xlfn.ANCHORARRAY(B2)))",
  ],
])("%s keeps its parentheses: %s", (typed, stored) => expect(storedFormula(typed, spelling)).toBe(stored));

test.each([
  ["_xldudf_bimetal_contact_watts(1,2)"],
  ["[2]!_xldudf_BIMETAL_CONTACT_WATTS(1,2)"],
  ["Other.xla!_xldudf_BIMETAL_CONTACT_WATTS(1,2)"],
  ["'C:\\x\\Other.xla'!_xldudf_BIMETAL_CONTACT_WATTS(1,2)"],
  ["_xlfn._xldudf_BIMETAL_CONTACT_WATTS(1,2)"],
  ["bimetal.contact.watts(1,2)"],
])("%s is our function however a file spells it", (stored) => {
  expect(typedFormula(stored, spelling)).toBe("=BIMETAL.CONTACT.WATTS(1,2)");
});

test("a function of our namespace that is not in the catalogue keeps its spelling and still counts as ours", () => {
  expect(typedFormula("_xldudf_BIMETAL_NO_SUCH(1)", spelling)).toBe("=_xldudf_BIMETAL_NO_SUCH(1)");
  expect(spelling.calls("=_xldudf_BIMETAL_NO_SUCH(1)+BIMETAL.CONTACT.WATTS(1,1)")).toEqual([
    "_xldudf_BIMETAL_NO_SUCH",
    "BIMETAL.CONTACT.WATTS",
  ]);
  expect(spelling.isOurs('="bimetal.x"&A1')).toBe(false);
});
