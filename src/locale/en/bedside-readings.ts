import type { OutletSymptom, ScaleneWay, StopReason } from '../../examination/index.js';
import type {
  ArteryVerdict,
  BedsideNote,
  ColdPhase,
  HandArteries,
  PositionReading,
} from '../../bedside/index.js';
import { bedsideReader, type BedsideRenderings, inWays, type Without } from '../bedside.js';
import type { Renderings } from '../render.js';
import { examination } from './examination.js';
import { decimal, list, sentence } from './phrases.js';

export const symptoms: Record<OutletSymptom, string> = {
  heaviness: 'heaviness',
  tingling: 'tingling',
  pain: 'pain',
  fatigue: 'tiredness',
};
export const ways: Record<ScaleneWay, string> = {
  toward: 'head to the side tested',
  away: 'head turned away',
  traction: 'arm drawn down',
};
export const stops: Record<StopReason, string> = {
  pain: 'pain',
  tingling: 'tingling',
  fatigue: 'tiredness',
  other: 'something else',
};
export const phases: Record<ColdPhase, string> = { white: 'white', blue: 'blue', red: 'red' };
const lost: Record<'lost' | 'reduced', string> = { lost: 'lost', reduced: 'weaker' };

export const secs = (n: number): string => `${decimal(n)} s`;
const after = (seconds: number | undefined): string =>
  seconds === undefined ? '' : ` after ${secs(seconds)}`;
const held = ({ seconds }: { seconds?: number }): string =>
  seconds === undefined ? '' : ` for ${secs(seconds)}`;
const paled = ({ params }: { params: { angle: number; seconds?: number } }): string =>
  `Pale at ${decimal(params.angle)}°${after(params.seconds)}`;

/** What is said where a test gave no result. */
const without: Renderings<Without> = {
  'not-done': ({ params }) => `Not done: ${examination.reasons[params.reason]}.`,
  incomplete: 'Not complete yet.',
};

const named = (of: readonly OutletSymptom[]): string => list(of.map((one) => symptoms[one]));

const watched = ({ params, limit }: { params: { seconds: number }; limit: number }): string =>
  `Watched for ${secs(params.seconds)} only; the limit is ${secs(limit)}.`;

const position: Renderings<PositionReading> = {
  ...without,
  'pulse-and-symptoms': ({ params }) =>
    `Pulse ${lost[params.pulse]}, with ${named(params.symptoms)}: positive.`,
  symptoms: ({ params }) => `${sentence(named(params.symptoms))} brought on: positive.`,
  'pulse-lost': 'Pulse lost without symptoms: common in healthy people.',
  'pulse-reduced': 'Pulse weaker without symptoms: common in healthy people.',
  negative: 'Pulse kept, no symptoms: negative.',
};

type Released = (artery: string, seconds: number | undefined) => string;
const released: Record<ArteryVerdict | 'not-yet', Released> = {
  'not-yet': (artery) => `${artery} not yet let go`,
  blocked: (artery) =>
    `${artery} let go: palm stays white, so the ${artery} artery or the arch may be blocked`,
  incomplete: (artery) => `${artery}: watched too short`,
  patent: (artery, seconds) => `${artery} let go: pink${after(seconds)}`,
  slow: (artery, seconds) => `${artery} let go: pink${after(seconds)}`,
};

function arteries({ params, limit }: { params: HandArteries; limit: number }): string {
  const { radial = 'not-yet', radialSeconds, ulnar = 'not-yet', ulnarSeconds } = params;
  return `${sentence(released[radial]('radial', radialSeconds))}; ${released[ulnar]('ulnar', ulnarSeconds)}. Limit ${secs(limit)}.`;
}

/** What each reading means, in a sentence that names the limit it used. */
const readings: BedsideRenderings = {
  elevation: {
    ...without,
    'keeps-colour': ({ params }) =>
      `Keeps its colour at ${decimal(params.angle)}°${held(params)}: normal by this protocol.`,
    'not-raised-fully': ({ params }) =>
      `Keeps its colour at ${decimal(params.angle)}°; hold it at 60° for 60 s, or raise it to 90°, to call it normal.`,
    'pale-below-limit': (r) => `${paled(r)}: severe, below ${decimal(r.limit)}°.`,
    'pale-in-range': (r) =>
      `${paled(r)}: an ischaemic leg pales between 15° and 30°; below ${decimal(r.limit)}° is severe.`,
    'pale-high': (r) => `${paled(r)}: a normal leg keeps its colour; below ${decimal(r.limit)}° is severe.`,
  },
  'colour-return': {
    ...without,
    usual: ({ params }) => `Pink after ${secs(params.seconds)}: usual is about 10 s.`,
    'slower-than-usual': ({ params, limit }) =>
      `Pink after ${secs(params.seconds)}: slower than usual, within ${secs(limit)}.`,
    prolonged: ({ params, limit }) => `Pink after ${secs(params.seconds)}: prolonged, limit ${secs(limit)}.`,
    severe: ({ params, limit }) => `Pink after ${secs(params.seconds)}: severe, beyond ${secs(limit)}.`,
    'not-returned': ({ params, limit }) =>
      `Still pale after ${secs(params.seconds)}: prolonged, limit ${secs(limit)}.`,
    'watched-too-short': watched,
  },
  'dependent-rubor': {
    ...without,
    rubor: ({ params }) => `Dusky red${after(params.seconds)}: goes with arterial disease.`,
    'no-rubor': ({ params }) => `No redness in ${secs(params.seconds)}.`,
    'hung-too-short': ({ params: { seconds }, limit }) =>
      `No redness${seconds === undefined ? ' so far' : ` in ${secs(seconds)}`}; let it hang for ${secs(limit)}.`,
  },
  'venous-filling': {
    ...without,
    usual: ({ params }) => `Vein full after ${secs(params.seconds)}: usual is about 15 s.`,
    'slower-than-usual': ({ params, limit }) =>
      `Vein full after ${secs(params.seconds)}: slower than usual, within ${secs(limit)}.`,
    prolonged: ({ params, limit }) =>
      `Vein full after ${secs(params.seconds)}: prolonged, beyond ${secs(limit)}.`,
    severe: ({ params, limit }) => `Vein full after ${secs(params.seconds)}: severe, beyond ${secs(limit)}.`,
    'not-filled': ({ params, limit }) =>
      `Vein still empty after ${secs(params.seconds)}: prolonged, beyond ${secs(limit)}.`,
    'watched-too-short': watched,
    unreliable: ({ params }) =>
      `Vein full after ${secs(params.seconds)}: says nothing with incompetent veins.`,
  },
  'hand-arch': {
    ...without,
    patent: arteries,
    slow: (reading) => `Slow. ${arteries(reading)}`,
    blocked: arteries,
    'one-artery': arteries,
    'tracing-lost': ({ params }) =>
      `Tracing lost for two minutes (class D) while the ${params.pressed} artery is pressed: the other may not feed the hand alone.`,
    'tracing-kept': 'Tracing kept or back within two minutes: the other artery feeds the hand.',
  },
  'cold-provocation': {
    ...without,
    'three-phases': 'White, blue and red in turn: a full attack.',
    'two-phases': 'White and blue: enough for an attack.',
    'single-phase': ({ params }) =>
      `Only ${list(params.phases.map((one) => phases[one]))}: white and blue are the least that counts.`,
    'slow-rewarming': ({ params, limit }) =>
      `Warm again after ${decimal(params.rewarm)} min: slow, beyond ${decimal(limit)} min.`,
    'no-change': 'No change of colour.',
    'rewarming-only': ({ params }) => `Warm again after ${decimal(params.rewarm)} min.`,
  },
  scalene: inWays(
    position,
    (taken, found) =>
      `${sentence(list(taken.map((way) => ways[way])))}: ${found.charAt(0).toLowerCase()}${found.slice(1)}`,
  ),
  hyperabduction: position,
  costoclavicular: position,
  'arm-stress': {
    ...without,
    'stopped-early': ({ params, limit }) =>
      `Stopped at ${secs(params.seconds)} of ${decimal(limit)} for ${stops[params.stopped]}: positive.`,
    'symptoms-early': ({ params, limit }) =>
      `Stopped at ${secs(params.seconds)} of ${decimal(limit)} with ${named(params.symptoms)}: positive.`,
    symptoms: ({ params }) => `Completed, with ${named(params.symptoms)}: positive.`,
    'fatigue-only': ({ params }) =>
      `Stopped at ${secs(params.seconds)} by fatigue alone: indeterminate; the test was not completed.`,
    'too-short': ({ params, limit }) =>
      `Stopped at ${secs(params.seconds)} of ${decimal(limit)} without a symptom: says nothing.`,
    completed: ({ params }) => `${secs(params.seconds)} completed without trouble: negative.`,
  },
};

export const notes: Record<BedsideNote, string> = {
  'pallor-within-seconds': 'Pallor within seconds goes with severe disease.',
  'pallor-minutes': 'Pallor after minutes goes with mild disease.',
  'incompetent-veins': 'The veins are incompetent: an early filling says nothing.',
  'rewarming-slow': 'Rewarming is slow.',
  'rewarming-between': 'Rewarming is slower than usual.',
  'rewarming-usual': 'Rewarming takes the usual time.',
  'rewarming-no-limit': 'The rewarming limits belong to ice water for 20 s: no limit for this protocol.',
  'absent-before': 'The pulse was absent before: it cannot be lost.',
  'symptoms-not-asked': 'Symptoms not asked for.',
  'pulse-not-compared': 'Pulse not compared.',
};

/** What a result means; the words of the reading come first, then what weakens or completes it. */
export const readingWords = bedsideReader(readings);
