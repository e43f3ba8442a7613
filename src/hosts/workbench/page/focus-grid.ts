/** The engine listens to the keyboard through an editor of its own, which is always there. */
export const gridEditor = (): HTMLElement | null => document.querySelector<HTMLElement>("#grid [contenteditable]");

/** What is typed next goes into the selected cell. */
export const focusGrid = (): void => gridEditor()?.focus();
