import type { AnyDefinition } from "../definition/define";
import { explained } from "../definition/explained";
import { citation, type PublishedTable, type Source } from "../metrology/source";
import { argumentsOf } from "./reference-formula";

/** A source, or one table of it, and the functions that rest on it. */
export interface Resting {
  readonly source: Source;
  readonly functions: Set<string>;
}

export interface RestingTable extends Resting {
  readonly table: PublishedTable;
}

/** What answers take from one document. */
export interface ReferredDocument {
  readonly name: string;
  readonly tables: readonly RestingTable[];
  /** Places that give a rule, a law or a method, or single points of a table. */
  readonly places: readonly Resting[];
  /** Functions with an example that names the document as what its answer was worked out from. */
  readonly checks: readonly string[];
}

/** What is common practice has no document: it stands together. */
const documentName = ({ document, standing }: Source): string =>
  standing === "common practice, no source" ? "Practice of the trade" : document;

/** Every document of a catalogue by name. */
export const referredDocuments = (catalogue: readonly AnyDefinition[]): readonly ReferredDocument[] => {
  const tables = new Map<PublishedTable, RestingTable>();
  const places = new Map<string, Resting>();
  for (const definition of catalogue)
    for (const source of sourcesOf(definition)) {
      for (const table of source.tables ?? [])
        remember(tables, table, { table, source, functions: new Set() }, definition);
      if (!source.tables) remember(places, citation(source), { source, functions: new Set() }, definition);
    }
  const all = [...tables.values(), ...places.values()].map(({ source }) => documentName(source));
  return [...new Set(all)].sort(new Intl.Collator("en", { numeric: true }).compare).map((name) => {
    const own = <R extends Resting>(found: Iterable<R>): R[] =>
      [...found].filter(({ source }) => documentName(source) === name);
    const within = { name, tables: own(tables.values()), places: own(places.values()) };
    return { ...within, checks: checkedBy([...within.tables, ...within.places], catalogue) };
  });
};

const remember = <K, R extends Resting>(known: Map<K, R>, key: K, found: R, { name }: AnyDefinition): void => {
  const resting = known.get(key) ?? found;
  known.set(key, resting);
  resting.functions.add(name);
};

/** All that a definition rests on: its own sources, and those of the explanations of its examples. */
const sourcesOf = (definition: AnyDefinition): Source[] => [
  ...definition.sources,
  ...definition.examples.flatMap((example) => explained(definition, argumentsOf(example)).sources),
];

const checkedBy = (within: readonly Resting[], catalogue: readonly AnyDefinition[]): string[] =>
  catalogue
    .filter(({ name }) => within.some(({ functions }) => functions.has(name)))
    .filter(({ examples }) =>
      examples.some(({ worked }) => within.some(({ source }) => worked.includes(source.document))),
    )
    .map(({ name }) => name);
