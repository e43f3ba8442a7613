/** Units as they are written beside a number. "×" is a multiple of the rating; "" is a count, a share or a word. */
export type Unit =
  | "A"
  | "A/s"
  | "V"
  | "Ω"
  | "mΩ"
  | "MΩ"
  | "W"
  | "VA"
  | "kVA"
  | "s"
  | "m"
  | "m²"
  | "°C"
  | "K"
  | "×"
  | "%"
  | "hp"
  | "hp or kW"
  | "";

/**
 * A number as a person reads it: at most `figures` significant figures, no exponent between 1e-4 and 1e7, no trailing zeros.
 * Rounding is for reading only; cells keep the whole double.
 */
export const sayNumber = (value: number, figures = 4): string => {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size >= 1e7 || size < 1e-4)
    return value
      .toExponential(figures - 1)
      .replace(/\.?0+e/, "e")
      .replace("e+", "e");
  // Whole numbers keep all their digits: a 12345 A setting is not 12340 A.
  if (Number.isInteger(value)) return String(value);
  const digits = value.toPrecision(Math.max(figures, Math.ceil(Math.log10(size))));
  return digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
};

/** A quantity with its unit: "9.963 s", "2.55 ×", "holds" (a word has no unit). */
export const say = (value: number | string | boolean, unit: Unit, figures = 4): string => {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  const number = sayNumber(value, figures);
  return unit === "" ? number : unit === "%" ? `${number} %` : `${number} ${unit}`;
};
