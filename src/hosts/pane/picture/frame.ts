/** The paper of a picture in its own units, and the window in it that the axes enclose. */
export const frame = { width: 340, height: 264, left: 46, right: 330, top: 12, bottom: 222 } as const;
