import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import 'pulse-map/elements/limb-observations/define';
import {
  type ChartChangeEvent,
  emptyChart,
  type ObservationChart,
} from 'pulse-map/elements/limb-observations';
import type { ClinicStore } from './database.js';
import { PATHWAY } from './flag-line.js';
import { cause } from './format.js';
import { examinationLanguage, examinationRegister, followLanguage } from './language.js';

const FIELD = 'chart';
const keyOf = (patientId: string): string => `chart ${patientId}`;
const LIMBS = [
  ['Left leg', { kind: 'leg', side: 'left' }],
  ['Right leg', { kind: 'leg', side: 'right' }],
  ['Left arm', { kind: 'arm', side: 'left' }],
  ['Right arm', { kind: 'arm', side: 'right' }],
] as const;

/** The chart of a limb after an operation, kept with the drafts: it is never finished and saved, every round is. */
export class PatientChart extends LitElement {
  @property({ attribute: false }) store: ClinicStore | undefined;
  @property({ attribute: false }) patientId = '';
  @state() private chart: ObservationChart | string | undefined;
  @state() private error = '';
  #loaded = '';

  constructor() {
    super();
    followLanguage(this);
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(): void {
    if (!this.store || this.#loaded === this.patientId) return;
    this.#loaded = this.patientId;
    this.chart = undefined;
    void this.store.draft(keyOf(this.patientId)).then(
      (kept) => (this.chart = kept?.fields[FIELD]),
      (error: unknown) => (this.error = cause(error)),
    );
  }

  protected override render(): TemplateResult {
    return html`${this.chart === undefined ? this.#begin() : this.#shown(this.chart)}
      <p role="alert">${this.error ? `The chart cannot be kept: ${this.error}` : nothing}</p>`;
  }

  #begin(): TemplateResult {
    return html`<p>
        Watch a limb by the hour: signal, colour, sensation, movement, refill and pain, with the next round
        due. Which limb was operated on?
      </p>
      <div class="actions">
        ${LIMBS.map(
          ([name, limb]) =>
            html`<button type="button" class="button" @click=${() => (this.chart = emptyChart(limb))}>
              ${name}
            </button>`,
        )}
      </div>`;
  }

  #shown(chart: ObservationChart | string): TemplateResult {
    return html`<limb-observations
      lang=${examinationLanguage()}
      register=${examinationRegister()}
      .pathway=${PATHWAY}
      .chart=${chart}
      @chart-change=${this.#keep}
    ></limb-observations>`;
  }

  readonly #keep = ({ chart }: ChartChangeEvent): void => {
    this.error = '';
    void this.store
      ?.saveDraft({
        key: keyOf(this.patientId),
        patientId: this.patientId,
        fields: { [FIELD]: JSON.stringify(chart) },
        keptAt: new Date().toISOString(),
      })
      .catch((error: unknown) => (this.error = cause(error)));
  };
}

if (!customElements.get('patient-chart')) customElements.define('patient-chart', PatientChart);

declare global {
  interface HTMLElementTagNameMap {
    'patient-chart': PatientChart;
  }
}
