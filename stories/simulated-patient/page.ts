import { line } from 'd3-shape';
import { css, html, LitElement, nothing, svg } from 'lit';
import {
  ankleIndex,
  bruitAtPlace,
  dopplerAt,
  findingsOf,
  type Findings,
  type Lesion,
  type PatientInput,
  pressureAt,
  SAMPLE_RATE,
  simulate,
  type Simulation,
  type SiteReading,
  velocityAt,
  vibrationOf,
} from 'pulse-map/flow';
import { LISTENING_PLACES } from 'pulse-map/core/tables';

type PulsePlace = SiteReading['place'];

const ARTERIES: readonly (readonly [Lesion['piece'], string])[] = [
  ['right common-iliac', 'right common iliac'],
  ['right external-iliac', 'right external iliac'],
  ['right superficial-femoral', 'right superficial femoral'],
  ['right popliteal distal', 'right popliteal, below the knee'],
  ['left subclavian', 'left subclavian'],
  ['right renal', 'right renal'],
  ['right internal-carotid', 'right internal carotid'],
  ['midline thoracic-aorta', 'aortic isthmus'],
];
const SHOWN: readonly PulsePlace[] = [
  { site: 'carotid', side: 'right' },
  { site: 'radial', side: 'right' },
  { site: 'radial', side: 'left' },
  { site: 'femoral', side: 'right' },
  { site: 'popliteal', side: 'right' },
  { site: 'posterior-tibial', side: 'right' },
  { site: 'dorsalis-pedis', side: 'right' },
  { site: 'posterior-tibial', side: 'left' },
];
/** A place in words. */
const plain = ({ side, site }: { side: string; site: string }): string =>
  `${side} ${site.replaceAll('-', ' ')}`;
const WIDTH = 180;
const HEIGHT = 56;

/** A page to try the simulated patient on: one artery, one slider, and what changes. English only; it is documentation. */
export class SimulatedPatientPage extends LitElement {
  static override properties = {
    artery: { state: true },
    narrowing: { state: true },
    age: { state: true },
    rate: { state: true },
    walked: { state: true },
    fresh: { state: true },
    playing: { state: true },
    volume: { state: true },
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
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(14rem, 1fr));
      gap: 0.5rem 1.5rem;
      align-items: end;
      padding-block-end: 1rem;
      border-block-end: 1px solid #8886;
    }
    label {
      display: grid;
    }
    label.row {
      grid-auto-flow: column;
      justify-content: start;
      gap: 0.5rem;
      min-block-size: 2.75rem;
      align-items: center;
    }
    input[type='range'],
    select,
    button {
      min-block-size: 2.75rem;
      font: inherit;
    }
    /* WebKit keeps the grey of its own button under the white letters of a dark page. */
    button {
      color: CanvasText;
      background: Canvas;
      border: 1px solid;
      border-radius: 0.25rem;
    }
    output {
      font-variant-numeric: tabular-nums;
      font-weight: 600;
    }
    select {
      inline-size: 100%;
      box-sizing: border-box;
    }
    .sites {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(13rem, 1fr));
      gap: 0.75rem 1.25rem;
      padding: 0;
      list-style: none;
    }
    svg {
      display: block;
      inline-size: 100%;
      block-size: auto;
    }
    .pressure {
      fill: none;
      stroke: #a3271f;
      stroke-width: 1.6;
    }
    .velocity {
      fill: none;
      stroke: #0b6e99;
      stroke-width: 1.2;
    }
    .zero {
      stroke: #8888;
      stroke-width: 0.6;
    }
    dl {
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(11rem, 1fr));
      gap: 0.25rem 1.5rem;
    }
    dt {
      opacity: 0.75;
    }
    dd {
      margin: 0;
      font-weight: 600;
      font-variant-numeric: tabular-nums;
    }
  `;

  declare artery: Lesion['piece'];
  declare narrowing: number;
  declare age: number;
  declare rate: number;
  declare walked: boolean;
  declare fresh: boolean;
  declare playing: string;
  declare volume: number;
  #context: AudioContext | undefined;
  #stop: (() => void) | undefined;

  constructor() {
    super();
    this.artery = 'right superficial-femoral';
    this.narrowing = 50;
    this.age = 60;
    this.rate = 70;
    this.walked = false;
    this.fresh = false;
    this.playing = '';
    this.volume = 0.5;
  }

  get patient(): PatientInput {
    return {
      age: this.age,
      heartRate: this.walked ? this.rate + 25 : this.rate,
      state: this.walked ? 'walked' : 'rest',
      collaterals: this.fresh ? 'fresh' : 'usual',
      lesions: [{ piece: this.artery, narrowing: this.narrowing }],
    };
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#quiet();
    void this.#context?.close();
    this.#context = undefined;
  }

  #quiet(): void {
    this.#stop?.();
    this.#stop = undefined;
    this.playing = '';
  }

  /** Starts only from a press of a button; a second press stops it. */
  #play(name: string, samples: Float32Array): void {
    const again = this.playing === name;
    this.#quiet();
    if (again) return;
    this.#context ??= new AudioContext();
    const context = this.#context;
    const buffer = context.createBuffer(1, samples.length, SAMPLE_RATE);
    buffer.getChannelData(0).set(samples);
    const source = new AudioBufferSourceNode(context, { buffer });
    const gain = new GainNode(context, { gain: this.volume });
    source.connect(gain).connect(context.destination);
    source.onended = () => {
      if (this.playing === name) this.playing = '';
    };
    source.start();
    this.#stop = () => source.stop();
    this.playing = name;
  }

  #range(
    name: 'narrowing' | 'age' | 'rate' | 'volume',
    text: string,
    min: number,
    max: number,
    unit: string,
    step = 1,
  ) {
    return html`<label
      >${text} <output>${name === 'volume' ? Math.round(100 * this[name]) : this[name]} ${unit}</output>
      <input
        type="range"
        min=${min}
        max=${max}
        step=${step}
        .value=${String(this[name])}
        @input=${(event: Event) => (this[name] = Number((event.target as HTMLInputElement).value))}
      />
    </label>`;
  }

  #wave(trace: Float64Array, low: number, high: number, kind: string) {
    const path = line<number>(
      (_, i) => (i * WIDTH) / (trace.length - 1),
      (value) => HEIGHT - ((value - low) * HEIGHT) / (high - low),
    )([...trace]);
    return svg`<path class=${kind} d=${path ?? ''}></path>`;
  }

  #site(simulation: Simulation, findings: Findings, place: PulsePlace) {
    const name = plain(place);
    const reading = findings.sites.find(
      ({ place: { site, side } }) => site === place.site && side === place.side,
    )!;
    const { grade, doppler, systolic, diastolic, share } = reading;
    const velocity = velocityAt(simulation, place);
    const peak = 1.1 * Math.max(10, ...velocity.map(Math.abs));
    const hears = doppler !== 'absent';
    return html`<li>
      <strong>${name}</strong><br />${grade} · ${systolic.toFixed(0)}/${diastolic.toFixed(0)} mmHg ·
      ${doppler}
      <svg
        viewBox="0 0 ${WIDTH} ${HEIGHT}"
        role="img"
        aria-label="Pressure and velocity over one beat: ${name}"
      >
        <line class="zero" x2=${WIDTH} y1=${HEIGHT / 2} y2=${HEIGHT / 2}></line>
        ${this.#wave(pressureAt(simulation, place), 20, 180, 'pressure')}
        ${this.#wave(velocity, -peak, peak, 'velocity')}
      </svg>
      <button
        type="button"
        aria-label=${`Doppler, ${name}`}
        ?disabled=${!hears}
        aria-pressed=${this.playing === name}
        @click=${() => this.#play(name, dopplerAt(simulation, place))}
      >
        ${this.playing === name ? 'Stop' : 'Doppler'}
      </button>
      ${
        typeof navigator.vibrate === 'function'
          ? html`<button
              type="button"
              aria-label=${`Feel, ${name}`}
              ?disabled=${grade === 'absent'}
              @click=${() => navigator.vibrate(vibrationOf(simulation.inflow.period, share, grade))}
            >
              Feel
            </button>`
          : nothing
      }
    </li>`;
  }

  override render() {
    const simulation = simulate(this.patient);
    const findings = findingsOf(simulation);
    const { posture, walking, vertebral, hands, cuffs, bruits, delays } = findings;
    const loud = LISTENING_PLACES.filter(({ site, side }) => bruits.has(`${side} ${site}`));
    const index = (side: 'right' | 'left'): string => ankleIndex(cuffs, side)?.toFixed(2) ?? 'none';
    return html`<form @submit=${(event: Event) => event.preventDefault()}>
        <label
          >Artery
          <select
            @change=${(event: Event) => (this.artery = (event.target as HTMLSelectElement).value as Lesion['piece'])}
          >
            ${ARTERIES.map(([piece, name]) => html`<option value=${piece} ?selected=${piece === this.artery}>${name}</option>`)}
          </select>
        </label>
        ${this.#range('narrowing', 'Narrowing of the diameter', 0, 100, '%')}
        ${this.#range('age', 'Age', 18, 95, 'years')}
        ${this.#range('rate', 'Heart rate', 45, 130, 'a minute', 5)}
        ${this.#range('volume', 'Volume', 0, 1, '%', 0.05)}
        <label class="row"
          ><input
            type="checkbox"
            .checked=${this.walked}
            @change=${(event: Event) => (this.walked = (event.target as HTMLInputElement).checked)}
          />just walked</label
        >
        <label class="row"
          ><input
            type="checkbox"
            .checked=${this.fresh}
            @change=${(event: Event) => (this.fresh = (event.target as HTMLInputElement).checked)}
          />collaterals fresh, as after an embolus</label
        >
      </form>
      <dl>
        <div>
          <dt>Ankle-brachial pressure index (ABPI), right and left</dt>
          <dd>${index('right')} · ${index('left')}</dd>
        </div>
        <div>
          <dt>Arms, right and left</dt>
          <dd>${cuffs.brachial?.right} · ${cuffs.brachial?.left} mmHg</dd>
        </div>
        <div>
          <dt>Right leg raised</dt>
          <dd>
            ${posture.right.pallorAngle === undefined ? 'stays pink' : `pale at ${posture.right.pallorAngle}°`}
          </dd>
        </div>
        <div>
          <dt>Colour returns, veins fill</dt>
          <dd>${posture.right.colourReturn} s · ${posture.right.venousFilling} s</dd>
        </div>
        <div>
          <dt>Walking, right</dt>
          <dd>
            ${walking.right.walk.replace('-', ' ')} (${(100 * walking.right.share).toFixed(0)} % of the flow)
          </dd>
        </div>
        <div>
          <dt>Left vertebral</dt>
          <dd>${vertebral.left.flow}, ${vertebral.left.mean.toFixed(0)} ml/min</dd>
        </div>
        <div>
          <dt>Femoral behind radial, right</dt>
          <dd>${delays.radioFemoral.right ?? 'not felt'}</dd>
        </div>
        <div>
          <dt>Hand flushes, radial · ulnar let go</dt>
          <dd>${hands.left.radial} s · ${hands.left.ulnar} s (left)</dd>
        </div>
      </dl>
      <p>
        Bruits:
        ${
          loud.length === 0
            ? 'none'
            : loud.map((place) => {
                const name = `bruit ${place.side} ${place.site}`;
                return html`<button
                  type="button"
                  aria-pressed=${this.playing === name}
                  @click=${() => this.#play(name, bruitAtPlace(simulation, place))}
                >
                  ${this.playing === name ? 'Stop' : `${plain(place)}: ${bruits.get(`${place.side} ${place.site}`)}`}
                </button> `;
              })
        }
      </p>
      <p>
        One beat at each site: pressure from 20 to 180 mmHg (red), velocity on a scale of its own (blue; below
        the line it runs back).
      </p>
      <ul class="sites">
        ${SHOWN.map((place) => this.#site(simulation, findings, place))}
      </ul>`;
  }
}

if (!customElements.get('simulated-patient-page'))
  customElements.define('simulated-patient-page', SimulatedPatientPage);
