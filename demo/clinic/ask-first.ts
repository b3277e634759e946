import { html, LitElement, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';

/**
 * A button that asks before it acts, in place: no dialog covers the page. Fires `confirmed`. The answer that changes nothing
 * has the focus, Escape gives it too.
 */
export class AskFirst extends LitElement {
  @property() label = '';
  @property() question = '';
  @property() confirm = '';
  @property() keep = 'Keep it';
  @state() private asking = false;

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    if (!this.asking) {
      return html`<button type="button" class="button" @click=${() => this.#turn(true)}>
        ${this.label}
      </button>`;
    }
    return html`<div class="ask" role="group" aria-label=${this.question} @keydown=${this.#handleKey}>
      <p>${this.question}</p>
      <button type="button" class="button" @click=${() => this.#turn(false)}>${this.keep}</button>
      <button type="button" class="button solid" @click=${this.#handleConfirm}>${this.confirm}</button>
    </div>`;
  }

  readonly #handleKey = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    void this.#turn(false);
  };

  readonly #handleConfirm = (): void => {
    this.asking = false;
    this.dispatchEvent(new Event('confirmed'));
  };

  async #turn(asking: boolean): Promise<void> {
    this.asking = asking;
    await this.updateComplete;
    this.querySelector('button')?.focus();
  }
}

customElements.define('ask-first', AskFirst);

declare global {
  interface HTMLElementTagNameMap {
    'ask-first': AskFirst;
  }
}
