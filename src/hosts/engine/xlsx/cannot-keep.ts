/** A package that cannot be kept while it is changed. The message says why, in words that fit behind "because". */
export class CannotKeep extends Error {
  override readonly name = "CannotKeep";
}
