/** What the manifest calls the action of the ribbon's Insert button. (Explain needs none: it only shows the pane.) */
export const insertAction = "insert";

/** Ties the ribbon's action to its name. To be called while the script is first run, like the sheet functions. */
export const associateRibbon = (): void => {
  // office.d.ts leaves out this half of Office.actions, which office.js has.
  const { associate } = Office.actions as unknown as Actions;
  associate(insertAction, showFunctions);
};

interface Actions {
  associate(name: string, action: (event: { completed?(): void } | null) => Promise<void>): void;
}

/** Shows the pane at the list of functions, where one is chosen and put into the sheet. */
const showFunctions = async (event: { completed?(): void } | null): Promise<void> => {
  try {
    document.getElementById("pane-tab-Functions")?.click();
    await Office.addin.showAsTaskpane();
  } finally {
    // Until it is told so, Excel holds back every further press.
    event?.completed?.();
  }
};
