import { type Cell, CellError, type Range } from "../../definition/cells";
import { inExcel } from "./in-excel";
import { type Place, readReference } from "./reference";

/** The values of a reference as a formula of `sheet` writes it. Rejects with a sentence when it has none to show. */
export const valuesAt = async (reference: string, sheet: string): Promise<Range> => {
  const place = readReference(reference, sheet);
  return inExcel(async (context) => {
    if (place.kind === "columns") return columnsOf(context, place);
    const range = place.kind === "name" ? await named(context, place) : cellsAt(context, place);
    range.load("values,valueTypes");
    await context.sync();
    if (range.isNullObject) throw new Error(`${reference} holds no cells.`);
    return valuesOf(range);
  });
};

/** Blank cells as null and error cells as errors: in `values` both are texts. */
export const valuesOf = ({ values, valueTypes }: Pick<Excel.Range, "values" | "valueTypes">): Range =>
  values.map((row, r) =>
    row.map((value: unknown, c): Cell => {
      const type = valueTypes[r]?.[c];
      if (type === "Empty") return null;
      return type === "Error" ? new CellError(String(value)) : (value as Cell);
    }),
  );

type In<Kind> = Extract<Place, { kind: Kind }>;

const cellsAt = ({ workbook }: Excel.RequestContext, { sheet, cells, isSpill }: In<"cells">): Excel.Range => {
  const range = workbook.worksheets.getItem(sheet).getRange(cells);
  return isSpill ? range.getSpillingToRangeOrNullObject() : range;
};

/** A name of the sheet goes before one of the workbook; a table's bare name is its data. */
const named = async (context: Excel.RequestContext, { sheet, name }: In<"name">): Promise<Excel.Range> => {
  const { workbook } = context;
  const ofSheet = workbook.worksheets.getItem(sheet).names.getItemOrNullObject(name);
  const ofWorkbook = workbook.names.getItemOrNullObject(name);
  const table = workbook.tables.getItemOrNullObject(name);
  for (const item of [ofSheet, ofWorkbook, table]) item.load("name");
  await context.sync();
  if (!ofSheet.isNullObject) return ofSheet.getRangeOrNullObject();
  if (!ofWorkbook.isNullObject) return ofWorkbook.getRangeOrNullObject();
  if (!table.isNullObject) return table.getDataBodyRange();
  throw new Error(`There is no name and no table ${name} in this workbook.`);
};

const columnsOf = async (
  context: Excel.RequestContext,
  { table: name, from, to, isThisRow }: In<"columns">,
): Promise<Range> => {
  const active = context.workbook.getActiveCell();
  const table = name ? context.workbook.tables.getItem(name) : active.getTables(false).getFirst();
  const column = (heading: string) => table.columns.getItem(heading).getDataBodyRange();
  const first = from === undefined ? table.getDataBodyRange() : column(from);
  const range = to === undefined ? first : first.getBoundingRect(column(to));
  range.load("values,valueTypes,rowIndex");
  // "This row" is the row of the formula: inside a spill that of the spill's first cell.
  const parent = active.getSpillParentOrNullObject();
  active.load("rowIndex");
  parent.load("rowIndex");
  await context.sync();
  const all = valuesOf(range);
  if (!isThisRow) return all;
  const row = all[(parent.isNullObject ? active : parent).rowIndex - range.rowIndex];
  if (!row) throw new Error(`The formula is not beside a row of the table ${name}.`);
  return [row];
};
