/** One step of an explanation: what is done, in words, and the same computation with the numbers put in, typeset and as one plain line. */
export interface Step {
  readonly sentence: string;
  readonly tex?: string;
  readonly plain?: string;
}
