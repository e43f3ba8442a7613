import type { Source } from "../metrology/source";

/** What every answer about one strip rests on. */
export const thermalEquation: Source = {
  document: "IEC 60255-149",
  edition: "2013",
  place: "thermal equation, cold and hot curve: t = τ·ln((I² − I₀²)/(I² − Iₚ²))",
  standing: "corroborated",
};

export const thermalOnly =
  "The thermal trip only: where the magnetic release takes part the breaker trips at once, whatever stands here.";

/** Where the model stops being true. */
export const modelCautions: readonly string[] = [
  thermalOnly,
  "A strip is taken as one body with one time constant. Its housing warms and cools more slowly, so after repeated shots it stays warmer than this says.",
  "Near the pickup the time hangs on the current: at 1.05 times the pickup 1 % more current is 8 % less time. Set and read the current with care.",
  "Pickup and time constant hold for the air temperature, the mounting and the leads they were found with.",
];

/** What learning from trials rests on. */
export const learning: readonly Source[] = [
  {
    document: "NIST/SEMATECH e-Handbook of Statistical Methods",
    place: "8.4.1.2, maximum likelihood with censored times",
    standing: "handbook",
  },
  {
    document: "Statistical Methods for Reliability Data",
    edition: "1998",
    place: "chapter 8, likelihood-ratio intervals",
    standing: "from memory",
  },
];
