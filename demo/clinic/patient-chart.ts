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
  /** Undefined until the store has answered, null where it keeps none. */
  @state() private chart: ObservationChart | string | null | undefined;
  @state() private error = '';
  #asked = '';

  constructor() {
    super();
    followLanguage(this);
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override willUpdate(): void {
    if (!this.store || this.#asked === this.patientId) return;
    void this.#load(this.store);
  }

  async #load(store: ClinicStore): Promise<void> {
    const asked = (this.#asked = this.patientId);
    this.chart = undefined;
    this.error = '';
    try {
      const kept = await store.draft(keyOf(asked));
      // Another patient may be shown by now.
      if (asked === this.#asked) this.chart = kept?.fields[FIELD] ?? null;
    } catch (error) {
      if (asked === this.#asked) this.error = `The chart cannot be read: ${cause(error)}`;
    }
  }

  protected override render(): TemplateResult {
    return html`${this.#content()}
      <p role="alert">${this.error || nothing}</p>`;
  }

  /** Until it is known whether a chart is kept, none can be begun: the new one would take its place. */
  #content(): TemplateResult {
    if (this.chart === null) return this.#begin();
    if (this.chart !== undefined) return this.#shown(this.chart);
    if (!this.error || !this.store) return html`<p role="status">Loading…</p>`;
    const { store } = this;
    return html`<button type="button" class="button" @click=${() => this.#load(store)}>Try again</button>`;
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
      .catch((error: unknown) => (this.error = `The chart cannot be kept: ${cause(error)}`));
  };
}

if (!customElements.get('patient-chart')) customElements.define('patient-chart', PatientChart);

declare global {
  interface HTMLElementTagNameMap {
    'patient-chart': PatientChart;
  }
}
