/** Something typed that could not be taken: what it was, and the sentence that says why. */
export interface Refusal {
  readonly typed: string;
  readonly sentence: string;
}

/** What a field for text or numbers tells of what a person types in it. */
export interface Typing {
  /** What stands in a field while it is typed in, or was refused there; `undefined` where the value counts. */
  text(field: string): string | undefined;
  /**
   * The field holds another text now.
   * @param take takes it over, false when it cannot be taken; `undefined` where it is no value at all. Then what stood there
   * before the visit stands again, and the text stays in the field.
   * @param complain the sentence that says why it cannot be taken
   */
  type(field: string, text: string, take: (() => boolean | void) | undefined, complain?: () => string): void;
  /** The field, or whichever one is typed in, was left. */
  leave(field?: string): void;
}
