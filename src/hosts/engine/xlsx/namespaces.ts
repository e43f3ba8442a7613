/** Of sheets, looks and the workbook (ECMA-376 part 1, annex A). */
export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
/** Of the kinds of relations. */
export const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
/** Of the package itself (ECMA-376 part 2). */
export const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
