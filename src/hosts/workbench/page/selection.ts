import { sayPlace } from "../../engine/place";
import type { Selection } from "../../pane/port";
import type { OpenBook } from "./open-book";

/** The selected cell as the pane is told of it. */
export const selectionOf = ({ place, view }: OpenBook): Selection | undefined => {
  if (!place || !view) return undefined;
  const spill = view.spillAt(place);
  return {
    address: sayPlace(place),
    value: view.valueAt(place),
    formula: view.formulaAt(place),
    spill: spill && {
      anchor: sayPlace({ sheet: place.sheet, row: spill.row, column: spill.column }),
      row: place.row - spill.row,
      column: place.column - spill.column,
    },
  };
};
