import { functionsJson } from "../../derived/functions-json";
import { catalogue } from "../../functions/index";

/** The content of functions.json; the build runs this and writes the file. `reference`: the address of the reference pages. */
export default (reference?: string) => functionsJson(catalogue, reference);
