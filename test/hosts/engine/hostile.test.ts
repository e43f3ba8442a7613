import { zipSync } from "fflate";
import { catalogue } from "../../../src/functions";
import { calculate } from "../../../src/hosts/engine/calculate";
import { runEngine, UnfinishedCalculation } from "../../../src/hosts/engine/run";
import { openWorkbook } from "../../../src/hosts/engine/xlsx/open-workbook";
import { UnreadableWorkbook } from "../../../src/hosts/engine/xlsx/unreadable";
import { cellsFrom } from "./cells-from";
import { main, packageOf, sheetAround, workbookAround } from "./packages";

const refusal = (bytes: Uint8Array): string => {
  try {
    openWorkbook(bytes, catalogue);
  } catch (thrown) {
    if (thrown instanceof UnreadableWorkbook) return thrown.message;
    throw thrown;
  }
  return "read";
};

const text = (content: string) => new TextEncoder().encode(content);
const good = workbookAround(sheetAround('<row r="1"><c r="A1"><v>1</v></c></row>'));

/** A package whose directory promises other sizes than it holds. */
const withSize = (bytes: Uint8Array, name: string, size: number): Uint8Array => {
  const lying = bytes.slice();
  const view = new DataView(lying.buffer);
  for (let at = 0; at < lying.length - 46; at++) {
    if (view.getUint32(at, true) !== 0x02014b50) continue;
    const length = view.getUint16(at + 28, true);
    if (new TextDecoder().decode(lying.subarray(at + 46, at + 46 + length)) === name)
      view.setUint32(at + 24, size, true);
  }
  return lying;
};

describe("a file that is no sound workbook is refused in one sentence", () => {
  test("the sound one is read", () => expect(refusal(good)).toBe("read"));

  test.each<[string, Uint8Array, RegExp]>([
    ["nothing", new Uint8Array(), /no zip package/],
    ["text", text("current,time\n51,12\n"), /no zip package/],
    ["an old .xls, or one with a password", Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 1, 2, 3), /save it as \.xlsx/],
    ["half a file", good.slice(0, good.length / 2), /no zip package/],
    ["a directory that points beyond the end", good.slice(200), /damaged|cut short/],
    ["another package", packageOf({ "word/document.xml": "<w/>" }), /no \.xlsx workbook/],
    [
      "a part that is missing",
      packageOf({
        "_rels/.rels":
          '<Relationships><Relationship Id="a" Type="x/officeDocument" Target="xl/workbook.xml"/></Relationships>',
      }),
      /has no part xl\/workbook\.xml/,
    ],
    [
      "a part that promises 3 GB",
      withSize(good, "xl/worksheets/sheet1.xml", 3e9),
      /unpacks to more than is reasonable/,
    ],
    ["a part that is longer than it promises", withSize(good, "xl/worksheets/sheet1.xml", 10), /damaged/],
    [
      "100 MB of nothing in 100 kB",
      zipSync({ "xl/workbook.xml": new Uint8Array(1e8) }),
      /unpacks to more than is reasonable/,
    ],
    [
      "a document type",
      workbookAround(`<!DOCTYPE x [<!ENTITY a "aaaa">]><worksheet xmlns="${main}"><sheetData/></worksheet>`),
      /declares a document type/,
    ],
    [
      "an entity of its own",
      workbookAround(sheetAround('<row r="1"><c r="A1" t="str"><v>&boom;</v></c></row>')),
      /not well-formed/,
    ],
    ["XML that does not end", workbookAround(`<worksheet xmlns="${main}"><sheetData><row r="1">`), /not well-formed/],
    ["another encoding", workbookAround('<?xml version="1.0" encoding="UTF-16"?><worksheet/>'), /written in UTF-16/],
    [
      "prefixes",
      workbookAround(`<x:worksheet xmlns:x="${main}"><x:sheetData/></x:worksheet>`),
      /written with prefixes/,
    ],
    [
      "the strict form",
      workbookAround('<worksheet xmlns="http://purl.oclc.org/ooxml/spreadsheetml/main"><sheetData/></worksheet>'),
      /Strict Open XML/,
    ],
    [
      "a cell beyond the last row",
      workbookAround(sheetAround('<row r="99999999"><c r="A99999999"><v>1</v></c></row>')),
      /outside any sheet|no place/,
    ],
    [
      "a cell beyond the last column",
      workbookAround(sheetAround('<row r="1"><c r="ZZZZ1"><v>1</v></c></row>')),
      /no place|outside any sheet/,
    ],
    ["rows out of order", workbookAround(sheetAround('<row r="2"/><row r="1"/>')), /out of order/],
    [
      "no sheet",
      workbookAround("", { "xl/workbook.xml": `<workbook xmlns="${main}"><sheets/></workbook>` }),
      /no sheet with cells/,
    ],
  ])("%s", (_, bytes, sentence) => {
    const said = refusal(bytes);
    expect(said).toMatch(sentence);
    expect(said).toMatch(/^[A-Zx].*\.$/);
    expect(said).not.toContain("\n");
  });
});

test("random damage gives a sentence or a workbook, never anything else", () => {
  const log = workbookAround(
    sheetAround('<row r="1"><c r="A1"><f>1+1</f><v>2</v></c><c r="B1" t="str"><v>x</v></c></row>'),
  );
  // A linear congruential generator (Numerical Recipes' constants), so that every run damages alike.
  let state = 1;
  const next = (below: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state % below;
  };
  let refused = 0;
  for (let run = 0; run < 2000; run++) {
    const bytes = log.slice();
    for (let hit = 0; hit <= next(4); hit++) bytes[next(bytes.length)] = next(256);
    if (refusal(bytes) !== "read") refused += 1;
  }
  expect(refused).toBeGreaterThan(1000);
});

test("long circles, deep chains and formulas that read whole columns end in good time", async () => {
  const rows = Array.from(
    { length: 500 },
    (_, row) =>
      `<row r="${row + 1}"><c r="A${row + 1}"><f>A${row === 0 ? 500 : row}+1</f><v>5</v></c><c r="B${row + 1}"><f>SUM(A:A)</f><v>7</v></c></row>`,
  );
  const { book } = openWorkbook(workbookAround(sheetAround(rows.join(""))), catalogue);
  const grid = await calculate(book, catalogue);
  expect(grid.kept).toHaveLength(500);
  expect(grid.valueAt({ sheet: "Log", row: 499, column: 0 })).toBe(5);
  expect(grid.valueAt({ sheet: "Log", row: 499, column: 1 })).toBe(2500);
  grid.close();
});

test("a calculation that takes too long is given up", async () => {
  const cells = cellsFrom([[1], ...Array.from({ length: 5000 }, (_, row) => [`=A${row + 1}+1`])]);
  const run = runEngine({ sheets: [{ name: "S", cells }] }, [], { patienceMinutes: 0 });
  await expect(run).rejects.toThrow(new UnfinishedCalculation("The calculation did not end within 0 minutes."));
});

test("dates that count from 1904 are not reckoned from 1900", async () => {
  const bytes = workbookAround(
    sheetAround(
      '<row r="1"><c r="A1"><f>YEAR(B1)</f><v>2027</v></c><c r="B1"><v>45000</v></c><c r="C1"><f>B1+1</f><v>0</v></c></row>',
    ),
    {
      "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="urn:r"><workbookPr date1904="1"/><sheets><sheet name="Log" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    },
  );
  const grid = await calculate(openWorkbook(bytes, catalogue).book, catalogue);
  expect(grid.kept.map(({ why }) => why)).toEqual([
    "The workbook counts its dates from 1904, and YEAR here from 1900.",
  ]);
  expect(grid.valueAt({ sheet: "Log", row: 0, column: 2 })).toBe(45001);
});
