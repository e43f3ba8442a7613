import { readFileSync } from "node:fs";
import { join } from "node:path";
import Ajv from "ajv";
import AjvDraft04 from "ajv-draft-04";
import { catalogue } from "../../../src/functions";
import functionsJson from "../../../src/hosts/excel/functions-json";

// functions.json of the whole catalogue against the rules of Excel; schemas/PROVENANCE.md says where the schemas come from.

const schemaOf = (name: string) => JSON.parse(readFileSync(join(__dirname, "schemas", name), "utf8"));
const made = functionsJson();
// As Excel reads it, not as we hold it.
const json = JSON.parse(JSON.stringify(made));

const ours = new Ajv({ strict: true, strictTypes: false, strictRequired: false }).compile(
  schemaOf("functions.schema.json"),
);
const official = new AjvDraft04({ unicodeRegExp: true, strict: false }).compile(
  schemaOf("extensionCustomFunctions.extract.schema.json"),
);

test("it follows the documented properties and limits", () => {
  ours(json);
  expect(ours.errors).toBeNull();
});

test("its functions and word lists follow Microsoft's own schema of custom functions", () => {
  // That schema is of the other manifest, which has no allowErrorForDataTypeAny at the top.
  const { functions, enums } = json;
  official({ functions, enums });
  expect(official.errors).toBeNull();
});

test.each([
  ["a name like a cell's", { id: "TCC1", name: "TCC1" }],
  ["a name of one letter", { id: "Z", name: "Z" }],
  ["a parameter without a name", { parameters: [{ description: "a current" }] }],
  ["an empty description", { description: "" }],
  ["a description without end", { description: "x".repeat(1025) }],
])("the check would not pass %s", (_, wrong) => {
  const [first, ...others] = json.functions;
  expect(ours({ ...json, functions: [{ ...first, ...wrong }, ...others] })).toBe(false);
});

test("it holds every function of the catalogue once, in its order", () => {
  expect(made.functions.map(({ id }) => id)).toEqual(catalogue.map(({ name }) => name));
});

test("ids are the functions' names letter for letter: workbooks keep them for ever, so they change for no other reason", () => {
  for (const { id, name } of made.functions) {
    expect(id).toBe(name);
    expect(id).toMatch(/^[A-Z]+(\.[A-Z]+)?$/);
  }
});

test("no part of a name can be read as a cell, a row or column, or a command of the old macro sheets", () => {
  for (const { name } of made.functions)
    for (const part of [name, ...name.split(".")]) {
      expect(part).not.toMatch(/^([A-Z]{1,3}\d+|R\d*C\d*|R|C)$/);
      expect(["RUN", "ECHO", "ALERT", "HALT", "GOTO", "RETURN"]).not.toContain(part);
    }
});

test("arguments that may be left out come last, and a repeating one is the last of all", () => {
  for (const { id, parameters } of made.functions) {
    const optional = parameters.map((parameter) => parameter.optional === true);
    expect([id, optional]).toEqual([id, [...optional].sort((a, b) => Number(a) - Number(b))]);
    const repeating = parameters.findIndex((parameter) => parameter.repeating);
    if (repeating >= 0) expect(repeating).toBe(parameters.length - 1);
  }
});

test("every word list that a parameter names is there, once, and none is idle", () => {
  const named = made.functions.flatMap(({ parameters }) =>
    parameters.flatMap(({ customEnumId }) => customEnumId ?? []),
  );
  expect(made.enums.map(({ id }) => id)).toEqual(named);
  expect(new Set(named).size).toBe(named.length);
});

test("the file that the build emits follows the same rules", () => {
  ours(JSON.parse(readFileSync(join(__dirname, "../../../dist/excel/functions.json"), "utf8")));
  expect(ours.errors).toBeNull();
});
