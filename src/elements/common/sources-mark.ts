import { css, html, nothing, type TemplateResult } from 'lit';
import { ICONS } from './icons.js';

/** The words of the mark: its name, and a source as it is cited in the language. */
export interface SourceWords {
  readonly sources: string;
  readonly cite: (source: string) => string;
}

function toggle({ currentTarget }: Event): void {
  const button = currentTarget as HTMLElement;
  const list = button.nextElementSibling as HTMLElement;
  list.hidden = !list.hidden;
  button.setAttribute('aria-expanded', String(!list.hidden));
}

/** The mark beside a verdict that opens the list of what it rests on; nothing without a source. */
export function sourcesMark(sources: readonly string[], words: SourceWords): TemplateResult | typeof nothing {
  if (!sources.length) return nothing;
  // The open state belongs to the list alone: no render writes these attributes again.
  return html`<div part="sources" class="sources">
    <button
      type="button"
      class="sources-mark"
      aria-label=${words.sources}
      title=${words.sources}
      aria-expanded="false"
      @click=${toggle}
    >
      ${ICONS.info}
    </button>
    <ul hidden>
      ${sources.map((source) => html`<li>${words.cite(source)}</li>`)}
    </ul>
  </div>`;
}

export const sourcesStyles = css`
  .sources-mark {
    display: inline-grid;
    place-items: center;
    inline-size: 44px;
    block-size: 44px;
    margin-inline-start: -12px;
    padding: 0;
    border: 0;
    border-radius: 50%;
    background: none;
    color: var(--_ink-2);
    cursor: pointer;
  }
  .sources-mark:focus-visible {
    outline: 2px solid var(--_accent, currentColor);
    outline-offset: -4px;
  }
  .sources ul {
    margin: 0 0 8px;
    padding-inline-start: 20px;
    font-size: calc(14 * var(--_text));
    line-height: calc(20 * var(--_text));
    overflow-wrap: anywhere;
  }
  @media print {
    .sources-mark {
      display: none;
    }
  }
`;
