import { catalogue } from "../../../src/functions";
import { answerFormula } from "../../../src/hosts/workbook/answer-formula";

const cell = (...words: string[]) => answerFormula(words, catalogue);

describe("the command cell", () => {
  test("answers a formula of ours: 20 A × 0.16 V = 3.2 W", async () => {
    expect(await cell("=BIMETAL.CONTACT.WATTS(20,0.16)")).toEqual({ out: "3.2\n", err: [], code: 0 });
  });

  test("spills array constants, one line per row, and names the row that is refused", async () => {
    expect(await cell('=BIMETAL.CONTACT.WATTS({20;"x";40},0.16)')).toEqual({
      out: "3.2\n#VALUE!\n6.4\n",
      err: ['row 2: current: a number in A is wanted, not the text "x".'],
      code: 1,
    });
  });

  test("does the spreadsheet's own functions, and prints numbers whole", async () => {
    expect((await cell("=1/3")).out).toBe(`${1 / 3}\n`);
    expect((await cell('={1,"a, b";TRUE,"say ""so"""}')).out).toBe('1,"a, b"\nTRUE,"say ""so"""\n');
    expect((await cell("=SUM(BIMETAL.CONTACT.WATTS({10;20},0.5))*2")).out).toBe("30\n");
    expect((await cell("=SEQUENCE(3000)")).out.split("\n")).toHaveLength(3001);
  });

  test("takes a formula with or without its equals sign and in any case", async () => {
    expect((await cell(" bimetal.contact.watts(20,0.16)")).out).toBe("3.2\n");
  });

  test("never prints a text that a spreadsheet would run", async () => {
    expect((await cell('={"=1+1","+1","-1","@x"}')).out).toBe("'=1+1,'+1,'-1,'@x\n");
    expect((await cell("={-1,2}")).out).toBe("-1,2\n");
  });

  test.each([
    ["=1/0", "#DIV/0!\n", 1, "The answer is #DIV/0!."],
    ["=NOSUCH(1)", "", 2, "The formula cannot be answered. The function NOSUCH is not known here."],
    ["=BIMETAL.NO.SUCH(1)", "", 2, "The formula cannot be answered. The function BIMETAL.NO.SUCH is not known here."],
    [
      '=TRIP.RANGE(51,20,"C")',
      "",
      2,
      "The formula cannot be answered. The function TRIP.RANGE is not known here; write BIMETAL.TRIP.RANGE.",
    ],
    [
      '=BIMETAL.TRIP.RANGE(51;20;"C")',
      "",
      2,
      "The formula cannot be answered. It cannot be read as a formula. Arguments are parted by commas.",
    ],
    ["=A1+1", "", 2, "The formula cannot be answered. It leads back to itself."],
    ["=1+", "", 2, "The formula cannot be answered. It cannot be read as a formula."],
    ["=[1]Log!A1", "", 2, "The formula cannot be answered. It refers to another workbook ([1]Log!A1)."],
  ])("%s: %s", async (formula, out, code, sentence) => {
    expect(await cell(formula)).toEqual({ out, err: [sentence], code });
  });

  test.each([[[]], [[""]], [["=1", "=2"]]])("%j is no formula: one sentence and 2", async (words) => {
    const { out, err, code } = await cell(...words);
    expect({ out, code, sentences: err.length }).toEqual({ out: "", code: 2, sentences: 1 });
  });

  test("--help says what it does", async () => {
    expect(await cell("--help")).toMatchObject({ out: expect.stringContaining("Exit code"), code: 0 });
  });
});
