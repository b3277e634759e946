import type { LetterEdits } from './edits.js';

/** What a person wrote into a letter is otherwise. Bubbles and leaves the shadow tree. */
export class LetterChangeEvent extends Event {
  constructor(
    /** All that the person wrote, length by length; plain data. */
    readonly edits: LetterEdits,
  ) {
    super('letter-change', { bubbles: true, composed: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'letter-change': LetterChangeEvent;
  }
}
