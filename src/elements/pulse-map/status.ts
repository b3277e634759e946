import { html, nothing, type TemplateResult } from 'lit';
import type { ScaleId } from '../../examination/index.js';
import type { ShownMessages } from '../../locale/shown.js';
import type { Said } from './session.js';

/** The strip under the figure: the last edit (a live region), progress of the examination, and the scale. */
export function renderStatus(
  said: Said | undefined,
  stated: number,
  total: number,
  scale: ScaleId,
  { map }: ShownMessages,
): TemplateResult {
  const text = said
    ? html`${said.where ? html`<b>${said.where}</b> ` : nothing}${said.what}${
        said.reading ? html`<span class="hidden-visually">. ${said.reading}.</span>` : nothing
      }`
    : stated
      ? nothing
      : map.empty;
  return html`<div class="status" part="status">
    <span role="status">${text}</span><span>${map.count(stated, total, scale)}</span>
  </div>`;
}
