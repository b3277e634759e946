import { html, type TemplateResult } from 'lit';
import type { Examination } from '../../examination/index.js';
import type { Pathway } from '../../triage/index.js';
import type { LetterEdits } from '../limb-letter/edits.js';
import type { LetterChangeEvent } from '../limb-letter/events.js';

/** The record in words, to be changed and copied. */
export function renderSummary(view: {
  readonly examination: Examination;
  readonly earlier: Examination | undefined;
  readonly pathway: Pathway | undefined;
  /** The patient as the page names him. */
  readonly subject: string;
  readonly lang: string;
  readonly register: '' | 'trade' | 'plain';
  readonly readOnly: boolean;
  letter: LetterEdits;
}): TemplateResult {
  return html`<limb-letter
    part="summary"
    @input=${(event: Event) => event.stopPropagation()}
    @letter-change=${({ edits }: LetterChangeEvent) => (view.letter = edits)}
    .edits=${view.letter}
    .examination=${view.examination}
    .earlier=${view.earlier ?? null}
    .pathway=${view.pathway}
    .subject=${view.subject}
    .lang=${view.lang}
    .register=${view.register}
    .readOnly=${view.readOnly}
  ></limb-letter>`;
}
