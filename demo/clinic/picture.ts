import { html, nothing, type TemplateResult } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { parseExaminationText } from 'pulse-map/core';
import { figureBody, type FigureLook, figureSVG } from 'pulse-map/picture';
import { EXAMINATION_NAME, type Visit } from './types.js';

/** How the pictures of a list look. */
const LOOK: FigureLook = { width: 96, scheme: 'page' };

/** What the pictures of a list share, once a list. */
export const sharedBody = (): TemplateResult => html`${unsafeSVG(figureBody(LOOK))}`;

/** A visit as a small picture; nothing where its record is empty or cannot be read. */
export function visitPicture({ fields }: Visit): TemplateResult | typeof nothing {
  const text = fields[EXAMINATION_NAME];
  const parsed = text ? parseExaminationText(text) : undefined;
  if (!parsed?.ok) return nothing;
  return html`<span class="small-picture"
    >${unsafeSVG(figureSVG(parsed.value, { ...LOOK, shared: true }))}</span
  >`;
}
