import { chmod, open, realpath, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** Writes a whole file or nothing: first beside its place, then moved there in one step. A file that was there keeps its permissions. */
export const writeSafely = async (path: string, bytes: Uint8Array): Promise<void> => {
  const place = await realpath(path).catch(() => path);
  const draft = join(dirname(place), `.${basename(place)}.${process.pid}.part`);
  const mode = await stat(place).then(
    (found) => found.mode & 0o777,
    () => undefined,
  );
  try {
    const file = await open(draft, "wx");
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    if (mode !== undefined) await chmod(draft, mode);
    await rename(draft, place);
  } catch (thrown) {
    await rm(draft, { force: true });
    throw thrown;
  }
};
