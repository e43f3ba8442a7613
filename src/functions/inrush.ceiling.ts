import { define } from "../definition/define";
import { optional, quantity } from "../definition/parameter";
import { tex } from "../definition/tex";
import { motorCeiling } from "../inrush/ceiling";
import { ceilingPercent, ceilingSource, exceptionPercent, slowSynchronous } from "../inrush/nfpa70";
import { say } from "../metrology/say";
import { addedIn2023, standardRatings, standardRatingsSource } from "../trip/nfpa70";
import { codeCaution } from "./accounts/cautions";
import { motorType } from "./arguments/inrush";

export default define({
  name: "INRUSH.CEILING",
  summary: "The largest inverse-time breaker the National Electrical Code lets protect a motor's branch circuit.",
  parameters: {
    fullLoad: quantity("A", "full-load current from the code's tables (INRUSH.MOTOR), not from the nameplate"),
    motorType: optional(motorType, "squirrel cage"),
  },
  results: [
    { name: "ceiling", unit: "A", meaning: "the percentage of the full-load current" },
    { name: "next standard size", unit: "A", meaning: "the rating it may be rounded up to" },
    {
      name: "exception ceiling",
      unit: "A",
      meaning: "no rating above this, even where the motor will not start otherwise",
    },
  ],
  answers: "row",
  sources: [ceilingSource, standardRatingsSource],
  cautions: [
    "A ceiling is no recommendation: the smallest rating that lets the motor start protects its circuit best.",
    "This breaker guards against short circuits; the motor needs overload protection of its own, set by the nameplate (430.32).",
    "A smaller maximum marked on the equipment, or by the maker of the overload relay, goes first.",
    codeCaution,
  ],
  examples: [
    {
      cells: [28],
      gives: [70, 70, 112],
      worked: "hand-worked: 250 % of 28 A = 70 A, a standard rating; the exception 400 % = 112 A",
    },
    {
      cells: [34],
      gives: [85, 90, 136],
      worked: "hand-worked: 250 % of 34 A = 85 A, next standard rating 90 A (Table 240.6(A)); 400 % = 136 A",
    },
    {
      cells: [124, "squirrel cage"],
      gives: [310, 350, 372],
      worked: "hand-worked: 250 % of 124 A = 310 A, next 350 A; above 100 A the exception is 300 % = 372 A",
    },
    {
      cells: [34, "wound rotor"],
      gives: [51, 60, 136],
      worked: "hand-worked: 150 % of 34 A = 51 A, next 60 A; the exception 400 % = 136 A",
    },
  ],
  calculate: ({ fullLoad, motorType = "squirrel cage" }) => {
    const { ceiling, nextSize, exception } = motorCeiling(fullLoad, motorType);
    return [ceiling, nextSize, exception];
  },
  explain: ({ fullLoad, motorType = "squirrel cage" }, [ceiling, nextSize, exception]) => {
    const percent = ceilingPercent[motorType];
    const most = exceptionPercent(fullLoad);
    const inside = standardRatings.filter((rating) => rating <= Number(exception)).at(-1);
    return {
      steps: [
        {
          sentence: `A ${motorType} motor: ${percent} % of the table's full-load current`,
          tex: String.raw`${percent / 100} \cdot ${tex(fullLoad, "A")} = ${tex(Number(ceiling), "A")}`,
          plain: `${percent} % × ${say(fullLoad, "A")} = ${say(Number(ceiling), "A")}`,
        },
        {
          sentence: "Where that is no standard rating, the next one up is allowed",
          tex: tex(Number(nextSize), "A"),
          plain: say(Number(nextSize), "A"),
        },
        {
          sentence: `If the motor will not start on it, at most ${most} % (${fullLoad <= 100 ? "up to" : "above"} 100 A full load), rounded down`,
          tex: String.raw`${most / 100} \cdot ${tex(fullLoad, "A")} = ${tex(Number(exception), "A")}`,
          plain: `${most} % × ${say(fullLoad, "A")} = ${say(Number(exception), "A")}`,
        },
      ],
      answer: `At most ${say(Number(nextSize), "A")}; if the motor will not start on it, ${
        inside === undefined || inside <= Number(nextSize)
          ? "the exception allows no larger standard rating"
          : `up to ${say(inside, "A")}, the largest standard rating within ${say(Number(exception), "A")}`
      }.`,
      cautions: [
        ...(Number(ceiling) <= addedIn2023
          ? [
              `Where the edition of 2023 is in force ${say(addedIn2023, "A")} is a standard rating too, and then the next size here.`,
            ]
          : []),
        ...(motorType === "synchronous"
          ? [
              `A synchronous motor of low torque and low speed (${slowSynchronous.speed} r/min or less) that starts unloaded needs no more than ${slowSynchronous.percent} % (from memory).`,
            ]
          : []),
      ],
    };
  },
});
