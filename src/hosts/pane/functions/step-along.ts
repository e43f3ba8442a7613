/** The arrow keys go down and up through what can be chosen in a list, from its search field on. What is folded away is passed over. */
export const stepAlong = (event: KeyboardEvent): void => {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step === undefined || !(event.currentTarget instanceof HTMLElement)) return;
  const stops = [...event.currentTarget.querySelectorAll<HTMLElement>("input, summary, button")].filter(isSeen);
  const here = stops.indexOf(document.activeElement as HTMLElement);
  const next = stops[here + step];
  if (here < 0 || !next) return;
  event.preventDefault();
  next.focus();
};

const isSeen = (element: HTMLElement): boolean => element.closest("details:not([open]) > :not(summary)") === null;
