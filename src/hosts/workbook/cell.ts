import { catalogue } from "../../functions";
import { answerFormula } from "./answer-formula";
import { runCommand } from "./terminal";

void runCommand((words) => answerFormula(words, catalogue));
