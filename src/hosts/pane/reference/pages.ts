import { referencePages } from "../../../derived/reference";
import { catalogue } from "../../../functions/index";

/** The reference pages by file name; the build runs this and writes the files. */
export default () => referencePages(catalogue);
