import fc from "fast-check";
import type { TripPoint } from "../../src/trip/characteristic";
import { envelopeOf, type Requirements } from "../../src/trip/envelope";
import { knownCharacteristics } from "../../src/trip/known";

// The envelope is solved by its edges; here the set is searched body by body, and each body is put through the printed tests
// as they are printed, by the exact step response. No shared formula with src but the differential equation itself.

const stateAfter = (start: number, multiple: number, seconds: number, tau: number): number =>
  multiple ** 2 + (start - multiple ** 2) * Math.exp(-seconds / tau);
const timeToTrip = (multiple: number, start: number, pickup: number, tau: number): number =>
  start >= pickup ** 2
    ? 0
    : multiple <= pickup
      ? Infinity
      : tau * Math.log((multiple ** 2 - start) / (multiple ** 2 - pickup ** 2));

const meets = ({ multiple, seconds, after }: TripPoint, pickup: number, tau: number): boolean => {
  const start = after === undefined ? 0 : stateAfter(0, after, seconds, tau);
  return stateAfter(start, multiple, seconds, tau) >= pickup ** 2;
};
const admissible = ({ hold, trips }: Requirements, pickup: number, tau: number): boolean =>
  trips.every((point) => meets(point, pickup, tau)) &&
  (!hold || timeToTrip(hold.multiple, 0, pickup, tau) >= hold.seconds);

/** Shortest and longest time of any admissible body on a grid: pickups crowd towards the trip multiple, time constants over 7 decades. */
const searched = (requirements: Requirements, multiple: number, start: number): [number, number] => {
  const top = Math.min(...requirements.trips.map((point) => point.multiple));
  let shortest = Infinity;
  let longest = 0;
  for (let i = 0; i <= 80; i++) {
    const pickup = Math.sqrt(top ** 2 - (top ** 2 - requirements.holdMultiple ** 2) * 10 ** (-i / 6));
    for (let j = 0; j <= 1400; j++) {
      const tau = 10 ** (-2 + (7 * j) / 1400);
      if (!admissible(requirements, pickup, tau)) continue;
      const seconds = timeToTrip(multiple, start, pickup, tau);
      shortest = Math.min(shortest, seconds);
      longest = Math.max(longest, seconds);
    }
  }
  return [shortest, longest];
};

const classes = knownCharacteristics.flatMap((one) =>
  [20, 50, 80].map((rating) => ({ name: `${one.name}, ${rating} A`, requirements: one.classOf(rating) })),
);

test.each(classes.filter(({ name }) => /^(C|IEC 60947-2 typical|UL 489 typical), (20|80)|^UL 489, 50/.test(name)))(
  "no body found by search lies outside the envelope, and some lie at its edges: $name",
  ({ requirements }) => {
    const envelope = envelopeOf(requirements);
    for (const [multiple, start] of [
      [1.6, 0],
      [2, 0.5],
      [3, 0],
      [3, 1],
      [5, 0.9],
      [8, 0],
    ] as const) {
      const [shortest, longest] = searched(requirements, multiple, start);
      const low = envelope.shortest(multiple ** 2, start).seconds;
      const high = envelope.longest(multiple ** 2, start).seconds;
      // A grid in τ of 1 % steps comes within 2 % of an edge from inside, never beyond it.
      expect(shortest).toBeGreaterThanOrEqual(low * (1 - 1e-9));
      expect(longest).toBeLessThanOrEqual(high * (1 + 1e-9));
      if (requirements.hold) expect(shortest).toBeLessThanOrEqual(low * 1.03);
      expect(longest).toBeGreaterThan(high * 0.97);
    }
  },
);

describe("what no body may break", () => {
  const anyClass = fc.constantFrom(...classes);
  const multiples = fc.double({ min: 1.06, max: 30, noNaN: true });
  const starts = fc.double({ min: 0, max: 1, noNaN: true });

  test("more current never takes longer", () => {
    fc.assert(
      fc.property(
        anyClass,
        multiples,
        fc.double({ min: 1, max: 3, noNaN: true }),
        starts,
        ({ requirements }, multiple, more, start) => {
          const envelope = envelopeOf(requirements);
          const least = requirements.holdMultiple * 1.001;
          const [a, b] = [Math.max(least, multiple), Math.max(least, multiple) * more];
          expect(envelope.shortest(b ** 2, start).seconds).toBeLessThanOrEqual(
            envelope.shortest(a ** 2, start).seconds * (1 + 1e-12),
          );
          const [longA, longB] = [envelope.longest(a ** 2, start).seconds, envelope.longest(b ** 2, start).seconds];
          expect(longB <= longA * (1 + 1e-9)).toBe(true);
        },
      ),
    );
  });

  test("a warmer start never takes longer", () => {
    fc.assert(
      fc.property(anyClass, multiples, starts, starts, ({ requirements }, multiple, one, other) => {
        const envelope = envelopeOf(requirements);
        const square = Math.max(requirements.holdMultiple * 1.001, multiple) ** 2;
        const [cool, warm] = one < other ? [one, other] : [other, one];
        expect(envelope.shortest(square, warm).seconds).toBeLessThanOrEqual(
          envelope.shortest(square, cool).seconds * (1 + 1e-12),
        );
        expect(envelope.longest(square, warm).seconds <= envelope.longest(square, cool).seconds * (1 + 1e-9)).toBe(
          true,
        );
      }),
    );
  });

  test("the shortest time is never above the longest, and the extreme bodies are admissible", () => {
    fc.assert(
      fc.property(anyClass, multiples, starts, ({ requirements }, multiple, start) => {
        const envelope = envelopeOf(requirements);
        const square = Math.max(requirements.holdMultiple * 1.001, multiple) ** 2;
        const { seconds, pickup, timeConstant } = envelope.longest(square, start);
        expect(envelope.shortest(square, start).seconds).toBeLessThanOrEqual(seconds);
        if (Number.isFinite(seconds))
          expect(admissible(requirements, pickup * (1 - 1e-12), timeConstant * (1 - 1e-6))).toBe(true);
      }),
    );
  });
});

test("one interior maximum at most on each stretch: no pickup on a scan takes longer than the longest time", () => {
  for (const { requirements } of classes) {
    const envelope = envelopeOf(requirements);
    const top = Math.min(...requirements.trips.map((point) => point.multiple));
    for (let i = 0; i <= 100; i++) {
      const pickup = Math.sqrt(top ** 2 - (top ** 2 - requirements.holdMultiple ** 2) * Math.exp(-i / 4));
      const tau = slowestByBisection(requirements, pickup);
      for (const multiple of [top, 1.5, 2, 2.55, 3, 6])
        for (const start of [0, 0.3, requirements.holdMultiple ** 2 * 0.99]) {
          const seconds = timeToTrip(multiple, start, pickup, tau);
          if (Number.isFinite(seconds))
            expect(seconds).toBeLessThanOrEqual(envelope.longest(multiple ** 2, start).seconds * (1 + 1e-6));
        }
    }
  }
});

/** The slowest τ that still meets every printed trip, by trying the tests themselves. */
const slowestByBisection = ({ trips }: Requirements, pickup: number): number => {
  let [low, high] = [1e-3, 1e7];
  for (let k = 0; k < 55; k++) {
    const middle = Math.sqrt(low * high);
    if (trips.every((point) => meets(point, pickup, middle))) low = middle;
    else high = middle;
  }
  return low;
};
