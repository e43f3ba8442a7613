import { powerLossLimit } from "../contact/iec60898";
import { investigateAbove } from "../contact/neta";
import { say } from "../metrology/say";
import { insulationClasses } from "./insulation";
import { dischargeTimes, insulationSeconds } from "./insulation-test";
import { bandAt, type PlanStep, type Subject } from "./plan-step";
import { allInSeries, handsOff, staysWithIt } from "./plan-words";
import { type TestWireStandard, testWireRow, testWireTables } from "./test-wire";

/** What comes before the first timed current: looking, insulation, and the drop, which warms the breaker. */
export const firstSteps = (subject: Subject): readonly PlanStep[] => [
  look(subject),
  insulation(subject),
  drop(subject),
];

const look = ({ bench }: Subject): PlanStep => ({
  step: "look it over; close and open it once",
  caution: [
    "Out of its board: switched off, locked out, proved dead.",
    "A cracked case, burnt terminals or a handle that does not latch end the test here.",
    "Once, no more: the first trips are to be as found, not exercised.",
    ...leads(bench),
  ].join(" "),
});

const leads = ({ ratedClass, rating }: Subject["bench"]): readonly string[] => {
  const standard = ratedClass.holdSource.document as TestWireStandard;
  const wire = testWireRow(standard, rating);
  const { document, standing } = testWireTables[standard].source;
  return wire
    ? [
        `Leads: ${wire.size} copper, at least ${say(wire.metres, "m")} at each terminal (${document}, ${wire.standing ?? standing}), bolted tight.`,
      ]
    : [];
};

/** The lowest test voltage that any document asks. */
const leastVolts = Math.min(...Object.values(insulationClasses).map(({ testVolts }) => testVolts));

const insulation = ({ poles }: Subject): PlanStep => ({
  step: `insulation: line to load open; ${poles > 1 ? "pole to pole and all to frame" : "to frame"} closed`,
  stopAt: insulationSeconds,
  caution: `${leastVolts} V d.c. or more, ${insulationSeconds} s each, no electronics connected; judge by BENCH.INSULATION. The voltage shocks and stays behind: hands off, then discharge for ${dischargeTimes} times the test time before touching.`,
});

const drop = ({ bench, poles, rest }: Subject): PlanStep => {
  const { rating, ratedClass } = bench;
  return {
    step: `drop${poles > 1 ? " of each pole" : ""} at the rating, settled`,
    current: rating,
    band: bandAt(bench, rating),
    stopAt: ratedClass.holdSeconds ?? rest,
    caution: [
      ...allInSeries(poles),
      handsOff,
      staysWithIt,
      "Read it on the breaker's own terminals once it has stopped moving (three readings 5 min apart: common practice, no source).",
      dropLimit(bench),
      "A trip here is early and ends the test.",
    ].join(" "),
  };
};

const dropLimit = ({ ratedClass, rating }: Subject["bench"]): string => {
  const { document } = ratedClass.holdSource;
  if (document !== "IEC 60898-1")
    return `${document} prints no limit of it: compare poles, and breakers alike; above ${investigateAbove} × the lowest, investigate.`;
  const watts = powerLossLimit(rating);
  return `${document} allows ${say(watts, "W")}, that is ${say(watts / rating, "V")}, a pole (from memory).`;
};
