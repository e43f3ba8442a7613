import { type CELL_INVERTED_INDEX_CACHE, ERROR_TYPE_SET } from "@univerjs/engine-formula";

type EngineIndex = typeof CELL_INVERTED_INDEX_CACHE;
type Value = string | number | boolean | null | undefined;

const blank = Symbol("blank");
type Key = string | number | boolean | typeof blank;

/** Spreadsheets compare text in any case; text and numbers stay apart. */
const keyOf = (value: Value): Key =>
  value === null || value === undefined ? blank : typeof value === "string" ? value.toLowerCase() : value;

/** What equals a value in a comparison: a blank cell counts as 0, as empty text and as FALSE. */
const keysEqualTo = (value: Value): Key[] => {
  const key = keyOf(value);
  if (key === blank) return [blank, 0, "", false];
  return key === 0 || key === "" || key === false ? [key, blank] : [key];
};

interface Column {
  readonly rowsByKey: Map<Key, Set<number>>;
  readonly keyByRow: Map<number, Key>;
  /** How many rows hold what the index cannot answer for. */
  odd: number;
}

const errors: ReadonlySet<Key> = new Set([...ERROR_TYPE_SET].map((error) => error.toLowerCase()));

/** An error must show in the comparison's own row; the text "42" equals 42 in COUNTIF and not elsewhere. The index can say neither. */
const isOdd = (key: Key | undefined): boolean =>
  typeof key === "string" && (errors.has(key) || (key.trim() !== "" && Number.isFinite(Number(key))));

/**
 * Stands in for the engine's index of the values of a column. The engine's own takes time in proportion to the number of distinct
 * values for each cell written, takes the text "42" for 42 and 0 for "", and passes over errors.
 */
export const installCellIndex = (index: EngineIndex): void => {
  const columns = new Map<string, Column>();
  const at = (...place: [unit: string, sheet: string, column: number]) => columns.get(place.join("\n"));
  const canUseCache = index.canUseCache.bind(index);
  const clear = index.clear.bind(index);

  index.set = (unit, sheet, column, value, row, force = false) => {
    if (!force && !index.shouldContinueBuildingCache(unit, sheet, column, row)) return;
    const place = [unit, sheet, column].join("\n");
    let known = columns.get(place);
    if (!known) {
      known = { rowsByKey: new Map(), keyByRow: new Map(), odd: 0 };
      columns.set(place, known);
    }
    const before = known.keyByRow.get(row);
    if (before !== undefined) known.rowsByKey.get(before)?.delete(row);
    const key = keyOf(value);
    known.keyByRow.set(row, key);
    known.odd += Number(isOdd(key)) - Number(isOdd(before));
    const rows = known.rowsByKey.get(key);
    if (rows) rows.add(row);
    else known.rowsByKey.set(key, new Set([row]));
  };

  index.getCellValuePositions = (unit, sheet, column) => at(unit, sheet, column)?.rowsByKey;

  index.getCellPositions = (unit, sheet, column, value, rowsInCache) => {
    const rowsByKey = at(unit, sheet, column)?.rowsByKey;
    if (!rowsByKey) return undefined;
    const rows = keysEqualTo(value).flatMap((key) => [...(rowsByKey.get(key) ?? [])]);
    return {
      errorType: null,
      matchingRows: rows.filter((row) => rowsInCache.some(([first, last]) => row >= first && row <= last)),
    };
  };

  // Then every cell is compared.
  index.canUseCache = (unit, sheet, column, first, last) =>
    at(unit, sheet, column)?.odd
      ? { rowsInCache: [], rowsNotInCache: [] }
      : canUseCache(unit, sheet, column, first, last);

  index.clear = () => {
    columns.clear();
    clear();
  };
};
