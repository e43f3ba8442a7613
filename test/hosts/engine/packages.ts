import { unzipSync, zipSync } from "fflate";

/** A package's parts as text, unpacked by a library that is not ours. */
export const partsOf = (bytes: Uint8Array): Map<string, string> =>
  new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, Buffer.from(part).toString("latin1")]));

type Parts = ReadonlyMap<string, string>;

/** The parts in which two packages differ, or that one of them lacks. */
export const partsThatDiffer = (before: Parts, after: Parts): string[] =>
  [...new Set([...before.keys(), ...after.keys()])].filter((part) => before.get(part) !== after.get(part));

/** A package made by hand, from texts. */
export const packageOf = (parts: Readonly<Record<string, string>>): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, new TextEncoder().encode(text)])));

/** The namespaces of sheets and workbooks, and of relations. */
export const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const types = "application/vnd.openxmlformats-officedocument";

/** The smallest workbook around one sheet's XML, with other parts added or put in place of these. */
export const workbookAround = (sheet: string, more: Readonly<Record<string, string>> = {}): Uint8Array =>
  packageOf({
    "[Content_Types].xml": `<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${types}.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${types}.spreadsheetml.worksheet+xml"/></Types>`,
    "_rels/.rels": `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<?xml version="1.0"?><workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Log" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    "xl/worksheets/sheet1.xml": sheet,
    ...more,
  });

/** A sheet's XML around its rows. */
export const sheetAround = (rows: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<worksheet xmlns="${main}"><sheetData>${rows}</sheetData></worksheet>`;
