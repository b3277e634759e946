import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';

/**
 * One choice of a `<select>`. It is chosen by property too: the attribute counts no longer once a person has picked the option, and
 * an undo would leave the list at what was picked.
 */
export function option(value: string, text: string, chosen: boolean): TemplateResult {
  return html`<option value=${value} ?selected=${chosen} .selected=${live(chosen)}>${text}</option>`;
}
