import { looks, type Style } from "../book";
import { CannotKeep } from "./cannot-keep";
import { keptTag, tag } from "./cell-text";
import { spliced } from "./splice";
import { readLists, StylesList } from "./styles-list";
import { FIRST_OWN_FORMAT, solidFill } from "./write-styles";
import { type Opened, readXml } from "./xml";

/**
 * The looks of a workbook's cells with more of them behind those that it has. A new look is an old one in which only what differs is
 * another: borders, alignment, the font's size stay.
 */
export class MoreStyles {
  readonly #formats = new StylesList("numFmts");
  readonly #fonts = new StylesList("fonts");
  readonly #fills = new StylesList("fills");
  readonly #looks = new StylesList("cellXfs");
  readonly #start: number;
  readonly #known = new Map<string, number>();

  constructor(
    readonly written: string,
    readonly part: string,
  ) {
    const lists = [this.#formats, this.#fonts, this.#fills, this.#looks];
    this.#start = readLists(written, part, lists);
    if (![this.#fonts, this.#fills, this.#looks].every(({ entries }) => entries.length > 0))
      throw new CannotKeep(`${part} lists no looks to start from`);
  }

  /** The number of the look that differs from the one of number `base` as `to` does from `from`. */
  changed(base: number, from: Style, to: Style): number {
    const key = JSON.stringify([base, ...looks.map((what) => [from[what], to[what]])]);
    const known = this.#known.get(key) ?? this.#look(base, from, to);
    this.#known.set(key, known);
    return known;
  }

  /** The number of a look that owes nothing to others; undefined when it is none. */
  numberOf(style: Style = {}): string | undefined {
    const number = this.changed(0, {}, style);
    return number === 0 ? undefined : String(number);
  }

  xml(): string {
    const lists = [this.#formats, this.#fonts, this.#fills, this.#looks];
    return spliced(
      this.written,
      lists.flatMap((list) => list.splices(this.#start)),
    );
  }

  #look(base: number, from: Style, to: Style): number {
    const look = elementOf(this.#looks.entry(base) ?? this.#looks.entry(0) ?? "", this.part);
    const differs = (...what: (keyof Style)[]) =>
      what.some((one) => (from[one] || undefined) !== (to[one] || undefined));
    if (!differs(...looks)) return base;
    const attributes: Record<string, string> = { ...look.open.attributes };
    let { children } = look;
    if (differs("format")) {
      attributes.numFmtId = String(this.#format(to.format));
      attributes.applyNumberFormat = "1";
    }
    if (differs("bold", "italic", "color")) {
      attributes.fontId = String(this.#font(Number(attributes.fontId ?? 0), from, to));
      attributes.applyFont = "1";
    }
    if (differs("fill")) {
      attributes.fillId = String(to.fill ? this.#fills.numberOf(`<fill>${solidFill(to.fill)}</fill>`) : 0);
      attributes.applyFill = "1";
    }
    if (differs("wrap")) {
      const written = children.find(({ open }) => open.name === "alignment");
      const { wrapText: _, ...kept } = written?.open.attributes ?? {};
      const alignment = keptTag("alignment", { ...kept, ...(to.wrap && { wrapText: "1" }) }, "/>");
      children = [{ open: { name: "alignment" }, xml: alignment }, ...children.filter((child) => child !== written)];
      attributes.applyAlignment = "1";
    }
    return this.#looks.numberOf(elementText("xf", attributes, children));
  }

  #format(code: string | undefined): number {
    if (code === undefined || code === "General") return 0;
    const listed = this.#formats.entries.map((entry) => elementOf(entry, this.part).open.attributes);
    const same = listed.find(({ formatCode }) => formatCode === code);
    if (same) return Number(same.numFmtId);
    const most = listed.reduce((number, { numFmtId }) => Math.max(number, Number(numFmtId) || 0), FIRST_OWN_FORMAT - 1);
    const number = most + 1;
    this.#formats.numberOf(tag("numFmt", { numFmtId: String(number), formatCode: code }, "/>"));
    return number;
  }

  #font(base: number, from: Style, to: Style): number {
    const font = elementOf(this.#fonts.entry(base) ?? this.#fonts.entry(0) ?? "", this.part);
    const without = (name: string, isIt: boolean) =>
      isIt ? children.filter(({ open }) => open.name !== name) : [...children];
    const one = (name: string, xml: string): Child => ({ open: { name }, xml });
    let { children } = font;
    children = without("i", Boolean(from.italic) !== Boolean(to.italic));
    if (to.italic && !from.italic) children = [one("i", "<i/>"), ...children];
    children = without("b", Boolean(from.bold) !== Boolean(to.bold));
    if (to.bold && !from.bold) children = [one("b", "<b/>"), ...children];
    if (from.color !== to.color) {
      children = without("color", true);
      // The schema has the colour behind the size and before the name.
      const at = children.findIndex(({ open }) => ["name", "family", "charset", "scheme"].includes(open.name));
      const color = to.color ? [one("color", tag("color", { rgb: `FF${to.color}` }, "/>"))] : [];
      const place = at < 0 ? children.length : at;
      children = [...children.slice(0, place), ...color, ...children.slice(place)];
    }
    return this.#fonts.numberOf(elementText("font", font.open.attributes, children));
  }
}

interface Child {
  readonly open: Pick<Opened, "name"> & Partial<Opened>;
  readonly xml: string;
}

/** An element that stands alone, with the elements in it. */
const elementOf = (xml: string, part: string): { readonly open: Opened; readonly children: readonly Child[] } => {
  let root: Opened | undefined;
  let child: Opened | undefined;
  let depth = 0;
  const children: Child[] = [];
  readXml(xml, part, {
    open: (element) => {
      depth += 1;
      if (depth === 1) root = element;
      if (depth === 2) child = element;
    },
    close: (_, __, to) => {
      if (depth === 2 && child) children.push({ open: child, xml: xml.slice(child.from, to) });
      depth -= 1;
    },
  });
  if (!root) throw new CannotKeep(`${part} lists no looks to start from`);
  return { open: root, children };
};

const elementText = (name: string, attributes: Readonly<Record<string, string>>, children: readonly Child[]): string =>
  children.length === 0
    ? keptTag(name, attributes, "/>")
    : `${keptTag(name, attributes)}${children.map(({ xml }) => xml).join("")}</${name}>`;
