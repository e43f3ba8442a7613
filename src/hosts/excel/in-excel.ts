/** Runs what a person has asked for in Excel. What Excel refuses is thrown as a sentence to show. */
export const inExcel = <T>(action: (context: Excel.RequestContext) => Promise<T>): Promise<T> =>
  Excel.run(action).catch(refuse);

/** Runs what nobody has asked for just now, such as reading the new selection: it waits while a cell is being edited. */
export const whenIdle = <T>(action: (context: Excel.RequestContext) => Promise<T>): Promise<T> =>
  Excel.run({ delayForCellEdit: true }, action).catch(refuse);

/** By the codes of Excel.ErrorCodes. */
const sentences: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: "A cell is being edited: press Enter or Esc in the sheet, then try again.",
  AccessDenied: "The workbook or the sheet is protected: unprotect it, then try again.",
  ItemNotFound: "What the formula names is not in this workbook.",
  InvalidReference: "The formula refers to cells that are not in this workbook.",
  InvalidArgument: "Excel cannot take this formula or address.",
  InvalidSelection: "Select a cell first.",
  RequestAborted: "Excel broke the request off: try again.",
  ResponsePayloadSizeLimitExceeded: "These are more cells than Excel hands over at once.",
};

const refuse = (thrown: unknown): never => {
  const { code, message } = thrown as { code?: unknown; message?: string };
  // Without a code the sentence is our own.
  if (typeof code !== "string") throw thrown;
  throw new Error(sentences[code] ?? `Excel refused: ${message || code}`, { cause: thrown });
};
