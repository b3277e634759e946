import { scaleLinear } from 'd3-scale';
import { css, html, LitElement, nothing, svg } from 'lit';
import {
  ankleIndex,
  type CuffReadings,
  type GeneratedPatient,
  type Pattern,
  requestPatients,
} from 'pulse-map/flow';

const COUNTS = [100, 1000, 10_000] as const;
/** Ankle indices are counted in classes this wide, up to the last. */
const CLASS = 0.1;
const CLASSES = 15;
const WIDTH = 320;
const HEIGHT = 90;

interface Tally {
  patients: number;
  readonly indices: number[];
}

/** Many generated patients and the ankle indices measured in them, by pattern of disease. English only; it is documentation. */
export class ManyPatientsPage extends LitElement {
  static override properties = {
    seed: { state: true },
    count: { state: true },
    done: { state: true },
    running: { state: true },
    said: { state: true },
  };

  static override styles = css`
    :host {
      display: block;
      font:
        0.95rem/1.4 system-ui,
        sans-serif;
      max-inline-size: 62rem;
    }
    form {
      display: flex;
      flex-wrap: wrap;
      gap: 0.75rem 1.5rem;
      align-items: end;
    }
    label {
      display: grid;
    }
    input,
    select,
    button {
      min-block-size: 2.75rem;
      font: inherit;
      padding-inline: 0.75rem;
    }
    /* WebKit keeps the grey of its own button under the white letters of a dark page. */
    button {
      color: CanvasText;
      background: Canvas;
      border: 1px solid;
      border-radius: 0.25rem;
    }
    progress {
      inline-size: 100%;
    }
    ul {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(min(100%, 18rem), 1fr));
      gap: 1.25rem;
      padding: 0;
      list-style: none;
    }
    svg {
      display: block;
      inline-size: 100%;
      block-size: auto;
    }
    .bar {
      fill: #0b6e99;
    }
    .limit {
      stroke: #a3271f;
      stroke-dasharray: 3 3;
    }
    .axis {
      stroke: currentColor;
    }
    text {
      font-size: 11px;
      fill: currentColor;
      text-anchor: middle;
    }
  `;

  declare seed: number;
  declare count: number;
  declare done: number;
  declare running: boolean;
  declare said: string;
  #worker: Worker | undefined;
  #stop: AbortController | undefined;
  #tallies = new Map<Pattern, Tally>();

  constructor() {
    super();
    this.seed = 4817;
    this.count = 1000;
    this.done = 0;
    this.running = false;
    this.said = '';
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.abort();
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #take(patients: readonly GeneratedPatient[]): void {
    for (const { pattern, examination } of patients) {
      const tally = this.#tallies.get(pattern) ?? { patients: 0, indices: Array<number>(CLASSES).fill(0) };
      tally.patients++;
      for (const side of ['right', 'left'] as const) {
        const index = ankleIndex((examination.pressures ?? {}) as CuffReadings, side);
        if (index !== undefined) tally.indices[Math.min(CLASSES - 1, Math.floor(index / CLASS))]!++;
      }
      this.#tallies.set(pattern, tally);
    }
  }

  async #run(event: Event): Promise<void> {
    event.preventDefault();
    this.#worker ??= new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    this.#stop = new AbortController();
    this.#tallies = new Map();
    this.done = 0;
    this.said = '';
    this.running = true;
    try {
      const request = { seed: this.seed, count: this.count, parts: ['pressures'] as const };
      const done = await requestPatients(this.#worker, request, {
        signal: this.#stop.signal,
        onPatients: (patients, sum) => {
          this.#take(patients);
          this.done = sum;
        },
      });
      this.said = `${done} patients examined.`;
    } catch (error) {
      this.said = this.#stop.signal.aborted
        ? `Stopped after ${this.done} of ${this.count}.`
        : `Could not go on: ${String(error)}`;
    }
    this.running = false;
  }

  #histogram(pattern: Pattern, { patients, indices }: Tally) {
    const x = scaleLinear([0, CLASSES * CLASS], [8, WIDTH - 8]);
    const y = scaleLinear([0, Math.max(1, ...indices)], [0, HEIGHT]);
    const name = pattern.replaceAll('-', ' ');
    const below = indices.slice(0, 9).reduce((sum, n) => sum + n, 0);
    const all = indices.reduce((sum, n) => sum + n, 0);
    const share = all ? Math.round((100 * below) / all) : 0;
    return html`<li>
      <strong>${name}</strong>, ${patients} ${patients === 1 ? 'patient' : 'patients'}<br />
      ${share}% of ${all} legs with an index below 0.90
      <svg
        viewBox="0 0 ${WIDTH} ${HEIGHT + 20}"
        role="img"
        aria-label="Ankle indices, ${name}: ${share}% below 0.90"
      >
        ${indices.map(
          (n, i) =>
            svg`<rect class="bar" x=${x(i * CLASS) + 1} y=${HEIGHT - y(n)} width=${x(CLASS) - x(0) - 2} height=${y(n)}></rect>`,
        )}
        <line class="axis" x1="8" x2=${WIDTH - 8} y1=${HEIGHT} y2=${HEIGHT}></line>
        <line class="limit" x1=${x(0.9)} x2=${x(0.9)} y2=${HEIGHT}></line>
        ${[0, 0.5, 0.9, 1.4].map((tick) => svg`<text x=${x(tick)} y=${HEIGHT + 15}>${tick.toFixed(1)}</text>`)}
      </svg>
    </li>`;
  }

  override render() {
    const tallies = [...this.#tallies].sort((a, b) => b[1].patients - a[1].patients);
    return html`<form @submit=${(event: Event) => void this.#run(event)}>
        <label
          >Seed
          <input
            type="number"
            min="0"
            max="4294967295"
            required
            .value=${String(this.seed)}
            ?disabled=${this.running}
            @change=${(event: Event) => (this.seed = (event.target as HTMLInputElement).valueAsNumber)}
          />
        </label>
        <label
          >Patients
          <select
            ?disabled=${this.running}
            @change=${(event: Event) => (this.count = Number((event.target as HTMLSelectElement).value))}
          >
            ${COUNTS.map((n) => html`<option value=${n} ?selected=${n === this.count}>${n}</option>`)}
          </select>
        </label>
        ${
          this.running
            ? html`<button type="button" @click=${() => this.#stop?.abort()}>Stop</button>`
            : html`<button>Generate and examine</button>`
        }
      </form>
      ${
        this.running
          ? html`<p>
              <progress aria-label="Patients examined" max=${this.count} .value=${this.done}></progress>
              ${this.done} of ${this.count}
            </p>`
          : nothing
      }
      <p role="status">${this.said}</p>
      <p>
        Invented patients, drawn with published frequencies, each measured once by an examiner with published
        scatter. The dashed line stands at an index of 0.90.
      </p>
      <ul>
        ${tallies.map(([pattern, tally]) => this.#histogram(pattern, tally))}
      </ul>`;
  }
}

if (!customElements.get('many-patients-page')) customElements.define('many-patients-page', ManyPatientsPage);
