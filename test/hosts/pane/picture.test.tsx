import { renderToString } from "preact-render-to-string";
import type { Plot } from "../../../src/definition/plot";
import { tied } from "../../../src/hosts/pane/explain/tied";
import { Picture } from "../../../src/hosts/pane/picture/picture";
import { columnsOf, nearest, readingsOf } from "../../../src/hosts/pane/picture/samples";
import { lay, readOff } from "../../../src/hosts/pane/picture/scale";

const plot: Plot = {
  title: "A band",
  sentence: "A band that widens.",
  x: { quantity: "current", unit: "A", scale: "log", from: 10, to: 1000 },
  y: { quantity: "time", unit: "s", scale: "log", from: 0.01, to: 1000 },
  bands: [
    {
      name: "trips",
      samples: [
        { x: 10, low: 100, high: 1000 },
        { x: 100, low: 1, high: 10 },
        { x: 1000, low: 0.001, high: 1 },
      ],
    },
  ],
  lines: [
    { name: "limit", role: "limit", samples: [{ x: 100, y: 5 }] },
    { name: "course", role: "course", samples: [{ x: 10, y: 5 }] },
  ],
  points: [
    { name: "this trial", role: "asked", x: 51, y: 20 },
    { name: "trial 2", role: "tripped", x: 100, y: 3 },
    { name: "trial 3", role: "held", x: 20, y: 900 },
  ],
};

describe("an axis", () => {
  test("on a log axis each decade is as long as the next", () => {
    const { at } = lay(plot.x, [0, 200]);
    expect([at(10), at(100), at(1000)]).toEqual([0, expect.closeTo(100, 9), 200]);
  });

  test("what lies beyond its end stands at its end", () => {
    expect(lay(plot.y, [100, 0]).at(1e9)).toBe(0);
    expect(lay(plot.y, [100, 0]).at(0)).toBe(100);
  });

  test("few decades are marked at 1, 2 and 5, many at the decades alone", () => {
    expect(lay(plot.x, [0, 1]).ticks.map(({ label }) => label)).toEqual("10 20 50 100 200 500 1000".split(" "));
    expect(lay(plot.y, [0, 1]).ticks.map(({ label }) => label)).toEqual("0.01 0.1 1 10 100 1000".split(" "));
  });

  test("a linear axis is marked at round values", () => {
    const { ticks } = lay({ quantity: "state", unit: "", scale: "linear", from: 0, to: 1 }, [0, 100]);
    expect(ticks.map(({ label }) => label)).toEqual(["0", "0.2", "0.4", "0.6", "0.8", "1"]);
  });

  test("within less than a decade a log axis is marked in even steps, so that it can be read", () => {
    const labels = lay({ ...plot.x, from: 22, to: 90 }, [0, 1]).ticks.map(({ label }) => label);
    expect(labels.length).toBeGreaterThanOrEqual(3);
    expect(labels).toContain("40");
  });

  test("what is counted has no halves; long labels have room for every other one", () => {
    const poles = { quantity: "pole", unit: "", scale: "linear", from: 0.5, to: 3.5 } as const;
    expect(lay(poles, [0, 1]).ticks.map(({ label }) => label)).toEqual(["1", "2", "3"]);
    const days = { quantity: "time", unit: "s", scale: "linear", from: 0, to: 2.5e6 } as const;
    expect(lay(days, [0, 1]).ticks.map(({ label }) => label)).toEqual(["0", "1000000", "2000000"]);
  });

  test("a band that goes on past the axis is read as going on, not as the axis' end", () => {
    expect(readOff(1000, plot.y)).toBe("beyond 1000 s or never");
    expect(readOff(0.001, plot.y)).toBe("below 0.01 s");
    expect(readOff(9.963, plot.y)).toBe("9.963 s");
  });
});

test("a number with a power of ten is read as one", () => {
  expect(tied("0.00206 Ω ± 3.3e-5 Ω, P1e5")).toBe("0.00206\u00a0Ω ± 3.3·10⁻⁵\u00a0Ω, P1e5");
});

describe("the samples", () => {
  const readings = readingsOf(plot);

  test("all series and points together, by rising x", () => {
    expect(readings.map(({ x }) => x)).toEqual([10, 20, 51, 100, 1000]);
    expect(columnsOf(plot)).toEqual(["trips, from", "trips, to", "limit", "course"]);
    expect(readings[3]).toEqual({ x: 100, texts: ["1 s", "10 s", "5 s", ""], points: ["trial 2: 3 s"] });
  });

  test("a point whose name ends with its value is not told it twice", () => {
    const [reading] = readingsOf({
      ...plot,
      bands: [],
      lines: [],
      points: [{ name: "held: 16 A, 9 s", role: "held", x: 16, y: 9 }],
    });
    expect(reading?.points).toEqual(["held: 16 A, 9 s"]);
  });

  test("the crosshair starts at the stop nearest to what is asked", () => {
    expect(nearest(readings, 51)).toBe(2);
    expect(nearest(readings, 900)).toBe(4);
  });
});

describe("the picture", () => {
  const html = renderToString(<Picture plot={plot} />);

  test("has its sentence as its name, and a slider over all stops that reads out the one it stands at", () => {
    expect(html).toContain('aria-label="A band that widens."');
    expect(html).toMatch(/type="range" min="0" max="4"/);
    expect(html).toContain("current 51\u00a0A: this trial: 20\u00a0s");
  });

  test("a stop inside a band is read as from and to, one on a line by the line's name", () => {
    const { points: _, ...without } = plot;
    const asked = [{ name: "asked", role: "asked" as const, x: 100, y: 2 }];
    expect(renderToString(<Picture plot={{ ...without, points: asked }} />)).toContain(
      "current 100\u00a0A: trips from 1\u00a0s to 10\u00a0s; limit 5\u00a0s; asked: 2\u00a0s",
    );
  });

  test("tells the roles apart by shape: diamond, dot, ring with a stem", () => {
    expect(html).toMatch(/<g class="pane-point-asked">.*pane-diamond/);
    expect(html).toMatch(/<circle class="pane-point-tripped"/);
    expect(html).toMatch(/<g class="pane-point-held"><circle[^>]*><\/circle><path/);
    expect(html).toContain("pane-line-limit");
    expect(html).toContain("pane-line-course");
  });

  test("courses beside each other differ in more than their colour", () => {
    const course = (name: string) => ({ name, role: "course" as const, samples: [{ x: 10, y: 1 }] });
    const two = renderToString(<Picture plot={{ ...plot, lines: [course("warm"), course("cold")] }} />);
    expect(two).toMatch(/pane-line-course-0.*pane-line-course-1/s);
  });

  test("has the same numbers in a table, which the keyboard can scroll", () => {
    expect(html).toMatch(/<section class="pane-scroll" tabindex="0" aria-label="A band: the numbers">/i);
    expect(html).toMatch(/<th class="pane-td" scope="row">100\u00a0A<\/th><td class="pane-td">1\u00a0s<\/td>/);
  });
});
