import type { AnyDefinition } from "../../src/definition/define";
import type { Book } from "../../src/hosts/engine/book";
import { calculate } from "../../src/hosts/engine/calculate";
import { withValues } from "../../src/hosts/engine/with-values";
import { writeWorkbook } from "../../src/hosts/engine/xlsx/write-workbook";

/** An example as the bytes of its file, every formula calculated. */
export const madeOf = async (book: Book, catalogue: readonly AnyDefinition[]): Promise<Uint8Array> => {
  const view = await calculate(book, catalogue);
  const [kept] = view.kept;
  if (kept) throw new Error(`${kept.formula} was not calculated: ${kept.why}`);
  const bytes = writeWorkbook(withValues(book, view), catalogue);
  view.close();
  return bytes;
};
