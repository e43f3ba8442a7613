import { assert, double, property } from "fast-check";
import { secondsToTrip } from "../../src/thermal/body";
import { heatInRamp, rampTrip } from "../../src/thermal/ramp";

describe("a current turned up by hand", () => {
  const positive = (min: number, max: number) => double({ min, max, noNaN: true });

  test("the heat is the closed form of a ramp: i² − 2rτi + 2r²τ² + C·e^(−t/τ)", () => {
    assert(
      property(positive(0.05, 5), positive(0, 30), positive(20, 300), positive(1, 900), (rate, from, tau, t) => {
        const i = from + rate * t;
        const constant = -(from ** 2) + 2 * rate * tau * from - 2 * (rate * tau) ** 2;
        const textbook = i * i - 2 * rate * tau * i + 2 * (rate * tau) ** 2 + constant * Math.exp(-t / tau);
        const scale = i * i + 2 * (rate * tau) ** 2;
        expect(Math.abs(heatInRamp(tau, { rate, from }, t) - textbook)).toBeLessThan(1e-13 * scale * 10);
      }),
    );
  });

  test("a very slow ramp trips where its settled lag says: i = rτ + √(p² − (rτ)²)", () => {
    // From the closed form without its dying term: (i − rτ)² + (rτ)² = p². Here t/τ is above 190.
    const [rate, pickup, timeConstant] = [0.001, 22, 100];
    const lag = rate * timeConstant;
    const { current } = rampTrip({ pickup, timeConstant }, { rate, from: 0 });
    expect(current).toBeCloseTo(lag + Math.sqrt(pickup ** 2 - lag ** 2), 10);
  });

  // scipy 1.10 solve_ivp (DOP853, rtol 1e-12). A 20 A breaker turned up slowly by hand lets go near 36 A: common practice, no source.
  test.each([
    [22, 34.9463281876],
    [25, 38.4871708953],
  ])("a pickup of %d A with 100 s, turned up at 0.2 A/s, lets go at %d A: 35 to 38 A", (pickup, expected) => {
    const { current, seconds } = rampTrip({ pickup, timeConstant: 100 }, { rate: 0.2, from: 0 });
    expect(current).toBeCloseTo(expected, 9);
    expect(seconds).toBeCloseTo(expected / 0.2, 8);
  });

  test("a faster ramp lets go later in amperes and sooner in seconds", () => {
    const body = { pickup: 22, timeConstant: 100 };
    const trips = [0.01, 0.05, 0.2, 1, 5].map((rate) => rampTrip(body, { rate, from: 0 }));
    for (let i = 1; i < trips.length; i++) {
      expect(trips[i]?.current).toBeGreaterThan(trips[i - 1]?.current as number);
      expect(trips[i]?.seconds).toBeLessThan(trips[i - 1]?.seconds as number);
    }
  });

  test("a step far above the pickup with a ramp that hardly moves is a steady current", () => {
    const body = { pickup: 20, timeConstant: 60 };
    const { seconds } = rampTrip(body, { rate: 1e-9, from: 51 });
    expect(seconds).toBeCloseTo(secondsToTrip(body, 51), 8);
  });
});
