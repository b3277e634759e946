import { html, type TemplateResult } from 'lit';
import type { PressureWords } from '../../locale/en/pressures.js';
import type { CuffCaution } from '../../triage/index.js';

/** What to think of before the first cuff: of this patient first, then of every one. */
export function cuffCautionsNote(words: PressureWords, cautions: readonly CuffCaution[]): TemplateResult {
  return html`<div role="note" class="cautions">
    ${cautions.map((caution) => html`<p><b>${words.cuff(caution)}</b></p>`)}
    <p>${words.cuffs}</p>
    <p class="hint">${words.technique}</p>
  </div>`;
}
