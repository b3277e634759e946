import { LETTER_LENGTHS, type LetterLength } from '../../letter/index.js';
import { type Behind, behindOf } from './behind.js';

/** A text that a person changed. */
export interface LetterEdit {
  readonly text: string;
  /** The sentences that were composed when the person wrote. */
  readonly from: readonly string[];
}

/** What a person wrote, length by length; plain data, to be kept by a page. */
export type LetterEdits = Readonly<Partial<Record<LetterLength, LetterEdit>>>;

/** Edits as a page kept them; what is none of them is left out. */
export function readEdits(input: unknown): LetterEdits {
  if (typeof input !== 'object' || input === null) return {};
  const isEdit = (one: unknown): one is LetterEdit => {
    const { text, from } = (one ?? {}) as Partial<LetterEdit>;
    return typeof text === 'string' && Array.isArray(from) && from.every((line) => typeof line === 'string');
  };
  const kept = LETTER_LENGTHS.flatMap((length) => {
    const one: unknown = (input as Record<string, unknown>)[length];
    return isEdit(one) ? [[length, { text: one.text, from: [...one.from] }]] : [];
  });
  return Object.fromEntries(kept) as LetterEdits;
}

/** What a person wrote. It stays when the record changes, until the person takes the new text. */
export class Edits {
  #edits: LetterEdits = {};

  get all(): LetterEdits {
    return this.#edits;
  }

  set all(edits: LetterEdits) {
    this.#edits = edits;
  }

  /** The text to show: the person's, else the composed one. */
  text(length: LetterLength, composed: string): string {
    return this.#edits[length]?.text ?? composed;
  }

  isEdited(length: LetterLength): boolean {
    return this.#edits[length] !== undefined;
  }

  /** What the record says otherwise than when the person wrote; `undefined` where it says the same. */
  behind(length: LetterLength, now: readonly string[]): Behind | undefined {
    const edit = this.#edits[length];
    return edit && behindOf(edit.text, edit.from, now);
  }

  /** @param now the sentences of the composed text */
  write(length: LetterLength, text: string, composed: string, now: readonly string[]): void {
    if (text === composed) this.renew(length);
    else this.#edits = { ...this.#edits, [length]: { text, from: this.#edits[length]?.from ?? now } };
  }

  /** The person knows of the change and keeps what stands there. */
  keep(length: LetterLength, now: readonly string[]): void {
    const edit = this.#edits[length];
    if (edit) this.#edits = { ...this.#edits, [length]: { ...edit, from: now } };
  }

  /** Goes back to the composed text. */
  renew(length: LetterLength): void {
    const { [length]: _, ...rest } = this.#edits;
    this.#edits = rest;
  }
}
