import { html, nothing, type TemplateResult } from 'lit';
import type { Register } from 'pulse-map/core/tables';
import { parseExamination, partMessagesFor, type Pathway, triage } from 'pulse-map/core';
import { isVisitInError } from './amend.js';
import { EXAMINATION_NAME, type Visit } from './types.js';

/** The invented clinic's own pathway. The number is one of those kept free for fiction. */
export const PATHWAY: Pathway = {
  name: 'Acute limb, Alder Row (invented)',
  calls: { any: { name: 'Vascular registrar (invented number)', telephone: '+44 1632 960961' } },
};

/** The worst red flag of a visit as one line, and how many more there are; `undefined` where none stands. */
export function flagOf(
  { fields }: Visit,
  language = 'en',
  register: Register = 'trade',
): { readonly heading: string; readonly more: number } | undefined {
  const text = fields[EXAMINATION_NAME];
  if (!text || isVisitInError({ fields })) return undefined;
  let record: unknown;
  try {
    record = JSON.parse(text);
  } catch {
    return undefined;
  }
  const parsed = parseExamination(record);
  const [worst, ...others] = parsed.ok ? triage(parsed.value, PATHWAY.settings).flags : [];
  if (!worst) return undefined;
  const { flags } = partMessagesFor(language, register);
  return { heading: `${flags.when(worst)}: ${flags.heading(worst)}`, more: others.length };
}

/** The sign and the words; never a colour or a dot alone. */
export function flagLine(visit: Visit | undefined): TemplateResult | typeof nothing {
  if (visit && isVisitInError(visit)) return html`<span class="in-error">Entered in error</span>`;
  const flag = visit && flagOf(visit);
  if (!flag) return nothing;
  return html`<span class="flag-line">
    <svg width="16" height="16" viewBox="0 0 20 20" aria-hidden="true">
      <path
        d="M10 3 18 16.500H2ZM10 8V12M10 14.300V14.400"
        fill="none"
        stroke="currentColor"
        stroke-width="2"
        stroke-linecap="round"
        stroke-linejoin="round"
      ></path>
    </svg>
    <span>${flag.heading}${flag.more ? ` (and ${flag.more} more)` : nothing}</span>
  </span>`;
}
