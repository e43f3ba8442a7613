import { CellError } from "../../../src/definition/cells";
import type { Book } from "../../../src/hosts/engine/book";
import { type Calculated, calculate } from "../../../src/hosts/engine/calculate";
import { cellsFrom } from "./cells-from";

// What Excel answers: worked by hand from Excel's documented rules and plain arithmetic, never from this program. "LibreOffice" beside a
// case: LibreOffice Calc gives the same (tried by hand); "from memory": Excel's behaviour as it is remembered, not read.
// Column A holds 5, 20, 60, "abc", a blank, TRUE, the text "42", 100; B holds x, y, X; D holds 1, #N/A, 0, the text "".
const cases: readonly (readonly [formula: string, excel: number | string | boolean])[] = [
  // Operators: precedence and what text, blanks and truth count as.
  ['1+"2"', 3],
  ['"a"&1', "a1"],
  ["TRUE+1", 2],
  ["A5+1", 1],
  ['A5&"z"', "z"],
  ["A4+1", "#VALUE!"],
  ["A7+1", 43],
  ["2^3^2", 64],
  ["-2^2", 4],
  ["50%", 0.5],
  ["10%*200", 20],
  ["1/0", "#DIV/0!"],
  // Comparisons: text in any case, text above numbers, a blank equal to 0 and to empty text.
  ["A5=0", true],
  ['A5=""', true],
  ['"a"="A"', true],
  ['1<"a"', true],
  ['"10"=10', false],
  ["A7=42", false],
  // The same comparison again over one column: the first fills the engine's index, the second reads it.
  ['SUM(--(A1:A8=42))+SUM(--(A1:A8="42"))', 1],
  ['SUM(--(D3:D4=""))+10*SUM(--(D3:D4=0))', 11],
  ['COUNTIF(A1:A8,"42")+COUNTIF(A1:A8,42)*10+COUNTIF(A1:A8,">41")*100', 211],
  ['COUNTIF(A1:A8,"42")+SUM(--(A1:A8=42))', 1],
  ["SUM(--ISERROR(D1:D2=1))+SUM(--ISERROR(D1:D2=1))", 2],
  // Aggregates pass over text and truth in references but not in arguments.
  ["SUM(A1:A8)", 185],
  ['SUM("3",TRUE)', 4],
  ["AVERAGE(A1:A8)", 46.25],
  ["COUNT(A1:A8)", 4],
  ["COUNTA(A1:A8)", 7],
  ["COUNTBLANK(A1:A8)", 1],
  ["MAX(A1:A8)", 100],
  ["SUM(A:A)", 185],
  ["STDEV.S(A1:A3)", 28.431203515386635], // √((23.3333² + 8.3333² + 31.6667²)/2)
  ["MEDIAN(A1:A3)", 20],
  // Conditions.
  ['IF(A5,"t","f")', "f"],
  ['IF(A1<3,"hi")', false],
  ["IF(1,A5,2)", 0],
  ['IFERROR(A4*1,"e")', "e"],
  ['IFNA(NA(),"n")', "n"],
  ['SWITCH(2,1,"a",2,"b","c")', "b"],
  ["AND(TRUE,A1>3)", true],
  ["SUM(IF(ISBLANK(D3:D6),1,0))", 2], // empty text is not blank
  ['SUM(IF(A1:A3="",100,A1:A3))', 85], // a column compared with empty text: 5 + 20 + 60
  // Looking up.
  ["VLOOKUP(60,A1:B3,2,FALSE)", "X"],
  ["VLOOKUP(7,A1:B3,2,FALSE)", "#N/A"],
  ["XLOOKUP(60,A1:A3,B1:B3)", "X"],
  ['XLOOKUP(61,A1:A3,B1:B3,"none")', "none"],
  ["XLOOKUP(21,A1:A3,B1:B3,,-1)", "y"],
  ["MATCH(21,A1:A3,1)", 2],
  ["INDEX(A1:A3,9)", "#REF!"],
  ["INDEX(A1:B3,2,2)", "y"],
  ["SUM(OFFSET(A1,0,0,2,1))", 25],
  ['SUM(INDIRECT("A1:A2"))', 25],
  // Rounding is on the decimal number as shown, halves away from zero.
  ["ROUND(2.5,0)", 3],
  ["ROUND(-2.5,0)", -3],
  ["ROUND(1.005,2)", 1.01],
  ["MOD(-3,2)", 1],
  ["INT(-1.5)", -2],
  ["TRUNC(-2.7)", -2],
  // Conditional sums; criteria in any case, blanks and text apart.
  ['SUMIF(A1:A8,">10")', 180],
  ['SUMIFS(A1:A3,B1:B3,"x")', 65],
  ['COUNTIF(B1:B3,"x")', 2],
  ["SUMPRODUCT((A1:A3>10)*A1:A3)", 80],
  ['COUNTIF(D3:D6,"")', 3],
  ["COUNTIF(D3:D6,0)", 1],
  ['COUNTIF(A1:A8,"<>42")', 7],
  ['SUM(COUNTIF(B1:B3,{"x","y"}))', 3],
  ['IFERROR(FILTER(A1:A3,A1:A3>99),"none")', "none"],
  ['SUM(FILTER(A1:A3,B1:B3<>"x"))', 20],
  ["COUNTA(UNIQUE(B1:B3))", 2],
  // Text and dates: serial 45000 is 15 March 2023, a Wednesday.
  ['TEXT(1234.567,"#,##0.00")', "1,234.57"],
  ['TEXT(0.5,"0%")', "50%"],
  ['TEXT(45000,"yyyy-mm-dd")', "2023-03-15"],
  ["DATE(2023,3,15)", 45000],
  ["WEEKDAY(45000)", 4],
  ['SUBSTITUTE("aXbX","X","-")', "a-b-"],
  ['TRIM("  a  b ")', "a b"],
  ['TEXTJOIN("-",TRUE,B1:B3)', "x-y-X"],
  ['VALUE("1.5")', 1.5],
  // A number within a text has 15 digits, and is written as a number and not as it was typed.
  ['1/3&"x"', "0.333333333333333x"],
  ['1.0&""', "1"],
  ['--"5"', 5],
  ['INDEX({"a, b","c;d"},1,2)', "c;d"],
  // Arrays, and functions of one value over them.
  ["SUM({1,2;3,4})", 10],
  ["SUM(ABS(A1:A3-20))", 55],
  ["SUM(IF(A1:A3>10,A1:A3))", 80],
  ["SUM(IFERROR(A1:A8*1,0))", 228], // 5 + 20 + 60 + 0 + 0 + 1 + 42 + 100
  ["SUM(FILTER(A1:A3,A1:A3>10))", 80],
  ["SUM(SEQUENCE(3))", 6],
  ["SUM(VSTACK(A1:A3,1))", 86],
  ["LET(x,A1,y,x*2,x+y)", 15],
  ["LAMBDA(x,x*2)(4)", 8],
  ["SUM(MAP(A1:A3,LAMBDA(v,v*2)))", 170],
  ["REDUCE(0,A1:A3,LAMBDA(a,v,a+v))", 85],
  ["SUM(BYROW(A1:A3,LAMBDA(r,MAX(r)*2)))", 170],
  // SORT leaves the cells it sorts as they are for every other formula.
  ["INDEX(SORT(A1:A3,,-1),1)", 60],
  ["SUM(TAKE(A1:A3,2))", 25],
  ["INDEX(A1:A3,1)", 5],
  // Spilled answers, whole and in part; intersection with the formula's own row.
  ["SUM(J1#)", 60],
  ["ROWS(J1#)", 3],
  ["SUM(J1#*2)", 120],
  ["SUM(J2:J3)", 50],
  ["@A1", 5],
  ["@A1:B1", "#VALUE!"],
  // A text in a formula is one, however much it looks like a number (LibreOffice); arithmetic reads it.
  ['TYPE("1e3")', 2],
  ['TYPE("5%")', 2],
  ['LEN("1e3")', 3],
  ['N("1e3")', 0],
  ['UPPER("1e3")', "1E3"],
  ['CONCATENATE("1e3",3)', "1e33"],
  ['"1e3"+1', 1001],
  ['SUM("5%",1)', 1.05],
  ['SUM({"1e3",1})', 1], // texts of arrays are passed over, as those of cells
  ['XLOOKUP("1e3",{"1e3"},{7})', 7],
  ["TYPE(1E+21)", 1],
  ["2*1E+3", 2000],
  // A text in a cell that looks like a number is one in arithmetic and none in statistics (LibreOffice). A7 is "42".
  ["ABS(A7)", 42],
  ["ROUND(A7,-1)", 40],
  ["EXP(A7-42)", 1],
  ["MEDIAN(A7,7)", 7],
  ["MEDIAN(A1:A8)", 40], // of 5, 20, 60, 100
  ["AVERAGEA(A6:A8)", 101 / 3], // TRUE counts as 1, the text as 0
  ["SLOPE(A1:A7,A1:A7)", 1],
  ["DEVSQ(A7,1,3)", 2],
  ["GEOMEAN(A7,2,8)", 4],
  // The scatter of nothing is none (LibreOffice).
  ["STDEV.S(B1:B3)", "#DIV/0!"],
  ["VAR.S(A4:A5)", "#DIV/0!"],
  // The largest of nothing is 0 (Microsoft's page on MAXIFS), and a blank is no 0 among others (LibreOffice).
  ['MAXIFS(A1:A3,B1:B3,"z")', 0],
  ['MAXIFS(B1:B3,B1:B3,"x")', 0],
  ["MAXA(A5,-3)", -3],
  // Rounding is on the decimal number as shown: 7.29 has two places, 10.155 lies in the middle (LibreOffice for TRUNC, by hand for the rest).
  ["TRUNC(-7,3)", -7],
  ["TRUNC(-7.29,2)", -7.29],
  ["TRUNC(1234.5,-2)", 1200],
  ["ROUNDDOWN(2,20)", 2],
  ["ROUND(-0.5,FALSE)", -1],
  ['TEXT(10.155,"0.00")', "10.16"],
  ['TEXT(1.005,"0.00")', "1.01"],
  ["FIXED(10.155,2)", "10.16"],
  // Conditions: a text is none unless it says TRUE or FALSE (LibreOffice for letters, from memory for digits).
  ["IF(A4,1,2)", "#VALUE!"],
  ['IF("1",1,2)', "#VALUE!"],
  ['IF("TRUE",1,2)', 1],
  ['NOT("TRUE")', false],
  ['OR("1",FALSE)', "#VALUE!"],
  // IFS stops where a condition holds; SWITCH keeps "1" and 1 apart; a blank answer is 0 (LibreOffice).
  ["IFS(TRUE,1,TRUE,1/0)", 1],
  ["IFS(FALSE,1/0,TRUE,A5)", 0],
  ['SWITCH(1,"1","text",1,"number")', "number"],
  ["SWITCH(9,1,2,A5)", 0],
  // 0 is not found in a blank cell (LibreOffice).
  ["VLOOKUP(0,A5:B8,1,FALSE)", "#N/A"],
  ['XLOOKUP(0,A4:A6,A4:A6,"none")', "none"],
  ["XMATCH(FALSE,A4:A6)", "#N/A"],
  // Sorting puts numbers before texts and TRUE behind them; what looks like a number is a text (Microsoft's page on sort orders, from memory).
  ['TEXTJOIN(" ",TRUE,SORT(A1:A8))', "5 20 60 100 42 abc TRUE"],
  ['TEXTJOIN(" ",TRUE,SORTBY(A1:A3,B1:B3,-1,A1:A3,-1))', "20 60 5"],
  ['TEXTJOIN(" ",TRUE,SORT(A1:B3,{2,1},{-1,1}))', "20 y 5 x 60 X"],
  ['ROWS(UNIQUE(VSTACK(42,A7,"x","X")))', 3],
  // Dates: 30 August 2014 and 30 months is 28 February 2017; Saturday noon belongs to its week; ISO 8601 counts 6 April 1971 to week 14 (LibreOffice).
  ["EDATE(DATE(2014,8,30),30)-DATE(2017,2,28)", 0],
  ['EDATE("2023-01-31",1)-DATE(2023,2,28)', 0],
  ["EDATE(66,-25)", "#NUM!"],
  ["WEEKNUM(DATE(1926,4,17)+0.5)-WEEKNUM(DATE(1926,4,17))", 0],
  ["ISOWEEKNUM(DATE(1971,4,6))", 14],
  ["WEEKNUM(DATE(1971,1,1),21)", 53],
  // Text of truth values, from memory.
  ['TEXT(TRUE,"0")', "TRUE"],
  ["CONCAT(TRUE,1)", "TRUE1"],
  ["PROPER(12.5)", "12.5"],
  // No cell holds a number beyond all numbers, nor a function (Microsoft's page on #CALC!, from memory).
  ["SUMPRODUCT({1E+308},{10})", "#NUM!"],
  ["LAMBDA(x,x)", "#CALC!"],
  // Sheets and names.
  ["SUM(Other!A1:A2)", 3],
  ["'Other'!A2", 2],
  ["Rated*2", 40],
  ["LOG10(1000)", 3],
  ["PI()", Math.PI],
  ["NOSUCH(1)", "#NAME?"],
];

// In both orders, because what one formula leaves in the engine must not show in the next.
describe.each([
  ["first to last", cases],
  ["last to first", [...cases].reverse()],
] as const)("the engine calculates as Excel does, %s", (_, ordered) => {
  let calculated: Calculated;
  beforeAll(async () => {
    const book: Book = {
      sheets: [
        {
          name: "Sheet",
          cells: [
            ...cellsFrom([[5, "x"], [20, "y"], [60, "X"], ["abc"], [null], [true], ["42"], [100]]),
            ...cellsFrom([[1], [new CellError("#N/A")], [0], [""]], { column: 3 }),
            ...cellsFrom([["=SEQUENCE(3,1,10,10)"]], { column: 9 }),
            ...ordered.map(([formula], row) => ({ row, column: 20, value: null, formula: `=${formula}` })),
          ],
        },
        { name: "Other", cells: cellsFrom([[1], [2]]) },
      ],
      names: [{ name: "Rated", formula: "Sheet!$A$2" }],
    };
    calculated = await calculate(book, []);
  });

  test.each(ordered.map(([formula, excel], row) => ({ formula, excel, row })))(
    "$formula → $excel",
    ({ excel, row }) => {
      const value = calculated.valueAt({ sheet: "Sheet", row, column: 20 });
      const plain = value instanceof CellError ? value.code : value;
      if (typeof excel === "number") expect(plain).toBeCloseTo(excel, 12);
      else expect(plain).toBe(excel);
    },
  );
});
