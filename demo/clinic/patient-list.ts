import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { flagLine, flagOf } from './flag-line.js';
import { day } from './format.js';
import { hashOf } from './routes.js';
import { type Found, searched } from './search.js';
import type { Draft, Patient, Visit } from './types.js';

export interface PatientRow {
  readonly patient: Patient;
  /** The latest first. */
  readonly visits: readonly Visit[];
  readonly draft: Draft | undefined;
}

/** Most visits that a search lists under one patient. */
const MOST_FOUND = 3;

/** The patients of the clinic, and a search in everything that their visits recorded. */
export class PatientList extends LitElement {
  @property({ attribute: false }) rows: readonly PatientRow[] = [];
  @state() private query = '';

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    const { query } = this;
    const shown = this.rows.flatMap((row) => {
      const found = query.trim() ? searched(row.patient, row.visits, query) : [];
      return found ? [{ row, found }] : [];
    });
    return html`<div class="field search">
        <label for="search">Search names, findings, flags</label>
        <input
          id="search"
          type="search"
          autocomplete="off"
          .value=${query}
          @input=${(event: InputEvent) => {
            this.query = (event.target as HTMLInputElement).value;
          }}
        />
      </div>
      <p class="hint" role="status">
        ${query.trim() ? `${shown.length} of ${this.rows.length} patients` : nothing}
      </p>
      ${
        shown.length
          ? html`<ul class="rows">
              ${shown.map(({ row, found }) => this.#row(row, found))}
            </ul>`
          : html`<p class="empty">No patient and no visit with these words.</p>`
      }`;
  }

  #row({ patient, visits, draft }: PatientRow, found: readonly Found[]): TemplateResult {
    const [latest] = visits;
    return html`<li class=${latest && flagOf(latest) ? 'hot' : ''}>
      <a class="row" href=${hashOf({ page: 'patient', patientId: patient.id })}>
        <span class="name">${patient.name}</span>
        <span class="second">${patient.number}, born ${day(patient.born)}</span>
        <span>${patient.summary}</span>
        <span class="second">
          ${latest ? `Last seen ${day(latest.fields['date'])}` : 'Not seen yet'}${
            draft ? ' · visit unfinished' : nothing
          }
        </span>
        ${flagLine(latest)}
      </a>
      ${found
        .slice(0, MOST_FOUND)
        .map(
          ({ visit, line }) =>
            html`<a class="found" href=${hashOf({ page: 'visit', patientId: patient.id, visitId: visit.id })}
              >${day(visit.fields['date'])}: ${line}</a
            >`,
        )}
    </li>`;
  }
}

customElements.define('patient-list', PatientList);

declare global {
  interface HTMLElementTagNameMap {
    'patient-list': PatientList;
  }
}
