import * as z from "zod/mini";
import { label, list, optional, quantity, word } from "../../src/definition/parameter";
import { introduced, wanted } from "../../src/derived/wanted";

describe("what an argument takes, in words", () => {
  test("a quantity names its unit and its limits", () => {
    expect(wanted(quantity("A", "the current"))).toBe("a number in A, more than 0");
    expect(wanted(quantity("°C", "the air", z.number().check(z.minimum(-40), z.maximum(60))))).toBe(
      "a number in °C, at least -40 and at most 60",
    );
    expect(wanted(quantity("", "a share", z.number().check(z.nonnegative(), z.lt(1))))).toBe(
      "a number, at least 0 and less than 1",
    );
    expect(wanted(quantity("", "how many", z.int().check(z.minimum(1))))).toBe("a whole number, at least 1");
  });

  test("words are listed", () => {
    expect(wanted(word("the outcome", ["held", "tripped"]))).toBe('one of "held", "tripped"');
  });

  test("what is no single number and knows no words is told by its meaning alone", () => {
    expect(introduced(optional(list(quantity("A", "the loads of the ways")), "none"))).toBe(
      "the loads of the ways. It takes a number in A, more than 0; left out: none.",
    );
    expect(introduced(label("the breaker's name"))).toBe("the breaker's name.");
    expect(introduced(optional(label("the breaker's name"), "none"))).toBe("the breaker's name. Left out: none.");
  });

  test("a limit that only catches slips of the keyboard is not told", () => {
    expect(wanted(quantity("A", "the current", z.number().check(z.positive(), z.maximum(1e6))))).toBe(
      "a number in A, more than 0",
    );
  });

  test("what may be left out says what holds then", () => {
    expect(wanted(optional(quantity("A", "the preload"), "cold"))).toBe("a number in A, more than 0; left out: cold");
  });

  test("an introduction is two sentences, also after a meaning that ends in a full stop", () => {
    expect(introduced(quantity("A", "the current, r.m.s."))).toBe(
      "the current, r.m.s. It takes a number in A, more than 0.",
    );
  });
});
