/** A reading and the maker's accuracy statement: ±(percent of reading + counts × resolution), in the unit of the reading. */
export interface MeterReading {
  readonly reading: number;
  readonly percent: number;
  readonly counts: number;
  readonly resolution: number;
}

/** The limit of error, in the unit of the reading. */
export const errorLimit = ({ reading, percent, counts, resolution }: MeterReading): number =>
  (percent / 100) * Math.abs(reading) + counts * resolution;

/** Standard uncertainty of an error that may be anything within ±limit, all equally likely: JCGM 100, 4.3.7. */
export const rectangular = (limit: number): number => limit / Math.sqrt(3);
