/** What the manifest calls the action of the ribbon's Insert button. (Explain needs none: it only shows the pane.) */
export const insertAction = "insert";

/**
 * Ties the ribbon's action to its name: it shows the pane at the list of functions, where one is chosen and put into the sheet.
 * To be called while the script is first run, like the sheet functions; `showFunctions` may come later.
 */
export const associateRibbon = (showFunctions: () => Promise<void>): void => {
  // office.d.ts leaves out this half of Office.actions, which office.js has.
  const { associate } = Office.actions as unknown as Actions;
  associate(insertAction, async (event) => {
    try {
      void showFunctions();
      await Office.addin.showAsTaskpane();
    } finally {
      // Until it is told so, Excel holds back every further press.
      event?.completed?.();
    }
  });
};

interface Actions {
  associate(name: string, action: (event: { completed?(): void } | null) => Promise<void>): void;
}
