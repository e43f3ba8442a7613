import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { catalogue } from "../../functions";
import { calculate } from "../engine/calculate";
import { plainLine } from "../engine/plain-line";
import { readWorkbook } from "../engine/xlsx/open-workbook";
import { UnreadableWorkbook } from "../engine/xlsx/unreadable";
import { listen } from "./listen";
import { logTable } from "./log-table";
import { hasDisplay, openBrowser } from "./open-browser";
import { printKept, printTable } from "./print-table";
import { answerFor } from "./site";

// npm start [-- workbook.xlsx] [-- --once] [-- --no-open]: prints the recalculated log, then serves the workbench until Ctrl-C.

const here = fileURLToPath(new URL(".", import.meta.url));

const main = async (): Promise<void> => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { once: { type: "boolean" }, "no-open": { type: "boolean" } },
  });
  const file = positionals[0] ?? join(here, "../../examples/test-log.xlsx");
  const bytes = await readFile(file).catch(() => {
    throw new UnreadableWorkbook(`${file} cannot be read: is it there?`);
  });
  const book = readWorkbook(bytes, catalogue);
  const calculated = await calculate(book, catalogue);
  const table = logTable(book, calculated);
  console.log(`${plainLine(`${basename(file)}, recalculated${table ? `, sheet ${table.sheet}` : ""}`)}\n`);
  if (table) console.log(`${printTable(table)}\n`);
  for (const line of printKept(calculated.kept)) console.log(line);
  if (values.once) return;

  const page = join(here, "page");
  const styleHashes = JSON.parse(await readFile(join(page, "style-hashes.json"), "utf8")) as string[];
  const { address } = await listen(answerFor({ folder: page, styleHashes, workbook: { name: basename(file), bytes } }));
  console.log(`The workbench is open at ${address} (for this machine only; Ctrl-C ends it).`);
  if (!values["no-open"] && hasDisplay()) openBrowser(address);
};

main().then(
  () => {},
  (reason: unknown) => {
    process.exitCode = reason instanceof UnreadableWorkbook ? 2 : 1;
    console.error(reason instanceof UnreadableWorkbook ? reason.message : reason);
  },
);
