import { catalogue } from "../../functions";
import { recalculateWorkbook } from "./recalculate-workbook";
import { runCommand } from "./terminal";

void runCommand((words) => recalculateWorkbook(words, catalogue, (sentence) => process.stderr.write(`${sentence}\n`)));
