import { html, LitElement, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import 'pulse-map/elements/limb-visits/define';
import type { PatientVisit, VisitOpenEvent } from 'pulse-map/elements/limb-visits';
import { isVisitInError } from './amend.js';
import { flagOf } from './flag-line.js';
import { fetchWords } from './languages.js';
import { examinationLanguage, examinationRegister, followLanguage } from './language.js';
import { hashOf } from './routes.js';
import { EXAMINATION_NAME, type Visit } from './types.js';

/** A visit as the timeline takes it: the record as the form submitted it, the day, and why the patient came. */
function visitOf(visit: Visit): PatientVisit {
  const { id, fields } = visit;
  const flag = flagOf(visit, examinationLanguage(), examinationRegister());
  return {
    id,
    examination: fields[EXAMINATION_NAME] ?? '',
    ...(fields['date'] && { at: fields['date'] }),
    note: isVisitInError(visit) ? 'Entered in error' : (fields['reason'] ?? ''),
    ...(flag && { flag: flag.heading }),
  };
}

/** All visits of a patient over time; one that is opened is a page of its own. */
export class PatientVisits extends LitElement {
  @property({ attribute: false }) visits: readonly Visit[] = [];
  /** The same objects as long as the visits are the same. */
  #shown: { readonly from: readonly Visit[]; readonly visits: readonly PatientVisit[] } | undefined;

  constructor() {
    super();
    followLanguage(this, () => this.#renew());
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#renew();
  }

  /** Flags stand in the language of the examination, whose words may still be on their way. */
  #renew(): void {
    void fetchWords(examinationLanguage()).then(() => {
      this.#shown = undefined;
      this.requestUpdate();
    });
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    if (this.#shown?.from !== this.visits)
      this.#shown = { from: this.visits, visits: this.visits.map(visitOf) };
    return html`<limb-visits
      lang=${examinationLanguage()}
      register=${examinationRegister()}
      view="whole"
      .visits=${this.#shown.visits}
      @visit-open=${this.#handleOpen}
    ></limb-visits>`;
  }

  readonly #handleOpen = ({ visit: { id } }: VisitOpenEvent): void => {
    const visit = this.visits.find((one) => one.id === id);
    if (visit) location.hash = hashOf({ page: 'visit', patientId: visit.patientId, visitId: id });
  };
}

if (!customElements.get('patient-visits')) customElements.define('patient-visits', PatientVisits);

declare global {
  interface HTMLElementTagNameMap {
    'patient-visits': PatientVisits;
  }
}
