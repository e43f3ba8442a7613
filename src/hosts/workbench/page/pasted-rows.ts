/**
 * What another program has put on the clipboard as rows of texts; undefined where that is neither a table nor text, or the grid's
 * own, which it reads best itself. Colours and fonts stay behind: the page's policy refuses the style elements they come in.
 */
export const pastedRows = (html = "", text = ""): string[][] | undefined => {
  if (html.includes("data-copy-id=")) return undefined;
  if (/<table[\s>]/i.test(html)) return rowsOfTable(html.replace(/<style[\s\S]*?<\/style>/gi, ""));
  return text === "" ? undefined : rowsOfText(text);
};

const rowsOfTable = (html: string): string[][] | undefined => {
  const table = new DOMParser().parseFromString(html, "text/html").querySelector("table");
  const rows = [...(table?.rows ?? [])].map(({ cells }) =>
    [...cells].flatMap((cell) => [textOf(cell), ...new Array<string>(cell.colSpan - 1).fill("")]),
  );
  return rows.length > 0 ? rows : undefined;
};

/** Office programs that write the OpenDocument way hand over the whole number beside what is displayed, and its format. */
const textOf = (cell: HTMLTableCellElement): string => {
  const displayed = (cell.textContent ?? "").replace(/\s+/g, " ").trim();
  const number = cell.getAttribute("sdval");
  const format = cell.getAttribute("sdnum")?.split(";").slice(2).join(";") ?? "";
  return number !== null && !/[DMYHS%]/i.test(format) ? number : displayed;
};

/** Fields between tabs; one that holds a tab or a line's end stands in quotation marks. */
const rowsOfText = (text: string): string[][] => {
  const rows: string[][] = [[]];
  const fields = /(?:"((?:[^"]|"")*)"(?=[\t\r\n]|$)|([^\t\r\n]*))(\t|\r\n|\n|\r|$)/g;
  for (const [, quoted, plain = "", end] of text.replace(/(\r\n|\n|\r)$/, "").matchAll(fields)) {
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === "") break;
    if (end !== "\t") rows.push([]);
  }
  return rows;
};
