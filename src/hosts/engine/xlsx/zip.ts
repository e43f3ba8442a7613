import { inflateSync } from "fflate";
import { crc32 } from "./crc";
import { UnreadableWorkbook } from "./unreadable";

// The layout is that of PKWARE's APPNOTE.TXT, sections 4.3.7 (local header), 4.3.12 (central directory) and 4.3.16 (its end).

/** One entry as the package's directory lists it. Its bytes stay packed until they are asked for. */
export interface Entry {
  readonly name: string;
  /** The name as it is written, which need not be UTF-8; left out for a new entry. */
  readonly writtenName?: Uint8Array;
  readonly method: number;
  readonly time: number;
  readonly crc: number;
  readonly packed: Uint8Array;
  readonly size: number;
  readonly extra: Uint8Array;
  readonly comment: Uint8Array;
  readonly attributes: readonly [internal: number, external: number];
  readonly versions: readonly [made: number, needed: number];
  readonly flags: number;
}

/** Bounds against files that unpack to more than any real workbook. */
const LIMITS = { entries: 10_000, partBytes: 400e6, allBytes: 600e6, ratio: 1000, freeBytes: 20e6 };

const noZip =
  "This is not an .xlsx workbook: it is no zip package. Save a .csv as .xlsx in a spreadsheet, or paste its rows.";

/** The entries of a zip package, in its own order. Throws UnreadableWorkbook. */
export const readEntries = (bytes: Uint8Array): Entry[] => {
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf)
    throw new UnreadableWorkbook(
      "This is an .xls workbook or one with a password: save it as .xlsx without a password.",
    );
  try {
    return entriesOf(bytes);
  } catch (thrown) {
    if (thrown instanceof RangeError) throw new UnreadableWorkbook("This workbook is cut short or damaged.");
    throw thrown;
  }
};

const entriesOf = (bytes: Uint8Array): Entry[] => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (count === 0xffff || at === 0xffffffff)
    throw new UnreadableWorkbook("This workbook is too large (a zip64 package).");
  if (count > LIMITS.entries)
    throw new UnreadableWorkbook(`This workbook has ${count} parts, more than ${LIMITS.entries}.`);
  const entries: Entry[] = [];
  const names = new Set<string>();
  let all = 0;
  for (let i = 0; i < count; i++) {
    if (view.getUint32(at, true) !== 0x02014b50) throw new UnreadableWorkbook("This workbook's directory is damaged.");
    const u16 = (offset: number) => view.getUint16(at + offset, true);
    const u32 = (offset: number) => view.getUint32(at + offset, true);
    const [packedSize, size, local] = [u32(20), u32(24), u32(42)];
    const [nameLength, extraLength, commentLength] = [u16(28), u16(30), u16(32)];
    const writtenName = slice(bytes, at + 46, nameLength);
    const name = new TextDecoder().decode(writtenName);
    if (u16(8) & 1) throw new UnreadableWorkbook("This workbook is encrypted.");
    if (names.has(name.toLowerCase())) throw new UnreadableWorkbook(`This workbook holds the part ${name} twice.`);
    names.add(name.toLowerCase());
    all += size;
    if (
      size > LIMITS.partBytes ||
      all > LIMITS.allBytes ||
      (size > LIMITS.freeBytes && size > packedSize * LIMITS.ratio)
    )
      throw new UnreadableWorkbook(`This workbook unpacks to more than is reasonable (${name}: ${size} bytes).`);
    if (view.getUint32(local, true) !== 0x04034b50)
      throw new UnreadableWorkbook(`This workbook's part ${name} is damaged.`);
    const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
    entries.push({
      name,
      writtenName,
      method: u16(10),
      time: u32(12),
      crc: u32(16),
      packed: slice(bytes, start, packedSize),
      size,
      extra: slice(bytes, at + 46 + nameLength, extraLength),
      comment: slice(bytes, at + 46 + nameLength + extraLength, commentLength),
      attributes: [u16(36), u32(38)],
      versions: [u16(4), u16(6)],
      flags: u16(8),
    });
    at += 46 + nameLength + extraLength + commentLength;
  }
  return entries;
};

const endOfDirectory = (view: DataView): number => {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 0xffff); at--)
    if (view.getUint32(at, true) === 0x06054b50) return at;
  throw new UnreadableWorkbook(noZip);
};

const slice = (bytes: Uint8Array, from: number, length: number): Uint8Array => {
  if (from + length > bytes.length) throw new RangeError("beyond the end");
  return bytes.subarray(from, from + length);
};

/** An entry's bytes, unpacked and checked. Never more than the directory promised. */
export const unpack = ({ name, method, packed, size, crc }: Entry): Uint8Array => {
  const damaged = () => new UnreadableWorkbook(`This workbook's part ${name} is damaged.`);
  let bytes: Uint8Array;
  try {
    if (method !== 0 && method !== 8) throw damaged();
    bytes = method === 0 ? packed : inflateSync(packed, { out: new Uint8Array(size) });
  } catch {
    throw damaged();
  }
  if (bytes.length !== size || crc32(bytes) !== crc) throw damaged();
  return bytes;
};
