import { NoAnswer } from "../metrology/no-answer";
import { say } from "../metrology/say";
import { type PickupProfile, pickupProfile } from "./pickup-profile";
import { lnTimeConstants, type Trial } from "./trial";

/** What a next trial may be told by: the breaker's rating, A, if it is known. */
export interface NextTrial {
  readonly rating?: number;
}

/** A current for the next trial, A: a multiple of the rating if that is known and new, else of a current that was tried. */
const suggestion = ({ rating }: NextTrial, tried: number, factor: number): string => {
  for (const multiple of [1.5, 2, 2.55])
    if (rating && Math.abs((multiple * rating) / tried - 1) > 0.1)
      return `for example ${say(multiple * rating, "A")} (${multiple} × the rating)`;
  return `for example ${say(factor * tried, "A")}`;
};

/** Refuses trials that cannot tell pickup and time constant, with the trial that would cure it. */
export const refuseUnidentifiable = (trials: readonly Trial[], next: NextTrial): void => {
  const trips = trials.filter(({ held }) => !held);
  const highest = Math.max(...trials.map(({ current }) => current));
  if (trips.length === 0)
    throw new NoAnswer(
      trials.length === 0
        ? "currents: no trial is left to fit: all tripped magnetically or within 0.1 s; test at lower currents, where the bimetal trips."
        : `outcomes: all ${trials.length} trials held, so the pickup lies near or above ${say(highest, "A")} and nothing else is known; add trials that trip, at two currents at least, ${suggestion(next, highest, 1.5)}.`,
    );
  const [first, ...others] = [...new Set(trips.map(({ current }) => current))];
  if (first !== undefined && others.length === 0)
    throw new NoAnswer(
      `currents: all trips were at ${say(first, "A")}, so a slow strip with a low pickup and a quick one with a high pickup fit alike; repeat at a second current, ${suggestion(next, first, 1.5)}.`,
    );
  const lowest = Math.min(first as number, ...others);
  const preload = Math.max(...trials.map((trial) => trial.preload));
  if (preload >= lowest)
    throw new NoAnswer(
      `preloads: ${say(preload, "A")} was carried for long without a trip, yet ${say(lowest, "A")} tripped; the pickup cannot lie above the one and below the other: check these rows.`,
    );
};

/** Refuses a profile without a top inside: nothing keeps the pickup from 0, or from the lowest tripping current. */
export const refuseRunaway = (trials: readonly Trial[], profile: PickupProfile, next: NextTrial): void => {
  const { best, below, points } = profile;
  if (below - best.pickup < 1e-9 * below) {
    const slowest = Math.max(...trials.filter((t) => !t.held && t.current === below).map(({ seconds }) => seconds));
    throw new NoAnswer(
      `times: the trip at ${say(below, "A")} after ${say(slowest, "s")} is too late for any pickup that the other trips allow: check that row.`,
    );
  }
  if (best !== points[0]) return;
  const trips = trials.filter(({ held }) => !held);
  const alone = trips.length < trials.length ? pickupProfile(trips) : profile;
  if (alone.best !== alone.points[0]) {
    const medianOf = (trial: Trial) =>
      Math.exp(alone.best.lnTimeConstant + lnTimeConstants(trial, alone.best.pickup).value);
    const worst = trials
      .filter(({ held }) => held)
      .reduce((a, b) => (b.seconds / medianOf(b) > a.seconds / medianOf(a) ? b : a));
    throw new NoAnswer(
      `outcomes: held for ${say(worst.seconds, "s")} at ${say(worst.current, "A")} contradicts the trips, which alone tell about ${say(medianOf(worst), "s", 2)} there: check that row.`,
    );
  }
  throw new NoAnswer(
    `currents: the times fall with the current no faster than 1/I², as far above any pickup, so the pickup cannot be told from 0; add a trial that takes minutes, at a lower current, ${suggestion(next, below, 0.7)}, or a long one that holds.`,
  );
};
