// node by-hand.mjs: the packages by-hand-*.xlsx and by-hand-*.xlsm, written part by part and packed with fflate (MIT).

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { zipSync } from "fflate";

const folder = join(fileURLToPath(import.meta.url), "../..");
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const SHEETML = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const RICH = "http://schemas.microsoft.com/office/spreadsheetml/2017/richdata";

const relations = (...list) =>
  `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${list
    .map(([type, target, mode], place) => {
      const full = type.includes(":") ? type : `${OFFICE}/${type}`;
      return `<Relationship Id="rId${place + 1}" Type="${full}" Target="${target}"${mode ? ` TargetMode="${mode}"` : ""}/>`;
    })
    .join("")}</Relationships>`;

const types = (main, overrides, defaults = {}) =>
  `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${Object.entries({
    rels: "application/vnd.openxmlformats-package.relationships+xml",
    xml: "application/xml",
    ...defaults,
  })
    .map(([extension, type]) => `<Default Extension="${extension}" ContentType="${type}"/>`)
    .join("")}${Object.entries({ "/xl/workbook.xml": main, ...overrides })
    .map(([part, type]) => `<Override PartName="${part}" ContentType="${type}"/>`)
    .join("")}</Types>`;

const sheet = (rows, after = "", before = "") =>
  `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${before}<sheetData>${rows}</sheetData>${after}</worksheet>`;

const workbook = (inside) => `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}">${inside}</workbook>`;

const write = (name, parts) => {
  const files = Object.entries(parts).map(([path, content]) => [
    path,
    [typeof content === "string" ? new TextEncoder().encode(content) : content, { mtime: "2024-01-01T12:00:00" }],
  ]);
  writeFileSync(join(folder, name), zipSync(Object.fromEntries(files)));
};

const xlsx = `${SHEETML}.sheet.main+xml`;
const macros = "application/vnd.ms-excel.sheet.macroEnabled.main+xml";
const bytes = (count, step) => Uint8Array.from({ length: count }, (_, place) => (place * step) % 256);
const trials =
  '<row r="2"><c r="A2"><v>20</v></c><c r="B2"><v>0.16</v></c></row><row r="3"><c r="A3"><v>10</v></c><c r="B3"><v>0.2</v></c></row><row r="4"><c r="A4"><v>30</v></c><c r="B4"><v>0.1</v></c></row>';

// Errors that a file cannot spell are #VALUE! and named by rich data: 8 is #SPILL!, 13 is #CALC!. Dynamic arrays are the second record.
const richParts = {
  "xl/richData/rdrichvalue.xml": `${HEAD}<rvData xmlns="${RICH}" count="2"><rv s="0"><v>0</v><v>8</v><v>1</v><v>1</v></rv><rv s="1"><v>13</v><v>3</v></rv></rvData>`,
  "xl/richData/rdrichvaluestructure.xml": `${HEAD}<rvStructures xmlns="${RICH}" count="2"><s t="_error"><k n="colOffset" t="i"/><k n="errorType" t="i"/><k n="rwOffset" t="i"/><k n="subType" t="i"/></s><s t="_error"><k n="errorType" t="i"/><k n="subType" t="i"/></s></rvStructures>`,
  "xl/richData/rdRichValueTypes.xml": `${HEAD}<rvTypesInfo xmlns="http://schemas.microsoft.com/office/spreadsheetml/2017/richdata2"><global/></rvTypesInfo>`,
};
const richTypes = {
  "/xl/worksheets/sheet1.xml": `${SHEETML}.worksheet+xml`,
  "/xl/metadata.xml": `${SHEETML}.sheetMetadata+xml`,
  "/xl/richData/rdrichvalue.xml": "application/vnd.ms-excel.rdrichvalue+xml",
  "/xl/richData/rdrichvaluestructure.xml": "application/vnd.ms-excel.rdrichvaluestructure+xml",
  "/xl/richData/rdRichValueTypes.xml": "application/vnd.ms-excel.rdrichvaluetypes+xml",
};
const richRelations = relations(
  ["worksheet", "worksheets/sheet1.xml"],
  ["sheetMetadata", "metadata.xml"],
  ["http://schemas.microsoft.com/office/2017/06/relationships/rdRichValue", "richData/rdrichvalue.xml"],
  [
    "http://schemas.microsoft.com/office/2017/06/relationships/rdRichValueStructure",
    "richData/rdrichvaluestructure.xml",
  ],
  ["http://schemas.microsoft.com/office/2017/06/relationships/rdRichValueTypes", "richData/rdRichValueTypes.xml"],
);
const richType =
  '<metadataType name="XLRICHVALUE" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1"/>';
const richFuture = `<futureMetadata name="XLRICHVALUE" count="2">${[0, 1]
  .map(
    (place) =>
      `<bk><extLst><ext uri="{3e2802c4-a4d2-4d8b-9148-e3be6c30e623}"><xlrd:rvb i="${place}"/></ext></extLst></bk>`,
  )
  .join("")}</futureMetadata>`;
const dynamicType =
  '<metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>';
const dynamicFuture =
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>';
const metadata = (inside) =>
  `${HEAD}<metadata xmlns="${MAIN}" xmlns:xlrd="${RICH}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">${inside}</metadata>`;
const plainBook = workbook('<sheets><sheet name="Log" sheetId="1" r:id="rId1"/></sheets><calcPr calcId="191029"/>');
const rich = {
  "_rels/.rels": relations(["officeDocument", "xl/workbook.xml"]),
  "[Content_Types].xml": types(xlsx, richTypes),
  "xl/workbook.xml": plainBook,
  "xl/_rels/workbook.xml.rels": richRelations,
  ...richParts,
};

write("by-hand-rich.xlsx", {
  ...rich,
  "xl/metadata.xml": metadata(
    `<metadataTypes count="2">${richType}${dynamicType}</metadataTypes>${richFuture}${dynamicFuture}` +
      '<cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata>' +
      '<valueMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="1" v="1"/></bk></valueMetadata>',
  ),
  "xl/worksheets/sheet1.xml": sheet(
    trials
      .replace(
        "</row>",
        '<c r="D2" t="e" cm="2" vm="1"><f t="array" ref="D2">A2:A4*1</f><v>#VALUE!</v></c>' +
          '<c r="E2" t="e" cm="2" vm="1"><f t="array" ref="E2">_xldudf_BIMETAL_CONTACT_WATTS(A2:A4,B2:B4)</f><v>#VALUE!</v></c>' +
          '<c r="F2" t="e" cm="2" vm="2"><f t="array" ref="F2">_xlfn._xlws.FILTER(A2:A4,A2:A4&gt;99)</f><v>#VALUE!</v></c>' +
          '<c r="G2" t="e" cm="2" vm="2"><f t="array" ref="G2">_xldudf_BIMETAL_CONTACT_WATTS(-1,2)</f><v>#VALUE!</v></c>' +
          '<c r="H2" cm="2"><f t="array" ref="H2:H3">_xldudf_bimetal_contact_watts(A2:A3,B2:B3)</f><v>1</v></c>' +
          '<c r="I2"><f>BIMETAL.CONTACT.WATTS(A2:A3,B2:B3)</f><v>1</v></c></row>',
      )
      .replace('<c r="B3"><v>0.2</v></c>', '<c r="B3"><v>0.2</v></c><c r="D3"><v>7</v></c><c r="H3"><v>1</v></c>'),
  ),
});

write("by-hand-rich-only.xlsx", {
  ...rich,
  "xl/metadata.xml": metadata(
    `<metadataTypes count="1">${richType}</metadataTypes>${richFuture}` +
      '<valueMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="1" v="1"/></bk></valueMetadata>',
  ),
  "xl/worksheets/sheet1.xml": sheet(
    trials.replace(
      "</row>",
      '<c r="D2" t="e" vm="2"><v>#VALUE!</v></c><c r="E2" t="str"><f>bimetal.contact.watts(A2:A4,B2:B4)</f><v>old</v></c></row>',
    ),
  ),
});

// Everything that a workbook may drag along; its own bytes only stand where real ones would.
const vml =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shape id="_x0000_s1025" type="#_x0000_t202" style="visibility:hidden"><x:ClientData ObjectType="Note"><x:Row>1</x:Row><x:Column>0</x:Column></x:ClientData></v:shape></xml>';
write("by-hand-laden.xlsm", {
  "[Content_Types].xml": types(
    macros,
    {
      "/xl/worksheets/sheet1.xml": `${SHEETML}.worksheet+xml`,
      "/xl/worksheets/sheet2.xml": `${SHEETML}.worksheet+xml`,
      "/xl/macrosheets/sheet1.xml": "application/vnd.ms-excel.macrosheet+xml",
      "/xl/sharedStrings.xml": `${SHEETML}.sharedStrings+xml`,
      "/xl/calcChain.xml": `${SHEETML}.calcChain+xml`,
      "/xl/comments1.xml": `${SHEETML}.comments+xml`,
      "/xl/threadedComments/threadedComment1.xml": "application/vnd.ms-excel.threadedcomments+xml",
      "/xl/persons/person.xml": "application/vnd.ms-excel.person+xml",
      "/xl/pivotCache/pivotCacheDefinition1.xml": `${SHEETML}.pivotCacheDefinition+xml`,
      "/xl/pivotCache/pivotCacheRecords1.xml": `${SHEETML}.pivotCacheRecords+xml`,
      "/xl/pivotTables/pivotTable1.xml": `${SHEETML}.pivotTable+xml`,
      "/xl/externalLinks/externalLink1.xml": `${SHEETML}.externalLink+xml`,
      "/xl/slicers/slicer1.xml": "application/vnd.ms-excel.slicer+xml",
      "/xl/tables/table1.xml": `${SHEETML}.table+xml`,
      "/customXml/itemProps1.xml": "application/vnd.openxmlformats-officedocument.customXmlProperties+xml",
      "/xl/unheard/of.part": "application/x-unheard-of",
    },
    {
      bin: "application/vnd.ms-office.vbaProject",
      vml: "application/vnd.openxmlformats-officedocument.vmlDrawing",
    },
  ),
  "_rels/.rels": relations(["officeDocument", "xl/workbook.xml"], ["customXml", "customXml/item1.xml"]),
  "customXml/item1.xml": '<bench xmlns="urn:fernhollow:bench"><evening n="1"/></bench>',
  "customXml/_rels/item1.xml.rels": relations(["customXmlProps", "itemProps1.xml"]),
  "customXml/itemProps1.xml": `${HEAD}<ds:datastoreItem ds:itemID="{11111111-2222-3333-4444-555555555555}" xmlns:ds="http://schemas.openxmlformats.org/officeDocument/2006/customXml"/>`,
  "xl/workbook.xml": workbook(
    '<workbookPr codeName="ThisWorkbook"/><workbookProtection lockStructure="1"/><sheets><sheet name="Log" sheetId="1" r:id="rId1"/><sheet name="Hid &amp; &quot;quoted&quot;" sheetId="2" state="hidden" r:id="rId2"/><sheet name="Old macros" sheetId="3" state="veryHidden" r:id="rId3"/></sheets>' +
      '<externalReferences><externalReference r:id="rId4"/></externalReferences>' +
      '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Log!$A$1:$F$9</definedName><definedName name="Auto_Open" hidden="1">\'Old macros\'!$A$1</definedName><definedName name="far">[1]Bench!$A$1</definedName><definedName name="rate" localSheetId="1">2</definedName><definedName name="rate">Log!$B$2</definedName></definedNames>' +
      '<calcPr calcId="191029"/><pivotCaches><pivotCache cacheId="1" r:id="rId5"/></pivotCaches>',
  ),
  "xl/_rels/workbook.xml.rels": relations(
    ["worksheet", "worksheets/sheet1.xml"],
    ["worksheet", "worksheets/sheet2.xml"],
    ["http://schemas.microsoft.com/office/2006/relationships/xlMacrosheet", "macrosheets/sheet1.xml"],
    ["externalLink", "externalLinks/externalLink1.xml"],
    ["pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml"],
    ["sharedStrings", "sharedStrings.xml"],
    ["calcChain", "calcChain.xml"],
    ["http://schemas.microsoft.com/office/2006/relationships/vbaProject", "vbaProject.bin"],
    ["http://schemas.microsoft.com/office/2017/10/relationships/person", "persons/person.xml"],
  ),
  "xl/worksheets/sheet1.xml": sheet(
    trials
      .replace(
        "</row>",
        '<c r="C2"><f>_xldudf_BIMETAL_CONTACT_WATTS(A2,B2)</f><v>0</v></c><c r="D2"><f>[2]!_xldudf_BIMETAL_CONTACT_WATTS(A2,B2)</f><v>0</v></c>' +
          '<c r="E2"><f>\'C:\\addins\\Other.xlam\'!_xldudf_BIMETAL_CONTACT_WATTS(A2,B2)</f><v>0</v></c><c r="F2" t="s"><v>0</v></c></row>',
      )
      .replace(
        '<c r="B3"><v>0.2</v></c>',
        '<c r="B3"><v>0.2</v></c><c r="C3"><f>[1]Bench!A1+1</f><v>18</v></c><c r="D3"><f>far*2</f><v>34</v></c><c r="E3"><f>C3+D3</f><v>0</v></c><c r="F3"><f>rate*100</f><v>0</v></c>',
      ),
    '<sheetProtection sheet="1" objects="1"/><protectedRanges><protectedRange sqref="A2:B4" name="typed"/></protectedRanges><pageSetup orientation="portrait" r:id="rId2"/><legacyDrawing r:id="rId3"/><tableParts count="1"><tablePart r:id="rId5"/></tableParts><extLst><ext uri="{A8765BA9-456A-4dab-B4F3-ACF838C121DE}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:slicerList><x14:slicer r:id="rId6"/></x14:slicerList></ext></extLst>',
    '<sheetPr codeName="Log"><tabColor rgb="FF102030"/></sheetPr>',
  ),
  "xl/worksheets/_rels/sheet1.xml.rels": relations(
    ["comments", "../comments1.xml"],
    ["printerSettings", "../printerSettings/printerSettings1.bin"],
    ["vmlDrawing", "../drawings/vmlDrawing1.vml"],
    [
      "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
      "../threadedComments/threadedComment1.xml",
    ],
    ["table", "../tables/table1.xml"],
    ["http://schemas.microsoft.com/office/2007/relationships/slicer", "../slicers/slicer1.xml"],
    ["hyperlink", "https://example.org/", "External"],
  ),
  "xl/worksheets/sheet2.xml": sheet(
    '<row r="1"><c r="A1"><f>Log!C2*rate</f><v>0</v></c><c r="B1"><f>SUM(Trials[drop])</f><v>0</v></c></row>',
  ),
  "xl/worksheets/_rels/sheet2.xml.rels": relations(["pivotTable", "../pivotTables/pivotTable1.xml"]),
  "xl/macrosheets/sheet1.xml": `${HEAD}<xm:macrosheet xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main" xmlns="${MAIN}"><sheetData><row r="1"><c r="A1"><f>HALT()</f></c></row></sheetData></xm:macrosheet>`,
  "xl/sharedStrings.xml": `${HEAD}<sst xmlns="${MAIN}" count="1" uniqueCount="1"><si><t xml:space="preserve"> held </t></si></sst>`,
  "xl/calcChain.xml": `${HEAD}<calcChain xmlns="${MAIN}"><c r="C2" i="1" l="1"/><c r="D2"/><c r="E2"/><c r="C3"/><c r="A1" i="2"/></calcChain>`,
  "xl/comments1.xml": `${HEAD}<comments xmlns="${MAIN}"><authors><author>tc={1}</author></authors><commentList><comment ref="A2" authorId="0" shapeId="0"><text><t>[Threaded comment] measured twice</t></text></comment></commentList></comments>`,
  "xl/threadedComments/threadedComment1.xml": `${HEAD}<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="A2" dT="2024-01-01T12:00:00.00" personId="{1}" id="{2}"><text>measured twice</text></threadedComment></ThreadedComments>`,
  "xl/persons/person.xml": `${HEAD}<personList xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><person displayName="Bench" id="{1}" userId="bench" providerId="None"/></personList>`,
  "xl/drawings/vmlDrawing1.vml": vml,
  "xl/printerSettings/printerSettings1.bin": bytes(300, 7),
  "xl/vbaProject.bin": bytes(2000, 11),
  "xl/externalLinks/externalLink1.xml": `${HEAD}<externalLink xmlns="${MAIN}"><externalBook xmlns:r="${OFFICE}" r:id="rId1"><sheetNames><sheetName val="Bench"/></sheetNames><sheetDataSet><sheetData sheetId="0"><row r="1"><cell r="A1"><v>17</v></cell></row></sheetData></sheetDataSet></externalBook></externalLink>`,
  "xl/externalLinks/_rels/externalLink1.xml.rels": relations([
    "externalLinkPath",
    "file:///C:/bench/other.xlsx",
    "External",
  ]),
  "xl/pivotCache/pivotCacheDefinition1.xml": `${HEAD}<pivotCacheDefinition xmlns="${MAIN}" xmlns:r="${OFFICE}" r:id="rId1" recordCount="1"><cacheSource type="worksheet"><worksheetSource ref="A1:B4" sheet="Log"/></cacheSource><cacheFields count="1"><cacheField name="current"><sharedItems/></cacheField></cacheFields></pivotCacheDefinition>`,
  "xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels": relations(["pivotCacheRecords", "pivotCacheRecords1.xml"]),
  "xl/pivotCache/pivotCacheRecords1.xml": `${HEAD}<pivotCacheRecords xmlns="${MAIN}" count="1"><r><n v="20"/></r></pivotCacheRecords>`,
  "xl/pivotTables/pivotTable1.xml": `${HEAD}<pivotTableDefinition xmlns="${MAIN}" name="Pivot" cacheId="1" dataCaption="Values"><location ref="D4:E6" firstHeaderRow="1" firstDataRow="1" firstDataCol="1"/></pivotTableDefinition>`,
  "xl/pivotTables/_rels/pivotTable1.xml.rels": relations([
    "pivotCacheDefinition",
    "../pivotCache/pivotCacheDefinition1.xml",
  ]),
  "xl/slicers/slicer1.xml": `${HEAD}<slicers xmlns="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><slicer name="drop" cache="Slicer_drop" caption="drop"/></slicers>`,
  "xl/tables/table1.xml": `${HEAD}<table xmlns="${MAIN}" id="1" name="Trials" displayName="Trials" ref="A1:B4" totalsRowShown="0"><autoFilter ref="A1:B4"/><tableColumns count="2"><tableColumn id="1" name="current"/><tableColumn id="2" name="drop"/></tableColumns></table>`,
  "xl/unheard/of.part": bytes(500, 13),
});

// One workbook in the spellings that XML and zip leave open: quotes, blanks, remarks, references of characters, places that are not
// written, parts in other letters, entries that are not packed.
const odd = `<?xml version='1.0' encoding='utf-8'?>
<!-- written by hand -->
<worksheet xmlns='${MAIN}'
           xmlns:mc='http://schemas.openxmlformats.org/markup-compatibility/2006' mc:Ignorable='x14ac'
           xmlns:x14ac='http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac'>
  <sheetPr/><dimension ref='A1:F9'/>
  <sheetData >
    <row r='1' spans='1:6' x14ac:dyDescent='0.25'>
      <c r='A1' t='inlineStr'><is><t>current</t></is></c> <c t='inlineStr'><is><r><t>dr</t></r><r><t>op</t></r></is></c>
    </row>
    <row><c><v>20</v></c><c><v> 0.16 </v></c><c><f>A2*B2</f><v>9</v></c><!-- between --><c t='str'><f>"a&#38;b &lt; "&amp;A2</f><v>old</v></c>
      <c r='E2' s='0'><f >BIMETAL.CONTACT.WATTS( A2:A3 , B2:B3 )</f ><v>1</v ></c ></row>
    <row r='3'  ht='20'  customHeight='1'><c r='A3'><v>1e1</v></c><c r='B3'><v>2E-1</v></c><c r='C3' t='b'><f><![CDATA[A3>B3]]></f><v>0</v></c>
      <c r='D3'><f>SUM(A2:A3)</f></c></row>
    <row r='5'/>
    <row r='6'><c r='A6' t='inlineStr'><is><t xml:space='preserve'>  &#x9;tab _x0041_ </t><rPh sb='0' eb='1'><t>no</t></rPh></is></c><c r='B6'><f>A6&amp;"!"</f></c><c r='C6' t='d'><v>2023-03-15T12:00:00</v></c><c r='D6'><f>C6*2</f></c>
      <c r='F6'><f>A2-20</f><v/><extLst><ext uri='urn:x'><x:y xmlns:x='urn:y'/></ext></extLst></c></row>
  </sheetData>
  <mc:AlternateContent><mc:Choice Requires='x14'/><mc:Fallback/></mc:AlternateContent>
</worksheet>
<!-- the end -->
`;
writeFileSync(
  join(folder, "by-hand-spelling.xlsx"),
  zipSync(
    Object.fromEntries(
      Object.entries({
        "[Content_Types].xml": types(xlsx, { "/xl/worksheets/sheet1.xml": `${SHEETML}.worksheet+xml` }),
        "_rels/.rels": relations(["officeDocument", "/xl/workbook.xml"]),
        "xl/workbook.xml": `\ufeff${plainBook}`,
        "xl/_rels/workbook.xml.rels": relations(["worksheet", "/xl/worksheets/sheet1.xml"]),
        "xl/worksheets/sheet1.xml": odd,
        "docProps/thumbnail.jpeg": bytes(200, 3),
      }).map(([path, content]) => [
        path,
        [
          typeof content === "string" ? new TextEncoder().encode(content) : content,
          { level: 0, mtime: "2024-01-01T12:00:00" },
        ],
      ]),
    ),
    { comment: "a package's own remark" },
  ),
);
