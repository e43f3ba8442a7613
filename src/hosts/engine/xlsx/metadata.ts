import { MAIN, OFFICE } from "./namespaces";
import { HEAD, readXml } from "./xml";

/** The kind of metadata that marks a dynamic array, [MS-XLSX] 2.6.258 and the `XLDAPR` type of real files. */
export const DYNAMIC = "XLDAPR";

/** Which numbers in a cell's `cm` mark a dynamic array. */
export const dynamicMarks = (xml: string): ReadonlySet<number> => {
  const types: string[] = [];
  const marks = new Set<number>();
  let list = "";
  let record = 0;
  readXml(xml, "xl/metadata.xml", {
    open: ({ name, attributes }) => {
      if (name === "metadataType") types.push(attributes.name ?? "");
      if (name === "cellMetadata" || name === "valueMetadata" || name === "futureMetadata") list = name;
      if (list !== "cellMetadata") return;
      if (name === "bk") record += 1;
      if (name === "rc" && types[Number(attributes.t) - 1] === DYNAMIC) marks.add(record);
    },
    close: (name) => {
      if (name === list) list = "";
    },
  });
  return marks;
};

const XDA = 'xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"';

export const DYNAMIC_TYPE = `<metadataType name="${DYNAMIC}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;

const properties = (namespace: string): string =>
  `<bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"${namespace}><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk>`;

/** What is said of a dynamic array, in a part that may not know its namespace yet. */
export const DYNAMIC_PROPERTIES = properties(` ${XDA}`);

/** A metadata part that knows dynamic arrays only: its mark is 1. */
export const metadataPart =
  HEAD +
  `<metadata xmlns="${MAIN}" ${XDA}><metadataTypes count="1">${DYNAMIC_TYPE}</metadataTypes>` +
  `<futureMetadata name="${DYNAMIC}" count="1">${properties("")}</futureMetadata>` +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

export const METADATA_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
export const METADATA_RELATION = `${OFFICE}/sheetMetadata`;
