import { insulationClasses, insulationFinding } from "../bench/insulation";
import { discharge, dischargeTimes, insulationSeconds, oneMinute } from "../bench/insulation-test";
import { define } from "../definition/define";
import { say } from "../metrology/say";
import { insulationClass, megohms } from "./arguments/bench";

export default define({
  name: "BENCH.INSULATION",
  summary: "Whether a breaker's insulation resistance reaches what one named document asks of its class.",
  parameters: { megohms, class: insulationClass },
  results: [{ name: "finding", unit: "", meaning: "meets the least value; or below it: investigate, or reject" }],
  answers: "row",
  sources: [...new Set(Object.values(insulationClasses).map(({ source }) => source)), oneMinute, discharge],
  cautions: [
    `The test voltage shocks, and the parts stay charged: hands off, then discharge them for ${dischargeTimes} times the test time before touching.`,
    "Never with electronic trip units or accessories connected: the test voltage kills them.",
    "Line to load with the breaker open; pole to pole and pole to frame with it closed. Each reading is judged by itself, the lowest decides.",
    "Insulation is judged at 20 °C and dry; damp and warmth lower it. A fall since the last test tells more than one value.",
    "The documents differ a hundredfold. Name the one the report is made by and stay with it.",
  ],
  examples: [
    {
      cells: [25, "NETA 250 V"],
      gives: ["meets 25 MΩ"],
      worked: "ANSI/NETA table 100.1, 250 V class: at least 25 MΩ (from memory)",
    },
    {
      cells: [60, "NETA 600 V"],
      gives: ["below 100 MΩ: investigate"],
      worked: "ANSI/NETA table 100.1, 600 V class: at least 100 MΩ",
    },
    {
      cells: [3, "IEC 60898-1 frame"],
      gives: ["below 5 MΩ: reject"],
      worked: "IEC 60898-1, 9.7.2 (from memory): 2 MΩ across and between poles, 5 MΩ to the frame",
    },
    { cells: [60, "NEMA AB 4"], gives: ["meets 1 MΩ"], worked: "NEMA AB 4: below 1 MΩ is rejected" },
    {
      cells: [0.4, "TM 5-683 500 V"],
      gives: ["below 0.5 MΩ: reject"],
      worked: "TM 5-683: 1 MΩ per kV of test voltage, 500 V: 0.5 MΩ",
    },
  ],
  calculate: ({ megohms, class: name }) => {
    const asked = insulationClasses[name];
    const finding = insulationFinding(megohms, asked);
    const least = say(asked.least, "MΩ");
    return [finding === "meets" ? `meets ${least}` : `below ${least}: ${finding}`];
  },
  explain: ({ megohms, class: name }, [finding]) => {
    const { source, least, testVolts, below } = insulationClasses[name];
    return {
      steps: [
        {
          sentence: `${name}: measured with ${testVolts} V d.c., for ${insulationSeconds} s, at least this is wanted`,
          plain: `${say(least, "MΩ")}; a reading of ${say(megohms, "MΩ")}`,
        },
      ],
      answer: `A reading of ${say(megohms, "MΩ")} ${String(finding).startsWith("meets") ? finding : `is ${finding}`}.`,
      sources: [source, oneMinute, discharge],
      cautions:
        below === "investigate"
          ? [
              "Below the value means clean, dry and measure again, and find the reason; it is a recommended least, no verdict by itself.",
            ]
          : [],
    };
  },
});
