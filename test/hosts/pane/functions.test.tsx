import { renderToString } from "preact-render-to-string";
import type { AnyDefinition } from "../../../src/definition/define";
import type { Parameter } from "../../../src/definition/parameter";
import { roomsOf } from "../../../src/derived/rooms";
import { catalogue } from "../../../src/functions";
import { readFormula } from "../../../src/hosts/pane/explain/formula";
import { formulaOf, readEntry, typedAs } from "../../../src/hosts/pane/functions/entry";
import { find } from "../../../src/hosts/pane/functions/find";
import { FunctionForm } from "../../../src/hosts/pane/functions/function-form";
import { FunctionsView } from "../../../src/hosts/pane/functions/functions-view";
import { scriptedPort, selected } from "./scripted-port";

const called = (name: string): AnyDefinition => {
  const found = catalogue.find((definition) => definition.name === name);
  if (!found) throw new Error(`There is no ${name}.`);
  return found;
};
const parameterOf = (name: string, key: string): Parameter => called(name).parameters[key];

describe("finding a function", () => {
  const names = (words: string) => find(words, catalogue).map(({ name }) => name);

  test("by a word of its summary, its arguments or its results", () => {
    expect(names("voltage drop")).toContain("CONTACT.WATTS");
  });

  test("those with the words in their names come first", () => {
    expect(names("trip range")[0]).toBe("TRIP.RANGE");
    expect(names("watts").slice(0, 2).sort()).toEqual(["CONTACT.WATTS", "ENCLOSURE.WATTS"]);
  });

  test.each([
    ["how long to wait", "THERMAL.REST"],
    ["compressor", "INRUSH.MOTOR"],
    ["welder", "INRUSH.TRANSFORMER"],
    ["trips early", "TRIP.VERDICT"],
    ["derating", "TRIP.RERATED"],
    ["multimeter", "METER.ERROR"],
    ["warm cabinet", "ENCLOSURE.PANEL"],
  ])("by words of the bench that our texts do not have: %s finds %s", (words, name) => {
    expect(names(words)).toContain(name);
  });

  test("a word finds words that begin with it, and none that merely hold it", () => {
    expect(names("ohm")[0]).toMatch(/OHMS$/);
    expect(names("ductor")).toEqual([]);
  });

  test("nothing is found for what no function is about", () => {
    for (const words of ["fuse", "the", "unicorn"]) expect(names(words)).toEqual([]);
  });

  test("all words must stand in it", () => {
    expect(names("watts unicorn")).toEqual([]);
  });

  test("every function has a room that says what it is about", () => {
    const rooms = roomsOf(catalogue);
    expect(rooms.flatMap(({ functions }) => functions)).toHaveLength(catalogue.length);
    expect(rooms.filter(({ name, about }) => about === name)).toEqual([]);
  });
});

describe("what is typed into a field", () => {
  const characteristic = parameterOf("TRIP.RANGE", "characteristic");
  const current = parameterOf("TRIP.RANGE", "current");
  const outcome = parameterOf("TRIP.VERDICT", "outcome");

  test.each([
    ["51", { as: "value", text: "51", value: 51 }],
    [" -2.5 ", { as: "value", text: "-2.5", value: -2.5 }],
    ["{30;36}", { as: "value", text: "{30;36}", value: [[30], [36]] }],
    ["B2:B20", { as: "reference", text: "B2:B20" }],
    ["'Bench log'!B2", { as: "reference", text: "'Bench log'!B2" }],
    ["=B2", { as: "reference", text: "B2" }],
    ["", { as: "left out" }],
    ["fifty", { as: "value", text: '"fifty"', value: "fifty" }],
  ])("a number: %p", (typed, entry) => {
    expect(readEntry(typed, current)).toEqual(entry);
  });

  test("a word that the argument knows is that word, in the spelling it is known by", () => {
    expect(readEntry("TRIPPED", outcome)).toEqual({ as: "value", text: '"tripped"', value: "tripped" });
  });

  test("a single letter or words with spaces are text", () => {
    expect(readEntry("C", characteristic)).toMatchObject({ text: '"C"', value: "C" });
    expect(readEntry("UL 489", characteristic)).toMatchObject({ text: '"UL 489"', value: "UL 489" });
  });

  test("quotes inside a text are doubled, so that the formula still reads", () => {
    expect(readEntry('say "so"', characteristic)).toMatchObject({ text: '"say ""so"""' });
  });

  test("the formula leaves out what is left out, and nothing is written after the last that is given", () => {
    const entries = ["51", "20", "C", "", "35", "", ""].map((typed) => readEntry(typed, current));
    expect(formulaOf(called("TRIP.RANGE"), entries)).toBe('=BIMETAL.TRIP.RANGE(51,20,"C",,35)');
  });
});

test.each(catalogue.map((definition) => [definition.name, definition] as const))(
  "the first example of %s, filled into its form, gives a formula of the same values",
  (_, definition) => {
    const parameters = Object.values(definition.parameters as Record<string, Parameter>);
    const cells = definition.examples[0]?.cells ?? [];
    const entries = parameters.map((parameter, i) => readEntry(typedAs(cells[i]), parameter));
    const [call] = readFormula(formulaOf(definition, entries), catalogue).calls;
    expect(call?.definition.name).toBe(definition.name);
    const given = cells.slice(0, parameters.length).filter((cell) => cell !== null);
    const read = (call?.written ?? []).flatMap((written) => (written.as === "typed" ? [written.value] : []));
    expect(read.map((value) => JSON.stringify(value)?.replaceAll("null", '""'))).toEqual(
      given.map((value) => JSON.stringify(value).replaceAll("null", '""')),
    );
  },
);

describe("the view", () => {
  test("lists all rooms, the first open", () => {
    const html = renderToString(
      <FunctionsView catalogue={catalogue} port={scriptedPort({})} selection={selected("")} onHelp={() => {}} />,
    );
    expect(html).toMatch(/<details[^>]*open[^>]*><summary[^>]*>What a sound breaker may do/);
    expect(html).toContain("CONTACT.WATTS");
  });

  test("a form has a labelled field for each argument, with its unit, what it takes, and the words it knows", () => {
    const html = renderToString(
      <FunctionForm
        definition={called("TRIP.VERDICT")}
        typed={[]}
        onTyped={() => {}}
        port={scriptedPort({})}
        selection={selected("")}
        onBack={() => {}}
        onHelp={() => {}}
      />,
    );
    expect(html).toMatch(/<label[^>]*for="pane-field-current">current<span[^>]*> in A<\/span>/);
    expect(html).toMatch(/It takes a number in A, more than 0\./);
    expect(html).toMatch(/<datalist id="pane-field-outcome-choices"><option value="tripped"/);
    expect(html).toContain("Insert into Log!F2");
    expect(html).toMatch(/Cautions.*Sources/s);
  });
});
