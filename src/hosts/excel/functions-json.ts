import { functionsJson } from "../../derived/functions-json";
import { catalogue } from "../../functions/index";

/** The content of functions.json; the build runs this and writes the file. */
export default () => functionsJson(catalogue);
