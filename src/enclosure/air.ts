import type { Source } from "../metrology/source";

/** Dry air at one atmosphere. */
export interface Air {
  /** W/(m·K) */
  readonly conductivity: number;
  /** Kinematic, m²/s. */
  readonly viscosity: number;
  readonly prandtl: number;
  /** Thermal expansion, 1/K. */
  readonly expansion: number;
}

/** Between these temperatures, °C, the fits below hold. */
const coldestAir = -40;
export const hottestAir = 160;

export const zeroCelsius = 273.15;

/** Air at a film temperature in °C. */
export const airAt = (t: number): Air => ({
  conductivity: 0.0236353 + (7.56097e-5 - 2.47288e-8 * t) * t,
  viscosity: 1e-6 * (13.3772 + (0.0872978 + 9.51526e-5 * t) * t),
  prandtl: 0.736529 + (-2.95417e-4 + 4.16771e-7 * t) * t,
  expansion: 1 / (zeroCelsius + t),
});

const printed = [coldestAir, 0, 20, 40, 60, 80, 120, hottestAir];
const rounded = (value: number): number => Number(value.toPrecision(4));

export const airTable: Source = {
  document: "Çengel, Heat Transfer: A Practical Approach",
  place:
    "Table A-15, air at 1 atm, by fits: within 0.1 % from 0 to 120 °C and 0.2 % to 160 °C; below 0 °C the fits go on, within 1 % (from memory)",
  standing: "corroborated",
  tables: [
    {
      title: "Air at 1 atm, as the fits give it",
      columns: [
        ["temperature", "°C"],
        ["conductivity", "W/(m·K)"],
        ["kinematic viscosity", "10⁻⁶ m²/s"],
        ["Prandtl number"],
      ],
      rows: printed.map((t) => {
        const { conductivity, viscosity, prandtl } = airAt(t);
        return [t, ...[conductivity, 1e6 * viscosity, prandtl].map(rounded)];
      }),
      standings: printed.map((t) => (t < 0 ? "from memory" : "corroborated")),
      guard: "test/enclosure/published.test.ts",
    },
  ],
};
