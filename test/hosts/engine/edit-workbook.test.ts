import { catalogue } from "../../../src/functions";
import { Spelling } from "../../../src/hosts/engine/spelling";
import type { ColumnWish } from "../../../src/hosts/engine/xlsx/column-splices";
import { editWorkbook } from "../../../src/hosts/engine/xlsx/edit-workbook";
import type { RowWish, SheetEdits } from "../../../src/hosts/engine/xlsx/edits";
import { openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { main, office, packageOf, partsOf, sheetAround, workbookAround } from "./packages";

// What an edit makes of a part, letter by letter; the expected XML is written by hand after ECMA-376 part 1, 18.3 (sheets) and 18.8 (looks).

const sheetPart = "xl/worksheets/sheet1.xml";

const edited = (bytes: Uint8Array, edits: SheetEdits, part = sheetPart): string => {
  const after = editWorkbook(openWorkbook(bytes, catalogue), { sheets: [edits], added: [] }, new Spelling(catalogue));
  return partsOf(after).get(part) ?? "";
};

/** A sheet of one number, with what stands around its rows. */
const around = (before: string, rows: string, after = ""): string =>
  `<worksheet xmlns="${main}">${before}<sheetData>${rows}</sheetData>${after}</worksheet>`;

test("a number typed over another changes its value only; clearing leaves the cell with its look", () => {
  const bytes = workbookAround(
    sheetAround('<row r="1"><c r="A1" s="0"><v>1</v></c><c r="B1" t="s"><v>0</v></c></row>'),
  );
  const cells = [
    { row: 0, column: 0, holds: { value: 51 } },
    { row: 0, column: 1, holds: { value: null } },
  ];
  expect(edited(bytes, { cells })).toBe(sheetAround('<row r="1"><c r="A1" s="0"><v>51</v></c><c r="B1"/></row>'));
});

test("texts stand in their cells, so that the list of texts stays as it is", () => {
  const bytes = workbookAround(sheetAround('<row r="2"><c r="C2"><v>1</v></c></row>'));
  const cells = [
    { row: 1, column: 2, holds: { value: "a <b>" } },
    { row: 0, column: 0, holds: { value: " held" } },
    { row: 1, column: 0, holds: { value: true } },
  ];
  expect(edited(bytes, { cells })).toBe(
    sheetAround(
      '<row r="1"><c r="A1" t="inlineStr"><is><t xml:space="preserve"> held</t></is></c></row>' +
        '<row r="2"><c r="A2" t="b"><v>1</v></c><c r="C2" t="inlineStr"><is><t>a &lt;b&gt;</t></is></c></row>',
    ),
  );
});

test("a sheet without rows gets them, and its extent is told", () => {
  const xml = `<worksheet xmlns="${main}"><dimension ref="A1"/><sheetData/></worksheet>`;
  const after = `<worksheet xmlns="${main}"><dimension ref="A1:C4"/><sheetData><row r="4"><c r="C4"><v>2</v></c></row></sheetData></worksheet>`;
  expect(edited(workbookAround(xml), { cells: [{ row: 3, column: 2, holds: { value: 2 } }] })).toBe(after);
});

test("a new cell looks as its row does, else as its column does", () => {
  const xml = around(
    '<cols><col min="2" max="3" width="9" style="4"/></cols>',
    '<row r="1" s="7" customFormat="1"><c r="A1" s="7"/></row><row r="2"/>',
  );
  const cells = [
    { row: 0, column: 2, holds: { value: 1 } },
    { row: 1, column: 2, holds: { value: 2 } },
    { row: 1, column: 4, holds: { value: 3 } },
  ];
  expect(edited(workbookAround(xml), { cells })).toBe(
    around(
      '<cols><col min="2" max="3" width="9" style="4"/></cols>',
      '<row r="1" s="7" customFormat="1"><c r="A1" s="7"/><c r="C1" s="7"><v>1</v></c></row>' +
        '<row r="2"><c r="C2" s="4"><v>2</v></c><c r="E2"><v>3</v></c></row>',
    ),
  );
});

test("formulas that were written out in a cell that changes are written out in their own", () => {
  const rows = (first: string, second: string) =>
    sheetAround(
      `<row r="1">${first}</row><row r="2"><c r="A2" t="s">${second}<v>3</v></c></row><row r="3"><c r="A3"><v>9</v></c></row>`,
    );
  const bytes = workbookAround(
    rows('<c r="A1"><f t="shared" ref="A1:A2" si="0">B1+$C$1</f><v>2</v></c>', '<f t="shared" si="0"/>'),
  );
  expect(edited(bytes, { cells: [{ row: 0, column: 0, holds: { value: 5 } }] })).toBe(
    rows('<c r="A1"><v>5</v></c>', "<f>B2+$C$1</f>"),
  );
});

test("a column is taken out of the row it is written in; what is said of it beside stays", () => {
  const cols = (inner: string) => around(`<cols>${inner}</cols>`, "");
  const bytes = workbookAround(
    cols('<col min="1" max="4" width="8" style="2" bestFit="1"/><col min="9" max="9" width="3"/>'),
  );
  const columns = new Map<number, ColumnWish>([
    [1, { width: 20 }],
    [6, { width: 5, hidden: true }],
  ]);
  expect(edited(bytes, { cells: [], columns })).toBe(
    cols(
      '<col min="1" max="1" width="8" style="2" bestFit="1"/><col min="2" max="2" width="20" style="2" customWidth="1"/>' +
        '<col min="3" max="4" width="8" style="2" bestFit="1"/><col min="7" max="7" width="5" customWidth="1" hidden="1"/>' +
        '<col min="9" max="9" width="3"/>',
    ),
  );
  expect(edited(workbookAround(around("", "")), { cells: [], columns: new Map([[0, { width: 12 }]]) })).toBe(
    around('<cols><col min="1" max="1" width="12" customWidth="1"/></cols>', ""),
  );
});

test("a row's height stands in its tag, also where there was no row", () => {
  const bytes = workbookAround(sheetAround('<row r="2" spans="1:1" ht="9"><c r="A2"><v>1</v></c></row>'));
  const rows = new Map<number, RowWish>([
    [0, { hidden: true }],
    [1, { height: 30 }],
  ]);
  expect(edited(bytes, { cells: [], rows })).toBe(
    sheetAround(
      '<row r="1" hidden="1"></row><row r="2" spans="1:1" ht="30" customHeight="1"><c r="A2"><v>1</v></c></row>',
    ),
  );
});

test("merged cells come behind those that are there; a block that shares a cell with one of these is left out", () => {
  const block = (row: number) => ({ row, column: 0, rows: 2, columns: 2 });
  const merged = [block(1), block(6)];
  const after =
    '<mergeCells count="2"><mergeCell ref="A1:B2"/><mergeCell ref="A7:B8"/></mergeCells><pageMargins left="1"/>';
  const before = '<mergeCells count="1"><mergeCell ref="A1:B2"/></mergeCells><pageMargins left="1"/>';
  expect(edited(workbookAround(around("", "", before)), { cells: [], merged })).toBe(around("", "", after));
  expect(
    edited(workbookAround(around("", "", "<sheetProtection/><pageMargins/>")), { cells: [], merged: [block(6)] }),
  ).toBe(around("", "", '<sheetProtection/><mergeCells count="1"><mergeCell ref="A7:B8"/></mergeCells><pageMargins/>'));
});

test("rows that are frozen take the place of those that were", () => {
  const view = (inner: string) =>
    around(`<sheetViews><sheetView zoomScale="80" workbookViewId="0">${inner}</sheetView></sheetViews>`, "");
  const bytes = workbookAround(
    view('<pane ySplit="1" topLeftCell="A2" state="frozen"/><selection pane="bottomLeft"/>'),
  );
  expect(edited(bytes, { cells: [], frozen: { rows: 2, columns: 0 } })).toBe(
    view('<pane ySplit="2" topLeftCell="A3" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft"/>'),
  );
  expect(edited(bytes, { cells: [], frozen: { rows: 0, columns: 0 } })).toBe(view(""));
});

/** A workbook whose A1 has borders, a font of a theme's colour, a format, alignment and protection. */
const dressed = (() => {
  const parts = Object.fromEntries(
    partsOf(workbookAround(sheetAround('<row r="1"><c r="A1" s="1"><v>1</v></c></row>'))),
  );
  const rels = "xl/_rels/workbook.xml.rels";
  return packageOf({
    ...parts,
    [rels]: (parts[rels] ?? "").replace(
      "</Relationships>",
      `<Relationship Id="rId9" Type="${office}/styles" Target="styles.xml"/></Relationships>`,
    ),
    "xl/styles.xml": `<styleSheet xmlns="${main}"><numFmts count="1"><numFmt numFmtId="170" formatCode="0 &quot;A&quot;"/></numFmts><fonts count="2"><font><name val="Arial"/></font><font><u/><sz val="14"/><color theme="4"/><name val="Arial"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders><cellXfs count="2"><xf fontId="0"/><xf numFmtId="170" fontId="1" fillId="0" borderId="0" xfId="0"><alignment horizontal="center" wrapText="1"/><protection locked="0"/></xf></cellXfs><dxfs count="0"/></styleSheet>`,
  });
})();

test("another look is the old one in which only what was changed differs, behind those that are there", () => {
  const from = { format: '0 "A"', wrap: true };
  const to = { format: "0.00", bold: true, fill: "FFEE00" };
  const cells = [{ row: 0, column: 0, looks: { from, to } }];
  expect(edited(dressed, { cells })).toBe(sheetAround('<row r="1"><c r="A1" s="2"><v>1</v></c></row>'));
  const styles = partsOf(dressed).get("xl/styles.xml") ?? "";
  const expected = styles
    .replace('<numFmts count="1">', '<numFmts count="2">')
    .replace("</numFmts>", '<numFmt numFmtId="171" formatCode="0.00"/></numFmts>')
    .replace('<fonts count="2">', '<fonts count="3">')
    .replace("</fonts>", '<font><b/><u/><sz val="14"/><color theme="4"/><name val="Arial"/></font></fonts>')
    .replace('<fills count="2">', '<fills count="3">')
    .replace(
      "</fills>",
      '<fill><patternFill patternType="solid"><fgColor rgb="FFFFEE00"/><bgColor indexed="64"/></patternFill></fill></fills>',
    )
    .replace('<cellXfs count="2">', '<cellXfs count="3">')
    .replace(
      "</cellXfs>",
      '<xf numFmtId="171" fontId="2" fillId="2" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyFill="1" applyAlignment="1"><alignment horizontal="center"/><protection locked="0"/></xf></cellXfs>',
    );
  expect(edited(dressed, { cells }, "xl/styles.xml")).toBe(expected);
});

test("a colour takes the place of a theme's, before the font's name", () => {
  const cells = [{ row: 0, column: 0, looks: { from: {}, to: { color: "AA0000", italic: true } } }];
  expect(edited(dressed, { cells }, "xl/styles.xml")).toContain(
    '<font><i/><u/><sz val="14"/><color rgb="FFAA0000"/><name val="Arial"/></font>',
  );
});

test("a formula of ours brings what a spreadsheet needs to bind it, and takes the list of the order of calculation away", () => {
  const rels = "xl/_rels/workbook.xml.rels";
  const parts = Object.fromEntries(
    partsOf(workbookAround(sheetAround('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c></row>'))),
  );
  const bytes = packageOf({
    ...parts,
    [rels]: (parts[rels] ?? "").replace(
      "</Relationships>",
      `<Relationship Id="rId2" Type="${office}/calcChain" Target="calcChain.xml"/></Relationships>`,
    ),
    "xl/calcChain.xml": `<calcChain xmlns="${main}"><c r="A1" i="1"/></calcChain>`,
  });
  const holds = { value: 1, formula: '=BIMETAL.TRIP.RANGE(51,20,"C")', spill: { rows: 1, columns: 2 } };
  const after = partsOf(
    editWorkbook(
      openWorkbook(bytes, catalogue),
      { sheets: [{ cells: [{ row: 0, column: 0, holds }] }], added: [] },
      new Spelling(catalogue),
    ),
  );
  expect(after.get(sheetPart)).toBe(
    sheetAround(
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:B1">_xldudf_BIMETAL_TRIP_RANGE(51,20,"C")</f><v>1</v></c></row>',
    ),
  );
  expect([...after.keys()].sort()).toEqual([...Object.keys(parts), "xl/metadata.xml"].sort());
  expect(after.get(rels)).not.toContain("calcChain");
});

test("the prefix of relations is declared where the workbook's root does not", () => {
  const parts = Object.fromEntries(partsOf(workbookAround(sheetAround(""))));
  const bytes = packageOf({
    ...parts,
    "xl/workbook.xml": `<workbook xmlns="${main}"><sheets><sheet xmlns:q="${office}" name="Log" sheetId="7" q:id="rId1"/></sheets></workbook>`,
  });
  const added = [{ name: "A & B", cells: [] }];
  const after = partsOf(editWorkbook(openWorkbook(bytes, catalogue), { sheets: [], added }, new Spelling(catalogue)));
  expect(after.get("xl/workbook.xml")).toContain(
    `<sheet xmlns:r="${office}" name="A &amp; B" sheetId="8" r:id="rId2"/></sheets>`,
  );
});
