import { z } from "zod";
import { BadInput } from "../../definition/bad-input";
import { type Answer, type Cell, CellError, type Range, sayCell } from "../../definition/cells";
import { type Parameter, plain } from "../../definition/parameter";
import { correctedScatter, type End, type Estimate, type Fitted, type ProfileRow } from "../../thermal/fitted";

// The block that THERMAL.FIT spills, and the way back: the block alone stands for the breaker.

/** Label, value, standard error, low, high, note. */
export type BlockRow = readonly [string, Answer, Answer, Answer, Answer, string | number];

const covarianceLabels = [
  "covariance of ln pickup",
  "covariance of ln time constant",
  "covariance of ln scatter",
] as const;

/** A fit as rows of labelled cells. `notes` are words beside the three estimates. */
export const blockOf = (
  fitted: Fitted,
  notes: { pickup: string; timeConstant: string; scatter: string },
): BlockRow[] => {
  const estimate = (label: string, { value, standardError, low, high }: Estimate, note: string): BlockRow => [
    label,
    value,
    standardError,
    low,
    high,
    note,
  ];
  const count = (label: string, value: number, note = ""): BlockRow => [label, value, "", "", "", note];
  return [
    estimate("pickup", fitted.pickup, notes.pickup),
    estimate("time constant", fitted.timeConstant, notes.timeConstant),
    estimate("scatter", fitted.scatter, notes.scatter),
    ["scatter of one trial", correctedScatter(fitted), "", "", "", "corrected for the two quantities fitted"],
    count("tripped", fitted.tripped),
    count("held", fitted.held),
    count("left out", fitted.leftOut, "magnetic, or below 0.1 s"),
    ["log-likelihood", fitted.logLikelihood, "", "", "", "of ln t"],
    ["pinned", fitted.pinned, "", "", "", "TRUE: the pickup lies at a current that held for very long"],
    ...covarianceLabels.map((label, i): BlockRow => {
      const row = fitted.covariance?.[i];
      return row
        ? [label, row[0] as number, row[1] as number, row[2] as number, "", ""]
        : [label, "not known", "", "", "", ""];
    }),
    ["profile", "pickup", "drop of ln L", "time constant", "scatter", "error of ln time constant"],
    ...fitted.profile.map(
      (row): BlockRow => ["profile", row.pickup, row.drop, row.timeConstant, row.scatter, row.error],
    ),
  ];
};

/** Whether a range is a THERMAL.FIT block: told by its first label. */
export const isFitBlock = (range: Range): boolean => {
  const first = range[0]?.[0];
  return typeof first === "string" && plain(first) === "pickup" && (range[0]?.length ?? 0) >= 5;
};

/** A block read back. Throws BadInput when a row is missing or was changed. */
export const readFit = (range: Range, name: string): Fitted => {
  const rows = new Map<string, readonly Cell[]>();
  const profile: ProfileRow[] = [];
  for (const cells of range) {
    const label = typeof cells[0] === "string" ? plain(cells[0]) : "";
    if (label === "profile") {
      if (typeof cells[1] === "number") profile.push(profileRow(cells, name));
    } else if (label) rows.set(label, cells);
  }
  const row = (label: string): readonly Cell[] => {
    const found = rows.get(label);
    if (found) return found;
    throw new BadInput(`${name}: the row "${label}" is missing; hand over the whole block of THERMAL.FIT.`);
  };
  const number = (label: string, i = 1): number => {
    const cell = row(label)[i] ?? null;
    if (typeof cell === "number" && Number.isFinite(cell)) return cell;
    throw new BadInput(`${name}, row "${label}": a number is wanted, not ${sayCell(cell)}.`);
  };
  const estimate = (label: string): Estimate => {
    const [, , error = null, low = null, high = null] = row(label);
    const value = number(label);
    if (!(value > 0) && label !== "scatter")
      throw new BadInput(`${name}, row "${label}": more than 0 is wanted, not ${value}.`);
    return {
      value,
      standardError: typeof error === "number" ? error : "not known",
      low: endOf(low),
      high: endOf(high),
    };
  };
  const likelihood = row("log-likelihood")[1];
  const known = typeof row(covarianceLabels[0])[1] === "number";
  return {
    pickup: estimate("pickup"),
    timeConstant: estimate("time constant"),
    scatter: estimate("scatter"),
    tripped: number("tripped"),
    held: number("held"),
    leftOut: number("left out"),
    logLikelihood: typeof likelihood === "number" ? likelihood : "not known",
    covariance: known ? covarianceLabels.map((label) => [1, 2, 3].map((i) => number(label, i))) : undefined,
    profile: profile.sort((a, b) => a.pickup - b.pickup),
    pinned: row("pinned")[1] === true,
  };
};

const endOf = (cell: Cell): End => (typeof cell === "number" ? cell : cell === "no limit" ? "no limit" : "not known");

const profileRow = (cells: readonly Cell[], name: string): ProfileRow => {
  const [pickup, drop, timeConstant, scatter, error] = cells.slice(1, 6).map((cell) => {
    if (typeof cell === "number" && cell >= 0) return cell;
    throw new BadInput(`${name}, a row "profile": a number is wanted, not ${sayCell(cell)}.`);
  }) as [number, number, number, number, number];
  return { pickup, drop, timeConstant, scatter, error };
};

/** One breaker as THERMAL.FIT spilled it, for all rows. */
export const fit: Parameter<Fitted> = {
  spread: "row",
  schema: z.string(),
  unit: "",
  meaning:
    "one breaker's own pickup, time constant and scatter: the whole block that THERMAL.FIT spills (its cell with #)",
  read: (cell, name) => {
    if (cell instanceof CellError)
      throw new BadInput(`${name}: the cell holds ${cell.code}; THERMAL.FIT says there what the trials lack.`);
    throw new BadInput(`${name}: the whole block that THERMAL.FIT spills is wanted as a range, not ${sayCell(cell)}.`);
  },
  readBlock: (range, name) => {
    if (isFitBlock(range)) return readFit(range, name);
    const first = range[0]?.[0];
    if (first instanceof CellError)
      throw new BadInput(`${name}: the block holds ${first.code}; THERMAL.FIT says there what the trials lack.`);
    throw new BadInput(`${name}: the whole block that THERMAL.FIT spills is wanted, beginning with its row "pickup".`);
  },
};
