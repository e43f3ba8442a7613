import type { Cell, Range } from "../../definition/cells";
import type { AnyDefinition } from "../../definition/define";
import type { Remembered } from "../../definition/memory";
import type { ReadySheet } from "./sheets/ready-sheet";

/** The cell a person has selected. */
export interface Selection {
  /** Sheet and cell as the host writes them: "Log!F2", "'Bench log'!F2". */
  readonly address: string;
  readonly value: Cell;
  /** The formula as typed ("=BIMETAL.TRIP.RANGE(E2,B2,C2)"), "" when there is none; inside a spill that of the anchor. */
  readonly formula: string;
  /** Inside a spill (also at its first cell): where it starts, and the selected cell's place in it from 0. */
  readonly spill?: { readonly anchor: string; readonly row: number; readonly column: number };
}

/** The one way in which the pane meets its host. Every promise may be rejected with a sentence to show. */
export interface Port {
  /** Tells each new selection, the present one at once; returns the way to stop. */
  onSelection(listener: (selection: Selection | undefined) => void): () => void;
  /** Another cell as it would be told if it were selected. */
  selectionAt(address: string): Promise<Selection>;
  onCalculated(listener: () => void): () => void;
  /** The values of a reference as it stands in a formula of `sheet` ("B2:B20", "Log!B2", "Rating", "Trials[current]"). */
  valuesAt(reference: string, sheet: string): Promise<Range>;
  /** What the road remembers of the last call of this function in this cell. */
  lastCallAt(address: string, definition: AnyDefinition): Remembered | undefined;
  /** Puts a formula into the selected cell. */
  insertFormula(formula: string): Promise<void>;
  /** Puts a ready sheet into the workbook as a new sheet beside those that are there; tells the name it was given. */
  insertSheet(sheet: ReadySheet): Promise<string>;
  /** Whether a ready sheet's chart is put in with it. */
  readonly drawsCharts: boolean;
  recalculate(): Promise<void>;
  goTo(address: string): Promise<void>;
}
