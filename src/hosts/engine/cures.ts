import { CellValueType } from "@univerjs/core";
import { BaseFunction, BaseReferenceObject, ErrorType, LexerTreeBuilder } from "@univerjs/engine-formula";
import { demand } from "./demand";
import { MOST_COLUMNS, MOST_ROWS } from "./place";

/** A cell with empty text is not blank: `=D4=0` is FALSE there. The engine passes over such cells unless they look like formulas. */
export const keepEmptyText = (): void => {
  const { prototype } = BaseReferenceObject;
  demand(typeof prototype.getCellData === "function", "its references read no cells");
  const read = prototype.getCellData;
  prototype.getCellData = function (row, column) {
    const cell = read.call(this, row, column);
    return cell?.v === "" && cell.t === CellValueType.STRING ? { ...cell, f: "=" } : cell;
  };
};

/**
 * SEQUENCE and its like say #REF! where the answer would pass the end of the sheet as loaded. Sheets here are loaded no larger than
 * they need to be, so they are told the size of a real one; then the engine says #SPILL! and keeps the extent, and room can be made.
 */
export const askWholeSheet = (): void => {
  const { prototype } = BaseFunction;
  demand(typeof prototype.setSheetRowColumnCount === "function", "its functions are not told the size of their sheet");
  const tell = prototype.setSheetRowColumnCount;
  prototype.setSheetRowColumnCount = function () {
    tell.call(this, MOST_ROWS, MOST_COLUMNS);
  };
};

/** Answers and references of more cells than this would fill the memory; the formula counts as broken. */
export const MOST_CELLS = 8_000_000;

export const boundReferences = (): void => {
  const { prototype } = BaseReferenceObject;
  demand(
    typeof prototype.isExceedRange === "function" && typeof prototype.iterator === "function",
    "its references have no bounds",
  );
  // Beyond the sheet as loaded a reference is blank; beyond a real sheet's end it is none.
  prototype.isExceedRange = function () {
    const { startRow, endRow, startColumn, endColumn } = this.getRangePosition();
    return startRow < 0 || startColumn < 0 || endRow >= MOST_ROWS || endColumn >= MOST_COLUMNS;
  };
  const { iterator } = prototype;
  prototype.iterator = function (visit) {
    const { startRow, endRow, startColumn, endColumn } = this.getRangePosition();
    if ((endRow - startRow + 1) * (endColumn - startColumn + 1) > MOST_CELLS)
      throw new Error("The range is too large.");
    return iterator.call(this, visit);
  };
};

/** A text in a formula is one, whatever it looks like: the engine makes numbers of "1e3", "5%" and "1/2" within functions. */
export const keepTexts = (): void => {
  const { prototype } = BaseFunction;
  demand(typeof prototype.isArgumentsIgnoreNumberPattern === "function", "its functions read texts otherwise");
  prototype.isArgumentsIgnoreNumberPattern = () => true;
};

/**
 * The engine keeps what it has read of a formula by its text alone, for all workbooks, and works on it: read again, LET and LAMBDA take
 * their names from another calculation, and a defined name keeps the meaning it had elsewhere. So nothing is kept.
 */
export const readAnew = (): void => {
  const { prototype } = LexerTreeBuilder;
  demand(
    typeof prototype.treeBuilder === "function" && typeof prototype.dispose === "function",
    "it reads formulas otherwise",
  );
  const { treeBuilder, dispose } = prototype;
  const idle = { _resetTemp: () => {}, _currentLexerNode: { dispose: () => {} } };
  prototype.treeBuilder = function (...formula) {
    dispose.call(idle as never);
    try {
      return treeBuilder.apply(this, formula);
    } catch {
      return ErrorType.VALUE;
    }
  };
};
