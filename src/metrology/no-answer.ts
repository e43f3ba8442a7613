/**
 * A fair question that our sources do not answer: a rating beyond a table, a hole between two rows.
 * Shown as #N/A. The message is one sentence that names the quantity, what was given and the limit that stopped it.
 */
export class NoAnswer extends Error {
  override readonly name = "NoAnswer";
}
