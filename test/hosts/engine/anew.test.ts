import { unzipSync, zipSync } from "fflate";
import { catalogue } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine/calculate";
import { Spelling } from "../../../src/hosts/engine/spelling";
import { metadataPart } from "../../../src/hosts/engine/xlsx/metadata";
import { withDynamicMark } from "../../../src/hosts/engine/xlsx/metadata-merge";
import { openWorkbook, readWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { leftFormulas, patchWorkbook } from "../../../src/hosts/engine/xlsx/patch-workbook";
import { partsOf, sheetAround, workbookAround } from "./packages";

const sheet1 = "xl/worksheets/sheet1.xml";
const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';

const recalculated = async (bytes: Uint8Array) => {
  const opened = openWorkbook(bytes, catalogue);
  const grid = await calculate(opened.book, catalogue);
  const { bytes: after } = patchWorkbook(opened, grid, { left: leftFormulas(grid) }, new Spelling(catalogue));
  grid.close();
  return after;
};
const sheetAfter = async (rows: string) =>
  partsOf(await recalculated(workbookAround(sheetAround(rows)))).get(sheet1) ?? "";

describe("formulas of ours that no spreadsheet finds are written anew", () => {
  test("in an array formula of the old kind: its text alone, for it keeps its block", async () => {
    const before =
      '<row r="1"><c r="A1"><f aca="false" t="array" ref="A1:A2">bimetal.contact.watts({10;20},0.5)</f><v>0</v></c></row><row r="2"><c r="A2"><v>0</v></c></row>';
    expect(await sheetAfter(before)).toBe(
      sheetAround(
        '<row r="1"><c r="A1"><f aca="false" t="array" ref="A1:A2">_xldudf_BIMETAL_CONTACT_WATTS({10;20},0.5)</f><v>5</v></c></row><row r="2"><c r="A2"><v>10</v></c></row>',
      ),
    );
  });

  test("behind the name of a foreign workbook", async () => {
    const before = '<row r="1"><c r="A1"><f>[2]!_xldudf_BIMETAL_CONTACT_WATTS(20,0.16)</f><v>3.2</v></c></row>';
    expect(await sheetAfter(before)).toBe(
      sheetAround(
        '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1">_xldudf_BIMETAL_CONTACT_WATTS(20,0.16)</f><v>3.2</v></c></row>',
      ),
    );
  });

  test("but not where another formula that stays as it is needs the text they share", async () => {
    const before =
      '<row r="1"><c r="A1"><f t="shared" si="0" ref="A1:A2">BIMETAL.CONTACT.WATTS(C1,0.5)</f><v>0</v></c><c r="C1"><v>20</v></c></row>' +
      '<row r="2"><c r="A2"><f t="shared" si="0"/><v>7</v></c><c r="C2"><f>A2+1</f><v>8</v></c></row>';
    expect(await sheetAfter(before)).toBe(sheetAround(before.replace("0.5)</f><v>0</v>", "0.5)</f><v>10</v>")));
  });

  test("and the list of the order of calculation, which may not name them, goes", async () => {
    const relations =
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="x/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="x/calcChain" Target="calcChain.xml"/></Relationships>';
    const after = partsOf(
      await recalculated(
        workbookAround(sheetAround('<row r="1"><c r="A1"><f>BIMETAL.CONTACT.WATTS(20,0.16)</f></c></row>'), {
          "xl/_rels/workbook.xml.rels": relations,
          "xl/calcChain.xml": `<calcChain ${main}><c r="A1" i="1"/></calcChain>`,
        }),
      ),
    );
    expect(after.has("xl/calcChain.xml")).toBe(false);
    expect(after.get("xl/_rels/workbook.xml.rels")).not.toContain("calcChain");
  });
});

test("a sheet whose part is spelled in other letters than its relation is changed in its own place", async () => {
  const { [sheet1]: part, ...rest } = unzipSync(
    workbookAround(sheetAround('<row r="1"><c r="A1"><f>1+1</f><v>0</v></c></row>')),
  );
  const after = partsOf(await recalculated(zipSync({ ...rest, "XL/Worksheets/Sheet1.xml": part as Uint8Array })));
  expect(after.has(sheet1)).toBe(false);
  expect(after.get("XL/Worksheets/Sheet1.xml")).toContain("<f>1+1</f><v>2</v>");
});

test("places are found behind a byte order mark, line ends of two characters and characters of two units", async () => {
  const rows =
    '\r\n<row r="1">\r\n<c r="A1" t="str"><v>\u{1f50c} 20 A \u{1f4a1}\r\n</v></c><c r="B1"><f>LEN("\u{1f50c}")</f><v>0</v></c>\r\n<c r="C1"><f>1+1</f><v>0</v></c></row>\r\n';
  const before = `\ufeff${sheetAround(rows)}`;
  const after = await recalculated(workbookAround(before));
  const text = new TextDecoder("utf-8", { ignoreBOM: true }).decode(unzipSync(after)[sheet1]);
  expect(text).toBe(before.replace("</f><v>0</v>", "</f><v>2</v>").replace("</f><v>0</v>", "</f><v>2</v>"));
});

test("attributes that stay keep their value, whatever it looks like", async () => {
  const rows =
    '<row r="1" x:a="_x0041_ &amp; &quot;b&quot; &lt;" xmlns:x="urn:x"><c r="A1" x:uid="_x0041_"><f x:b="1 &gt; 0">1+1</f><v>0</v></c></row>';
  expect(await sheetAfter(rows)).toBe(sheetAround(rows.replace("<v>0</v>", "<v>2</v>")));
});

test("blanks at the ends of a text are marked as part of it", async () => {
  expect(await sheetAfter('<row r="1"><c r="A1"><f>" a "</f></c><c r="B1"><f>"a b"</f></c></row>')).toBe(
    sheetAround(
      '<row r="1"><c r="A1" t="str"><f>" a "</f><v xml:space="preserve"> a </v></c><c r="B1" t="str"><f>"a b"</f><v>a b</v></c></row>',
    ),
  );
});

describe("metadata of other kinds", () => {
  const type = '<metadataType name="XLRICHVALUE"/>';
  const parse = (inside: string) => withDynamicMark(`<metadata ${main}>${inside}</metadata>`);
  const dynamicType = /<metadataType name="XLDAPR"[^>]*\/>/.exec(metadataPart)?.[0] ?? "";

  test("get the mark of dynamic arrays at the ends of their lists, and what stood there keeps its number", () => {
    const merged = parse(
      `<metadataTypes count="1">${type}</metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata>` +
        '<cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="1" v="0"/></bk></cellMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata>',
    );
    expect(merged?.mark).toBe(3);
    const properties =
      /<futureMetadata name="XLDAPR" count="1">.*?<\/futureMetadata>/.exec(merged?.xml ?? "")?.[0] ?? "";
    expect(properties).toContain('<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/>');
    expect(merged?.xml).toBe(
      `<metadata ${main}><metadataTypes count="2">${type}${dynamicType}</metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata>${properties}` +
        '<cellMetadata count="3"><bk><rc t="1" v="0"/></bk><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata></metadata>',
    );
  });

  test("get whole lists where they have none, in the order of the schema", () => {
    const merged = parse(
      `<metadataTypes count="1">${type}</metadataTypes><valueMetadata count="1"><bk/></valueMetadata>`,
    );
    expect(merged?.mark).toBe(1);
    expect([...(merged?.xml ?? "").matchAll(/<(\w+) [^>]*count=/g)].map(([, name]) => name)).toEqual([
      ...["metadataTypes", "futureMetadata", "cellMetadata", "valueMetadata"],
    ]);
    expect(parse("<metadataTypes count='0'/><extLst/>")?.xml).toMatch(
      /<metadataTypes count="1"><metadataType .*<\/metadataTypes><futureMetadata.*<\/cellMetadata><extLst\/><\/metadata>$/,
    );
  });

  test("that know the type but mark no cell yet are given a record", () => {
    const merged = parse(`<metadataTypes count="2">${type}${dynamicType}</metadataTypes>`);
    expect(merged?.xml).toContain('<cellMetadata count="1"><bk><rc t="2" v="0"/></bk></cellMetadata>');
  });

  test("written with prefixes are left alone, and so are the formulas that would need them", async () => {
    expect(withDynamicMark(`<x:metadata xmlns:x="urn:x"/>`)).toBeUndefined();
    const rows = '<row r="1"><c r="A1"><f>BIMETAL.CONTACT.WATTS({20;30},0.5)</f><v>0</v></c></row>';
    const relations =
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="x/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="x/sheetMetadata" Target="metadata.xml"/></Relationships>';
    const after = partsOf(
      await recalculated(
        workbookAround(sheetAround(rows), {
          "xl/_rels/workbook.xml.rels": relations,
          "xl/metadata.xml": '<x:metadata xmlns:x="urn:x"/>',
        }),
      ),
    );
    expect(after.get(sheet1)).toBe(sheetAround(rows.replace("<v>0</v>", "<v>10</v>")));
  });
});

test("an error that a file cannot spell keeps the record that names it, and loses it with the error", async () => {
  const rows =
    '<row r="1"><c r="A1" t="e" cm="1" vm="1"><f t="array" ref="A1">_xlfn.SEQUENCE(2)</f><v>#VALUE!</v></c><c r="B1" t="e" vm="1"><f>"a"+1</f><v>#VALUE!</v></c></row><row r="2"><c r="A2"><v>7</v></c></row>';
  const relations =
    '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="x/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="x/sheetMetadata" Target="metadata.xml"/></Relationships>';
  const bytes = workbookAround(sheetAround(rows), {
    "xl/_rels/workbook.xml.rels": relations,
    "xl/metadata.xml": metadataPart,
  });
  // SEQUENCE(2) has no room, as before: #SPILL!. "a"+1 is #VALUE! itself.
  expect(partsOf(await recalculated(bytes)).get(sheet1)).toBe(
    sheetAround(rows.replace('<c r="B1" t="e" vm="1">', '<c r="B1" t="e">')),
  );
});

test("how a text in a cell is spoken is no part of it", () => {
  const rows =
    '<row r="1"><c r="A1" t="inlineStr"><is><r><t>one</t></r><rPh sb="0" eb="1"><t>no</t></rPh><r><t> two</t></r></is></c></row>';
  expect(readWorkbook(workbookAround(sheetAround(rows)), catalogue).sheets[0]?.cells[0]?.value).toBe("one two");
});
