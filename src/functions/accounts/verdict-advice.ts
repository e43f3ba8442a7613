import { say } from "../../metrology/say";
import type { Asked } from "../../trip/asked";

const warmStart =
  "A strip still warm from the shot before trips early and looks quick: was it rested until cold (THERMAL.REST, BENCH.PLAN), or is its preload given?";

/** What a tester does next, by the verdict and its reason. */
export const verdictAdvice = (asked: Asked, verdict: string, why: string): readonly string[] => {
  if (verdict === "too close to call")
    return [
      "Too close to call is no pass: a meter with smaller limits of error, or a current farther from the edges of the band, decides it.",
    ];
  if (why.startsWith("beyond a printed limit"))
    return [
      ...(verdict === "early" ? [warmStart] : []),
      "Before it is condemned: was it the right current, through all poles, from the start and in the air that were told? Keep this result as found; exercise it by hand, let it rest, repeat, and write down both.",
    ];
  if (!why.startsWith("outside the computed band")) return [];
  const slow = why.includes("takes more than");
  return [
    ...(slow ? [] : [warmStart]),
    `By itself this condemns no breaker. Check current, start and air, let it rest, and repeat it at a printed point, whose limit decides: ${slow ? printedTrip(asked) : printedHold(asked)}.`,
  ];
};

/** The quickest printed trip, as amperes: from cold where there is one. */
const printedTrip = ({ bench, characteristic }: Asked): string => {
  if (!bench || !characteristic) return "";
  const { ratedClass, rating } = bench;
  const cold = ratedClass.trips.filter(({ after }) => after === undefined);
  const [point] = (cold.length > 0 ? cold : [...ratedClass.trips]).sort((a, b) => a.seconds - b.seconds);
  if (!point) return "";
  const start =
    point.after === undefined
      ? "from cold"
      : `straight after ${say(point.seconds, "s")} at ${say(point.after * rating, "A")}`;
  return `${say(point.multiple * rating, "A")} ${start}, a trip within ${say(point.seconds, "s")}, in air at ${say(characteristic.calibration, "°C")}`;
};

const printedHold = ({ bench, characteristic }: Asked): string => {
  if (!bench || !characteristic) return "";
  const { holdMultiple, holdSeconds } = bench.ratedClass;
  const { calibration, holdCalibration = calibration } = characteristic;
  const until = holdSeconds === undefined ? "until temperatures are stable" : `for ${say(holdSeconds, "s")}`;
  return `${say(holdMultiple * bench.rating, "A")} from cold, no trip ${until}, in air at ${say(holdCalibration, "°C")}`;
};
