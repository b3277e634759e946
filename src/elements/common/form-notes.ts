import { css } from 'lit';

/**
 * What a host, and the control itself, say about it as a form sees it: the slots `hint` and `error`, above everything else, where
 * a refused form scrolls to.
 */
export class FormNotes {
  readonly element = document.createElement('div');
  readonly #error = document.createElement('slot');

  constructor() {
    this.element.className = 'form-notes';
    this.element.setAttribute('part', 'notes');
    const hint = document.createElement('slot');
    hint.name = 'hint';
    this.#error.name = 'error';
    this.#error.id = 'form-error';
    this.element.append(hint, this.#error);
  }

  /** Shows a sentence in place of an error the host gave none of; none for nothing. */
  set message(message: string) {
    if (this.#error.textContent === message) return;
    this.#error.textContent = message;
    this.#error.classList.toggle('said', message !== '');
  }
}

export const formNotesStyles = css`
  .form-notes ::slotted(*),
  .form-notes .said {
    display: block;
    margin: 8px 12px;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
  }
  .form-notes .said {
    padding-inline-start: 10px;
    border-inline-start: 3px solid var(--_ink);
    font-weight: 600;
  }
  @media print {
    .form-notes {
      display: none;
    }
  }
`;
