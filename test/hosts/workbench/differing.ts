import { unzipSync } from "fflate";
import { SaxesParser } from "saxes";
import { partsOf, partsThatDiffer } from "../engine/packages";

/** Parts of which a byte differs, or that one of two packages lacks. */
export const differing = (before: Uint8Array, after: Uint8Array): string[] =>
  partsThatDiffer(partsOf(before), partsOf(after));

/** Parts of a package that are no XML, or use prefixes that they do not declare. */
export const malformed = (bytes: Uint8Array): string[] =>
  Object.entries(unzipSync(bytes)).flatMap(([part, content]) => {
    if (!/\.(xml|rels|vml)$/.test(part)) return [];
    const faults: string[] = [];
    const parser = new SaxesParser({ xmlns: true });
    parser.on("error", ({ message }) => faults.push(`${part}: ${message}`));
    parser.write(Buffer.from(content).toString("utf8")).close();
    return faults;
  });
