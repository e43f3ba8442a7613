import { gridFormula } from "../../../src/hosts/engine/grid-formula";

test.each([
  ['=if(a1<3.20,"yes","no")', '=IF(A1<3.2,"yes","no")'],
  ["=SUM({2.3;3.0},.5,1E3)", "=SUM({2.3;3},0.5,1000)"],
  ["='my sheet'!a1:b2+log!c3", "='my sheet'!A1:B2+log!C3"],
  ["=LET(x,1.50,x*2)", "=LET(x,1.5,x*2)"],
  ["=bimetal.contact.watts(20,max(a1,b1", "=BIMETAL.CONTACT.WATTS(20,MAX(A1,B1))"],
  ['="a (b"', '="a (b"'],
])("%s goes into the grid as %s", (typed, put) => {
  expect(gridFormula(typed)).toBe(put);
});

test.each(['=BIMETAL.TRIP.RANGE(51;20;"C")', "=BIMETAL.TRIP.RANGE(51,20,c)", "=1+", "=", "=SUM(1))"])(
  "%s is none",
  (typed) => {
    expect(gridFormula(typed)).toBeUndefined();
  },
);
