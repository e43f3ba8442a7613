import { BadInput } from "../../definition/bad-input";
import { type Answer, type Cell, type Range, sayCell } from "../../definition/cells";
import { plain } from "../../definition/parameter";
import { correctedScatter, type End, type Estimate, type Fitted, type ProfileRow } from "../../thermal/fitted";

// The block that THERMAL.FIT spills, and the way back: the block alone stands for the breaker.

/** Label, value, standard error, low, high, note. */
type BlockRow = readonly [string, Answer, Answer, Answer, Answer, string | number];

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

/** Trials that can be measured lead to no number beyond this, nor to one closer to 0; an altered cell might. */
const isTold = (cell: Cell): cell is number => typeof cell === "number" && cell >= 1e-15 && cell <= 1e15;

/** A block read back. Throws BadInput when a row is missing, stands twice, or was changed into what no trials give. */
export const readFit = (range: Range, name: string): Fitted => {
  const rows = new Map<string, readonly Cell[]>();
  const profile: ProfileRow[] = [];
  for (const cells of range) {
    const label = typeof cells[0] === "string" ? plain(cells[0]) : "";
    if (rows.has(label))
      throw new BadInput(`${name}: the row "${label}" stands twice; hand over one block of THERMAL.FIT.`);
    if (label === "profile") {
      if (typeof cells[1] === "number") profile.push(profileRow(cells, name));
    } else if (label) rows.set(label, cells);
  }
  const row = (label: string): readonly Cell[] => {
    const found = rows.get(label);
    if (found) return found;
    throw new BadInput(`${name}: the row "${label}" is missing; hand over the whole block of THERMAL.FIT.`);
  };
  const refused = (label: string, wanted: string, cell: Cell): BadInput =>
    new BadInput(`${name}, row "${label}": ${wanted} is wanted, not ${sayCell(cell)}.`);
  const number = (label: string, i = 1): number => {
    const cell = row(label)[i] ?? null;
    if (typeof cell === "number" && Number.isFinite(cell)) return cell;
    throw refused(label, "a number", cell);
  };
  const count = (label: string): number => {
    const cell = number(label);
    if (Number.isInteger(cell) && cell >= 0) return cell;
    throw refused(label, "a whole number", cell);
  };
  const estimate = (label: string): Estimate => {
    const [, , error = null, low = null, high = null] = row(label);
    const value = number(label);
    // Times that lie on a curve exactly have no scatter.
    if (!isTold(value) && !(label === "scatter" && value >= 0 && value < 1)) throw refused(label, "more than 0", value);
    return {
      value,
      standardError: isTold(error) ? error : "not known",
      low: endOf(low),
      high: endOf(high),
    };
  };
  const covariance = (): Fitted["covariance"] => {
    if (typeof row(covarianceLabels[0])[1] !== "number") return undefined;
    const all = covarianceLabels.map((label) => [1, 2, 3].map((i) => number(label, i)));
    if (isCovariance(all)) return all;
    throw new BadInput(
      `${name}, rows "covariance": these numbers are no covariance; hand over the block as THERMAL.FIT spills it.`,
    );
  };
  const likelihood = row("log-likelihood")[1];
  const tripped = count("tripped");
  const pickup = estimate("pickup");
  if (tripped < 3 && (profile.length > 0 || typeof pickup.high === "number"))
    throw refused("tripped", "at least 3 beside limits", tripped);
  return {
    pickup,
    timeConstant: estimate("time constant"),
    scatter: estimate("scatter"),
    tripped,
    held: count("held"),
    leftOut: count("left out"),
    logLikelihood: typeof likelihood === "number" ? likelihood : "not known",
    covariance: covariance(),
    profile: profile.sort((a, b) => a.pickup - b.pickup),
    pinned: row("pinned")[1] === true,
  };
};

/** Alike on both sides of its diagonal, and no two estimates tied closer than wholly. */
const isCovariance = (rows: readonly (readonly number[])[]): boolean =>
  rows.every((row, i) =>
    row.every((cell, k) => {
      const [own, other, twin] = [row[i] as number, rows[k]?.[k] as number, rows[k]?.[i] as number];
      const most = Math.sqrt(own) * Math.sqrt(other);
      return own > 0 && Math.abs(cell) <= most * (1 + 1e-9) && Math.abs(cell - twin) <= 1e-9 * most;
    }),
  );

const endOf = (cell: Cell): End => (isTold(cell) ? cell : cell === "no limit" ? "no limit" : "not known");

const profileRow = (cells: readonly Cell[], name: string): ProfileRow => {
  const [pickup, drop, timeConstant, scatter, error] = cells.slice(1, 6).map((cell, i) => {
    // Only the drop may be 0: at the top of the profile.
    if ((i === 1 && cell === 0) || isTold(cell)) return cell;
    throw new BadInput(
      `${name}, a row "profile": a number ${i === 1 ? "of at least" : "above"} 0 is wanted, not ${sayCell(cell)}.`,
    );
  }) as [number, number, number, number, number];
  return { pickup, drop, timeConstant, scatter, error };
};
