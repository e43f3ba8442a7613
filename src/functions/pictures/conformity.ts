import type { Line, Plot } from "../../definition/plot";
import { guard, type Tested } from "../../metrology/conformity";
import { sayNumber } from "../../metrology/say";

const bell = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** The distribution that the measurement leaves, its expanded uncertainty shaded, against the limits. */
export const conformityPlot = ({ value, u, lower, upper }: Tested): Plot | undefined => {
  // An axis so short beside its value would have no two numbers to tell apart.
  if (u < 1e-9 * Math.abs(value)) return undefined;
  // A limit far away would squeeze the distribution into a line: it is then told in the sentence only.
  const shown = [lower, upper].filter((limit) => Math.abs(limit - value) < 50 * u);
  const from = Math.min(value - 4 * u, ...shown.map((limit) => limit - u));
  const to = Math.max(value + 4 * u, ...shown.map((limit) => limit + u));
  const height = bell(0) / u;
  const samples = (zFrom: number, zTo: number) =>
    Array.from({ length: 81 }, (_, i) => zFrom + ((zTo - zFrom) * i) / 80).map((z) => ({
      x: value + z * u,
      y: bell(z) / u,
    }));
  const limitLine = (name: string, limit: number): Line[] =>
    shown.includes(limit)
      ? [
          {
            name,
            role: "limit",
            samples: [
              { x: limit, y: 0 },
              { x: limit, y: 1.1 * height },
            ],
          },
        ]
      : [];
  const limits = [
    ...(lower === -Infinity ? [] : [`lower limit ${sayNumber(lower, 6)}`]),
    ...(upper === Infinity ? [] : [`upper limit ${sayNumber(upper, 6)}`]),
  ];
  return {
    title: "The value against its limits",
    sentence: `The true value lies about ${sayNumber(value, 6)}, within ± ${sayNumber(guard * u)} with about 95 %; ${limits.join(", ")}.`,
    x: { quantity: "value", unit: "", scale: "linear", from, to },
    y: { quantity: "probability density", unit: "", scale: "linear", from: 0, to: 1.1 * height },
    bands: [{ name: "value ± U", samples: samples(-guard, guard).map(({ x, y }) => ({ x, low: 0, high: y })) }],
    lines: [
      { name: "distribution", role: "course", samples: samples(-4, 4) },
      ...limitLine("lower limit", lower),
      ...limitLine("upper limit", upper),
    ],
    points: [{ name: "measured value", role: "asked", x: value, y: height }],
  };
};
