/** A file that cannot be taken as a workbook. The message is one sentence for the person who gave it. */
export class UnreadableWorkbook extends Error {
  override readonly name = "UnreadableWorkbook";
}
