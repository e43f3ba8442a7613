import { type TerminalStandard, terminalRises } from "../contact/terminal";
import { BadInput } from "../definition/bad-input";
import { define } from "../definition/define";
import { optional, word } from "../definition/parameter";
import { tex } from "../definition/tex";
import { exceeds } from "../metrology/exceeds";
import { say } from "../metrology/say";
import { roomTemperature, terminalTemperature } from "./arguments/contact";
import { refuseZero } from "./arguments/zero-degrees";

const standards = Object.keys(terminalRises) as [TerminalStandard, ...TerminalStandard[]];

export default define({
  name: "CONTACT.TERMINAL",
  summary: "How far a terminal rises above the room, against the limit of a standard.",
  parameters: {
    temperature: terminalTemperature,
    room: roomTemperature,
    standard: optional(word("the standard whose limit is asked", standards), "IEC 60898-1"),
  },
  results: [
    { name: "rise", unit: "K", meaning: "terminal above room" },
    { name: "limit", unit: "K", meaning: "largest rise the standard allows" },
    { name: "finding", unit: "", meaning: "within the limit, or above the limit" },
  ],
  answers: "row",
  sources: Object.values(terminalRises).map(({ source }) => source),
  cautions: [
    "The limits hold at the rated current, settled (no more than 1 K change in an hour is common practice), with the standard's test conductors: thinner leads heat the terminal.",
    "The conductor has a limit of its own: a terminal within its rise may still be too hot for 60 °C or 75 °C insulation in a warm enclosure.",
    "Bright metal shows far too cold to an infrared thermometer: use a probe fixed while it is dead, or a blackened patch (common practice, no source).",
    "A terminal hotter than its neighbours usually means a loose joint: switch off and isolate before touching it.",
  ],
  examples: [
    {
      cells: [75, 25],
      gives: [50, 60, "within the limit"],
      worked: "hand-worked: 75 − 25 = 50 K, limit 60 K (IEC 60898-1)",
    },
    {
      cells: [85.3, 25.3, "IEC 60898-1"],
      gives: [60, 60, "within the limit"],
      worked: "hand-worked: 85.3 − 25.3 = 60 K, exactly the limit",
    },
    {
      cells: [78, 25, "UL 489"],
      gives: [53, 50, "above the limit"],
      worked: "hand-worked: 78 − 25 = 53 K, limit 50 K (UL 489, from memory)",
    },
    {
      cells: [78, 25, "UL 489 100 %"],
      gives: [53, 60, "within the limit"],
      worked: "hand-worked: 53 K, limit 60 K for a breaker listed for 100 % (from memory)",
    },
  ],
  calculate: ({ temperature, room, standard = "IEC 60898-1" }) => {
    refuseZero("room", room);
    if (temperature < room)
      throw new BadInput(
        `temperature: the terminal at ${say(temperature, "°C")} is colder than the room at ${say(room, "°C")}; are the two exchanged?`,
      );
    const rise = temperature - room;
    const { limit } = terminalRises[standard];
    return [rise, limit, exceeds(rise, limit) ? "above the limit" : "within the limit"];
  },
  explain: ({ temperature, room, standard = "IEC 60898-1" }, [rise, limit, finding]) => ({
    steps: [
      {
        sentence: "The rise above the room",
        tex: String.raw`\Delta\vartheta = ${tex(temperature, "°C")} - ${tex(room, "°C")} = ${tex(Number(rise), "K")}`,
        plain: `rise = ${say(temperature, "°C")} − ${say(room, "°C")} = ${say(Number(rise), "K")}`,
      },
      {
        sentence: `${standard} allows a terminal`,
        tex: String.raw`\Delta\vartheta \le ${tex(Number(limit), "K")}`,
        plain: `rise ≤ ${say(Number(limit), "K")}`,
      },
    ],
    answer: `The terminal rises ${say(Number(rise), "K")} of the ${say(Number(limit), "K")} that ${standard} allows: ${finding}.`,
    sources: [terminalRises[standard].source],
    cautions: exceeds(temperature, 75)
      ? ["The terminal is above 75 °C, the usual limit of its conductor's insulation (common practice, no source)."]
      : [],
  }),
});
