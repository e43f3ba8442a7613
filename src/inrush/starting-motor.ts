import { loneValues, type Source } from "../metrology/source";

// What is known of a motor while it starts, where nobody has measured it.

const guard = "test/inrush/starting-motor.published.test.ts";

/** The first peak of a motor, as multiples of its r.m.s. locked-rotor current. */
export const motorPeak = { least: 1.8, most: 2.8 } as const;

export const motorPeakSource: Source = {
  document: "IEC 60034-12",
  edition: "2016",
  place: "clause 1, note 4",
  standing: "corroborated",
  tables: [
    {
      title: "First peak of a motor ÷ its r.m.s. locked-rotor current",
      columns: [
        ["least", "×"],
        ["most", "×"],
      ],
      rows: [[motorPeak.least, motorPeak.most]],
      guard,
    },
  ],
};

/** cos φ while a motor below so many horsepower starts. */
export const startingPowerFactor = { below: 1000, value: 0.2 } as const;

export const startingPowerFactorSource: Source = {
  document: "IEEE Std 399",
  edition: "1997",
  place: "9.5.2, power factor while starting",
  standing: "from memory",
  tables: [
    {
      title: "Power factor of a motor while it starts",
      columns: loneValues,
      rows: [[`below ${startingPowerFactor.below} hp, about`, startingPowerFactor.value, ""]],
      guard,
    },
  ],
};
