import { catalogue } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine/calculate";
import { formulasOfOurs } from "../../../src/hosts/engine/formulas-of-ours";
import { Spelling } from "../../../src/hosts/engine/spelling";
import { openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { valuesCopy } from "../../../src/hosts/engine/xlsx/values-copy";
import { main, office, partsOf, partsThatDiffer, sheetAround, workbookAround } from "./packages";

const sheet1 = "xl/worksheets/sheet1.xml";

const copied = async (bytes: Uint8Array) => {
  const opened = openWorkbook(bytes, catalogue);
  const grid = await calculate(opened.book, catalogue);
  const copy = valuesCopy(opened, grid, new Spelling(catalogue));
  grid.close();
  const [before, after] = [partsOf(bytes), partsOf(copy.bytes)];
  return { shown: copy.shown, differing: partsThatDiffer(before, after), sheet: after.get(sheet1) };
};

/** The rows of one sheet before and after; 20 A × 0.16 V = 3.2 W, 10 A × 0.5 V = 5 W, 20 A × 0.5 V = 10 W. */
const expectRows = async (before: string, after: string, shown: number, parts: Record<string, string> = {}) =>
  expect(await copied(workbookAround(sheetAround(before), parts))).toMatchObject({
    shown,
    differing: [sheet1],
    sheet: sheetAround(after),
  });

const withNames = (...names: string[]) => ({
  "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Log" sheetId="1" r:id="rId1"/></sheets><definedNames>${names.join("")}</definedNames></workbook>`,
});

describe("in a copy of values", () => {
  test("an array formula of ours goes with its mark, every cell that it fills holds its value, and other formulas stay", () =>
    expectRows(
      '<row r="1"><c r="A1" s="0" cm="1"><f t="array" ref="A1:A2">_xldudf_BIMETAL_CONTACT_WATTS({10;20},0.5)</f><v>5</v></c><c r="B1"><f>A1+A2</f><v>0</v></c></row>' +
        '<row r="2"><c r="A2" s="0"><v>9</v></c><c r="B2"><f>1+1</f><v>2</v></c></row>',
      '<row r="1"><c r="A1" s="0"><v>5</v></c><c r="B1"><f>A1+A2</f><v>15</v></c></row>' +
        '<row r="2"><c r="A2" s="0"><v>10</v></c><c r="B2"><f>1+1</f><v>2</v></c></row>',
      1,
    ));

  test("a bare formula of ours goes too, and asks for no mark; what else stands in its cell stays", () =>
    expectRows(
      '<row r="1"><c r="A1" t="e"><f>BIMETAL.CONTACT.WATTS({10;20},0.5)</f><v>#NAME?</v><extLst><ext uri="u"/></extLst></c></row>',
      '<row r="1"><c r="A1"><v>5</v><extLst><ext uri="u"/></extLst></c></row><row r="2"><c r="A2"><v>10</v></c></row>',
      1,
    ));

  test("a refusal is an error, and an answer in words a text", () =>
    expectRows(
      '<row r="1"><c r="A1" vm="1" cm="1" t="e"><f t="array" ref="A1">_xldudf_BIMETAL_CONTACT_WATTS(-1,2)</f><v>#VALUE!</v></c><c r="B1"><f>IF(_xldudf_BIMETAL_CONTACT_WATTS(20,0.16)&gt;3,"hot &amp; ","")</f></c></row>',
      '<row r="1"><c r="A1" t="e"><v>#VALUE!</v></c><c r="B1" t="str"><v xml:space="preserve">hot &amp; </v></c></row>',
      2,
    ));

  test("a formula of ours that cannot be calculated stays as it is, also where it was written out in another cell", () =>
    expectRows(
      '<row r="1"><c r="A1"><v>10</v></c><c r="B1"><f t="shared" ref="B1:B3" si="0">_xldudf_BIMETAL_CONTACT_WATTS(A1,0.5)</f><v>1</v></c></row>' +
        '<row r="2"><c r="A2"><f>B2</f><v>7</v></c><c r="B2" s="0" t="str"><f t="shared" si="0" ca="1"/><v>8</v></c></row>' +
        '<row r="3"><c r="A3"><v>20</v></c><c r="B3"><f t="shared" si="0"/><v>1</v></c></row>',
      '<row r="1"><c r="A1"><v>10</v></c><c r="B1"><v>5</v></c></row>' +
        '<row r="2"><c r="A2"><f>B2</f><v>7</v></c><c r="B2" s="0" t="str"><f ca="1">_xldudf_BIMETAL_CONTACT_WATTS(A2,0.5)</f><v>8</v></c></row>' +
        '<row r="3"><c r="A3"><v>20</v></c><c r="B3"><v>10</v></c></row>',
      2,
    ));

  test("a formula that calls ours by a name goes, one of a name that hides it on its sheet stays", () =>
    expectRows(
      '<row r="1"><c r="A1"><f>Twice+1</f><v>0</v></c><c r="B1"><f>Other+1</f><v>0</v></c><c r="C1"><f>Plain+1</f><v>0</v></c></row>',
      '<row r="1"><c r="A1"><v>7.4</v></c><c r="B1"><f>Other+1</f><v>3</v></c><c r="C1"><f>Plain+1</f><v>5</v></c></row>',
      1,
      withNames(
        '<definedName name="Twice">Heat*2</definedName>',
        '<definedName name="Heat">_xldudf_BIMETAL_CONTACT_WATTS(20,0.16)</definedName>',
        '<definedName name="Other">_xldudf_BIMETAL_CONTACT_WATTS(20,0.16)</definedName>',
        '<definedName name="Other" localSheetId="0">2</definedName>',
        '<definedName name="Plain">4</definedName>',
      ),
    ));

  test("what reads a whole answer of ours by its first cell goes with it, what reads another's stays", () =>
    expectRows(
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">_xldudf_BIMETAL_CONTACT_WATTS({10;20},0.5)</f><v>5</v></c>' +
        '<c r="B1" cm="1"><f t="array" ref="B1:B2">_xlfn.ANCHORARRAY(A1)*2</f><v>0</v></c><c r="C1"><f>SUM(_xlfn.ANCHORARRAY($B$1))</f><v>0</v></c>' +
        '<c r="D1"><f t="array" ref="D1:D2">_xlfn.SEQUENCE(2)</f><v>1</v></c><c r="E1"><f>SUM(_xlfn.ANCHORARRAY(D1))</f><v>0</v></c></row>' +
        '<row r="2"><c r="A2"><v>10</v></c><c r="B2"><v>0</v></c><c r="D2"><v>2</v></c></row>',
      '<row r="1"><c r="A1"><v>5</v></c><c r="B1"><v>10</v></c><c r="C1"><v>30</v></c>' +
        '<c r="D1"><f t="array" ref="D1:D2">_xlfn.SEQUENCE(2)</f><v>1</v></c><c r="E1"><f>SUM(_xlfn.ANCHORARRAY(D1))</f><v>3</v></c></row>' +
        '<row r="2"><c r="A2"><v>10</v></c><c r="B2"><v>20</v></c><c r="D2"><v>2</v></c></row>',
      3,
    ));

  test("the list of the order of calculation goes, for it may name no cell without a formula", async () => {
    const relations = (...more: string[]) =>
      `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/>${more.join("")}</Relationships>`;
    const bytes = workbookAround(
      sheetAround('<row r="1"><c r="A1"><f>_xldudf_BIMETAL_CONTACT_WATTS(20,0.16)</f><v>3.2</v></c></row>'),
      {
        "xl/_rels/workbook.xml.rels": relations(
          `<Relationship Id="rId2" Type="${office}/calcChain" Target="calcChain.xml"/>`,
        ),
        "xl/calcChain.xml": `<calcChain xmlns="${main}"><c r="A1" i="1"/></calcChain>`,
      },
    );
    const { differing, sheet } = await copied(bytes);
    expect(differing.sort()).toEqual(["xl/_rels/workbook.xml.rels", "xl/calcChain.xml", sheet1]);
    expect(sheet).toContain('<c r="A1"><v>3.2</v></c>');
  });

  test("a workbook without functions of ours is what a recalculation makes of it, to the byte", async () => {
    const bytes = workbookAround(sheetAround('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>'));
    expect(await copied(bytes)).toMatchObject({ shown: 0, differing: [] });
  });
});

test("a formula nested without end is looked at without harm", () => {
  const formula = `=${"-".repeat(9000)}A1#`;
  const book = { sheets: [{ name: "Log", cells: [{ row: 0, column: 0, value: null, formula }] }] };
  expect(formulasOfOurs(book, new Spelling(catalogue)).size).toBe(0);
});

test("long chains of names, and of answers that are read whole, are followed in good time, whichever way they run", () => {
  const long = 20_000;
  const chain = (row: number) => (row === long - 1 ? "=BIMETAL.CONTACT.WATTS(1,2)" : `=A${row + 2}#`);
  const cells = Array.from({ length: long }, (_, row) => ({ row, column: 0, value: null, formula: chain(row) }));
  const names = Array.from({ length: long }, (_, place) => ({
    name: `N${place}x`,
    formula: place === long - 1 ? "Log!$A$1#" : `N${place + 1}x`,
  }));
  const readers = Array.from({ length: long }, (_, row) => ({ row, column: 1, value: null, formula: "=N0x+A$1#" }));
  const book = { sheets: [{ name: "Log", cells: [...cells, ...readers] }], names };
  const spelling = new Spelling(catalogue);
  const since = performance.now();
  expect(formulasOfOurs(book, spelling).size).toBe(2 * long);
  // The last but one is broken, so what comes before it has nothing to do with ours; N0x stands for the first.
  expect(formulasOfOurs(book, spelling, new Set([`Log!A${long - 1}`]))).toEqual(new Set([`Log!A${long}`]));
  expect(performance.now() - since).toBeLessThan(20_000);
});
