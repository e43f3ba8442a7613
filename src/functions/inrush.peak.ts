import * as z from "zod/mini";
import { define } from "../definition/define";
import { blankMeans, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { currentAfterClosing, firstPeakAngle, firstPeakFactor } from "../inrush/first-peak";
import { motorPeak, motorPeakSource, startingPowerFactor, startingPowerFactorSource } from "../inrush/starting-motor";
import { say, sayNumber } from "../metrology/say";
import { peakSource } from "./accounts/margin";

export default define({
  name: "INRUSH.PEAK",
  summary:
    "The highest instantaneous current in the first half cycle after a circuit of resistance and inductance is closed at the worst moment.",
  parameters: {
    current: quantity("A", "the current the circuit draws once the offset has died away, r.m.s."),
    powerFactor: blankMeans(
      quantity(
        "",
        "cos φ of the circuit at that current: 1 is pure resistance, 0 pure inductance; a blank cell counts as 0, the worst",
        z.number().check(z.minimum(0), z.maximum(1)),
        { hint: "a power factor in per cent is divided by 100" },
      ),
      0,
    ),
  },
  results: [
    { name: "first peak", unit: "A", meaning: "highest instantaneous current, not r.m.s." },
    { name: "factor", unit: "", meaning: "first peak ÷ r.m.s. current, between √2 and 2√2" },
  ],
  answers: "row",
  sources: [peakSource, motorPeakSource, startingPowerFactorSource],
  cautions: [
    `A linear circuit is meant. A transformer switched on, or a motor whose iron saturates, can peak higher than this; IEC 60034-12 speaks of ${motorPeak.least} to ${motorPeak.most} times the r.m.s. locked-rotor current.`,
    `While it starts, a motor below ${startingPowerFactor.below} hp has a power factor of about ${startingPowerFactor.value} (IEEE Std 399, from memory), a small single-phase one 0.4 to 0.7 (common practice, no source).`,
    "Compare a peak with a magnetic band only after multiplying the band, which is r.m.s., by √2.",
  ],
  examples: [
    {
      cells: [60, 0.5],
      gives: [101.64, 1.694],
      within: 5e-4,
      worked: "the equation maximised by another program: 1.694 at cos φ = 0.5; × 60 A = 101.64 A",
    },
    {
      cells: [100, 1],
      gives: [100 * Math.SQRT2, Math.SQRT2],
      worked: "hand-worked: no inductance, no offset, so the crest of the sine, √2 × 100 A",
    },
    {
      cells: [100, 0],
      gives: [200 * Math.SQRT2, 2 * Math.SQRT2],
      worked: "hand-worked: no resistance, so the offset lasts and the crest is twice √2 × 100 A",
    },
  ],
  calculate: ({ current, powerFactor }) => {
    const factor = firstPeakFactor(powerFactor);
    return [factor * current, factor];
  },
  explain: ({ current, powerFactor }, [peak, factor]) => {
    const phi = Math.acos(powerFactor);
    const at = firstPeakAngle(powerFactor);
    return {
      steps: [
        {
          sentence: "The angle by which the current lags once settled",
          tex: String.raw`\varphi = \arccos\,${tex(powerFactor)} = ${tex(phi)}\ \mathrm{rad}`,
          plain: `φ = arccos ${sayNumber(powerFactor)} = ${sayNumber(phi)} rad`,
        },
        {
          sentence:
            "Closed at voltage zero, the current must start at zero: an offset that falls with the circuit's time constant is added to the sine",
          tex: String.raw`\frac{i}{\sqrt2\,I} = \sin(x-\varphi) + \sin\varphi\; e^{-x/\tan\varphi},\quad x = \omega t`,
          plain: "i ÷ (√2·I) = sin(x − φ) + sin φ · e^(−x ÷ tan φ), x = ωt",
        },
        {
          sentence: "Its highest point, where the derivative is zero",
          tex: String.raw`x = ${tex(at)}\ \mathrm{rad},\quad \frac{\hat\imath}{I} = \sqrt2 \cdot ${tex(Number(factor) / Math.SQRT2)} = ${tex(Number(factor))}`,
          plain: `x = ${sayNumber(at)} rad, peak ÷ I = √2 × ${sayNumber(Number(factor) / Math.SQRT2)} = ${sayNumber(Number(factor))}`,
        },
        {
          sentence: "Times the r.m.s. current",
          tex: String.raw`\hat\imath = ${tex(Number(factor))} \cdot ${tex(current, "A")} = ${tex(Number(peak), "A")}`,
          plain: `peak = ${sayNumber(Number(factor))} × ${say(current, "A")} = ${say(Number(peak), "A")}`,
        },
      ],
      answer: `Closed at the worst moment, ${say(current, "A")} r.m.s. at power factor ${sayNumber(powerFactor)} first peaks at ${say(Number(peak), "A")}.`,
    };
  },
  plot: ({ current, powerFactor }, [peak]) => {
    const crest = Math.SQRT2 * current;
    return {
      title: "The first cycle after closing",
      sentence: `The current starts at zero and first peaks at ${say(Number(peak), "A")}; the steady crest is ${say(crest, "A")}.`,
      x: { quantity: "cycles after closing", unit: "", scale: "linear", from: 0, to: 2 },
      y: { quantity: "instantaneous current", unit: "A", scale: "linear", from: -1.5 * crest, to: 2.1 * crest },
      lines: [
        {
          name: "current",
          role: "course",
          samples: Array.from({ length: 201 }, (_, i) => ({
            x: i / 100,
            y: crest * currentAfterClosing(powerFactor, (2 * Math.PI * i) / 100),
          })),
        },
      ],
      points: [{ name: "first peak", role: "asked", x: firstPeakAngle(powerFactor) / (2 * Math.PI), y: Number(peak) }],
    };
  },
});
