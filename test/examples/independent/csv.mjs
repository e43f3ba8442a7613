const quoted = (value) => (/[",\n]/.test(String(value)) ? `"${String(value).replaceAll('"', '""')}"` : String(value));

// Nine figures are plenty for a value that is compared to one in ten thousand, and readable.
const said = (value) => (typeof value === "number" ? String(Number(value.toPrecision(9))) : value);

/** Objects with the same keys as CSV, the keys as its first line. */
export const toCsv = (lines) =>
  `${[Object.keys(lines[0]), ...lines.map(Object.values)].map((line) => line.map(said).map(quoted).join(",")).join("\n")}\n`;

/** CSV as lines of texts. */
export const fromCsv = (text) =>
  text
    .trimEnd()
    .split("\n")
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
        ([, inQuotes, bare]) => inQuotes?.replaceAll('""', '"') ?? bare,
      ),
    );
