import { html, nothing, type TemplateResult } from 'lit';
import type { Examination } from '../../examination/index.js';
import type { PartId } from '../../locale/whole.js';
import type { PartMessages } from '../../locale/parts.js';
import { PARTS, recordedIn } from './parts.js';

export interface ContentsView {
  readonly examination: Examination;
  readonly words: PartMessages['whole'];
  readonly disabled: boolean;
  /** The part that stands under the sticky bar. */
  readonly current: PartId | undefined;
  readonly open: (part: PartId) => void;
}

/** The row of buttons that opens the parts, each with the number of its entries. */
export function renderContents({
  examination,
  words,
  disabled,
  current,
  open,
}: ContentsView): TemplateResult {
  return html`<nav part="contents" aria-label=${words.contents}>
    ${PARTS.map((part) => {
      const recorded = recordedIn(part, examination);
      return html`<button
        type="button"
        class="button tab ${recorded ? 'has' : ''}"
        aria-label=${part === 'summary' ? words.parts.summary : words.part(part, recorded)}
        aria-current=${part === current ? 'true' : nothing}
        ?disabled=${disabled}
        @click=${() => open(part)}
      >
        ${words.parts[part]} ${recorded ? html`<span class="count">${recorded}</span>` : nothing}
      </button>`;
    })}
  </nav>`;
}
