import type { Source } from "../metrology/source";
import type { Asked } from "./asked";
import { sameMultiple } from "./conditions";

/** A printed limit that reaches a trial. */
export interface Limit {
  readonly seconds: number;
  readonly test: string;
  readonly source: Source;
}

// A trip never takes longer at more current, from a warmer start or in warmer air, and never less the other way round. So a
// printed trip limit reaches every higher current and every warmer start and air; a hold time every lower current and cooler air,
// from cold. Beyond that the documents are silent and only the computed band is left.

/** The longest time for which a printed test forbids a trip at this current; undefined where none reaches it. */
export const mustHoldFor = (
  { bench, characteristic, conditions: { ambient } }: Asked,
  current: number,
): Limit | undefined => {
  if (!bench || !characteristic || bench.start > 0) return undefined;
  const { ratedClass, rating } = bench;
  const multiple = current / rating;
  const reaches = (printed: number, at: number): boolean =>
    (multiple <= printed || sameMultiple(multiple, printed)) && (ambient === undefined || ambient <= at);
  const holdAt = characteristic.holdCalibration ?? characteristic.calibration;
  if (reaches(ratedClass.holdSeconds === undefined ? ratedClass.holdMultiple : 1, holdAt))
    return { seconds: Infinity, test: "the rated current is carried for ever", source: ratedClass.holdSource };
  if (ratedClass.holdSeconds !== undefined && reaches(ratedClass.holdMultiple, holdAt))
    return { seconds: ratedClass.holdSeconds, test: ratedClass.holdTest, source: ratedClass.holdSource };
  // A typical hold is no limit of the document.
  const points = [characteristic.typical ? undefined : ratedClass.hold, ratedClass.floor];
  return points.find((point) => point && reaches(point.multiple, characteristic.calibration));
};

/** The shortest time within which a printed test demands a trip at this current; undefined where none reaches it. */
export const mustTripWithin = (
  { bench, characteristic, conditions: { ambient } }: Asked,
  current: number,
): Limit | undefined => {
  if (!bench || !characteristic) return undefined;
  const { ratedClass, magnetic, rating, startMultiple } = bench;
  const atLeast = (value: number, edge: number): boolean => value >= edge || sameMultiple(value, edge);
  const limits: Limit[] = [];
  if (magnetic?.seconds !== undefined && atLeast(current, magnetic.upper))
    limits.push({ ...magnetic, seconds: magnetic.seconds });
  const warmEnough = ambient === undefined || ambient >= characteristic.calibration;
  for (const point of warmEnough ? ratedClass.trips : []) {
    if (!atLeast(current / rating, point.multiple)) continue;
    if (point.after === undefined || atLeast(startMultiple, point.after)) limits.push(point);
    // From a cooler start: as much current for both stages of the test heats no less than the test does.
    else
      limits.push({
        seconds: 2 * point.seconds,
        test: `${point.test}; with the hold before it, within ${2 * point.seconds} s`,
        source: point.source,
      });
  }
  return limits.reduce<Limit | undefined>(
    (least, limit) => (!least || limit.seconds < least.seconds ? limit : least),
    undefined,
  );
};
