import { UnfinishedCalculation } from "../engine/run";

/** What a command leaves behind. */
export interface Outcome {
  /** For the standard output. */
  readonly out: string;
  /** Sentences for the standard error. */
  readonly err: readonly string[];
  /** 0: answered; 1: answered with refusals; 2: the command or its file could not be taken; 3: a defect of this program. */
  readonly code: 0 | 1 | 2 | 3;
}

/** Runs a command of this process: its words in, its outcome written, the process ended. */
export const runCommand = async (command: (words: readonly string[]) => Promise<Outcome>): Promise<never> => {
  const outcome = await Promise.race([command(process.argv.slice(2)).catch(defect), failure]);
  for (const sentence of outcome.err) await write(process.stderr, `${sentence}\n`);
  await write(process.stdout, outcome.out);
  // The grid engine leaves timers behind that would hold the process for seconds.
  process.exit(outcome.code);
};

const defect = (thrown: unknown): Outcome => {
  if (thrown instanceof UnfinishedCalculation) return { out: "", err: [thrown.message], code: 2 };
  const said = thrown instanceof Error ? thrown.stack : String(thrown);
  return { out: "", err: [`This program has a defect, please report it: ${said}`], code: 3 };
};

const failure = new Promise<Outcome>((resolve) => {
  process.on("unhandledRejection", (reason) => resolve(defect(reason)));
  process.on("uncaughtException", (thrown) => resolve(defect(thrown)));
});

/** A reader that has had enough (`| head`) closes the pipe; that is no error. */
const write = (stream: NodeJS.WriteStream, text: string): Promise<void> =>
  new Promise((resolve) => {
    stream.once("error", () => resolve());
    if (text === "") resolve();
    else stream.write(text, () => resolve());
  });
