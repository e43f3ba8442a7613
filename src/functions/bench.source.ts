import {
  reachableCurrent,
  sourceVolts,
  spreadInductance,
  spreadInductanceSource,
  spreadMilliohms,
  type TestLoop,
  warmLead,
} from "../bench/source";
import { copperLine } from "../contact/copper";
import { iec60228 } from "../contact/iec60228";
import { necTable8 } from "../contact/nec-table8";
import { define } from "../definition/define";
import type { Given } from "../definition/parameter";
import { say, sayNumber } from "../metrology/say";
import { injectionCaution, magneticCaution } from "./accounts/cautions";
import { loopSteps } from "./accounts/test-loop";
import { breakerDrop, leadLength, openCircuitVolts, reactance, testCurrent } from "./arguments/bench";
import { size } from "./arguments/size";

const parameters = {
  current: testCurrent,
  size: size("size of the test leads"),
  length: leadLength,
  drop: breakerDrop,
  reactance,
  openCircuitVolts,
} as const;

export default define({
  name: "BENCH.SOURCE",
  summary: "The voltage and the volt-amperes a source must supply to drive a test current through leads and breaker.",
  parameters,
  results: [
    { name: "volts", unit: "V", meaning: "at the source's terminals while that current flows" },
    { name: "volt-amperes", unit: "VA", meaning: "at the source's terminals" },
    {
      name: "reachable",
      unit: "A",
      meaning: "the largest current the open-circuit volts drive through this loop; not known without them",
    },
  ],
  answers: "row",
  sources: [
    { document: "V = |I·(R + jX)|, S = V·I", standing: "handbook" },
    necTable8,
    iec60228,
    copperLine,
    spreadInductanceSource,
  ],
  cautions: [
    `The leads are taken warm, ${warmLead} °C; cold ones need less and the current sags as they warm.`,
    `Reactance decides at high currents: lay the leads close together. A lead spread out has about ${spreadInductance} µH per metre, ${sayNumber(spreadMilliohms(50), 2)} mΩ at 50 Hz and ${sayNumber(spreadMilliohms(60), 2)} mΩ at 60 Hz.`,
    "Reachable counts the source's own impedance only as far as it stands in the reactance; a weak source or a long supply cord reaches less.",
    "The volt-amperes are those of the shot; what the source may give for how long stands on its plate.",
    magneticCaution,
    injectionCaution,
  ],
  examples: [
    {
      cells: [100, "1 AWG", 2, 0.199, 0.004, 5],
      gives: [0.5, 50, 1000],
      worked:
        "hand-worked: 100 A × 0.505 mΩ/m × 2 m + 0.199 V = 0.3 V in phase, 100 A × 4 mΩ = 0.4 V across; √(0.3² + 0.4²) = 0.5 V; 5 V ÷ 5 mΩ",
    },
    {
      cells: [60, "6 AWG", 3, 0.4],
      gives: [0.68944, 41.3664, "not known"],
      worked: "hand-worked: 60 A × 1.608 mΩ/m × 3 m + 0.4 V = 0.68944 V; × 60 A",
    },
  ],
  calculate: (given) => {
    const loop = loopOf(given);
    const volts = sourceVolts(loop);
    const { openCircuitVolts } = given;
    return [
      volts,
      volts * loop.current,
      openCircuitVolts === undefined ? "not known" : reachableCurrent(loop, openCircuitVolts),
    ];
  },
  explain: (given, [volts, voltAmperes, reachable]) => {
    const loop = loopOf(given);
    const { openCircuitVolts } = given;
    return {
      steps: loopSteps(loop, {
        volts: Number(volts),
        voltAmperes: Number(voltAmperes),
        reach: openCircuitVolts === undefined ? undefined : { openCircuitVolts, reachable: Number(reachable) },
      }),
      answer: `${say(loop.current, "A")} take ${say(Number(volts), "V")} and ${say(Number(voltAmperes), "VA")}${reachedOf(loop, reachable)}.`,
      sources: [{ document: "V = |I·(R + jX)|, S = V·I", standing: "handbook" }, loop.size.source, copperLine],
    };
  },
});

type Inputs = Given<typeof parameters>;

const loopOf = ({ current, size, length, drop, reactance = 0 }: Inputs): TestLoop => ({
  current,
  size,
  length,
  drop,
  reactance,
});

const reachedOf = ({ current }: TestLoop, reachable: unknown): string =>
  typeof reachable !== "number"
    ? ""
    : reachable >= current
      ? `; this source reaches it, up to ${say(reachable, "A")}`
      : `; this source does not reach it: ${say(reachable, "A")} at most`;
