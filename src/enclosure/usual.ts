import { loneValues, type Source } from "../metrology/source";

// What is taken of an enclosure and its room where nothing is said.

const guard = "test/enclosure/published.test.ts";

/** °C: the highest mean of a day that an assembly indoors is built for. */
export const usualRoom = 35;

export const usualRoomSource: Source = {
  document: "IEC 61439-1",
  edition: "2011",
  place: "7.1.1.1, air around an assembly indoors",
  standing: "from memory",
  tables: [
    {
      title: "Air around an assembly",
      columns: loneValues,
      rows: [["highest mean over 24 h", usualRoom, "°C"]],
      guard,
    },
  ],
};

/** Of painted steel. */
export const usualEmissivity = 0.9;

export const usualEmissivitySource: Source = {
  document: "Çengel, Heat Transfer: A Practical Approach",
  place: "tables of emissivity, paints 0.85 to 0.95, their middle",
  standing: "handbook",
  tables: [
    {
      title: "Emissivity",
      columns: loneValues,
      rows: [["painted surface, any colour", usualEmissivity, ""]],
      guard,
    },
  ],
};
