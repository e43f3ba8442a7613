import { type Start, startMargin } from "../../src/inrush/margin";
import { asked } from "../../src/trip/asked";
import type { Conditions } from "../../src/trip/conditions";
import { knownCharacteristics } from "../../src/trip/known";

const margin = (name: string, start: Partial<Start>, conditions: Conditions = {}) => {
  const kind = knownCharacteristics.find((one) => one.name === name);
  if (!kind) throw new Error(`no characteristic ${name}`);
  return startMargin(asked(20, kind, conditions), { current: 60, seconds: 0.4, running: 12, ...start });
};

test("a short start well below the magnetic band rides through", () => {
  expect(margin("C", { powerFactor: 0.5 }).verdict).toBe("rides through");
});

test("without a power factor the worst peak is 2√2 times the current, so its margin is half the magnetic one", () => {
  const { magnetic, peak } = margin("C", {});
  expect(peak).toBeCloseTo((magnetic ?? 0) / 2, 12);
});

test("an unknown power factor may be what keeps it from riding through", () => {
  // 60 A × 2√2 = 169.7 A crest against √2 × 100 A = 141.4 A
  expect(margin("C", {}).verdict).toBe("may trip");
});

test("any margin below 1 says may trip", () => {
  // 0.6812 s at 3 × ÷ 0.8 s
  expect(margin("C", { seconds: 0.8 })).toMatchObject({ verdict: "may trip" });
  // running at 23 A above the hold edge of 22.6 A
  expect(margin("C", { running: 23 })).toMatchObject({ verdict: "may trip" });
  // 70 A of a B breaker (band 60 to 100 A): may trip at once
  expect(margin("B", { current: 70 })).toMatchObject({ verdict: "may trip" });
  // the first peak alone: 60 A × 2√2 = 169.7 A crest against √2 × 100 A = 141.4 A would need a margin below 1 at 51 A and more
  expect(margin("C", { current: 51, seconds: 0.4 }).peak).toBeLessThan(1);
});

test("the peak alone never says trips", () => {
  expect(margin("C", { current: 99, seconds: 0.01 }).verdict).toBe("may trip");
});

test.each([
  ["a start longer than the slowest sound strip takes (41.99 s at 3 ×)", { seconds: 43 }],
  ["a start at the upper magnetic current", { current: 200, seconds: 0.05 }],
  ["a running current at the trip multiple", { running: 29 }],
])("%s trips", (_, start) => {
  expect(margin("C", start).verdict).toBe("trips");
});

test("inside the magnetic band the thermal margin is still the strip's own", () => {
  // quickest strip at 7.5 ×: ln(56.25/(56.25 − 2.1025)) ÷ ln(2.55²/(2.55² − 2.1025)) = 0.0975 s by hand
  expect(margin("C", { current: 150, seconds: 0.05 }).thermal * 0.05).toBeCloseTo(0.0975, 4);
});

test("a standard without a minimum promises nothing above its hold edge", () => {
  expect(margin("UL 489", {})).toMatchObject({ thermal: 0, magnetic: undefined, peak: undefined, verdict: "may trip" });
});

test("without a known magnetic band the verdict is at best thermal", () => {
  expect(margin("UL 489 typical", { seconds: 2 }).verdict).toBe("thermal rides through, magnetic not known");
  expect(margin("UL 489 typical", { seconds: 2 }, { setting: 300 }).verdict).toBe("rides through");
});

test("an own band has no hold edge and no magnetic band to hold a start against", () => {
  const band = {
    rows: [
      { multiple: 1.2, shortest: 100, longest: Infinity },
      { multiple: 6, shortest: 2, longest: 8 },
    ],
  };
  const start = { current: 120, seconds: 1, running: 12 };
  expect(startMargin(asked(20, band, {}), start)).toMatchObject({
    running: undefined,
    thermal: 2,
    magnetic: undefined,
    verdict: "thermal rides through, magnetic not known",
  });
});
