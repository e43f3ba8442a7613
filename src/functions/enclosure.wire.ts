import * as z from "zod/mini";
import { ohmsPerMetre } from "../contact/conductor";
import { copperLine, copperZero } from "../contact/copper";
import { iec60228, otherWires } from "../contact/iec60228";
import { necTable8 } from "../contact/nec-table8";
import { define } from "../definition/define";
import { optional, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { say } from "../metrology/say";
import { size } from "./arguments/size";
import { zeroCaution } from "./arguments/zero-degrees";

const usualTemperature = 75;

export default define({
  name: "ENCLOSURE.WIRE",
  summary: "The heat a copper wire inside makes, from its current, length and size.",
  parameters: {
    current: quantity(
      "A",
      "current in the wire, r.m.s.; 0 or blank is a wire that carries none",
      z.number().check(z.nonnegative(), z.maximum(1e5)),
    ),
    length: quantity(
      "m",
      "length of conductor inside; count both ways yourself",
      z.number().check(z.positive(), z.maximum(1e5)),
    ),
    size: size("size of the wire"),
    temperature: optional(
      quantity("°C", "temperature of the copper itself", z.number().check(z.minimum(-40), z.maximum(250)), {
        hint: "in °C; was °F meant?",
      }),
      `${usualTemperature} °C`,
    ),
  },
  results: [{ name: "heat", unit: "W", meaning: "power lost in the wire" }],
  answers: "row",
  sources: [{ document: "Joule's law, P = I²·R", standing: "handbook" }, necTable8, iec60228, copperLine],
  cautions: [
    `Stranded copper, direct-current resistance: fine-stranded leads have up to ${otherWires.fineStranded} times as much, aluminium about ${otherWires.aluminium} times. Alternating current adds less than 1 % up to 120 mm², but about 6 % at 1000 kcmil (IEC 60287-1-1).`,
    "Only the length inside the enclosure warms it; the rest warms the room.",
    "This is heat, not a permitted current: the installation rules decide whether the wire may carry it.",
  ],
  examples: [
    {
      cells: [20, 10, "2.5 mm²", 20],
      gives: [29.64],
      worked: "hand-worked: 20² A² × 0.00741 Ω/m × 10 m",
    },
    {
      cells: [20, 4, "12 AWG"],
      gives: [10.4],
      worked: "hand-worked: 20² A² × 0.0065 Ω/m × 4 m, at the 75 °C of the table",
    },
  ],
  calculate: ({ current, length, size, temperature = usualTemperature }) => [
    current * current * ohmsPerMetre(size, temperature) * length,
  ],
  explain: ({ current, length, size, temperature = usualTemperature }, [answer]) => {
    const { ohmsPerMetre: printed, temperature: at } = size.printed;
    const warm = ohmsPerMetre(size, temperature);
    const watts = say(Number(answer), "W");
    return {
      steps: [
        {
          sentence: `The table gives ${say(1000 * printed, "Ω")} per kilometre of ${size.name} at ${at} °C; copper's resistance goes with ${copperZero} °C plus its temperature`,
          tex: String.raw`R' = R'_{${at}}\,\frac{${copperZero} + \theta}{${copperZero} + ${at}} = ${tex(1000 * printed)}\cdot\frac{${copperZero} + ${tex(temperature)}}{${copperZero} + ${at}} = ${tex(1000 * warm)}\ \Omega/\mathrm{km}`,
          plain: `R' = ${say(1000 * printed, "Ω")}/km × (${copperZero} + ${temperature}) ÷ (${copperZero} + ${at}) = ${say(1000 * warm, "Ω")}/km`,
        },
        {
          sentence: "Current squared times the resistance of the length inside",
          tex: String.raw`P = I^2 R' \ell = ${tex(current)}^2 \cdot ${tex(warm)} \cdot ${tex(length)} = ${tex(Number(answer))}\ \mathrm{W}`,
          plain: `P = (${say(current, "A")})² × ${say(warm, "Ω")}/m × ${say(length, "m")} = ${watts}`,
        },
      ],
      answer: `${say(length, "m")} of ${size.name} make ${watts} of heat at ${say(current, "A")}.`,
      cautions: zeroCaution("copper", temperature),
    };
  },
});
