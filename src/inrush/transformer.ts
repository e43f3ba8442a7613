import { hundredthSecond, tenthSecond } from "./ieee242";
import { lineCurrent, type Supplied } from "./line-current";

/** What a transformer draws, A r.m.s. (the points of the inrush: r.m.s. equivalents). */
interface TransformerInrush {
  readonly fullLoad: number;
  readonly tenthSecond: number;
  readonly hundredthSecond: number;
}

/** On the side it is switched on from. The points are usual ones to plan with, not limits of a transformer standard. */
export const transformerInrush = (transformer: Supplied): TransformerInrush => {
  const fullLoad = lineCurrent(transformer);
  return {
    fullLoad,
    tenthSecond: tenthSecond.multiple * fullLoad,
    hundredthSecond: hundredthSecond.multiple * fullLoad,
  };
};
