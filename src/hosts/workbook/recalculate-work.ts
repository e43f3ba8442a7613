import { catalogue } from "../../functions";
import { recalculateWorkbook } from "./recalculate-workbook";
import { work } from "./work";

void work((words, listener) => recalculateWorkbook(words, catalogue, listener));
