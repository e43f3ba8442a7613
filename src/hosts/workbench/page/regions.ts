/**
 * F6 goes on to the next part of the page and Shift+F6 back: inside the grid Tab goes from cell to cell, so it cannot
 * lead out of it.
 */
export const stepThroughRegions = (regions: readonly (() => HTMLElement | null)[]): void => {
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      event.stopPropagation();
      const elements = regions.map((region) => region());
      const here = elements.findIndex((region) => region?.contains(document.activeElement));
      const step = event.shiftKey ? elements.length - 1 : 1;
      const next = (here < 0 ? 0 : here + step) % elements.length;
      elements[next]?.focus();
    },
    { capture: true },
  );
};
