import { type AnyDefinition, define } from "../../src/definition/define";
import { optional, quantity, word } from "../../src/definition/parameter";
import { functionsJson } from "../../src/derived/functions-json";

const body = {
  answers: "row" as const,
  sources: [],
  cautions: [],
  examples: [],
  calculate: () => [1],
  explain: () => ({ steps: [], answer: "" }),
};

const soak: AnyDefinition = define({
  ...body,
  name: "BENCH.SOAK",
  summary: "How long a strip is left in the warm.",
  parameters: {
    startCurrent: quantity("A", "the current at the start, r.m.s."),
    outcome: word("what the breaker did", ["held", "tripped"]),
    ambient: optional(quantity("°C", "the air around it"), "30 °C"),
  },
  results: [
    { name: "time", unit: "s", meaning: "how long" },
    { name: "verdict", unit: "", meaning: "in words" },
  ],
});

const gather: AnyDefinition = define({
  ...body,
  name: "GATHER",
  summary: "Takes as many as there are.",
  parameters: { parts: { ...optional(quantity("W", "a loss"), "none"), repeating: true } },
  results: [{ name: "sum", unit: "W", meaning: "all of them" }],
});

const { functions, enums, allowErrorForDataTypeAny } = functionsJson([soak, gather]);

test("a function is known to Excel by its definition's name, and says what it is and gives", () => {
  expect(functions[0]).toMatchObject({
    id: "BENCH.SOAK",
    name: "BENCH.SOAK",
    description: "How long a strip is left in the warm. Gives time (s), verdict.",
    result: { type: "any", dimensionality: "matrix" },
    options: { requiresAddress: true },
  });
});

test("parameters stand in the order of the formula, by the sheet's names, with unit, meaning and what holds when left out", () => {
  expect(
    functions[0]?.parameters.map(({ name, description, optional = false }) => [name, description, optional]),
  ).toEqual([
    ["start current", "(A) the current at the start, r.m.s.", false],
    ["outcome", "what the breaker did", false],
    ["ambient", "(°C) the air around it. Left out: 30 °C.", true],
  ]);
});

test("every parameter takes any cell or range, so that what is refused is refused in our words", () => {
  for (const { parameters } of functions)
    for (const parameter of parameters) expect(parameter).toMatchObject({ type: "any", dimensionality: "matrix" });
  expect(allowErrorForDataTypeAny).toBe(true);
});

test("a parameter of a few words is completed from them", () => {
  expect(functions[0]?.parameters[1]).toMatchObject({ customEnumId: "BENCH.SOAK.OUTCOME" });
  expect(enums).toEqual([
    {
      id: "BENCH.SOAK.OUTCOME",
      type: "string",
      values: [
        { name: "held", stringValue: "held" },
        { name: "tripped", stringValue: "tripped" },
      ],
    },
  ]);
});

test("a repeating parameter repeats and may be left out", () => {
  expect(functions[1]?.parameters).toEqual([
    expect.objectContaining({ name: "parts", repeating: true, optional: true }),
  ]);
});
