import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { holdingLock } from "../../.setup/lock.mjs";

const folder = mkdtempSync(join(tmpdir(), "bimetal-lock-"));
const lock = join(folder, ".lock");
afterAll(() => rmSync(folder, { recursive: true }));

test("two set-ups at once take turns", async () => {
  const events: string[] = [];
  const setUp = (name: string) =>
    holdingLock(lock, async () => {
      events.push(`${name} begins`);
      await pause(50);
      events.push(`${name} ends`);
    });
  jest.spyOn(process.stderr, "write").mockReturnValue(true);
  await Promise.all([setUp("first"), setUp("second")]);
  expect(events).toEqual(["first begins", "first ends", "second begins", "second ends"]);
});

test("the lock is given up when the work fails", async () => {
  await expect(
    holdingLock(lock, () => {
      throw new Error("no network");
    }),
  ).rejects.toThrow("no network");
  expect(existsSync(lock)).toBe(false);
});

test("a lock left by a set-up that was killed does not stop the next one", async () => {
  mkdirSync(lock);
  // Beyond the largest process number that Linux gives out (4194304, proc(5)).
  writeFileSync(join(lock, "owner"), "99999999");
  jest.spyOn(process.stderr, "write").mockReturnValue(true);
  await expect(holdingLock(lock, () => "done")).resolves.toBe("done");
});
