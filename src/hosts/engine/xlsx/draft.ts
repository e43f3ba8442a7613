import { CannotKeep } from "./cannot-keep";
import type { OpenedWorkbook } from "./open-workbook";
import { beforeEnd, folderOf, overrideOf, relationOf, relationsPart, TYPES } from "./package-edits";
import { relationsXml } from "./write-workbook";
import { readXml } from "./xml";

/** A package being changed: its parts as they are to be, over those that it has. */
export class Draft {
  /** The changed parts' texts, by path. */
  readonly changes: Map<string, string>;

  constructor(
    readonly opened: OpenedWorkbook,
    changes: Iterable<readonly [string, string]> = [],
  ) {
    this.changes = new Map(changes);
  }

  has(part: string): boolean {
    return this.opened.pack.has(part) || this.changes.has(part);
  }

  text(part: string): string {
    return this.changes.get(part) ?? this.opened.pack.text(part);
  }

  put(part: string, text: string): void {
    this.changes.set(part, text);
  }

  /** Adds a part that no other refers to yet, and says what it is. */
  add(part: string, type: string, text: string): void {
    this.put(part, text);
    this.put(TYPES, this.#withElement(TYPES, "Types", overrideOf(part, type)));
  }

  /** Lets a part refer to another, given by its path from the first one's folder; tells under which id. */
  relate(from: string, type: string, target: string): string {
    const part = relationsPart(from);
    if (!this.has(part)) {
      this.put(part, relationsXml([[type, target]]));
      return "rId1";
    }
    const ids = new Set<string | undefined>();
    readXml(this.text(part), part, { open: ({ attributes }) => void ids.add(attributes.Id) });
    let number = ids.size;
    while (ids.has(`rId${number}`)) number += 1;
    const id = `rId${number}`;
    this.put(part, this.#withElement(part, "Relationships", relationOf(id, type, target)));
    return id;
  }

  /** A free path for one more part: "xl/worksheets/sheet4.xml". */
  freePath(folder: string, stem: string): string {
    let number = 1;
    while (this.has(`${folder}${stem}${number}.xml`)) number += 1;
    return `${folder}${stem}${number}.xml`;
  }

  /** The folder of the workbook's part. */
  get folder(): string {
    return folderOf(this.opened.workbookPart);
  }

  #withElement(part: string, root: string, element: string): string {
    const xml = this.text(part);
    let isRoot = true;
    readXml(xml, part, {
      open: ({ name }) => {
        if (isRoot && name !== root) throw new CannotKeep(`${part} is written in a way that nothing can be added to`);
        isRoot = false;
      },
    });
    return beforeEnd(xml, part, element);
  }
}
