import type { Source } from "../../metrology/source";
import { thermalEquation } from "../../thermal/model";
import { ambientLaw } from "../../trip/ambient";
import { airSource, referenceSource, table7Source } from "../../trip/iec60898-tables";
import { iec60947Magnetic, iec60947Sources } from "../../trip/iec60947";
import { onePoleSource } from "../../trip/one-pole";
import { typicalHold } from "../../trip/typical-hold";
import { magneticSource, ul489Sources } from "../../trip/ul489-tables";

/** The documents behind every magnetic band. */
export const magneticDocuments: readonly Source[] = [table7Source, iec60947Magnetic, magneticSource];

/** The documents behind every answer about tripping; an explanation names the places it used. */
export const documents: readonly Source[] = [
  table7Source,
  referenceSource,
  airSource,
  ...iec60947Sources,
  ...ul489Sources,
  thermalEquation,
  ambientLaw,
  typicalHold.source,
  onePoleSource,
];
