import { define } from "../definition/define";
import { knownCharacteristics } from "../trip/known";
import { documents } from "./accounts/trip-sources";

export default define({
  name: "TRIP.CHARACTERISTICS",
  summary: "The characteristics a sheet may ask for by name, with what each asks of a sound breaker.",
  parameters: {},
  results: [
    { name: "name", unit: "", meaning: "as it is typed" },
    { name: "holds", unit: "×", meaning: "multiple of the rating that a sound breaker carries through the hold test" },
    { name: "trips", unit: "×", meaning: "lowest multiple at which it must trip in the end" },
    { name: "magnetic band", unit: "", meaning: "between no magnetic trip and a magnetic trip" },
    { name: "source", unit: "", meaning: "the document" },
    { name: "standing", unit: "", meaning: "how far the values have been followed to the page" },
  ],
  answers: "rows",
  sources: documents,
  cautions: [
    "Other letters (K, Z …) are makers' own and in no standard: give their band as a range of rows (multiple, shortest, longest).",
  ],
  examples: [
    {
      cells: [],
      gives: [
        ["B", 1.13, 1.45, "above 3 × up to 5 × the rating", "IEC 60898-1", "corroborated"],
        ["C", 1.13, 1.45, "above 5 × up to 10 × the rating", "IEC 60898-1", "corroborated"],
        ["D", 1.13, 1.45, "above 10 × up to 20 × the rating", "IEC 60898-1", "corroborated"],
        ["IEC 60947-2", 1.05, 1.3, "0.8 to 1.2 × the marked setting", "IEC 60947-2", "corroborated"],
        [
          "IEC 60947-2 typical",
          1.05,
          1.3,
          "0.8 to 1.2 × the marked setting",
          "IEC 60947-2",
          "not before 10 s at 2 ×: common practice, no source",
        ],
        [
          "UL 489",
          1,
          1.35,
          "0.8 to 1.3 × the marked setting",
          "UL 489",
          "corroborated, 135 % and the magnetic band from memory",
        ],
        [
          "UL 489 typical",
          1,
          1.35,
          "0.8 to 1.3 × the marked setting",
          "UL 489",
          "not before 10 s at 2 ×: common practice, no source",
        ],
      ],
      worked: "typed from the documents named in the rows",
    },
  ],
  calculate: () =>
    knownCharacteristics.map(({ name, classOf, magneticInWords, typical }) => {
      const { holdMultiple, holdSource, trips } = classOf(1);
      const memory = trips.some(({ source }) => source.standing === "from memory");
      const standing = typical
        ? "not before 10 s at 2 ×: common practice, no source"
        : memory
          ? "corroborated, 135 % and the magnetic band from memory"
          : holdSource.standing;
      return [
        name,
        holdMultiple,
        Math.min(...trips.map(({ multiple }) => multiple)),
        magneticInWords,
        holdSource.document,
        standing,
      ];
    }),
  explain: (_, __, rows) => ({
    steps: [
      { sentence: "Each row is one characteristic; the trip times follow from its printed points by TRIP.RANGE" },
    ],
    answer: `${rows.length} characteristics are known by name.`,
  }),
});
