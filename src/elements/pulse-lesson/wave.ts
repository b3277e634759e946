import type { ReactiveControllerHost } from 'lit';
import { cropOf } from '../../drawing/index.js';
import type { Bruit } from '../../examination/index.js';
import {
  findingsOf,
  type Patient,
  type PatientInput,
  patientOf,
  type PulseWave,
  pulseWave,
  simulate,
} from '../../flow/index.js';
import type { Lesson } from '../../lesson/index.js';
import type { Listening } from './ear.js';
import { LINE, paintStill, paintWave, waveLines } from './wave-lines.js';

/** How many times slower than the heart the wave is shown: at its own speed it reaches a foot within a blink. */
export const SLOWNESS = [1, 4, 10] as const;
export type Slowness = (typeof SLOWNESS)[number];
/** Beats a minute that the teacher may set. */
export const RATE = { least: 40, most: 140, step: 5 } as const;
/** Lines drawn on the canvas of every unit of the figure at most: sharper is not seen from a seat. */
const MOST_PIXELS = 1.5;

/** A sound person as old as the patient: what is shown before the lesson's answer is. */
const soundOf = (patient: Patient | undefined): Patient => patientOf({ age: patient?.age ?? 40 });

/** The pulse wave on a slide: which is shown, how fast, and the painting of it while it moves. */
export class Wave {
  slowness: Slowness = 10;
  /** Set by the teacher; without it the patient's own. */
  rate: number | undefined;
  /** With what a site is heard. */
  by: Listening = 'doppler';
  #wanted = true;
  #kept: { readonly key: string; readonly wave: PulseWave; readonly lines: Float32Array } | undefined;
  #bruits: { readonly key: string; readonly at: ReadonlyMap<string, Bruit> } | undefined;
  #canvas: HTMLCanvasElement | undefined;
  #frame = 0;
  /** Time within the rhythm, s, and of the last frame, ms. */
  #time = 0;
  #last: number | undefined;

  constructor(private readonly host: ReactiveControllerHost) {}

  /** Who is shown: the lesson's patient once the answer is, till then a sound person. */
  whose(lesson: Lesson, revealed: readonly string[]): 'patient' | 'sound' {
    return lesson.patient && revealed.includes('conclusion') ? 'patient' : 'sound';
  }

  patientFor(lesson: Lesson, revealed: readonly string[]): Patient {
    const patient = this.whose(lesson, revealed) === 'patient' ? lesson.patient! : soundOf(lesson.patient);
    return this.rate === undefined ? patient : { ...patient, heartRate: this.rate };
  }

  waveFor(lesson: Lesson, revealed: readonly string[]): PulseWave {
    return this.#of(this.patientFor(lesson, revealed)).wave;
  }

  /** The bruits of whoever is shown, by place; a place without one is missing. */
  bruitsFor(lesson: Lesson, revealed: readonly string[]): ReadonlyMap<string, Bruit> {
    const patient = this.patientFor(lesson, revealed);
    const key = JSON.stringify(patient);
    if (this.#bruits?.key !== key) this.#bruits = { key, at: findingsOf(simulate(patient)).bruits };
    return this.#bruits.at;
  }

  #of(patient: PatientInput): { readonly wave: PulseWave; readonly lines: Float32Array } {
    const key = JSON.stringify(patient);
    if (this.#kept?.key !== key) {
      const wave = pulseWave(patient);
      this.#kept = { key, wave, lines: waveLines(wave) };
    }
    return this.#kept;
  }

  /** Whether the person asked for less motion: then the wave only stands. */
  get still(): boolean {
    return matchMedia('(prefers-reduced-motion: reduce)').matches;
  }

  get playing(): boolean {
    return this.#wanted && !this.still;
  }

  toggle(): void {
    this.#wanted = !this.#wanted;
    this.host.requestUpdate();
  }

  set(change: Partial<Pick<Wave, 'slowness' | 'rate' | 'by'>>): void {
    Object.assign(this, change);
    this.host.requestUpdate();
  }

  /**
   * Paints on the canvas of the slide, again and again while the wave moves and is seen; once where it stands.
   * @param canvas missing where no wave is on the screen
   */
  show(canvas: HTMLCanvasElement | null): void {
    this.#canvas = canvas ?? undefined;
    if (!canvas) return this.stop();
    if (this.playing && document.visibilityState === 'visible') {
      if (!this.#frame) this.#frame = requestAnimationFrame(this.#step);
    } else {
      this.stop();
      this.#paint();
    }
  }

  stop(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#last = undefined;
  }

  readonly #step = (now: number): void => {
    const { wave } = this.#kept ?? {};
    if (wave) this.#time = (this.#time + (now - (this.#last ?? now)) / 1000 / this.slowness) % wave.period;
    this.#last = now;
    this.#paint();
    this.#frame = requestAnimationFrame(this.#step);
  };

  #paint(): void {
    const canvas = this.#canvas;
    const context = canvas?.getContext('2d');
    if (!canvas || !context || !this.#kept) return;
    const { x, y, width, height } = cropOf('whole');
    const scale = Math.min(MOST_PIXELS, (canvas.clientWidth * devicePixelRatio) / width);
    const [wide, tall] = [Math.round(width * scale), Math.round(height * scale)];
    if (canvas.width !== wide || canvas.height !== tall) [canvas.width, canvas.height] = [wide, tall];
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, wide, tall);
    context.setTransform(scale, 0, 0, scale, -x * scale, -y * scale);
    context.lineCap = 'round';
    context.strokeStyle = getComputedStyle(canvas).color;
    const { wave, lines } = this.#kept;
    if (this.playing) paintWave(context, wave, lines, this.#time);
    else paintStill(context, lines);
    canvas.dataset.lines = String(lines.length / LINE.size);
  }
}
