import { leadOhms, type TestLoop, warmLead } from "../../bench/source";
import { ohmsPerMetre } from "../../contact/conductor";
import type { Step } from "../../definition/step";
import { tex } from "../../definition/tex";
import { say } from "../../metrology/say";

/** What the source must supply: its answers, and the open-circuit volts if they are known. */
interface Supplied {
  readonly volts: number;
  readonly voltAmperes: number;
  readonly reach?: { readonly openCircuitVolts: number; readonly reachable: number };
}

/** The voltage of a test loop with the numbers put in. */
export const loopSteps = (loop: TestLoop, { volts, voltAmperes, reach }: Supplied): readonly Step[] => {
  const { current, size, length, drop, reactance } = loop;
  const ohms = leadOhms(loop);
  const perMetre = ohmsPerMetre(size, warmLead);
  const inPhase = current * ohms + drop;
  const across = current * reactance;
  return [
    {
      sentence: `Both leads, ${size.name} at ${warmLead} °C`,
      tex: String.raw`R = R'\ell = ${tex(perMetre)} \cdot ${tex(length)} = ${tex(ohms, "Ω")}`,
      plain: `R = ${say(perMetre, "Ω")}/m × ${say(length, "m")} = ${say(ohms, "Ω")}`,
    },
    {
      sentence: "Their drop and the breaker's are both in phase with the current",
      tex: String.raw`IR + \Delta V = ${tex(current)} \cdot ${tex(ohms)} + ${tex(drop)} = ${tex(inPhase, "V")}`,
      plain: `${say(current, "A")} × ${say(ohms, "Ω")} + ${say(drop, "V")} = ${say(inPhase, "V")}`,
    },
    reactance > 0
      ? {
          sentence: "The reactance's drop leads the current by a quarter period, so the squares add",
          tex: String.raw`V = \sqrt{(IR + \Delta V)^2 + (IX)^2} = \sqrt{${tex(inPhase)}^2 + ${tex(across)}^2} = ${tex(volts, "V")}`,
          plain: `V = √((${say(inPhase, "V")})² + (${say(across, "V")})²) = ${say(volts, "V")}`,
        }
      : { sentence: "No reactance was given, so that is the whole voltage", plain: `V = ${say(volts, "V")}` },
    {
      sentence: "The source supplies",
      tex: String.raw`S = VI = ${tex(volts)} \cdot ${tex(current)} = ${tex(voltAmperes, "VA")}`,
      plain: `S = ${say(volts, "V")} × ${say(current, "A")} = ${say(voltAmperes, "VA")}`,
    },
    ...(reach
      ? [
          {
            sentence:
              "The open-circuit volts against the impedance of the loop, the breaker's drop growing with the current",
            tex: String.raw`I_{\max} = \frac{V_0}{V/I} = \frac{${tex(reach.openCircuitVolts)}}{${tex(volts)} / ${tex(current)}} = ${tex(reach.reachable, "A")}`,
            plain: `${say(reach.openCircuitVolts, "V")} ÷ (${say(volts, "V")} ÷ ${say(current, "A")}) = ${say(reach.reachable, "A")}`,
          },
        ]
      : []),
  ];
};
