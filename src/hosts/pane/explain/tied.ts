const units = "A/s|A|VA|kVA|V|mV|Ω|MΩ|W|s|m²|m|°C|K|×|%";
const figureAndUnit = new RegExp(`(\\d) (?=(?:${units})(?![\\p{L}\\p{N}]))`, "gu");

/** A sentence whose figures keep to the line of their units. */
export const tied = (sentence: string): string => sentence.replace(figureAndUnit, "$1\u00a0");
