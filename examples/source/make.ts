import { writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { catalogue } from "../../src/functions";
import { books } from "./books";
import { madeOf } from "./made";

// `npm run examples` makes the workbooks of this folder from their sources, with the answers of every formula in place.
// The bundle of this file stands in dist/examples.

const examples = join(dirname(fileURLToPath(import.meta.url)), "..", "..", "examples");

for (const [file, book] of Object.entries(books)) {
  const bytes = await madeOf(book, catalogue);
  writeFileSync(join(examples, file), bytes);
  process.stdout.write(`${file}: ${book.sheets.length} sheets, ${bytes.length} bytes\n`);
}
// The engine keeps timers running after its work.
process.exit();
