import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

/** Runs `work` while no other process holds the same lock: a folder, because making one either succeeds or does not. */
export async function holdingLock(folder, work) {
  mkdirSync(dirname(folder), { recursive: true });
  for (let tries = 1; !taken(folder); tries++) {
    if (tries === 2) process.stderr.write("Waiting for another set-up in this folder to end …\n");
    await pause(200);
  }
  const free = () => rmSync(folder, { recursive: true, force: true });
  const leave = (signal) => {
    free();
    process.kill(process.pid, signal);
  };
  process.once("SIGINT", leave).once("SIGTERM", leave);
  try {
    return await work();
  } finally {
    process.off("SIGINT", leave).off("SIGTERM", leave);
    free();
  }
}

function taken(folder) {
  try {
    mkdirSync(folder);
  } catch (error) {
    // Windows answers EPERM while another process is taking the folder away.
    if (error.code !== "EEXIST" && error.code !== "EPERM") throw error;
    clearAwayDeadOwner(folder);
    return false;
  }
  writeFileSync(join(folder, "owner"), String(process.pid));
  return true;
}

/** A set-up that was killed leaves its lock behind; it is moved aside first, so that only one waiter can clear it. */
function clearAwayDeadOwner(folder) {
  const owner = ownerOf(folder);
  if (owner === undefined || isAlive(owner)) return;
  const aside = `${folder}-left-by-${owner}-cleared-by-${process.pid}`;
  try {
    renameSync(folder, aside);
    rmSync(aside, { recursive: true, force: true });
  } catch {
    // Another waiter was quicker.
  }
}

function ownerOf(folder) {
  try {
    return Number(readFileSync(join(folder, "owner"), "utf8")) || undefined;
  } catch {
    return undefined;
  }
}

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}
