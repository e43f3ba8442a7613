import { sayPlace } from "../../engine/place";
import type { Selection } from "../../pane/port";
import { formulaAsRead } from "./formula-as-read";
import type { OpenBook } from "./open-book";

/** The selected cell, or another one, as the pane is told of it. */
export const selectionOf = (open: OpenBook, place = open.place): Selection | undefined => {
  const { view } = open;
  if (!place || !view) return undefined;
  const spill = view.spillAt(place);
  return {
    address: sayPlace(place),
    value: view.valueAt(place),
    formula: formulaAsRead(open, place),
    spill: spill && {
      anchor: sayPlace({ sheet: place.sheet, row: spill.row, column: spill.column }),
      row: place.row - spill.row,
      column: place.column - spill.column,
    },
  };
};
