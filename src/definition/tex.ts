import { sayNumber, type Unit } from "../metrology/say";

const inTex: Partial<Record<Unit, string>> = {
  Ω: String.raw`\Omega`,
  MΩ: String.raw`M\Omega`,
  "m²": "m^2",
  "°C": String.raw`\text{°C}`,
  "×": String.raw`\times`,
  "%": String.raw`\%`,
};

/** A number, with its unit if it has one, as a typeset step shows it: rounded as `say` rounds, powers of ten written out. */
export const tex = (value: number, unit: Unit = "", figures = 4): string => {
  const [digits, exponent] = sayNumber(value, figures).split("e");
  const number = exponent ? String.raw`${digits} \cdot 10^{${exponent}}` : `${digits}`;
  return unit === "" ? number : String.raw`${number}\ \mathrm{${inTex[unit] ?? unit}}`;
};
