import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import ts from "typescript";

// The architecture: rooms, and who may import whom. There is no exception list; a wrong arrow means the code stands in the wrong room.

const src = resolve(__dirname, "../src");
const trade = ["thermal", "contact", "trip", "inrush", "enclosure", "bench"];

/** Each room and the rooms it may import, with the reason. */
const mayImport: Record<string, { rooms: string[]; because: string }> = {
  metrology: { rooms: [], because: "units, sources and uncertainty rest on nothing" },
  thermal: { rooms: ["metrology"], because: "one strip knows no standard" },
  contact: { rooms: ["metrology"], because: "one pole knows no standard but its own tables" },
  trip: { rooms: ["metrology", "thermal"], because: "a characteristic is an envelope of strips" },
  inrush: { rooms: ["metrology", "trip", "thermal"], because: "a start is held against a trip range" },
  enclosure: { rooms: ["metrology", "contact", "trip"], because: "poles heat the air that moves their pickup" },
  bench: {
    rooms: ["metrology", "contact", "trip", "thermal"],
    because: "a plan follows the characteristic and lets the strip cool; its leads are conductors",
  },
  definition: { rooms: ["metrology"], because: "what a sheet function is knows no trade" },
  functions: { rooms: ["definition", "metrology", ...trade], because: "they tie the trade to cells" },
  derived: { rooms: ["metrology", "definition"], because: "it is handed the catalogue" },
  "hosts/pane": {
    rooms: ["metrology", "definition", "functions", "derived"],
    because: "a host calls definitions, never a formula",
  },
  "hosts/engine": {
    rooms: ["metrology", "definition", "functions", "derived"],
    because: "a host calls definitions, never a formula",
  },
  "hosts/excel": {
    rooms: ["metrology", "definition", "functions", "derived", "hosts/pane"],
    because: "Excel shows the pane",
  },
  "hosts/workbench": {
    rooms: ["metrology", "definition", "functions", "derived", "hosts/pane", "hosts/engine"],
    because: "the page has a grid and the pane",
  },
  "hosts/workbook": {
    rooms: ["metrology", "definition", "functions", "derived", "hosts/engine"],
    because: "the command has the engine alone",
  },
};

/** Packages (or prefixes) and the only rooms that may use them. */
const packages: [RegExp, string[]][] = [
  [/^zod(\/|$)/, ["definition", "functions", "derived"]],
  [/^node:/, ["hosts/workbench", "hosts/workbook", "hosts/excel"]],
  [/^(preact|d3-|katex)/, ["hosts/pane"]],
  [/^(@univerjs\/|react$|react-dom|rxjs)/, ["hosts/engine", "hosts/workbench"]],
  [
    /^(fflate|saxes|@borgar\/fx)(\/|$)/,
    ["hosts/engine", "hosts/pane", "hosts/excel", "hosts/workbench", "hosts/workbook"],
  ],
  [/^@stdlib\//, ["metrology"]],
];

const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesUnder(path) : /\.tsx?$/.test(entry.name) ? [path] : [];
  });

const roomOf = (file: string): string => {
  const [first = "", second = ""] = relative(src, file).split(/[\\/]/);
  return first === "hosts" ? `hosts/${second}` : first;
};

const resolved = (from: string, specifier: string): string => {
  const base = resolve(dirname(from), specifier);
  return (
    [base, `${base}.ts`, `${base}.tsx`, join(base, "index.ts"), `${base}.css`].find(
      (path) => existsSync(path) && !/^[^.]*$/.test(relative(src, path).split("/").at(-1) ?? ""),
    ) ?? base
  );
};

const files = filesUnder(src);
const importsOf = (file: string): string[] =>
  ts.preProcessFile(readFileSync(file, "utf8")).importedFiles.map(({ fileName }) => fileName);

test("every file stands in a known room", () => {
  expect(files.length).toBeGreaterThan(40);
  for (const file of files) expect(Object.keys(mayImport)).toContain(roomOf(file));
});

test("rooms import only the rooms below them", () => {
  const wrong = files.flatMap((file) => {
    const room = roomOf(file);
    return importsOf(file)
      .filter((specifier) => specifier.startsWith("."))
      .map((specifier) => roomOf(resolved(file, specifier)))
      .filter((target) => target !== room && !mayImport[room]?.rooms.includes(target))
      .map((target) => `${relative(src, file)} imports ${target}; ${room} may not: ${mayImport[room]?.because}`);
  });
  expect(wrong).toEqual([]);
});

test("packages stay in the rooms they are there for", () => {
  const wrong = files.flatMap((file) =>
    importsOf(file)
      .filter((specifier) => !specifier.startsWith("."))
      .filter((specifier) => {
        const rule = packages.find(([name]) => name.test(specifier));
        return !rule?.[1].includes(roomOf(file));
      })
      .map((specifier) => `${relative(src, file)} imports ${specifier}`),
  );
  expect(wrong).toEqual([]);
});

test("the trade is pure: no host, no clock, no randomness, no console", () => {
  const impure =
    /\b(Office|Excel|CustomFunctions|document|window|process|console)\s*\.|\bDate\b|Math\.random|\bfetch\(/;
  const pure = files.filter((file) =>
    [...trade, "metrology", "definition", "functions", "derived"].includes(roomOf(file)),
  );
  const wrong = pure.filter((file) => {
    const code = readFileSync(file, "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*|"(?:[^"\\]|\\.)*"|`(?:[^`\\]|\\.)*`/g, "");
    return impure.test(code);
  });
  expect(wrong.map((file) => relative(src, file))).toEqual([]);
});

test("only hosts/excel speaks to Excel", () => {
  const wrong = files.filter(
    (file) =>
      roomOf(file) !== "hosts/excel" &&
      /\b(Office|Excel|CustomFunctions)\.\w/.test(
        readFileSync(file, "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*|"(?:[^"\\]|\\.)*"/g, ""),
      ),
  );
  expect(wrong.map((file) => relative(src, file))).toEqual([]);
});

test("without any one host the rest still finds all it imports", () => {
  for (const host of ["hosts/excel", "hosts/workbench", "hosts/workbook"]) {
    const needing = files.filter(
      (file) =>
        roomOf(file) !== host &&
        importsOf(file).some((specifier) => specifier.startsWith(".") && roomOf(resolved(file, specifier)) === host),
    );
    expect({ host, needing }).toEqual({ host, needing: [] });
  }
});
