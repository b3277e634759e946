import { html, type TemplateResult } from 'lit';
import { formatExamination, parseExaminationText } from 'pulse-map/core';
import { amend, type AmendmentKind, isInError } from 'pulse-map/report';
import { EXAMINATION_NAME, type Visit, type VisitFields } from './types.js';

/** The name of the reason for a change; it stands in the record's amendment and in no field of the clinic. */
export const WHY_NAME = 'why';

/** Whether a visit's examination was entered in error. */
export function isVisitInError({ fields }: Pick<Visit, 'fields'>): boolean {
  const parsed = parseExaminationText(fields[EXAMINATION_NAME] ?? '');
  return parsed.ok && isInError(parsed.value);
}

/** The fields with an amendment of the record in them: who, when and why, as the clinic knows it. Without a record they stay. */
export function amendedFields(
  fields: VisitFields,
  kind: AmendmentKind,
  by: string,
  why: string,
): VisitFields {
  const parsed = parseExaminationText(fields[EXAMINATION_NAME] ?? '');
  if (!parsed.ok) return fields;
  const amended = amend(parsed.value, {
    kind,
    at: new Date().toISOString(),
    ...(by && { by }),
    ...(why && { why }),
  });
  return { ...fields, [EXAMINATION_NAME]: formatExamination(amended) };
}

/** Marks a visit as entered in error, or takes that back, with the reason. Nothing is erased. */
export function inErrorForm(visit: Visit, save: (visit: Visit) => void): TemplateResult {
  const inError = isVisitInError(visit);
  const label = inError ? 'Restore this visit' : 'Mark as entered in error';
  const submit = (event: SubmitEvent): void => {
    event.preventDefault();
    const given = new FormData(event.currentTarget as HTMLFormElement);
    const text = (name: string): string => String(given.get(name) ?? '').trim();
    save({
      ...visit,
      fields: amendedFields(
        visit.fields,
        inError ? 'restored' : 'entered-in-error',
        text('by'),
        text(WHY_NAME),
      ),
      savedAt: new Date().toISOString(),
    });
  };
  return html`<details class="amend">
    <summary>${label}</summary>
    <form aria-label=${label} @submit=${submit}>
      <div class="field">
        <label for="by">Who marks it</label>
        <input id="by" name="by" required autocomplete="off" />
      </div>
      <div class="field">
        <label for="why">Why</label>
        <input id="why" name=${WHY_NAME} required autocomplete="off" maxlength="2000" />
      </div>
      <button type="submit" class="button">${label}</button>
    </form>
  </details>`;
}
