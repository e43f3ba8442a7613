/** `no limit`: the trials do not bound that end. `not known`: there are too few, or they have no scatter to tell it from. */
export type End = number | "no limit" | "not known";

export interface Estimate {
  readonly value: number;
  readonly standardError: number | "not known";
  readonly low: End;
  readonly high: End;
}

/** What the trials say beside one pickup. */
export interface ProfileRow {
  /** A */
  readonly pickup: number;
  /** How far ln L lies below its top. */
  readonly drop: number;
  /** s, the likeliest beside this pickup, as is the scatter. */
  readonly timeConstant: number;
  readonly scatter: number;
  /** Standard error of ln(time constant) beside this pickup. */
  readonly error: number;
}

/** One breaker as its trials tell it. The limits are 95 % limits. */
export interface Fitted {
  /** A */
  readonly pickup: Estimate;
  /** s */
  readonly timeConstant: Estimate;
  /** Standard deviation of ln t about the model (maximum likelihood: a little low when trips are few). */
  readonly scatter: Estimate;
  readonly tripped: number;
  readonly held: number;
  /** Trips left out as magnetic. */
  readonly leftOut: number;
  /** Of ln t; it has no top when the trials have no scatter. */
  readonly logLikelihood: number | "not known";
  /** Of ln pickup, ln time constant, ln scatter. */
  readonly covariance?: readonly (readonly number[])[];
  /** Rising pickups across the whole interval and beyond; empty where no interval can be told. */
  readonly profile: readonly ProfileRow[];
  /** The likeliest pickup lies at a current that held for very long. */
  readonly pinned: boolean;
}

/** The scatter of a single trial, from the maximum-likelihood scatter of n trips with two quantities fitted to them. */
export const correctedScatter = ({ scatter, tripped }: Pick<Fitted, "scatter" | "tripped">): number | "not known" =>
  tripped > 2 ? scatter.value * Math.sqrt(tripped / (tripped - 2)) : "not known";
