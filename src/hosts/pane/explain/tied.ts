const units = "A/s|A|VA|kVA|V|mV|Ω|mΩ|MΩ|W|s|m²|m|°C|K|×|%";
const figureAndUnit = new RegExp(`(\\d) (?=(?:${units})(?![\\p{L}\\p{N}]))`, "gu");

/** A sentence whose figures keep to the line of their units; a cell's "1.65e-5" is read as 1.65·10⁻⁵. */
export const tied = (sentence: string): string =>
  sentence
    .replace(/\b(\d+(?:\.\d+)?)e(-?\d+)\b/g, (_, digits: string, power: string) => `${digits}·10${raised(power)}`)
    .replace(figureAndUnit, "$1\u00a0")
    .replace(/([⁰¹²³⁴⁵⁶⁷⁸⁹]) (?=Ω)/g, "$1\u00a0");

const raised = (power: string): string =>
  power.replace(/./g, (sign) => "⁻⁰¹²³⁴⁵⁶⁷⁸⁹"["-0123456789".indexOf(sign)] ?? sign);
