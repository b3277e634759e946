import type { LetterLength } from '../../letter/index.js';

/** A text that a person changed, and the composed text it was changed from. */
interface Edit {
  readonly text: string;
  readonly from: string;
}

/** What a person wrote, length by length. It stays when the record changes, until the person takes the new text. */
export class Edits {
  readonly #edits = new Map<LetterLength, Edit>();

  /** The text to show: the person's, else the composed one. */
  text(length: LetterLength, composed: string): string {
    return this.#edits.get(length)?.text ?? composed;
  }

  isEdited(length: LetterLength): boolean {
    return this.#edits.has(length);
  }

  /** Whether the record says something else now than when the person wrote. */
  isBehind(length: LetterLength, composed: string): boolean {
    const edit = this.#edits.get(length);
    return edit !== undefined && edit.from !== composed;
  }

  write(length: LetterLength, text: string, composed: string): void {
    if (text === composed) this.#edits.delete(length);
    else this.#edits.set(length, { text, from: this.#edits.get(length)?.from ?? composed });
  }

  /** The person knows of the change and keeps what stands there. */
  keep(length: LetterLength, composed: string): void {
    const edit = this.#edits.get(length);
    if (edit) this.#edits.set(length, { ...edit, from: composed });
  }

  /** Goes back to the composed text. */
  renew(length: LetterLength): void {
    this.#edits.delete(length);
  }

  clear(): void {
    this.#edits.clear();
  }
}
