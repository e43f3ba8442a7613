import { SheetClipboardService } from "@univerjs/sheets-ui";
import { pastedRows } from "./pasted-rows";

/** The engine's way to paste, less what comes from another program: its rows are handed to `put`. */
export const pastesBy = (put: (rows: readonly (readonly string[])[]) => void): typeof SheetClipboardService =>
  class extends SheetClipboardService {
    /** By the keyboard. */
    override async legacyPaste(html?: string, text?: string, files?: File[]): Promise<boolean> {
      const rows = pastedRows(html, text);
      if (!rows) return super.legacyPaste(html, text, files);
      put(rows);
      return true;
    }

    /** By the grid's menu. */
    override async paste(
      item: ClipboardItem,
      pasteType?: Parameters<SheetClipboardService["paste"]>[1],
    ): Promise<boolean> {
      const read = async (type: string) => (item.types.includes(type) ? (await item.getType(type)).text() : "");
      const rows = pastedRows(await read("text/html"), await read("text/plain"));
      if (!rows) return super.paste(item, pasteType);
      put(rows);
      return true;
    }
  };
