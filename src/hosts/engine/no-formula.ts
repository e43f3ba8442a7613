/** How a formula may begin, also in full-width characters, and what some readers pass over before it. */
const formulaStart = /^[\s\p{Cc}\p{Cf}]*[=+\-@\uff1d\uff0b\uff0d\uff20]|^[\t\r\n]/u;

/** A text that a spreadsheet would take for a formula gets an apostrophe before it, so that it stays a text where it is pasted or imported. */
export const noFormula = (text: string): string => (formulaStart.test(text) ? `'${text}` : text);
