import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { zipSync } from "fflate";
import { pack, writeEntries } from "../../../src/hosts/engine/xlsx/zip-write";
import { main, office, sheetAround, workbookAround } from "../engine/packages";

const root = join(__dirname, "../../..");

let folder: string;
beforeAll(() => {
  const { status, stderr } = spawnSync(process.execPath, [".setup/prepare.mjs", "workbook"], {
    cwd: root,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  folder = mkdtempSync(join(tmpdir(), "bimetal-hostile-"));
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The command in a process that may use 96 MB for its objects and 2 GB of addresses, and half a minute. The input must stay as it is. */
const recalculated = (bytes: Uint8Array, ...words: string[]) => {
  const file = join(folder, "in.xlsx");
  writeFileSync(file, bytes);
  const { mtimeMs } = statSync(file);
  const script = join(root, "dist/workbook/recalculate.mjs");
  const asked = [process.execPath, "--max-old-space-size=96", script, file, ...words];
  const [program = "", ...rest] =
    process.platform === "win32" ? asked : ["sh", "-c", 'ulimit -v 2000000; exec "$0" "$@"', ...asked];
  const { status, stdout, stderr } = spawnSync(program, rest, { encoding: "utf8", timeout: 30_000, maxBuffer: 1e8 });
  expect(Buffer.from(bytes).equals(readFileSync(file))).toBe(true);
  expect(statSync(file).mtimeMs).toBe(mtimeMs);
  return { status, stdout, stderr: stderr.replaceAll(file, "in.xlsx") };
};

/** Also asks for both kinds of copy, of which none must come to be. */
const refusal = (bytes: Uint8Array, ...words: string[]): string => {
  const [copy, values] = [join(folder, "out.xlsx"), join(folder, "values.xlsx")];
  const { status, stdout, stderr } = recalculated(bytes, "--out", copy, "--values", values, ...words);
  expect({ status, stdout, sentences: stderr.trimEnd().split("\n").length }).toEqual({
    status: 2,
    stdout: "",
    sentences: 1,
  });
  expect([existsSync(copy), existsSync(values)]).toEqual([false, false]);
  // Nor half of one.
  expect(readdirSync(folder)).toEqual(["in.xlsx"]);
  return stderr.trimEnd();
};

const formulas = (...texts: string[]): Uint8Array =>
  workbookAround(
    sheetAround(
      texts
        .map((text, row) => {
          const formula = text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
          return `<row r="${row + 1}"><c r="A${row + 1}"><f>${formula}</f><v>5</v></c></row>`;
        })
        .join(""),
    ),
  );

const names = (count: number, meaning: (place: number) => string): Uint8Array =>
  workbookAround(sheetAround('<row r="1"><c r="A1"><f>Name0+1</f><v>5</v></c></row>'), {
    "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Log" sheetId="1" r:id="rId1"/></sheets><definedNames>${Array.from({ length: count }, (_, place) => `<definedName name="Name${place}">${meaning(place)}</definedName>`).join("")}</definedNames></workbook>`,
  });

/** A package whose directory promises another size for a part than it has. */
const promising = (bytes: Uint8Array, size: number): Uint8Array => {
  const lying = bytes.slice();
  const view = new DataView(lying.buffer);
  for (let at = 0; at < lying.length - 46; at++)
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, size, true);
  return lying;
};

const entities = `<!DOCTYPE x [<!ENTITY a0 "ha">${Array.from({ length: 30 }, (_, n) => `<!ENTITY a${n + 1} "&a${n};&a${n};">`).join("")}]>`;
const sheet = (before: string, text: string) =>
  `<?xml version="1.0"?>${before}<worksheet xmlns="${main}"><sheetData><row r="1"><c r="A1" t="str"><v>${text}</v></c></row></sheetData></worksheet>`;

describe("a file that cannot be taken ends in one sentence and 2, without a copy", () => {
  test.each<[string, () => Uint8Array, RegExp]>([
    ["not a zip: nothing", () => new Uint8Array(), /no zip package/],
    [
      "not a zip: a picture",
      () => Uint8Array.from([0x89, 0x50, 0x4e, 0x47, ...Array.from({ length: 500 }, () => 7)]),
      /no zip package/,
    ],
    ["not a zip: an old workbook", () => Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1), /save it as \.xlsx/],
    [
      "a zip bomb that promises 4 GB",
      () => promising(workbookAround(sheetAround("")), 0xfffffff0),
      /unpacks to more than is reasonable/,
    ],
    [
      "a zip bomb: 60 MB of blanks in 60 kB",
      () => workbookAround(sheetAround(" ".repeat(6e7))),
      /unpacks to more than is reasonable/,
    ],
    [
      "a zip bomb: many parts that are large together",
      () => {
        const part = pack("", new Uint8Array(19e6));
        return writeEntries(Array.from({ length: 40 }, (_, n) => ({ ...part, name: `xl/${n}.xml` })));
      },
      /unpacks to more than is reasonable/,
    ],
    [
      "a zip of 20000 parts",
      () =>
        zipSync(Object.fromEntries(Array.from({ length: 20_000 }, (_, n) => [`xl/${n}.xml`, new Uint8Array()])), {
          level: 0,
        }),
      /has 20000 parts/,
    ],
    [
      "huge dimensions: a cell beyond the last row",
      () => workbookAround(sheetAround('<row r="4000000000"><c r="A4000000000"><v>1</v></c></row>')),
      /outside any sheet|no place/,
    ],
    [
      "huge dimensions: array formulas over whole sheets",
      () =>
        workbookAround(
          sheetAround(
            Array.from(
              { length: 9 },
              (_, n) => `<row r="${n + 1}"><c r="A${n + 1}"><f t="array" ref="A${n + 1}:XFD1048576">1</f></c></row>`,
            ).join(""),
          ),
        ),
      /too many rows/,
    ],
    [
      "huge dimensions: more cells than memory holds",
      () => workbookAround(sheetAround(`<row>${"<c><v>1</v></c>".repeat(16_000)}</row>`.repeat(220))),
      /more memory than this program may use/,
    ],
    ["XML entities that multiply", () => workbookAround(sheet(entities, "&a30;")), /declares a document type/],
    [
      "XML entities that read a file",
      () => workbookAround(sheet('<!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/passwd">]>', "&e;")),
      /declares a document type/,
    ],
    [
      "XML nested without end",
      () => workbookAround(sheetAround("<a>".repeat(3e5))),
      /nests its elements more than 256 deep/,
    ],
    [
      "a formula of a million characters",
      () => formulas(`1${"+1".repeat(500_000)}`),
      /more characters than any spreadsheet takes/,
    ],
  ])("%s", (_, make, sentence) => expect(refusal(make())).toMatch(sentence));

  test("a calculation that does not end is given up after the minutes it has", () => {
    const endless = formulas("REDUCE(0,SEQUENCE(9000),LAMBDA(a,x,a+SUM(SEQUENCE(9000)*x)))");
    expect(refusal(endless, "--minutes", "0.03")).toBe("It did not end within 0.03 minutes and was given up.");
  });

  test("a calculation that outgrows the memory is given up", () => {
    expect(refusal(formulas("SUM(SEQUENCE(1000000,8))"))).toMatch(/more memory than this program may use/);
  });

  test("a cell in the last row and column is not printed as seventeen thousand million commas", () => {
    const corner = workbookAround(sheetAround('<row r="1048576"><c r="XFD1048576"><f>1+1</f><v>1</v></c></row>'));
    expect(refusal(corner, "--csv", "Log")).toBe(
      'The sheet "Log" reaches to XFD1048576: more than the 5000000 cells that are printed.',
    );
  });
});

describe("what can be read but not calculated is named, and its values stay", () => {
  test("cyclic formulas", () => {
    const { status, stdout } = recalculated(formulas("A2+1", "A3+1", "A1+1", "1+1"));
    expect(status).toBe(1);
    expect(stdout.match(/It leads back to itself/g)).toHaveLength(3);
  });

  test("external links are not followed", () => {
    const { status, stdout } = recalculated(formulas("[1]Log!A1", "[other.xlsx]Log!A1"));
    expect(status).toBe(1);
    expect(stdout.match(/It refers to another workbook/g)).toHaveLength(2);
  });

  test("formulas that would run commands or ask the network", () => {
    const asking = [
      "cmd|' /C calc'!A0",
      'WEBSERVICE("http://127.0.0.1:9/")',
      'CALL("Kernel32","WinExec","JFJ","calc",0)',
      'EXEC("calc")',
      'RTD("x","","y")',
    ];
    const { status, stdout } = recalculated(formulas(...asking));
    expect(status).toBe(1);
    expect(stdout).toContain(`${asking.length} formulas were not calculated and keep their values:`);
  });

  test("names that stand for names without end, and formulas nested without end", () => {
    const doubling = names(40, (place) => (place === 39 ? "1" : `Name${place + 1}+Name${place + 1}`));
    expect(recalculated(doubling).stdout).toContain("The name Name0 is not known here. =Name0+1");
    const wide = names(200, (place) =>
      place === 199 ? "1" : Array.from({ length: 1000 }, () => `Name${place + 1}`).join("+"),
    );
    expect(recalculated(wide).stdout).toContain("The name Name0 is not known here. =Name0+1");
    const nested = recalculated(
      formulas(
        `${"(".repeat(9000)}1${")".repeat(9000)}`,
        `${"-".repeat(9000)}1`,
        `${"IF(1,".repeat(5000)}1${")".repeat(5000)}`,
      ),
    );
    expect(nested.stdout).toContain("3 formulas were not calculated and keep their values:");
    // Of each the beginning is told.
    expect(Math.max(...nested.stdout.split("\n").map((line) => line.length))).toBeLessThan(300);
  });

  test("a LAMBDA that calls itself for ever", () => {
    const { status, stdout } = recalculated(formulas("LET(f,LAMBDA(f,n,f(f,n+1)),f(f,0))", "1+1"));
    expect(status).toBe(1);
    expect(stdout).toContain("1 formula was not calculated and keeps its value:");
  });
});

describe("what a terminal or a spreadsheet would obey is printed harmlessly", () => {
  test("texts, formulas and names with control characters", () => {
    const shell = workbookAround(
      sheetAround(
        '<row r="1"><c r="A1"><f>NOSUCH("_x001B_[2J_x000A_=x")</f><v>1</v></c><c r="B1" t="str"><v>_x001B_]0;owned_x0007_</v></c></row>',
      ),
      {
        "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Log_x001B_[31m&#x9b;31m" sheetId="1" r:id="rId1"/></sheets></workbook>`,
      },
    );
    const summary = recalculated(shell);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that must not come.
    const obeyed = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/;
    expect(summary.stdout).toContain("The function NOSUCH is not known here.");
    expect(summary.stdout).not.toMatch(obeyed);
    const { stdout, stderr } = recalculated(shell, "--csv", "Log_x001B_[31m\u009b31m");
    expect(stdout).toContain("owned");
    expect(stdout + stderr).not.toMatch(obeyed);
  });

  test("cells of CSV that begin as formulas do get an apostrophe, whatever their kind", () => {
    const texts = [
      "=1+1",
      "+1",
      "-1",
      "@SUM(1)",
      " =1+1",
      "_x0009_=1",
      "_x000D_=1",
      "_x000A_=1",
      "＝1+1",
      "a,=1",
      "a;=1+1",
      'a"=1',
      "#N/A",
      "-5 A",
    ];
    const row = texts
      .map((text) => `<c t="str"><v xml:space="preserve">${text.replaceAll('"', "&quot;")}</v></c>`)
      .join("");
    const others =
      '<c t="e"><v>=1+1</v></c><c t="e"><v>#N/A</v></c><c><v>-5</v></c><c><f>"="&amp;"1+1"</f></c><c t="inlineStr"><is><t>@x</t></is></c>';
    const { stdout } = recalculated(workbookAround(sheetAround(`<row>${row}${others}</row>`)), "--csv", "Log");
    expect(stdout).toBe(
      `'=1+1,'+1,'-1,'@SUM(1),' =1+1,"'\t=1","'\r=1","'\n=1",'＝1+1,"a,=1","a;=1+1","a""=1",#N/A,'-5 A,'=1+1,#N/A,-5,'=1+1,'@x\n`,
    );
  });
});
