import katex from "katex";
import type { Argument } from "../../../src/definition/cells";
import { explained } from "../../../src/definition/explained";
import { catalogue } from "../../../src/functions";
import { piecesOf } from "../../../src/hosts/pane/explain/pieces";

describe("a line of mathematics in pieces that can wrap", () => {
  test("it is cut before each relation outside brackets but the first, where its left side is short", () => {
    expect(piecesOf(String.raw`P = I\,\Delta V = 20 \cdot 0.16 = 3.2\ \mathrm{W}`)).toEqual([
      String.raw`P = I\,\Delta V`,
      String.raw`= 20 \cdot 0.16`,
      String.raw`= 3.2\ \mathrm{W}`,
    ]);
  });

  test("brackets, fractions, \\left with an empty \\right and environments stay whole", () => {
    const whole = String.raw`\sum_{i=1}^{n}\left.\frac{a=b}{c}\right| (x<y) \begin{aligned}a&=b\\c&=d\end{aligned}`;
    expect(piecesOf(whole)).toEqual([whole]);
  });

  test("it is cut after a comma between two equations, not inside a bracket or a decimal", () => {
    expect(piecesOf(String.raw`\max(a, b) = 0{,}5, \quad h = 2`)).toEqual([String.raw`\max(a, b) = 0{,}5,`, "h = 2"]);
  });

  test("a long sum is cut before each plus outside brackets, a short one is not", () => {
    expect(piecesOf(String.raw`A = 1.4 \cdot 0.48 + 0.9 \cdot (1.6 + 0.2) + 0.9 \cdot 1.2 + 0.9 \cdot 1.2`)).toEqual([
      "A",
      String.raw`= 1.4 \cdot 0.48`,
      String.raw`{}+ 0.9 \cdot (1.6 + 0.2)`,
      String.raw`{}+ 0.9 \cdot 1.2`,
      String.raw`{}+ 0.9 \cdot 1.2`,
    ]);
    expect(piecesOf(String.raw`i = I_0 + r\,t`)).toEqual([String.raw`i = I_0 + r\,t`]);
  });

  test("a relation at the start makes no empty piece, wide spaces are left out", () => {
    expect(piecesOf(String.raw`= 2 \qquad m \le 3`)).toEqual(["= 2", String.raw`m \le 3`]);
  });
});

const lines = catalogue.flatMap((definition) =>
  definition.examples.flatMap(({ cells }, i) =>
    explained(
      definition,
      cells.map((cell): Argument => (cell === null ? undefined : cell)),
    ).steps.flatMap(({ tex }) => (tex ? [[`${definition.name}, example ${i + 1}`, tex] as const] : [])),
  ),
);

test("the functions' examples have mathematics to typeset", () => {
  expect(lines.length).toBeGreaterThan(20);
});

test.each(lines)("the mathematics of %s is typeset without inline styles or scripts: %s", (_, tex) => {
  for (const piece of piecesOf(tex)) {
    const html = katex.renderToString(piece, { output: "mathml", throwOnError: true, strict: "ignore", trust: false });
    expect(html).toContain("<math");
    expect(html).not.toMatch(/\sstyle=|<script|\son\w+=|<style/);
  }
});
