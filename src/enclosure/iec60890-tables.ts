import type { Mounting } from "./cabinet";

// IEC TR 60890, closed enclosures. The numbers below are recalled; every answer made with them says "check against the standard".

/** Rise at mid-height: k·d·P to this power. */
export const exponent = 0.804;

/** Up to this effective area, m², an enclosure is a small one. */
export const smallUpTo = 1.25;

/** Factor for 0, 1, 2, 3 level partitions; small enclosures have none. */
export const partitionFactors = [1, 1.05, 1.15, 1.3] as const;

type Row = readonly [at: number, value: number];

/** Effective area in m² up to 1.25 → k. */
export const smallConstants: readonly Row[] = [
  [0.08, 3.973],
  [0.09, 3.643],
  [0.1, 3.371],
  [0.15, 2.5],
  [0.2, 2.022],
  [0.25, 1.716],
  [0.3, 1.5],
  [0.35, 1.339],
  [0.4, 1.213],
  [0.45, 1.113],
  [0.5, 1.029],
  [0.6, 0.9],
  [0.7, 0.803],
  [0.8, 0.728],
  [0.9, 0.668],
  [1, 0.618],
  [1.25, 0.525],
];

/** Effective area in m² above 1.25 → k. */
export const largeConstants: readonly Row[] = [
  [1.25, 0.524],
  [1.5, 0.45],
  [2, 0.35],
  [2.5, 0.275],
  [3, 0.225],
  [3.5, 0.2],
  [4, 0.185],
  [4.5, 0.17],
  [5, 0.16],
  [5.5, 0.15],
  [6, 0.14],
  [6.5, 0.135],
  [7, 0.13],
  [7.5, 0.125],
  [8, 0.12],
  [8.5, 0.115],
  [9, 0.11],
  [9.5, 0.105],
  [10, 0.1],
  [10.5, 0.095],
  [11, 0.09],
  [11.5, 0.085],
];

/** Small enclosures: height ÷ width → top rise ÷ rise at mid-height. */
export const smallTopFactors: readonly Row[] = [
  [0, 1],
  [0.1, 1.02],
  [0.2, 1.04],
  [0.3, 1.06],
  [0.4, 1.078],
  [0.5, 1.097],
  [0.6, 1.118],
  [0.7, 1.137],
  [0.8, 1.156],
  [0.9, 1.174],
  [1, 1.188],
  [1.2, 1.21],
  [1.4, 1.226],
];

/**
 * Large enclosures: height^1.35 ÷ base area → top rise ÷ rise at mid-height, by curve:
 * 1 alone and free; 2 end of a row, free; 3 alone on a wall, or middle of a row, free; 4 end of a row on a wall;
 * 5 middle of a row on a wall, also with covered top.
 */
export const largeTopFactors: readonly (readonly [
  at: number,
  ...curves: readonly [number, number, number, number, number],
])[] = [
  [0.6, 1.225, 1.21, 1.19, 1.17, 1.113],
  [1, 1.24, 1.225, 1.21, 1.185, 1.14],
  [1.5, 1.265, 1.245, 1.23, 1.21, 1.17],
  [2, 1.285, 1.27, 1.25, 1.23, 1.19],
  [2.5, 1.31, 1.29, 1.275, 1.25, 1.21],
  [3, 1.325, 1.31, 1.295, 1.27, 1.23],
  [3.5, 1.35, 1.33, 1.315, 1.29, 1.255],
  [4, 1.37, 1.355, 1.34, 1.32, 1.275],
  [4.5, 1.395, 1.375, 1.36, 1.34, 1.295],
  [5, 1.415, 1.395, 1.38, 1.36, 1.32],
  [5.5, 1.435, 1.415, 1.4, 1.38, 1.34],
  [6, 1.45, 1.435, 1.42, 1.395, 1.355],
  [6.5, 1.47, 1.45, 1.435, 1.41, 1.37],
  [7, 1.48, 1.47, 1.45, 1.43, 1.39],
  [7.5, 1.495, 1.48, 1.465, 1.44, 1.4],
  [8, 1.51, 1.49, 1.475, 1.455, 1.415],
  [8.5, 1.52, 1.505, 1.49, 1.47, 1.43],
  [9, 1.535, 1.52, 1.5, 1.48, 1.44],
  [9.5, 1.55, 1.53, 1.515, 1.49, 1.455],
  [10, 1.56, 1.54, 1.52, 1.5, 1.47],
  [10.5, 1.57, 1.55, 1.535, 1.51, 1.475],
  [11, 1.575, 1.565, 1.549, 1.52, 1.485],
  [11.5, 1.585, 1.57, 1.55, 1.525, 1.49],
  [12, 1.59, 1.58, 1.56, 1.535, 1.5],
  [12.5, 1.6, 1.585, 1.57, 1.54, 1.51],
];

/** The curve of a large enclosure by how it stands. */
export const topCurves: Record<Mounting, 1 | 2 | 3 | 4 | 5> = {
  free: 1,
  "end of row": 2,
  wall: 3,
  "middle of row": 3,
  "end of row, wall": 4,
  "middle of row, wall": 5,
  "middle of row, wall, covered top": 5,
};
