/**
 * Prints the page that the pane stands on, by the browser's own dialogue. A host may keep its panes from that, and then nothing
 * at all happens: such a silence is told. Throws a sentence.
 */
export const printPage = (): void => {
  let began = false;
  const begin = () => {
    began = true;
  };
  window.addEventListener("beforeprint", begin, { once: true });
  window.print();
  window.removeEventListener("beforeprint", begin);
  if (!began) throw new Error("Nothing was printed: this program does not let its panes print.");
};
