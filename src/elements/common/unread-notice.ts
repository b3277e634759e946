import { css, html, type LitElement, nothing, type TemplateResult } from 'lit';
import type { FormWords } from '../../locale/en/map.js';
import { type Held, isLost } from './record-value.js';

export interface UnreadActs {
  /** Whether a person may change anything. */
  editable(): boolean;
  /** Puts an empty record in place of what cannot be read. */
  start(): void;
  /** Fetches once more what reads the value. */
  retry(): void;
}

/** What a control shows in place of a value that it cannot read, and the acts that lead on from there. */
export class UnreadNotice {
  /** Whether what reads the value could not be fetched. */
  failed = false;
  #asking = false;

  constructor(
    private readonly host: LitElement,
    private readonly acts: UnreadActs,
  ) {}

  /** The notice; `undefined` where the value was read. */
  template(held: Held<unknown>, words: FormWords): TemplateResult | undefined {
    if (held.state === 'readable') {
      this.#asking = false;
      return undefined;
    }
    const waits = held.state === 'waiting';
    const said = waits
      ? this.failed
        ? words.notFetched
        : words.waiting
      : isLost(held)
        ? words.lost
        : words.sealed;
    return html`<div class="unread" aria-busy=${waits && !this.failed ? 'true' : nothing}>
      <p role="status">${said}</p>
      ${waits ? this.#retry(words) : this.acts.editable() ? this.#start(words) : nothing}
    </div>`;
  }

  #retry(words: FormWords): TemplateResult | typeof nothing {
    if (!this.failed) return nothing;
    return html`<button type="button" class="button" @click=${() => this.acts.retry()}>
      ${words.retry}
    </button>`;
  }

  #start(words: FormWords): TemplateResult {
    if (!this.#asking)
      return html`<button type="button" class="button" @click=${() => this.#ask(true)}>
        ${words.startNew}
      </button>`;
    return html`<p>${words.startNewAsk}</p>
      <div class="acts">
        <button type="button" class="button" @click=${() => this.#ask(false)}>${words.keep}</button>
        <button type="button" class="button" @click=${() => this.acts.start()}>${words.replace}</button>
      </div>`;
  }

  /** Asks, or leaves it at that; the focus stays on the safe button, which stands where the last one stood. */
  #ask(asking: boolean): void {
    this.#asking = asking;
    this.host.requestUpdate();
    void this.host.updateComplete.then(() =>
      this.host.renderRoot.querySelector<HTMLElement>('.unread button')?.focus(),
    );
  }
}

export const unreadStyles = css`
  .unread {
    display: flex;
    flex-direction: column;
    align-items: start;
    gap: 12px;
    padding: 20px 16px;
    border-inline-start: 6px solid var(--_ink);
    background: var(--_well);
    overflow-wrap: anywhere;
  }
  .unread p {
    max-inline-size: 60ch;
    unicode-bidi: plaintext;
  }
  .unread .acts {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .unread .button {
    white-space: normal;
  }
  @media print {
    .unread .button {
      display: none;
    }
  }
`;
