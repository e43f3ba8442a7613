import { plainLine } from "../engine/plain-line";
import { UnfinishedCalculation } from "../engine/run";
import type { Listener, Progress } from "./listener";
import type { Message, Outcome } from "./watch";

/** Does a command in this process, which another one watches: its words in, its outcome told and written, the process ended. */
export const work = async (command: (words: readonly string[], listener: Listener) => Promise<Outcome>) => {
  process.on("disconnect", () => process.exit(2));
  const listener = {
    progress: (progress: Progress) => void tell({ progress }),
    patience: (minutes: number) => void tell({ minutes }),
  };
  const done = command(process.argv.slice(2), listener).catch(failed);
  const { err, out, code } = await Promise.race([done, failure()]);
  // The watcher clears its line and writes the sentences; only then may the answer follow.
  const go = new Promise((resolve) => process.once("message", resolve));
  await tell({ err: err.map(plainLine), code });
  await go;
  await write(process.stdout, out);
  // The grid engine leaves timers behind that would hold the process for seconds.
  process.exit(code);
};

const tell = (message: Message): Promise<void> =>
  new Promise((resolve) => process.send?.(message, undefined, undefined, () => resolve()));

const failed = (thrown: unknown): Outcome => {
  if (thrown instanceof UnfinishedCalculation) return { out: "", err: [thrown.message], code: 2 };
  if (thrown instanceof RangeError && tooLarge.test(thrown.message))
    return { out: "", err: [`This is too large for this program (${thrown.message}).`], code: 2 };
  const said = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
  return { out: "", err: `This program has a defect, please report it: ${said}`.split("\n"), code: 3 };
};

/** How Node says that something has outgrown what it can hold. */
const tooLarge = /^(Invalid (array|string|typed array) length|Array buffer allocation failed|(Map|Set) maximum size)/;

/** What is thrown where nobody waits for it. */
const failure = (): Promise<Outcome> =>
  new Promise((resolve) => {
    process.on("unhandledRejection", (reason) => resolve(failed(reason)));
    process.on("uncaughtException", (thrown) => resolve(failed(thrown)));
  });

/** A reader that has had enough (`| head`) closes the pipe; that is no error. */
const write = (stream: NodeJS.WriteStream, text: string): Promise<void> =>
  new Promise((resolve) => {
    stream.once("error", () => resolve());
    if (text === "") resolve();
    else stream.write(text, () => resolve());
  });
