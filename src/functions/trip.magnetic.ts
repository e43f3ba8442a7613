import { nemaAb4, runUpSeconds } from "../bench/field-values";
import { define } from "../definition/define";
import { say } from "../metrology/say";
import { injectionCaution, magneticCaution, wearCaution } from "./accounts/cautions";
import { magneticDocuments } from "./accounts/trip-sources";
import { characteristic } from "./arguments/characteristic";
import { askedOf, conditions, rating } from "./arguments/conditions";

export default define({
  name: "TRIP.MAGNETIC",
  summary: "The band of the magnetic release: up to where it takes no part, and from where it must trip.",
  parameters: { rating, characteristic, setting: conditions.setting },
  results: [
    {
      name: "no magnetic trip up to",
      unit: "A",
      meaning: "not known: the document prints no band and no setting was given",
    },
    { name: "magnetic trip from", unit: "A", meaning: "at this current and above" },
  ],
  answers: "row",
  sources: [...magneticDocuments, nemaAb4],
  cautions: [
    magneticCaution,
    `A run-up through the magnetic band can destroy a breaker: one pole, within ${runUpSeconds.least} to ${runUpSeconds.most} seconds.`,
    wearCaution,
    injectionCaution,
  ],
  examples: [
    { cells: [20, "C"], gives: [100, 200], worked: "IEC 60898-1 Table 7, tests d and e: 5 × and 10 ×" },
    { cells: [16, "D"], gives: [160, 320], worked: "IEC 60898-1 Table 7, tests d and e: 10 × and 20 ×" },
    {
      cells: [100, "IEC 60947-2", 1000],
      gives: [800, 1200],
      worked: "IEC 60947-2, 7.2.1.2.4 a): ±20 % of the setting",
    },
    {
      cells: [20, "UL 489"],
      gives: ["not known", "not known"],
      worked: "UL 489 prints no band without a marked setting",
    },
  ],
  calculate: (given) => {
    const magnetic = askedOf(given).bench?.magnetic;
    return magnetic ? [magnetic.lower, magnetic.upper] : ["not known", "not known"];
  },
  explain: (given) => {
    const magnetic = askedOf(given).bench?.magnetic;
    if (!magnetic)
      return {
        steps: [{ sentence: "Without a printed band or a marked setting the magnetic release is not known" }],
        answer: "The magnetic band is not known; give the marked setting in amperes.",
      };
    return {
      steps: [
        {
          sentence: magnetic.test.replace(/^./, (first) => first.toUpperCase()),
          plain: `${say(magnetic.lower, "A")} to ${say(magnetic.upper, "A")}`,
        },
      ],
      answer: `No magnetic trip up to ${say(magnetic.lower, "A")}, a magnetic trip from ${say(magnetic.upper, "A")}.`,
      sources: [magnetic.source, nemaAb4],
    };
  },
});
