import { mergeLocales } from "@univerjs/core";
import design from "@univerjs/design/locale/en-US";
import docsUi from "@univerjs/docs-ui/locale/en-US";
import sheets from "@univerjs/sheets/locale/en-US";
import sheetsFormula from "@univerjs/sheets-formula/locale/en-US";
import sheetsFormulaUi from "@univerjs/sheets-formula-ui/locale/en-US";
import numfmtUi from "@univerjs/sheets-numfmt-ui/locale/en-US";
import sheetsUi from "@univerjs/sheets-ui/locale/en-US";
import ui from "@univerjs/ui/locale/en-US";

/** The grid's own words: its menus and the built-in functions' help. */
export const words = mergeLocales(design, ui, docsUi, sheets, sheetsUi, sheetsFormula, sheetsFormulaUi, numfmtUi);
