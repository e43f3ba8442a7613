import { NoAnswer } from "../metrology/no-answer";
import type { Source } from "../metrology/source";
import { awgDiameterMillimetres } from "./astm-b258";
import { copperZero } from "./copper";
import { iec60228, squareMillimetreOhmsPerKilometre } from "./iec60228";
import { awgOhmsPerKilometre, kcmilOhmsPerKilometre, necTable8 } from "./nec-table8";

/** A copper conductor of a standard size. */
export interface Conductor {
  /** As a person writes it: "12 AWG", "250 kcmil", "2.5 mm²". */
  readonly name: string;
  readonly areaSquareMillimetres: number;
  /** Ω/m at `temperature`, as printed. */
  readonly printed: { readonly ohmsPerMetre: number; readonly temperature: number };
  readonly source: Source;
}

/** Direct-current resistance at a conductor temperature in °C, Ω/m. Alternating current adds less than 1 % below 120 mm². */
export const ohmsPerMetre = ({ printed }: Conductor, temperature: number): number =>
  (printed.ohmsPerMetre * (copperZero + temperature)) / (copperZero + printed.temperature);

const discArea = (diameter: number): number => (Math.PI / 4) * diameter * diameter;

/** "3/0" is gauge −2. */
const gaugeOf = (size: string): number => (size.endsWith("/0") ? 1 - Number(size[0]) : Number(size));

/** A circular mil is the disc of a thousandth of an inch. */
const kcmilArea = (size: string): number => 1000 * discArea(0.0254) * Number(size);

interface Series {
  readonly unit: string;
  readonly source: Source;
  readonly temperature: number;
  readonly rows: readonly (readonly [size: string, ohmsPerKilometre: number])[];
  readonly area: (size: string) => number;
}

const allSeries: readonly Series[] = [
  {
    unit: "AWG",
    source: necTable8,
    temperature: 75,
    rows: awgOhmsPerKilometre,
    area: (size) => discArea(awgDiameterMillimetres(gaugeOf(size))),
  },
  { unit: "kcmil", source: necTable8, temperature: 75, rows: kcmilOhmsPerKilometre, area: kcmilArea },
  { unit: "mm²", source: iec60228, temperature: 20, rows: squareMillimetreOhmsPerKilometre, area: Number },
];

/** All sizes of one series, thinnest first. */
export const conductorsIn = (unit: "AWG" | "kcmil" | "mm²"): readonly Conductor[] =>
  conductors.filter(({ name }) => name.endsWith(unit));

const conductors: readonly Conductor[] = allSeries.flatMap(({ unit, source, temperature, rows, area }) =>
  rows.map(([size, ohms]) => ({
    name: `${size} ${unit}`,
    areaSquareMillimetres: area(size),
    printed: { ohmsPerMetre: ohms / 1000, temperature },
    source,
  })),
);

const byName = new Map(conductors.map((conductor) => [conductor.name, conductor]));

const units: readonly (readonly [unit: string, spelling: RegExp])[] = [
  ["AWG", /^(?:#?(\d+(?:\/0)?) ?awg|awg ?(\d+(?:\/0)?))$/],
  ["kcmil", /^(\d+) ?(?:kcmil|mcm)$/],
  ["mm²", /^(\d+(?:[.,]\d+)?) ?mm(?:²|2|\^2)$/],
];

/**
 * The conductor that a text names: "12 AWG", "250 kcmil", "2.5 mm²" (also mm2). undefined when the text names none:
 * a bare "10" is a different wire on each side of the ocean. Throws NoAnswer for a size that the tables leave out.
 */
export const conductorNamed = (text: string): Conductor | undefined => {
  const plain = text.trim().replace(/\s+/g, " ").toLowerCase();
  for (const [unit, spelling] of units) {
    const found = spelling.exec(plain);
    if (!found) continue;
    const typed = (found[1] ?? found[2] ?? "").replace(",", ".");
    const size = unit === "AWG" ? (typed === "0" ? "1/0" : typed) : String(Number(typed));
    const conductor = byName.get(`${size} ${unit}`);
    if (conductor) return conductor;
    const sizes = allSeries.find((series) => series.unit === unit)?.rows.map(([printed]) => printed) ?? [];
    throw new NoAnswer(`size: ${size} ${unit} is not in the table; it has ${sizes.join(", ")} ${unit}.`);
  }
  return undefined;
};
