// `node test/examples/expected.mjs`, in the project's folder, works out what the example workbooks must answer and writes it beside them. It reads what is
// typed in the workbooks and takes nothing from src: the files in independent/ say how each value is got.

import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expectedAnswers } from "./independent/answers.mjs";
import { toCsv } from "./independent/csv.mjs";
import { examples } from "./independent/workbook.mjs";

for (const [file, lines] of Object.entries(await expectedAnswers())) writeFileSync(join(examples, file), toCsv(lines));
