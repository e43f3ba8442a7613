import { type ChildProcess, spawn } from "node:child_process";
import { getHeapStatistics } from "node:v8";
import type { Progress } from "./listener";
import { ProgressLine } from "./progress-line";

/** What a command leaves behind. */
export interface Outcome {
  /** For the standard output. */
  readonly out: string;
  /** Sentences for the standard error. */
  readonly err: readonly string[];
  /** 0: answered; 1: answered with refusals; 2: the command or its file could not be taken; 3: a defect of this program. */
  readonly code: 0 | 1 | 2 | 3;
}

/** From the process that works to the one that watches. */
export type Message =
  | { readonly progress: Progress }
  | { readonly minutes: number }
  | { readonly err: readonly string[]; readonly code: number };

/** Longer than any workbook of people takes. */
const PATIENCE_MINUTES = 20;

/** Told to the process that works by its environment. */
const WATCHED = "BIMETAL_WATCHED";

/**
 * Runs this same script again as a process that works, and watches it: a workbook may be made to take any time or memory, and one
 * formula that does cannot be stopped from within. What then is said is one sentence, and the code 2. `load` starts the work.
 */
export const watch = async (load: () => Promise<unknown>): Promise<void> => {
  if (process.env[WATCHED] !== undefined) await load();
  else process.exitCode = await watching();
};

const watching = (): Promise<number> =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [...process.execArgv, ...process.argv.slice(1)], {
      env: { ...process.env, [WATCHED]: "1" },
      stdio: ["ignore", "inherit", "pipe", "ipc"],
      windowsHide: true,
    });
    endWith(child);
    // Whoever reads what is said here may have gone.
    process.stderr.on("error", () => {});
    const line = new ProgressLine(process.stderr);
    let [minutes, isLate, complaint] = [PATIENCE_MINUTES, false, ""];
    let outcome: number | undefined;
    const giveUp = () => {
      isLate = true;
      child.kill("SIGKILL");
    };
    const since = performance.now();
    let timer = setTimeout(giveUp, minutes * 60_000);
    child.stderr?.on("data", (chunk) => {
      complaint = (complaint + chunk).slice(-MOST_COMPLAINT);
    });
    child.on("message", (message: Message) => {
      if ("progress" in message) line.show(message.progress);
      else if ("minutes" in message) {
        minutes = message.minutes;
        clearTimeout(timer);
        timer = setTimeout(giveUp, minutes * 60_000 - (performance.now() - since));
      } else {
        outcome = message.code;
        clearTimeout(timer);
        line.clear();
        for (const sentence of message.err) process.stderr.write(`${sentence}\n`);
        child.send("go", () => {});
      }
    });
    child.on("close", (code, signal) => {
      clearTimeout(timer);
      line.clear();
      if (outcome === undefined) process.stderr.write(`${lastWords({ minutes, isLate, complaint, code, signal })}\n`);
      resolve(outcome ?? (isLate || ranOut(complaint, signal) ? 2 : 3));
    });
  });

/** The end of what Node says when it breaks down. */
const MOST_COMPLAINT = 20_000;

interface Death {
  readonly minutes: number;
  readonly isLate: boolean;
  readonly complaint: string;
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
}

const lastWords = ({ minutes, isLate, complaint, code, signal }: Death): string => {
  if (isLate) return `It did not end within ${minutes} ${minutes === 1 ? "minute" : "minutes"} and was given up.`;
  if (ranOut(complaint, signal))
    return `It needs more memory than this program may use (${Math.round(getHeapStatistics().heap_size_limit / 1e6)} MB), and was given up.`;
  return `This program has a defect, please report it: it ended with ${signal ?? code}. ${complaint.trim()}`;
};

/** Whether a process died for want of memory: Node says so, or the system ended it. */
const ranOut = (complaint: string, signal: NodeJS.Signals | null): boolean =>
  /out of memory|allocation failed|bad_alloc|invalid (array|table) (length|size)/i.test(complaint) ||
  signal === "SIGKILL";

/** When this process is told to end, the one that works ends too. */
const endWith = (child: ChildProcess): void => {
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const)
    process.once(signal, () => {
      child.kill("SIGKILL");
      process.kill(process.pid, signal);
    });
};
