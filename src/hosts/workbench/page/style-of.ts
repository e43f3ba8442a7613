import type { ICellData, IWorkbookData, Nullable } from "@univerjs/core";
import type { Style } from "../../engine/book";

/** The part of a cell's looks that a workbook of ours keeps; undefined when there is none. */
export const styleOf = (own: ICellData["s"], known: IWorkbookData["styles"]): Style | undefined => {
  const look = typeof own === "string" ? known[own] : own;
  if (!look) return undefined;
  const style: Style = {
    ...(look.n?.pattern && { format: look.n.pattern }),
    ...(look.bl === 1 && { bold: true }),
    ...(look.it === 1 && { italic: true }),
    ...(hex(look.bg?.rgb) && { fill: hex(look.bg?.rgb) }),
    ...(hex(look.cl?.rgb) && { color: hex(look.cl?.rgb) }),
    ...(look.tb === 3 && { wrap: true }),
  };
  return Object.keys(style).length > 0 ? style : undefined;
};

/** "#F1EDE3" and "rgb(241, 237, 227)" as F1EDE3. */
const hex = (color: Nullable<string>): string | undefined => {
  const written = /^#([0-9a-f]{6})$/i.exec(color || "")?.[1];
  if (written) return written.toUpperCase();
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(color ?? "")?.slice(1, 4);
  return parts?.map((part) => Number(part).toString(16).padStart(2, "0").toUpperCase()).join("");
};
