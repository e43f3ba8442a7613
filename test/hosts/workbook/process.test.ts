import { spawnSync } from "node:child_process";
import { join } from "node:path";

const root = join(__dirname, "../../..");
const node = (...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, words, { cwd: root, encoding: "utf8" });
  return { status, stdout, stderr };
};

// The commands as they are run: built bundles in processes of their own.
describe("in a process of its own", () => {
  beforeAll(() => {
    const { status, stderr } = node(".setup/prepare.mjs", "workbook");
    if (status !== 0) throw new Error(stderr);
  }, 120_000);

  test("cell answers on the standard output and ends with 0", () => {
    expect(node("dist/workbook/cell.mjs", "=BIMETAL.CONTACT.WATTS({20;30},0.16)")).toEqual({
      ...{ status: 0, stdout: "3.2\n4.8\n", stderr: "" },
    });
  });

  test("cell gives a refusal's sentence on the standard error and ends with 1", () => {
    const { status, stdout, stderr } = node("dist/workbook/cell.mjs", '=BIMETAL.CONTACT.WATTS("x",1)');
    expect({ status, stdout }).toEqual({ status: 1, stdout: "#VALUE!\n" });
    expect(stderr).toBe('current: a number in A is wanted, not the text "x".\n');
  });

  test("recalculate refuses what is no workbook in one sentence and ends with 2", () => {
    const { status, stdout, stderr } = node("dist/workbook/recalculate.mjs", "package.json");
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toBe(
      "package.json: This is not an .xlsx workbook: it is no zip package. Save a .csv as .xlsx in a spreadsheet, or paste its rows.\n",
    );
  });
});
