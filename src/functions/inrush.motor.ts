import { define } from "../definition/define";
import { optional, quantity, word } from "../definition/parameter";
import { tex } from "../definition/tex";
import { motorFullLoad, motorTable } from "../inrush/full-load";
import { horsepower, horsepowerSource, kilowattsPerHorsepower, sayHorsepower } from "../inrush/horsepower";
import { singlePhase, systemVoltagesSource, threePhase } from "../inrush/nfpa70-currents";
import { say, sayNumber } from "../metrology/say";
import { codeCaution } from "./accounts/cautions";
import { phases, volts } from "./arguments/inrush";

/** hp, from a power in the unit it was typed in. */
const inHorsepower = (power: number, unit: "hp" | "kW"): number => (unit === "kW" ? horsepower(power) : power);

export default define({
  name: "INRUSH.MOTOR",
  summary: "The full-load current of an a.c. motor as the tables of the National Electrical Code give it.",
  parameters: {
    power: quantity("hp or kW", "rated power of the motor"),
    volts,
    phases,
    unit: optional(word("the unit of the power", ["hp", "kW"]), "hp"),
  },
  results: [{ name: "full load", unit: "A", meaning: "the table's full-load current" }],
  answers: "row",
  sources: [singlePhase.source, threePhase.source, systemVoltagesSource, horsepowerSource],
  cautions: [
    "The table's current sizes conductors, disconnects and the breaker of the branch circuit; the overload device is set by the nameplate.",
    "Motors of low speed, high torque or several speeds draw more than the table: the nameplate then decides (430.6(A)(1), from memory).",
    "This is no starting current: that is four to eight times as much (common practice, no source); see INRUSH.LOCKED.",
    codeCaution,
  ],
  examples: [
    { cells: [1, 230, 1], gives: [8], worked: "NFPA 70 Table 430.248: 1 hp, 230 V column, 8.0 A" },
    {
      cells: [20, 480, 3],
      gives: [27],
      worked: "NFPA 70 Table 430.250: 20 hp, 460 V column (systems of 440–480 V), 27 A",
    },
    { cells: [0.33, 120, 1], gives: [7.2], worked: "NFPA 70 Table 430.248: 1/3 hp, 115 V column, 7.2 A" },
    {
      cells: [1.1, 208, 3, "kW"],
      gives: [6.6],
      worked: "hand-worked: 1.1 kW ÷ 0.746 = 1.475 hp, the 1 1/2 hp row of Table 430.250, 208 V column, 6.6 A",
    },
  ],
  calculate: ({ power, unit = "hp", ...motor }) => [
    motorFullLoad({ power: inHorsepower(power, unit), ...motor }).amperes,
  ],
  explain: ({ power, unit = "hp", ...motor }, [amperes]) => {
    const asked = inHorsepower(power, unit);
    const { hp, column } = motorFullLoad({ power: asked, ...motor });
    const { source } = motorTable(motor.phases);
    const row = sayHorsepower(hp);
    return {
      steps: [
        ...(unit === "kW"
          ? [
              {
                sentence: "Kilowatts become horsepower",
                tex: String.raw`P = \frac{${tex(power)}\ \mathrm{kW}}{${kilowattsPerHorsepower}} = ${tex(asked, "hp")}`,
                plain: `P = ${sayNumber(power)} kW ÷ ${kilowattsPerHorsepower} = ${say(asked, "hp")}`,
              },
            ]
          : []),
        {
          sentence: `A rating is a rounded number, so the row that ${say(asked, "hp")} comes within 2 % above or 3.6 % below is meant`,
          plain: `row: ${row} hp`,
        },
        {
          sentence: `A system of ${say(motor.volts, "V")} reads the table's column`,
          plain: `column: ${column} V`,
        },
        {
          sentence: `${source.place} gives`,
          tex: `I = ${tex(Number(amperes), "A")}`,
          plain: `I = ${say(Number(amperes), "A")}`,
        },
      ],
      answer: `A ${row} hp ${motor.phases === 1 ? "single-phase" : "three-phase"} motor at ${say(motor.volts, "V")} draws ${say(Number(amperes), "A")} at full load by the table.`,
      sources: [source, systemVoltagesSource, ...(unit === "kW" ? [horsepowerSource] : [])],
      cautions:
        unit === "kW"
          ? [
              "The tables are in horsepower; a motor rated in kilowatts may draw another current: compare its nameplate.",
            ]
          : [],
    };
  },
});
