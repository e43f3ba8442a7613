import { define } from "../definition/define";
import { tex } from "../definition/tex";
import { lockedRotor } from "../inrush/locked-rotor";
import { codeLetterSource, codeLetters } from "../inrush/nfpa70";
import { say, sayNumber } from "../metrology/say";
import { codeLetter, horsepower, phases, volts } from "./arguments/inrush";

export default define({
  name: "INRUSH.LOCKED",
  summary: "The current a motor draws while its rotor still stands, from the code letter on its nameplate.",
  parameters: { power: horsepower, volts, phases, letter: codeLetter },
  results: [
    { name: "low", unit: "A", meaning: "lower end of the letter's range, r.m.s." },
    { name: "high", unit: "A", meaning: "upper end of the letter's range, r.m.s.; no limit for the letter V" },
  ],
  answers: "row",
  sources: [codeLetterSource],
  cautions: [
    "Use the high end to ask whether a breaker rides through, the low end to ask whether it trips on a stalled motor.",
    "The value is r.m.s. after the first cycles: the first peak is higher, see INRUSH.PEAK.",
    "The voltage is the one at the motor; it falls during a start, and the current with it.",
    "Never block a rotor to measure this: it burns out within seconds, and what holds it may let go. Record a real start instead.",
  ],
  examples: [
    {
      cells: [20, 460, 3, "G"],
      gives: [140.5722, 157.8928],
      within: 1e-6,
      worked:
        "hand-worked: 20 hp × 5.6 (6.29) kVA/hp ÷ (1.7320508 × 0.46 kV) = 140.572 A (157.893 A); 157.9 A is the handbook value",
    },
    {
      cells: [1, 230, 1, "L"],
      gives: [9000 / 230, 9990 / 230],
      worked: "hand-worked: 9.0 (9.99) kVA ÷ 0.23 kV = 39.13 A (43.43 A)",
    },
    {
      cells: [0.5, 115, 1, "V"],
      gives: [11200 / 115, "no limit"],
      worked: "hand-worked: 0.5 hp × 22.4 kVA/hp ÷ 0.115 kV = 97.39 A; the letter V has no upper end",
    },
  ],
  calculate: (motor) => {
    const { low, high } = lockedRotor(motor);
    return [low, high === Infinity ? "no limit" : high];
  },
  explain: ({ power, volts, phases, letter }, [low, high]) => {
    const [least, most] = codeLetters[letter];
    const root = phases === 3 ? { tex: String.raw`\sqrt3 \cdot `, plain: "√3 × " } : { tex: "", plain: "" };
    const step = (sentence: string, perHorsepower: number, amperes: number) => ({
      sentence,
      tex: String.raw`I = \frac{${tex(power, "hp")} \cdot ${sayNumber(1000 * perHorsepower)}\ \mathrm{VA/hp}}{${root.tex}${tex(volts, "V")}} = ${tex(amperes, "A")}`,
      plain: `I = ${say(power, "hp")} × ${sayNumber(1000 * perHorsepower)} VA/hp ÷ (${root.plain}${say(volts, "V")}) = ${say(amperes, "A")}`,
    });
    return {
      steps: [
        {
          sentence: `The letter ${letter} stands for`,
          plain: most === Infinity ? `${least} kVA per horsepower and more` : `${least} to ${most} kVA per horsepower`,
        },
        step("At the low end", least, Number(low)),
        ...(most === Infinity ? [] : [step("At the high end", most, Number(high))]),
      ],
      answer:
        most === Infinity
          ? `With its rotor locked the motor draws ${say(Number(low), "A")} or more.`
          : `With its rotor locked the motor draws between ${say(Number(low), "A")} and ${say(Number(high), "A")}.`,
    };
  },
});
