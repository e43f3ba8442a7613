import { plainLine } from "../engine/plain-line";
import type { Progress } from "./listener";

/** On a terminal: when the line is drawn first, and how often. */
const TERMINAL = { after: 1.5, every: 0.25 };
/** Elsewhere every line stays, so only what is slow is told. */
const ELSEWHERE = { after: 10, every: 30 };

/** Where the progress goes: the standard error. */
interface Stream {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

/**
 * How far a long command has come: on a terminal one line that is drawn over and over, elsewhere a line now and then.
 * The seconds go on while the work is too busy to tell anything.
 */
export class ProgressLine {
  readonly #stream: Stream;
  readonly #since = performance.now();
  #progress: Progress | undefined;
  #timer: ReturnType<typeof setInterval> | undefined;
  #said = Number.NEGATIVE_INFINITY;
  #isDrawn = false;

  constructor(stream: Stream) {
    this.#stream = stream;
  }

  show(progress: Progress): void {
    this.#progress = progress;
    this.#timer ??= setInterval(() => this.#draw(), TERMINAL.every * 1000).unref();
  }

  /** Takes the line away; nothing is shown after it. */
  clear(): void {
    clearInterval(this.#timer);
    if (this.#isDrawn) this.#stream.write("\r\u001b[K");
    this.#isDrawn = false;
  }

  #draw(): void {
    const seconds = (performance.now() - this.#since) / 1000;
    if (!this.#progress || seconds < (this.#stream.isTTY ? TERMINAL : ELSEWHERE).after) return;
    const words = plainLine(sayProgress(this.#progress, seconds));
    if (this.#stream.isTTY) {
      this.#stream.write(`\r${words.slice(0, (this.#stream.columns ?? 80) - 1)}\u001b[K`);
      this.#isDrawn = true;
    } else if (seconds - this.#said >= ELSEWHERE.every) {
      this.#said = seconds;
      this.#stream.write(`${words}\n`);
    }
  }
}

/** "Calculating formulas: 1500 of 20000, 12 s". */
export const sayProgress = ({ doing, done, of }: Progress, seconds: number): string =>
  `${doing}${done !== undefined && of !== undefined ? `: ${done} of ${of}` : ""}, ${Math.floor(seconds)} s …`;
