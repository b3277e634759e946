import { html, type TemplateResult } from 'lit';
import type { Side } from '../../anatomy/index.js';
import type { Examination } from '../../examination/index.js';
import type { PartId } from '../../locale/whole.js';
import type { Pathway } from '../../triage/index.js';
import type { CallChangeEvent } from '../limb-flags/calls.js';
import type { QuestionOpenEvent } from '../limb-flags/question-open.js';
import { ANSWERED_IN } from './parts.js';

/** What the bar of the red flags needs of the examination around it. */
export interface FlagsView {
  readonly examination: Examination;
  readonly pathway: Pathway | undefined;
  readonly editable: boolean;
  readonly lang: string;
  readonly register: '' | 'trade' | 'plain';
  readonly open: (part: PartId, side: Side | undefined) => void;
  readonly edit: (next: Examination) => void;
}

/** The worst red flag in the first line of the sticky bar. */
export function renderFlags(view: FlagsView): TemplateResult {
  return html`<limb-flags
    steady
    .examination=${view.examination}
    .pathway=${view.pathway}
    .running=${view.editable}
    ?links=${view.editable}
    ?notes=${view.editable}
    @question-open=${({ question: { code, limb } }: QuestionOpenEvent) => view.open(ANSWERED_IN[code], limb?.side)}
    @call-change=${({ examination }: CallChangeEvent) => view.edit(examination)}
    .lang=${view.lang}
    .register=${view.register}
  ></limb-flags>`;
}
