/** How far a command has come: "Calculating formulas", 1500 of 20000. */
export interface Progress {
  readonly doing: string;
  readonly done?: number;
  readonly of?: number;
}

/** What a command may tell while it runs. */
export interface Listener {
  progress(progress: Progress): void;
  /** The command is to be given up after so many minutes. */
  patience(minutes: number): void;
}

export const noListener: Listener = { progress: () => {}, patience: () => {} };
