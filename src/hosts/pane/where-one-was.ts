/** Remembers how far the pane is scrolled and what has the keyboard; gives the way back to both. */
export const whereOneWas = (): (() => void) => {
  const focused = document.activeElement;
  const scrolled = scrollerOf(focused);
  const top = scrolled?.scrollTop ?? 0;
  return () => {
    if (focused instanceof HTMLElement) focused.focus({ preventScroll: true });
    if (scrolled) scrolled.scrollTop = top;
  };
};

/** What scrolls an element: a part of the page in the workbench, the page itself in Excel. */
const scrollerOf = (element: Element | null): Element | null => {
  for (let around = element; around; around = around.parentElement)
    if (/auto|scroll/.test(getComputedStyle(around).overflowY) && around.scrollHeight > around.clientHeight)
      return around;
  return document.scrollingElement;
};
