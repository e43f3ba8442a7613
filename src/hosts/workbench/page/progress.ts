/** A place that says what is going on; resolves when the browser has shown it, since the work that follows leaves it no time. */
export const progress =
  (place: HTMLElement) =>
  (sentence: string): Promise<void> => {
    place.textContent = sentence;
    return new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  };
