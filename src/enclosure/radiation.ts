import { loneValues, type Source } from "../metrology/source";
import { zeroCelsius } from "./air";

/** W/(m²·K⁴), exact since the SI of 2019 (CODATA 2018), rounded. */
const stefanBoltzmann = 5.670374419e-8;

export const radiationSource: Source = {
  document: "Stefan–Boltzmann law, grey surfaces",
  place: "σ of CODATA 2018; contents and wall as two facing surfaces, 1/(1/ε + 1/ε − 1)",
  standing: "handbook",
  tables: [
    {
      title: "Radiation",
      columns: loneValues,
      rows: [
        ["σ", stefanBoltzmann, "W/(m²·K⁴)"],
        ["0 °C", zeroCelsius, "K"],
      ],
      guard: "test/enclosure/published.test.ts",
    },
  ],
};

/** Net heat by radiation from one grey surface to surroundings that give nothing back, W/m²; temperatures in °C. */
export const radiantFlux = (emissivity: number, { from, to }: { from: number; to: number }): number => {
  const hot = zeroCelsius + from;
  const cold = zeroCelsius + to;
  // (hot⁴ − cold⁴) without losing the digits of a small difference.
  return emissivity * stefanBoltzmann * (hot * hot + cold * cold) * (hot + cold) * (from - to);
};

/** Emissivity to use between two facing surfaces of one emissivity each: 1/(1/ε + 1/ε − 1). */
export const facingEmissivity = (emissivity: number): number => emissivity / (2 - emissivity);
