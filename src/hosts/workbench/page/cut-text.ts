import type { Place } from "../../engine/place";
import type { OpenBook } from "./open-book";

const pixelsOfLetter = 7;
/** Longer lines run out of the grid on a usual screen. */
const lettersInSight = 90;

/** The whole text of an answer that its cell shows in part only; undefined where all of it is to be seen, or stands in the formula line. */
export const cutText = ({ view, grid }: OpenBook, place: Place): string | undefined => {
  const text = view?.valueAt(place);
  if (typeof text !== "string" || view?.formulaAt(place) === "") return undefined;
  const width = grid.api.getActiveWorkbook()?.getSheetByName(place.sheet)?.getColumnWidth(place.column) ?? 0;
  if (text.length * pixelsOfLetter <= width) return undefined;
  const beside = view?.valueAt({ ...place, column: place.column + 1 });
  return beside !== null || text.length > lettersInSight ? text : undefined;
};
