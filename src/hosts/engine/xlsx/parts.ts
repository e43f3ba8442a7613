import { UnreadableWorkbook } from "./unreadable";
import { decodeXml, readXml } from "./xml";
import { type Entry, readEntries, unpack } from "./zip";

/** A workbook's package, with its parts by path. Parts are unpacked when they are asked for. */
export class Package {
  readonly entries: readonly Entry[];
  readonly #byName: ReadonlyMap<string, Entry>;

  constructor(bytes: Uint8Array) {
    this.entries = readEntries(bytes);
    this.#byName = new Map(this.entries.map((entry) => [entry.name.toLowerCase(), entry]));
  }

  has(path: string): boolean {
    return this.#byName.has(path.toLowerCase());
  }

  entry(path: string): Entry {
    const entry = this.#byName.get(path.toLowerCase());
    if (!entry) throw new UnreadableWorkbook(`This is not a complete .xlsx workbook: it has no part ${path}.`);
    return entry;
  }

  text(path: string): string {
    return decodeXml(unpack(this.entry(path)), path);
  }
}

interface Relation {
  readonly id: string;
  /** The last word of its type: "worksheet", "table", "sharedStrings". */
  readonly type: string;
  readonly target: string;
}

/** The parts that a part refers to, by path. Links out of the package are left out. */
export const relationsOf = (pack: Package, path: string): Relation[] => {
  const folder = path.split("/").slice(0, -1);
  const own = [...folder, "_rels", `${path.split("/").at(-1)}.rels`].join("/");
  if (!pack.has(own)) return [];
  const relations: Relation[] = [];
  readXml(pack.text(own), own, {
    open: ({ name, attributes }) => {
      const { Id: id, Type: type, Target: target, TargetMode: mode } = attributes;
      if (name !== "Relationship" || !id || !type || !target || mode === "External") return;
      relations.push({ id, type: type.split("/").at(-1) ?? "", target: resolved(folder, target) });
    },
  });
  return relations;
};

const resolved = (folder: readonly string[], target: string): string => {
  const path = target.startsWith("/") ? [] : [...folder];
  for (const step of target.replace(/^\//, "").split("/"))
    if (step === "..") path.pop();
    else if (step !== ".") path.push(step);
  return path.join("/");
};

const STRICT = "http://purl.oclc.org/ooxml/";

/** Refuses the spellings of a part that a patch could not be sure of. */
export const checkRoot = (name: string, attributes: Readonly<Record<string, string>>, part: string): void => {
  if (name.includes(":"))
    throw new UnreadableWorkbook(
      `This workbook cannot be read: ${part} is written with prefixes (<${name}>); save it once in a spreadsheet.`,
    );
  if (Object.values(attributes).some((value) => value.startsWith(STRICT)))
    throw new UnreadableWorkbook("This workbook is saved as Strict Open XML: save it as an ordinary .xlsx workbook.");
};
