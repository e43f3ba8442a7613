import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook } from "exceljs";
import { CellError } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine/calculate";
import { Spelling } from "../../../src/hosts/engine/spelling";
import { metadataPart } from "../../../src/hosts/engine/xlsx/metadata";
import { openWorkbook, readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { leftFormulas, patchWorkbook } from "../../../src/hosts/engine/xlsx/patch-workbook";
import { readEntries } from "../../../src/hosts/engine/xlsx/zip";
import { readByExceljs } from "../../support/read-by-exceljs";
import { partsOf, partsThatDiffer, sheetAround, workbookAround } from "./packages";

const recalculated = async (bytes: Uint8Array) => {
  const opened = openWorkbook(bytes, catalogue);
  const grid = await calculate(opened.book, catalogue);
  const patched = patchWorkbook(opened, grid, { left: leftFormulas(grid) }, new Spelling(catalogue));
  grid.close();
  return { ...patched, before: partsOf(bytes), after: partsOf(patched.bytes) };
};

const sheet1 = "xl/worksheets/sheet1.xml";
const metadata = { "xl/metadata.xml": metadataPart };
const withMetadata = (rows: string) =>
  workbookAround(sheetAround(rows), {
    ...metadata,
    "xl/_rels/workbook.xml.rels":
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/></Relationships>',
  });

describe("a patched workbook", () => {
  test("differs in the values of recalculated cells only, to the letter", async () => {
    const rows = `<row r="1" spans="1:3" ht="20" x14ac:dyDescent="0.25"  xmlns:x14ac="urn:x"><c r="A1" s="0"><v>20</v></c><c r="B1"><v>0.16</v></c><c r="C1" t='str' s="0"><f>A1*B1</f><v>old</v></c></row>
  <!-- a remark --><row r="2"><c r="A2"><f>1+1</f><v>2</v></c><c r="B2"><f>A1&amp;"x"</f><v>9</v><extLst><ext uri="u"/></extLst></c></row>`;
    const { after, before, changed } = await recalculated(workbookAround(sheetAround(rows)));
    expect(partsThatDiffer(before, after)).toEqual([sheet1]);
    expect(changed).toBe(2);
    expect(after.get(sheet1)).toBe(
      sheetAround(
        rows
          .replace(`<c r="C1" t='str' s="0"><f>A1*B1</f><v>old</v></c>`, '<c r="C1" s="0"><f>A1*B1</f><v>3.2</v></c>')
          .replace(
            '<c r="B2"><f>A1&amp;"x"</f><v>9</v><extLst><ext uri="u"/></extLst></c>',
            '<c r="B2" t="str"><f>A1&amp;"x"</f><v>20x</v><extLst><ext uri="u"/></extLst></c>',
          ),
      ),
    );
  });

  test("is the same workbook, packed bytes and all, when nothing changed", async () => {
    const bytes = workbookAround(sheetAround('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>'));
    const { after, before, changed } = await recalculated(bytes);
    expect(changed).toBe(0);
    expect(partsThatDiffer(before, after)).toEqual([]);
  });

  test("carries the packed bytes of untouched parts over as they are", async () => {
    const bytes = workbookAround(sheetAround('<row r="1"><c r="A1"><f>1+1</f><v>9</v></c></row>'), {
      "xl/media/picture.bin": "not touched ".repeat(500),
    });
    const packed = (of: Uint8Array) =>
      new Map(readEntries(of).map((entry) => [entry.name, Buffer.from(entry.packed).toString("base64")]));
    const [before, after] = [packed(bytes), packed((await recalculated(bytes)).bytes)];
    expect(partsThatDiffer(before, after)).toEqual([sheet1]);
    expect([...after.keys()]).toEqual([...before.keys()]);
  });

  test("keeps the names of parts to the byte, also those that are no UTF-8", async () => {
    const plain = workbookAround(sheetAround('<row r="1"><c r="A1"><f>1+1</f><v>9</v></c></row>'), {
      "xl/Bxild.bin": "x",
    });
    // As an old program writes "xl/Büild.bin": one byte for its second letter.
    const bytes = Uint8Array.from(
      Buffer.from(Buffer.from(plain).toString("latin1").replaceAll("Bxild", "B\u0081ild"), "latin1"),
    );
    const { before, after } = await recalculated(bytes);
    expect(partsThatDiffer(before, after)).toEqual([sheet1]);
    expect([...after.keys()].filter((name) => name.endsWith(".bin"))).toEqual(["xl/B\u0081ild.bin"]);
  });

  test("lets a dynamic array grow into new cells and rows, and shrink out of old ones", async () => {
    const rows =
      '<row r="1"><c r="A1" s="0"><v>4</v></c><c r="C1" cm="1"><f t="array" ref="C1:C2">_xlfn.SEQUENCE(A1)</f><v>1</v></c></row>' +
      '<row r="2" spans="3:3"><c r="C2"><v>2</v></c><c r="E2" cm="1"><f t="array" ref="E2:F3">_xlfn.SEQUENCE(1,1)</f><v>1</v></c><c r="F2" s="0"><v>7</v></c></row>' +
      '<row r="3"><c r="E3"><v>7</v></c><c r="F3"><v>7</v></c></row><row r="5"/>';
    const { after } = await recalculated(withMetadata(rows));
    expect(after.get(sheet1)).toBe(
      sheetAround(
        '<row r="1"><c r="A1" s="0"><v>4</v></c><c r="C1" cm="1"><f t="array" ref="C1:C4">_xlfn.SEQUENCE(A1)</f><v>1</v></c></row>' +
          '<row r="2" spans="3:3"><c r="C2"><v>2</v></c><c r="E2" cm="1"><f t="array" ref="E2">_xlfn.SEQUENCE(1,1)</f><v>1</v></c><c r="F2" s="0"/></row>' +
          '<row r="3"><c r="C3"><v>3</v></c><c r="E3"/><c r="F3"/></row><row r="4"><c r="C4"><v>4</v></c></row><row r="5"/>',
      ),
    );
  });

  test("holds refusals as errors, and what a file cannot hold as #VALUE!", async () => {
    const rows =
      '<row r="1"><c r="A1" cm="1" vm="3"><f t="array" ref="A1">_xldudf_BIMETAL_CONTACT_WATTS(-1,2)</f><v>5</v></c></row>' +
      '<row r="2"><c r="A2" cm="1"><f t="array" ref="A2">_xlfn.SEQUENCE(2)</f><v>5</v></c></row><row r="3"><c r="A3"><v>1</v></c></row>';
    const { after } = await recalculated(withMetadata(rows));
    expect(after.get(sheet1)).toContain(
      '<c r="A1" cm="1" t="e"><f t="array" ref="A1">_xldudf_BIMETAL_CONTACT_WATTS(-1,2)</f><v>#VALUE!</v></c>',
    );
    expect(after.get(sheet1)).toContain(
      '<c r="A2" cm="1" t="e"><f t="array" ref="A2">_xlfn.SEQUENCE(2)</f><v>#VALUE!</v></c>',
    );
  });

  test("keeps the values of formulas that could not be calculated", async () => {
    const rows = '<row r="1"><c r="A1"><f>[1]Log!B2</f><v>17</v></c><c r="B1"><f>A1*2</f><v>0</v></c></row>';
    const { after } = await recalculated(workbookAround(sheetAround(rows)));
    expect(after.get(sheet1)).toBe(sheetAround(rows.replace("<v>0</v>", "<v>34</v>")));
  });

  test("writes a bare formula of ours anew as a spreadsheet binds it, with the part that marks it", async () => {
    const rows = '<row r="1"><c r="A1"><f>BIMETAL.CONTACT.WATTS({10;20},0.5)</f></c></row>';
    const { after, before } = await recalculated(workbookAround(sheetAround(rows)));
    expect(partsThatDiffer(before, after).sort()).toEqual(
      ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/metadata.xml", sheet1].sort(),
    );
    expect(after.get(sheet1)).toBe(
      sheetAround(
        '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">_xldudf_BIMETAL_CONTACT_WATTS({10;20},0.5)</f><v>5</v></c></row><row r="2"><c r="A2"><v>10</v></c></row>',
      ),
    );
    const again = readWorkbook((await recalculated(workbookAround(sheetAround(rows)))).bytes, catalogue);
    expect(again.sheets[0]?.cells[0]).toMatchObject({ value: 5, spill: { rows: 2, columns: 1 } });
    expect(again.sheets[0]?.cells[0]?.stored).toBeUndefined();
  });
});

test("a workbook of another writer keeps its picture, remarks, table, lists and looks", async () => {
  const workbook = new Workbook();
  const log = workbook.addWorksheet("Bench log");
  log.addTable({
    name: "Trials",
    ref: "A1",
    headerRow: true,
    columns: [{ name: "current" }, { name: "drop" }],
    rows: [
      [20, 0.16],
      [10, 0.2],
    ],
  });
  log.getCell("A2").note = "measured twice";
  log.getCell("C2").value = { formula: "SUM(Trials[current])", result: 1 };
  log.getCell("C3").value = { formula: "BIMETAL.CONTACT.WATTS(A2,B2)", result: 1 };
  log.getCell("E2").dataValidation = { type: "list", formulae: ['"held,tripped"'] };
  log.getColumn(1).width = 22;
  log.addConditionalFormatting({
    ref: "A2:A3",
    rules: [
      { type: "cellIs", operator: "greaterThan", formulae: ["15"], style: { font: { bold: true } }, priority: 1 },
    ],
  });
  const png = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
  log.addImage(workbook.addImage({ base64: png, extension: "png" }), "G1:H3");
  workbook.addWorksheet("Plain").getCell("A1").value = "text";
  const bytes = new Uint8Array(await workbook.xlsx.writeBuffer());

  const { after, before, bytes: patched } = await recalculated(bytes);
  // Its formula of ours is bare, so it is written anew, which needs three parts more; all else stays.
  expect(partsThatDiffer(before, after).sort()).toEqual(
    ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/metadata.xml", sheet1].sort(),
  );
  expect(before.size).toBeGreaterThan(12);
  expect(after.size).toBe(before.size + 1);

  const reread = await readByExceljs(patched);
  const sheet = reread.getWorksheet("Bench log");
  expect(sheet?.getCell("C2").result).toBe(30);
  expect(sheet?.getCell("C3").result).toBe(3.2);
  expect(sheet?.getCell("A2").note).toBeDefined();
  expect(sheet?.getImages()).toHaveLength(1);
  expect(sheet?.getColumn(1).width).toBe(22);
});

// fixtures/by-libreoffice.xlsx was written by LibreOffice 7.4 from the .fods beside it.
test("a workbook of LibreOffice keeps its remark, its style part and its name; our bare formula comes to life", async () => {
  const bytes = new Uint8Array(readFileSync(join(__dirname, "fixtures/by-libreoffice.xlsx")));
  const { after, before, bytes: patched } = await recalculated(bytes);
  expect(partsThatDiffer(before, after).sort()).toEqual(
    ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/metadata.xml", sheet1].sort(),
  );
  // 20 A × 0.16 V = 3.2 W; everything else LibreOffice had right already.
  expect(after.get(sheet1)).toBe(
    before
      .get(sheet1)
      ?.replace(
        '<c r="D2" s="0" t="e"><f aca="false">bimetal.contact.watts(A2,B2)</f><v>#NAME?</v></c>',
        '<c r="D2" s="0" cm="1"><f t="array" ref="D2">_xldudf_BIMETAL_CONTACT_WATTS(A2,B2)</f><v>3.2</v></c>',
      ),
  );
  expect(readWorkbook(patched, catalogue).names).toEqual([{ name: "rated", formula: "'Bench log'!$A$2" }]);
});

describe("a workbook as read", () => {
  test("knows texts, errors, truth, dates, shared formulas and arrays of both kinds", () => {
    const texts =
      '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t xml:space="preserve"> one </t></si><si><r><t>two</t></r><r><t>_x0041_</t></r><rPh><t>no</t></rPh></si></sst>';
    const rows =
      '<row r="1"><c r="A1" t="s"><v>0</v></c><c t="s"><v>1</v></c><c t="inlineStr"><is><t>three</t></is></c><c t="b"><v>1</v></c><c t="e"><v>#N/A</v></c><c t="d"><v>2023-03-15</v></c></row>' +
      '<row><c r="A2"><f t="shared" ref="A2:A3" si="0">A1&amp;$B$1</f><v>1</v></c><c><f t="array" ref="B2:B3">A1:A2</f><v>0</v></c></row>' +
      '<row><c r="A3"><f t="shared" si="0"/><v>2</v></c><c r="C3" cm="1"><f t="array" ref="C3:D3">_xldudf_bimetal_CONTACT_WATTS(1,2)</f><v>2</v></c></row>';
    const bytes = workbookAround(sheetAround(rows), {
      ...metadata,
      "xl/sharedStrings.xml": texts,
      "xl/_rels/workbook.xml.rels":
        '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="x/worksheet" Target="/xl/worksheets/sheet1.xml"/><Relationship Id="rId2" Type="x/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="rId3" Type="x/sheetMetadata" Target="metadata.xml"/></Relationships>',
    });
    const cells = readWorkbook(bytes, catalogue).sheets[0]?.cells ?? [];
    expect(cells.map(({ value }) => value)).toEqual([
      " one ",
      "twoA",
      "three",
      true,
      new CellError("#N/A"),
      45000,
      1,
      0,
      2,
      2,
    ]);
    expect(cells.slice(6).map(({ formula, stored, spill }) => [formula, stored, spill])).toEqual([
      ["=A1&$B$1", "single", undefined],
      ["=A1:A2", "fixed", { rows: 2, columns: 1 }],
      ["=A2&$B$1", "single", undefined],
      ["=BIMETAL.CONTACT.WATTS(1,2)", undefined, { rows: 1, columns: 2 }],
    ]);
  });
});
