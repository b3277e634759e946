import type { ReactiveControllerHost } from 'lit';
import { isListeningSite, isPulseSite, type Place, placeKey } from '../../anatomy/index.js';
import type { LessonAct } from '../../lesson/index.js';
import { targetsOf } from './site-picture.js';
import {
  bruitAtPlace,
  dopplerAt,
  type PatientInput,
  SAMPLE_RATE,
  simulate,
  type Simulation,
} from '../../flow/index.js';

/** With what one listens. */
export type Listening = 'doppler' | 'bruit';

/** What is being heard. */
export interface Heard {
  readonly place: Place;
  readonly by: Listening;
}

/** What a step lets one hear after what sounds now: one side after the other, then nothing. */
export function nextHeard(act: LessonAct | undefined, now: Heard | undefined): Heard | undefined {
  const by = act?.kind === 'listen' ? 'bruit' : 'doppler';
  const places = targetsOf(act);
  const at = now ? places.findIndex((place) => placeKey(place) === placeKey(now.place)) : -1;
  const place = places[at + 1];
  return place && { place, by };
}

const SECONDS = 5;
const VOLUME = 0.5;

/** The sounds of a simulated patient: one at a time, and only when a person asks for it. */
export class Ear {
  #context: AudioContext | undefined;
  #source: AudioBufferSourceNode | undefined;
  #known: { readonly key: string; readonly simulation: Simulation } | undefined;
  now: Heard | undefined;

  constructor(private readonly host: ReactiveControllerHost) {}

  static can({ site }: Place, by: Listening): boolean {
    return by === 'doppler' ? isPulseSite(site) : isListeningSite(site);
  }

  /** Plays a place; pressed again while it sounds, falls silent. */
  hear(patient: PatientInput, place: Place, by: Listening): void {
    const again = this.now?.by === by && placeKey(this.now.place) === placeKey(place);
    this.quiet();
    if (again || !Ear.can(place, by)) return;
    const key = JSON.stringify(patient);
    if (this.#known?.key !== key) this.#known = { key, simulation: simulate(patient) };
    const sound = by === 'doppler' ? dopplerAt : bruitAtPlace;
    const samples = sound(this.#known.simulation, place, { seconds: SECONDS });
    this.#context ??= new AudioContext();
    const context = this.#context;
    void context.resume();
    const buffer = context.createBuffer(1, samples.length, SAMPLE_RATE);
    buffer.getChannelData(0).set(samples);
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(new GainNode(context, { gain: VOLUME })).connect(context.destination);
    source.onended = () => {
      if (this.#source === source) this.quiet();
    };
    source.start();
    this.#source = source;
    this.now = { place, by };
    this.host.requestUpdate();
  }

  quiet(): void {
    if (!this.#source) return;
    this.#source.onended = null;
    this.#source.stop();
    this.#source = undefined;
    this.now = undefined;
    this.host.requestUpdate();
  }

  close(): void {
    this.quiet();
    void this.#context?.close();
    this.#context = undefined;
  }
}
