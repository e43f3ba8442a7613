import * as z from "zod/mini";
import { BadInput } from "../definition/bad-input";
import { type Argument, sayText } from "../definition/cells";
import { type AnyDefinition, define, type Row } from "../definition/define";
import { type Explained, explained } from "../definition/explained";
import { linesOf } from "../definition/lines-of";
import { label, type Parameter, plain } from "../definition/parameter";
import { citation } from "../metrology/source";

const rest: Parameter<readonly Argument[]> = {
  spread: "raw",
  repeating: true,
  schema: z.unknown(),
  unit: "",
  meaning: "the arguments of that function, in its order",
  otherwise: "none",
  read: (cell) => cell,
};

/** EXPLAIN, made from the catalogue: the explanation of any other function in cells, for a lesson that lives in a sheet. */
const explain = (catalogue: readonly AnyDefinition[]): AnyDefinition =>
  define({
    name: "EXPLAIN",
    summary:
      "Explains a call in rows of two columns: what, and the text. The same steps, cautions and sources that the pane shows.",
    parameters: { name: label("the function to explain, with or without BIMETAL. before it"), arguments: rest },
    results: [
      {
        name: "what",
        unit: "",
        meaning: "the kind of row: input, step, answer, caution, source; blank where a text goes on",
      },
      { name: "text", unit: "", meaning: "one plain line, as long as a page is wide" },
    ],
    answers: "rows",
    sources: [{ document: "the explained function's own sources stand in its rows", standing: "derived" }],
    cautions: ["The rows carry the cautions of the explained function; keep them beside the answer."],
    examples: [
      {
        cells: ["CONTACT.WATTS", 20],
        gives: [["refused", "drop is missing."]],
        worked: "the sentence for a missing argument, written by hand",
      },
    ],
    calculate: ({ name, arguments: args }) => rowsOf(explained(named(catalogue, name), args)).flatMap(inLines),
    explain: ({ name }, _, rows) => ({
      steps: [
        {
          sentence: `The explanation of ${sayText(name)} is written into ${rows.length} ${rows.length === 1 ? "row" : "rows"}`,
        },
      ],
      answer: `${rows.length === 1 ? "1 row tells of" : `${rows.length} rows explain`} ${sayText(name)}.`,
    }),
  });

export default explain;

const named = (catalogue: readonly AnyDefinition[], name: string): AnyDefinition => {
  const asked = plain(name).replace(/^bimetal\./, "");
  if (asked === "explain") throw new BadInput("name: EXPLAIN explains the other functions, not itself.");
  const found = catalogue.find((definition) => plain(definition.name) === asked);
  if (found) return found;
  const room = catalogue.filter((definition) => plain(definition.name).startsWith(`${asked.split(".")[0]}.`));
  const known = (room.length > 0 ? room : catalogue).map((definition) => definition.name).join(", ");
  throw new BadInput(`name: "${sayText(name)}" is no function of ours; known are ${known}.`);
};

const rowsOf = ({
  name,
  summary,
  inputs,
  row,
  of,
  steps,
  results,
  answer,
  cautions,
  sources,
  refusal,
}: Explained): string[][] => {
  if (refusal) return [["refused", refusal.sentence]];
  return [
    [name, summary],
    ...(of > 1 ? [["row", `row ${row + 1} of ${of} is explained`]] : []),
    ...inputs.map((input) => ["input", `${input.name}: ${input.shown}`]),
    ...steps.map(({ sentence, plain }) => ["step", plain ? `${sentence}: ${plain}` : sentence]),
    ...results.map((result) => ["result", `${result.name}: ${result.shown}`]),
    ["answer", answer],
    ...cautions.map((caution) => ["caution", caution]),
    ...sources.map((source) => ["source", citation(source)]),
  ];
};

/** In characters. Cells into which an answer spills do not wrap. */
const lineLength = 110;

const inLines = ([what = "", text = ""]: readonly string[]): Row[] =>
  linesOf(text, lineLength).map((line, i) => [i === 0 ? what : "", line]);
