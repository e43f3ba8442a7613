import { strToU8, unzipSync, zipSync } from "fflate";
import type { Chance } from "./chance";
import { damagedXml } from "./damage-xml";

/** A package with bytes that were hit, cut or repeated: what a bad disk or a bad sender makes of it. */
export const damagedBytes = (bytes: Uint8Array, chance: Chance): Uint8Array => {
  const hit = bytes.slice();
  for (let hits = chance.below(6); hits >= 0; hits--) hit[chance.below(hit.length)] = chance.below(256);
  const [from, to] = [chance.below(hit.length), chance.below(hit.length)].sort((a, b) => a - b) as [number, number];
  return chance.pick([
    () => hit,
    () => hit.slice(0, to),
    () => hit.slice(from),
    () => joined(hit.subarray(0, to), hit.subarray(from)),
    () => withHeader(hit, chance),
  ])();
};

const joined = (a: Uint8Array, b: Uint8Array): Uint8Array => {
  const whole = new Uint8Array(a.length + b.length);
  whole.set(a);
  whole.set(b, a.length);
  return whole;
};

/** A number in one of the headers of the zip made another: sizes, offsets, methods, flags, lengths of names. */
const withHeader = (bytes: Uint8Array, chance: Chance): Uint8Array => {
  const starts: number[] = [];
  for (let at = 0; at < bytes.length - 4; at++)
    if (bytes[at] === 0x50 && bytes[at + 1] === 0x4b && (bytes[at + 2] ?? 9) < 9) starts.push(at);
  const view = new DataView(bytes.buffer);
  const at = chance.pick(starts) + 4 + chance.below(42);
  if (at + 4 <= bytes.length)
    view.setUint32(at, chance.pick([0, 1, 8, 99, 0xffff, 0x7fffffff, 0xffffffff, chance.below(2 ** 31)]), true);
  return bytes;
};

/** A sound package of unsound parts. */
export const damagedParts = (bytes: Uint8Array, chance: Chance): Uint8Array => {
  const parts: Record<string, Uint8Array> = unzipSync(bytes);
  for (let times = chance.oneIn(3) ? 2 : 1; times > 0; times--) {
    const names = Object.keys(parts);
    const sheets = names.filter((name) => /sheet\d*\.xml$/i.test(name));
    const name = chance.oneIn(2) && sheets.length > 0 ? chance.pick(sheets) : chance.pick(names);
    const text = new TextDecoder("latin1").decode(parts[name]);
    const other = chance.pick(names);
    chance.pick([
      ...Array.from({ length: 40 }, () => () => {
        parts[name] = strToU8(damagedXml(text, chance), true);
      }),
      () => {
        delete parts[name];
      },
      () => {
        [parts[name], parts[other]] = [parts[other] as Uint8Array, parts[name] as Uint8Array];
      },
      () => {
        parts[chance.pick([name.toUpperCase(), `../${name}`, `/${name}`, "xl/metadata.xml", `${name}\u0000`])] = parts[
          name
        ] as Uint8Array;
      },
      () => {
        parts[name] = (parts[name] as Uint8Array).slice(0, chance.below(text.length + 1));
      },
      () => {
        parts[name] = new Uint8Array();
      },
    ])();
  }
  return zipSync(parts, { level: 1 });
};
