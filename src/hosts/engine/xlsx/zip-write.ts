import { deflateSync } from "fflate";
import { crc32 } from "./crc";
import type { Entry } from "./zip";

/** 1 January 1980, so that the same workbook gives the same bytes. */
const EPOCH = 0x00210000;

/** A part as a new entry, or as a changed one that keeps what is told of it, its name too. */
export const pack = (name: string, bytes: Uint8Array, like?: Entry): Entry => ({
  time: EPOCH,
  extra: new Uint8Array(),
  comment: new Uint8Array(),
  attributes: [0, 0],
  versions: [20, 20],
  flags: 0x0800,
  ...like,
  name,
  method: 8,
  crc: crc32(bytes),
  packed: deflateSync(bytes, { level: 6 }),
  size: bytes.length,
});

/** A zip package of these entries. The packed bytes of each are written as they are. */
export const writeEntries = (entries: readonly Entry[]): Uint8Array<ArrayBuffer> => {
  const parts: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const entry of entries) {
    const name = entry.writtenName ?? new TextEncoder().encode(entry.name);
    // Sizes stand in the header, so no descriptor follows the data (bit 3).
    const flags = entry.flags & ~0x0008;
    const common = [
      ...[u16(entry.versions[1]), u16(flags), u16(entry.method), u32(entry.time)],
      ...[u32(entry.crc), u32(entry.packed.length), u32(entry.size), u16(name.length)],
    ];
    const header = joined([u32(0x04034b50), ...common, u16(0), name]);
    directory.push(
      joined([
        ...[u32(0x02014b50), u16(entry.versions[0]), ...common, u16(entry.extra.length), u16(entry.comment.length)],
        ...[u16(0), u16(entry.attributes[0]), u32(entry.attributes[1]), u32(offset), name, entry.extra, entry.comment],
      ]),
    );
    parts.push(header, entry.packed);
    offset += header.length + entry.packed.length;
  }
  const size = directory.reduce((sum, { length }) => sum + length, 0);
  const counts = [u16(0), u16(0), u16(entries.length), u16(entries.length)];
  const end = joined([u32(0x06054b50), ...counts, u32(size), u32(offset), u16(0)]);
  return joined([...parts, ...directory, end]);
};

const u16 = (value: number): Uint8Array => Uint8Array.of(value & 0xff, (value >>> 8) & 0xff);
const u32 = (value: number): Uint8Array =>
  Uint8Array.of(value & 0xff, (value >>> 8) & 0xff, (value >>> 16) & 0xff, (value >>> 24) & 0xff);

const joined = (pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
};
