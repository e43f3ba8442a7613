import { catalogue } from "../../functions";
import { answerFormula } from "./answer-formula";
import { work } from "./work";

void work((words) => answerFormula(words, catalogue));
