import fc from "fast-check";
import { linesOf } from "../../src/definition/lines-of";

test("a text is broken between its words, none is lost, and only a long word makes a long line", () => {
  const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(words, fc.integer({ min: 5, max: 60 }), (words, length) => {
      const lines = linesOf(words.join(" "), length);
      expect(lines.join(" ")).toBe(words.join(" "));
      for (const line of lines) expect(line.length <= length || !line.includes(" ")).toBe(true);
    }),
  );
});
