import type { Style } from "../book";
import { tag } from "./cell-text";
import { MAIN } from "./namespaces";
import { HEAD } from "./xml";

/** Collects the looks of the cells that are written, and says each one's number. */
export class StyleSheet {
  readonly #numbers = new Map<string, number>();
  readonly #formats: string[] = [];
  readonly #fonts: string[] = ['<sz val="11"/><name val="Calibri"/><family val="2"/>'];
  readonly #fills: string[] = ['<patternFill patternType="none"/>', '<patternFill patternType="gray125"/>'];
  readonly #looks: string[] = [tag("xf", { numFmtId: "0", fontId: "0", fillId: "0", borderId: "0", xfId: "0" }, "/>")];

  /** The number for `s`; undefined for a cell without any look of its own. */
  numberOf({ format, bold, italic, fill, color, wrap }: Style = {}): string | undefined {
    const key = JSON.stringify([format, bold, italic, fill, color, wrap]);
    const known = this.#numbers.get(key);
    if (known !== undefined) return known === 0 ? undefined : String(known);
    const font = `${bold ? "<b/>" : ""}${italic ? "<i/>" : ""}<sz val="11"/>${color ? tag("color", { rgb: `FF${color}` }, "/>") : ""}<name val="Calibri"/><family val="2"/>`;
    const fillText = fill ? solidFill(fill) : (this.#fills[0] as string);
    const look = {
      numFmtId: String(format && format !== "General" ? FIRST_OWN_FORMAT + placeIn(this.#formats, format) : 0),
      fontId: String(placeIn(this.#fonts, font)),
      fillId: String(placeIn(this.#fills, fillText)),
      borderId: "0",
      xfId: "0",
      applyNumberFormat: format && "1",
      applyFont: bold || italic || color ? "1" : undefined,
      applyFill: fill && "1",
      applyAlignment: wrap ? "1" : undefined,
    };
    const text = wrap ? `${tag("xf", look)}<alignment vertical="top" wrapText="1"/></xf>` : tag("xf", look, "/>");
    const number = placeIn(
      this.#looks,
      look.numFmtId + look.fontId + look.fillId === "000" && !wrap ? (this.#looks[0] as string) : text,
    );
    this.#numbers.set(key, number);
    return number === 0 ? undefined : String(number);
  }

  xml(): string {
    const formats = this.#formats.map((formatCode, place) =>
      tag("numFmt", { numFmtId: String(FIRST_OWN_FORMAT + place), formatCode }, "/>"),
    );
    const list = (name: string, items: readonly string[]) =>
      items.length === 0 ? "" : `${tag(name, { count: String(items.length) })}${items.join("")}</${name}>`;
    return (
      HEAD +
      `<styleSheet xmlns="${MAIN}">` +
      list("numFmts", formats) +
      list(
        "fonts",
        this.#fonts.map((font) => `<font>${font}</font>`),
      ) +
      list(
        "fills",
        this.#fills.map((fill) => `<fill>${fill}</fill>`),
      ) +
      '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
      list("cellXfs", this.#looks) +
      '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>' +
      "</styleSheet>"
    );
  }
}

/** Numbers below this belong to formats that every spreadsheet knows. */
export const FIRST_OWN_FORMAT = 164;

/** One colour, RRGGBB. */
export const solidFill = (color: string): string =>
  `<patternFill patternType="solid">${tag("fgColor", { rgb: `FF${color}` }, "/>")}<bgColor indexed="64"/></patternFill>`;

const placeIn = (list: string[], item: string): number => {
  const known = list.indexOf(item);
  return known >= 0 ? known : list.push(item) - 1;
};
