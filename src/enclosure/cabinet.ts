/** How an enclosure stands: alone or in a row of its like, away from the wall or on it. */
export const mountings = [
  "free",
  "wall",
  "end of row",
  "end of row, wall",
  "middle of row",
  "middle of row, wall",
  "middle of row, wall, covered top",
] as const;

export type Mounting = (typeof mountings)[number];

/** A closed enclosure: outside dimensions in m, no openings. */
export interface Cabinet {
  readonly height: number;
  readonly width: number;
  readonly depth: number;
  readonly mounting: Mounting;
}

/** One face; a covered one has a wall, a neighbour or the floor behind it. */
export interface Face {
  readonly name: "roof" | "front" | "back" | "side" | "floor";
  /** m² */
  readonly area: number;
  readonly covered: boolean;
}

/** All six faces. */
export const facesOf = ({ height, width, depth, mounting }: Cabinet): readonly Face[] => {
  const neighbours = mounting.startsWith("middle") ? 2 : mounting.startsWith("end") ? 1 : 0;
  return [
    { name: "roof", area: width * depth, covered: mounting.endsWith("covered top") },
    { name: "front", area: width * height, covered: false },
    { name: "back", area: width * height, covered: mounting.includes("wall") },
    { name: "side", area: depth * height, covered: neighbours >= 1 },
    { name: "side", area: depth * height, covered: neighbours === 2 },
    { name: "floor", area: width * depth, covered: true },
  ];
};
