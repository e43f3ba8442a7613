import { Workbook } from "exceljs";

/** A workbook as a reader sees it that is not ours. */
export const readByExceljs = async (bytes: Uint8Array): Promise<Workbook> => {
  const workbook = new Workbook();
  // Its types know a Buffer of an older Node.
  await workbook.xlsx.load(Buffer.from(bytes) as never);
  return workbook;
};
