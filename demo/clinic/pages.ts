import { html, nothing, type TemplateResult } from 'lit';
import './ask-first.js';
import './patient-chart.js';
import './patient-list.js';
import './patient-visits.js';
import { inErrorForm, isVisitInError } from './amend.js';
import type { ClinicStore } from './database.js';
import { changesSince, examinationReport, recordFrom } from './examination.js';
import { type KeepVisit, visitExport } from './exchange.js';
import { flagLine, flagOf } from './flag-line.js';
import { AFTER, answer, type Field, LONG, SHORT } from './form-fields.js';
import { day, moment } from './format.js';
import { LETTER_NAME, visitLetter } from './letter.js';
import { keepRecordLesson } from './own-lessons.js';
import type { PatientRow } from './patient-list.js';
import { hashOf } from './routes.js';
import { EXAMINATION_NAME, type Patient, type Visit } from './types.js';

/** Where the reader is, from the list inward. */
function trail(...steps: readonly { readonly text: string; readonly href: string }[]): TemplateResult {
  return html`<nav aria-label="Where you are">
    <ol class="trail">
      ${steps.map(({ text, href }) => html`<li><a href=${href}>${text}</a></li>`)}
    </ol>
  </nav>`;
}

const toPatients = { text: 'Patients', href: hashOf({ page: 'patients' }) };
const toPatient = (patient: Patient) => ({
  text: patient.name,
  href: hashOf({ page: 'patient', patientId: patient.id }),
});

/** Who the page is about: invented, and said so wherever the name stands. */
function identity(patient: Patient): TemplateResult {
  return html`<p class="identity">${patient.number}, born ${day(patient.born)} (invented patient)</p>`;
}

export function patientsPage(rows: readonly PatientRow[]): TemplateResult {
  return html`<main class="page narrow">
    <h1 tabindex="-1">Patients</h1>
    <p>
      The record of an invented clinic, with the pulse map in its visit form. Open a patient, read a visit,
      record another. Nobody here is real: <a href=${hashOf({ page: 'about' })}>what this is and is not</a>.
    </p>
    ${
      rows.length
        ? html`<patient-list .rows=${rows}></patient-list>`
        : html`<p class="empty">
            No patients. The page “About this demonstration” puts the invented ones back.
          </p>`
    }
  </main>`;
}

/** The red flag of the last visit that counts, before all else; the visits tell the earlier ones. */
function lastFlag(visits: readonly Visit[]): TemplateResult | typeof nothing {
  const last = visits.find((visit) => !isVisitInError(visit));
  if (!last || !flagOf(last)) return nothing;
  return html`${flagLine(last)}
    <p class="hint">
      Found on ${day(last.fields['date'])}.
      <a href=${hashOf({ page: 'visit', patientId: last.patientId, visitId: last.id })}>Open this visit</a>
    </p>`;
}

export function patientPage(
  { patient, visits, draft }: PatientRow,
  store: ClinicStore | undefined,
  keep: KeepVisit,
): TemplateResult {
  const patientId = patient.id;
  return html`<main class="page">
    ${trail(toPatients)}
    <h1 tabindex="-1">${patient.name}</h1>
    ${identity(patient)} ${lastFlag(visits)}
    <p>${patient.summary}</p>
    <div class="actions">
      <a class="button solid" href=${hashOf({ page: 'edit', patientId })}>
        ${draft ? 'Continue draft' : 'New visit'}
      </a>
      ${
        !draft && visits.length
          ? html`<a class="button" href=${hashOf({ page: 'edit', patientId, fromLast: true })}
              >New visit from the last</a
            >`
          : nothing
      }
      ${draft ? html`<p class="hint">Begun ${moment(draft.keptAt)}, not saved yet.</p>` : nothing}
    </div>
    <h2 id="visits" tabindex="-1">Visits</h2>
    ${
      visits.length
        ? html`<patient-visits .visits=${visits}></patient-visits>`
        : html`<p class="empty">No visit yet. The first one will stand here.</p>`
    }
    <h2>After an operation</h2>
    <patient-chart .store=${store} .patientId=${patientId}></patient-chart>
    <fhir-import .patient=${patient} .visits=${visits} .keep=${keep}></fhir-import>
  </main>`;
}

function answers(fields: readonly Field[], visit: Visit): TemplateResult {
  const given = fields.filter((field) => answer(field, visit.fields[field.name]));
  return html`<dl class=${fields === LONG ? 'answers long' : 'answers'}>
    ${given.map(
      (field) =>
        html`<div>
          <dt>${field.label}</dt>
          <dd>${answer(field, visit.fields[field.name])}</dd>
        </div>`,
    )}
  </dl>`;
}

async function showInLesson(examination: string): Promise<void> {
  if ((await keepRecordLesson(examination)) === undefined)
    location.hash = hashOf({ page: 'lecture', lessonId: 'record' });
}

export function visitPage(
  patient: Patient,
  visit: Visit,
  earlier: Visit | undefined,
  onDelete: () => void,
  onAmend: (visit: Visit) => void,
): TemplateResult {
  const examination = visit.fields[EXAMINATION_NAME] ?? '';
  const record = recordFrom(examination);
  return html`<main class="page">
    ${trail(toPatients, toPatient(patient))}
    <h1 tabindex="-1">Visit of ${day(visit.fields['date'])}</h1>
    <p class="identity">${patient.name}, ${patient.number}, born ${day(patient.born)} (invented patient)</p>
    ${flagLine(visit)}
    <div class="actions">
      <a class="button" href=${hashOf({ page: 'edit', patientId: patient.id, visitId: visit.id })}>Amend</a>
      <button type="button" class="button" @click=${() => print()}>Print</button>
      ${
        record
          ? html`<button type="button" class="button" @click=${() => void showInLesson(examination)}>
              Show in a lesson, without name and dates
            </button>`
          : nothing
      }
      <ask-first
        label="Delete"
        question="Delete this visit? It cannot be brought back."
        confirm="Delete the visit"
        @confirmed=${onDelete}
      ></ask-first>
    </div>
    ${examination ? inErrorForm(visit, onAmend) : nothing}
    ${answers(
      SHORT.filter((field) => field.name !== 'date'),
      visit,
    )}
    ${answers(LONG, visit)}
    ${
      examination
        ? html`${changesSince(earlier?.fields, visit.fields)}
          ${examinationReport(visit.fields, patient.name, `${patient.number}, born ${day(patient.born)} (invented patient)`, earlier?.fields)}`
        : html`<p class="empty">Nothing was recorded on the limbs at this visit.</p>`
    }
    ${record ? visitLetter(record, patient.name, visit.fields['date'] ?? '', visit.fields[LETTER_NAME]) : nothing}
    ${record ? visitExport(record, patient, visit) : nothing} ${answers(AFTER, visit)}
    <p class="second">Saved ${moment(visit.savedAt)}.</p>
  </main>`;
}

export function editPage(patient: Patient, visit: Visit | undefined, form: TemplateResult): TemplateResult {
  return html`<main class="page">
    ${trail(toPatients, toPatient(patient))}
    <h1 tabindex="-1">${visit ? `Amend the visit of ${day(visit.fields['date'])}` : 'New visit'}</h1>
    <p class="identity">${patient.name}, ${patient.number}, born ${day(patient.born)} (invented patient)</p>
    ${form}
  </main>`;
}

export function missingPage(what: string): TemplateResult {
  return html`<main class="page narrow">
    <h1 tabindex="-1">Not found</h1>
    <p>${what}</p>
    <p><a href=${toPatients.href}>To the patients</a></p>
  </main>`;
}

export function loadingPage(): TemplateResult {
  return html`<main class="page narrow" aria-busy="true"><p role="status">Loading…</p></main>`;
}

/** The database did not open or did not answer. */
export function failedPage(reason: string, onRetry: () => void): TemplateResult {
  return html`<main class="page narrow">
    <div class="error" role="alert">
      <h1 tabindex="-1">The records cannot be reached</h1>
      <p>This page keeps its records in the browser’s own database, and the browser said: ${reason}</p>
      <p>
        Private windows and strict privacy settings often forbid it; another tab with a newer version of this
        page may hold it.
      </p>
      <button type="button" class="button solid" @click=${onRetry}>Try again</button>
    </div>
  </main>`;
}
