import { html, noChange, nothing, type TemplateResult } from 'lit';
import type { PartMessages } from '../../locale/parts.js';
import type { RecordStore } from '../common/record-store.js';

/** The folded field for a typed or dictated note, above the map. */
export function renderNote(view: {
  readonly store: RecordStore;
  readonly words: PartMessages;
  readonly lang: string;
  readonly register: '' | 'trade' | 'plain';
  readonly editable: boolean;
  /** Text that a page kept stands in it. */
  readonly kept: boolean;
}): TemplateResult | typeof nothing {
  if (!view.editable) return nothing;
  return html`<details class="fold note" ?open=${view.kept || noChange}>
    <summary>${view.words.note.title}</summary>
    <limb-note .lang=${view.lang} .register=${view.register} .store=${view.store}></limb-note>
  </details>`;
}
