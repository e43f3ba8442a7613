import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import { say } from "../../metrology/say";
import { citation, type Source } from "../../metrology/source";
import { thermalEquation } from "../../thermal/model";
import { ambientLaw, usualTripRise } from "../../trip/ambient";
import type { Asked } from "../../trip/asked";
import { airSource, leastTripRise, preferredRatings } from "../../trip/iec60898-tables";
import type { Edge, TripRange } from "../../trip/range";
import { zeroCaution } from "../arguments/zero-degrees";

/** The shortest time as a cell shows it. */
export const shortestAnswer = ({ shortest }: TripRange): number | string =>
  Number.isFinite(shortest.seconds) ? shortest.seconds : "holds";

/** The longest time as a cell shows it. */
export const longestAnswer = ({ longest }: TripRange): number | string =>
  Number.isFinite(longest.seconds) ? longest.seconds : "no limit";

/** How the range of a current came about, with the numbers put in. */
export const rangeSteps = (asked: Asked, current: number, range: TripRange): Step[] => [
  multipleStep(asked, current, range),
  ...startSteps(asked),
  ...airSteps(asked, range),
  ...requirementSteps(asked),
  ...magneticSteps(asked, current),
  edgeStep("Shortest", asked, range, range.shortest),
  edgeStep("Longest", asked, range, range.longest),
];

const multipleStep = ({ rating }: Asked, current: number, { multiple }: TripRange): Step => ({
  sentence: "The current as a multiple of the rating",
  tex: String.raw`m = \frac{I}{I_n} = \frac{${tex(current, "A")}}{${tex(rating, "A")}} = ${tex(multiple, "", 6)}`,
  plain: `m = ${say(current, "A")} ÷ ${say(rating, "A")} = ${say(multiple, "×", 6)}`,
});

const startSteps = ({ bench, conditions: { preload = 0 }, rating }: Asked): Step[] =>
  bench && preload > 0
    ? [
        {
          sentence: "The breaker starts warm: a long preload has brought the strip to the square of its multiple",
          tex: String.raw`\theta_0 = \left(\frac{${tex(preload, "A")}}{${tex(rating, "A")}}\right)^2 = ${tex((preload / rating) ** 2)}`,
          plain: `θ₀ = (${say(preload, "A")} ÷ ${say(rating, "A")})² = ${say((preload / rating) ** 2, "")}`,
        },
      ]
    : [];

const airSteps = (
  { bench, characteristic, conditions: { ambient, tripRise = usualTripRise } }: Asked,
  { multiple, scaled }: TripRange,
): Step[] => {
  if (!bench || !characteristic || ambient === undefined) return [];
  const { calibration } = characteristic;
  return [
    {
      sentence: `In air at ${say(ambient, "°C")} the pickup moves with the square root of the rise that is left to the trip, ${say(tripRise, "K")} at ${say(calibration, "°C")}`,
      tex: String.raw`k = \sqrt{(${tex(calibration)} + ${tex(tripRise)} - ${tex(ambient)}) / ${tex(tripRise)}} = ${tex(bench.factor)}, \quad \frac{m}{k} = \frac{${tex(multiple)}}{${tex(bench.factor)}} = ${tex(scaled)}`,
      plain: `k = √((${calibration} + ${tripRise} − ${ambient}) ÷ ${tripRise}) = ${say(bench.factor, "")}; m ÷ k = ${say(scaled, "×")}`,
    },
  ];
};

const requirementSteps = ({ bench, characteristic, rating }: Asked): Step[] => {
  if (!bench || !characteristic)
    return [{ sentence: "The band is the tester's own: log–log between its rows, nothing said outside them" }];
  const { ratedClass } = bench;
  const points = [
    ratedClass.holdTest,
    ratedClass.hold?.test,
    ...ratedClass.trips.map(({ test }) => test),
    ratedClass.floor?.test,
  ];
  return [
    {
      sentence: `${characteristic.name}, ${ratedClass.name} (${say(rating, "A")}): every strip of one time constant that meets all of these counts as sound`,
      plain: points.filter(Boolean).join("; "),
    },
  ];
};

const magneticSteps = ({ bench }: Asked, current: number): Step[] => {
  if (!bench) return [];
  const { magnetic } = bench;
  if (!magnetic)
    return [
      {
        sentence:
          "The document prints no magnetic band and no setting was given: the times are the strip's alone (thermal only)",
      },
    ];
  const { lower, upper } = magnetic;
  const part =
    current <= lower * (1 + 1e-9) ? "takes no part" : current >= upper * (1 - 1e-9) ? "must trip" : "may trip at once";
  return [
    {
      sentence: `The magnetic release ${part} at this current`,
      plain: `no magnetic trip up to ${say(lower, "A")}, magnetic trip from ${say(upper, "A")}`,
    },
  ];
};

const lines: Record<Edge["line"], string> = {
  holds: "at or below the rating it need never trip: holds",
  "hold test": "up to the hold multiple it must hold as long as the hold test lasts; nothing is promised beyond",
  printed: "a printed point from its own start state",
  floor:
    "the strip could be quicker, but up to the lower magnetic multiple no trip may come within this time from cold",
  "floor in warm air":
    "the strip could be quicker, but one that keeps the printed hold at the calibration temperature takes at least this long in air so warm",
  "no minimum": "the document sets no minimum, so a sound breaker may trip at once",
  "may hold": "between the hold and the trip multiple a sound breaker may hold for ever: no limit",
  "quickest body": "the quickest sound strip",
  "slowest body": "the slowest sound strip",
  "own band": "from the rows of the own band",
  magnetic: "the magnetic release may act at once",
};

const edgeStep = (which: "Shortest" | "Longest", { bench }: Asked, { scaled }: TripRange, edge: Edge): Step => {
  const line =
    which === "Longest" && edge.line === "magnetic"
      ? "the magnetic release must trip within its printed time"
      : lines[edge.line];
  const sentence = `${which}: ${line}${edge.point ? ` (${edge.point.test})` : ""}`;
  if (!edge.body || !bench)
    return Number.isFinite(edge.seconds) ? { sentence, plain: say(edge.seconds, "s") } : { sentence };
  const { pickup, timeConstant, seconds } = edge.body;
  const start = bench.start;
  return {
    sentence: `${sentence}, pickup ${say(pickup, "×", 6)}, time constant ${say(timeConstant, "s")}`,
    tex: String.raw`t = \tau \ln\frac{m^2 - \theta_0}{m^2 - p^2} = ${tex(timeConstant)} \cdot \ln\frac{${tex(scaled)}^2 - ${tex(start)}}{${tex(scaled)}^2 - ${tex(pickup, "", 6)}^2} = ${tex(seconds, "s")}`,
    plain: `t = ${say(timeConstant, "s")} × ln((${say(scaled, "")}² − ${say(start, "")}) ÷ (${say(scaled, "")}² − ${say(pickup, "", 6)}²)) = ${say(seconds, "s")}`,
  };
};

/** The documents this answer rests on. */
export const rangeSources = ({ bench, characteristic, conditions }: Asked): Source[] => {
  if (!bench || !characteristic) return [{ document: "the tester's own band", standing: "common practice, no source" }];
  const { ratedClass, magnetic } = bench;
  const points = [
    ratedClass.holdSource,
    ratedClass.hold?.source,
    ...ratedClass.trips.map(({ source }) => source),
    ratedClass.floor?.source,
    magnetic?.source,
  ];
  const physics: Source[] = [thermalEquation];
  if (conditions.ambient !== undefined) physics.push(ambientLaw);
  if (tooSmallRise({ characteristic, conditions })) physics.push(airSource);
  const cited = new Map<string, Source>();
  for (const source of [...points, ...physics])
    if (source && !cited.has(citation(source))) cited.set(citation(source), source);
  return [...cited.values()];
};

/** B, C and D are tested in cold and warm air too, which binds the rise of the strip. */
const tooSmallRise = ({
  characteristic,
  conditions: { ambient, tripRise = usualTripRise },
}: Pick<Asked, "characteristic" | "conditions">): boolean =>
  ambient !== undefined &&
  characteristic?.classOf(1).floor !== undefined &&
  tripRise < Math.max(leastTripRise.cold, leastTripRise.warm);

/** A rating from the smallest preferred one up that is none of them: an ampere typed in the rating's place looks so. */
const isUnusual = (rating: number, { ratedClass }: NonNullable<Asked["bench"]>): boolean =>
  ratedClass.holdSource.document === airSource.document &&
  rating >= preferredRatings[0] &&
  !preferredRatings.some((preferred) => preferred === rating);

/** Cautions that this answer calls for. */
export const rangeCautions = ({
  rating,
  bench,
  characteristic,
  conditions: { preload = 0, ambient, tripRise = usualTripRise },
}: Asked): string[] => {
  const cautions: string[] = [];
  if (rating === 1)
    cautions.push("The rating is 1, so the current is read as a multiple and the smallest class of ratings is used.");
  if (!bench || !characteristic) return cautions;
  if (isUnusual(rating, bench))
    cautions.push(
      `${say(rating, "A")} is none of the preferred ratings of IEC 60898-1: do current and rating stand in their places?`,
    );
  if (!bench.magnetic)
    cautions.push(
      "Thermal only: without the marked setting the magnetic band is not known, and a sound breaker may trip sooner by it.",
    );
  if (characteristic.typical)
    cautions.push(
      "Not before 10 s at 2 × is common practice, no source, and not a limit of the standard. The tester's own band or fit is better.",
    );
  if (!bench.ratedClass.hold)
    cautions.push(
      "This standard sets no minimum time above its hold current. Ask for its typical form, or give a band or a fit of your own, to judge a start.",
    );
  if (preload > 0 || ambient !== undefined)
    cautions.push(
      "The standard states its limits at one condition. Preload and air temperature are physics applied on top of it, and where the bimetal's edge moves is never a permitted load.",
    );
  cautions.push(...zeroCaution("air", ambient));
  if (ambient !== undefined && characteristic.name.startsWith("IEC 60947-2"))
    cautions.push(
      `IEC 60947-2 lets the maker declare the reference temperature; ${say(characteristic.calibration, "°C")} is used here.`,
    );
  if (tooSmallRise({ characteristic, conditions: { ambient, tripRise } }))
    cautions.push(
      `A trip rise of ${say(tripRise, "K")} does not fit the standard's own tests in other air (from memory): the trip in cold air asks for ${say(leastTripRise.cold, "K", 3)} at least, the hold in warm air for ${say(leastTripRise.warm, "K", 3)}.`,
    );
  return cautions;
};
