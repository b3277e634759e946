import type {
  BedsideTestId,
  OutletSymptom,
  Reason,
  ScaleneWay,
  StopReason,
} from '../../examination/index.js';
import type { BedsideCodes, BedsideNote, BedsideReading } from '../../bedside/index.js';
import { examination } from './examination.js';
import { list, sentence } from './phrases.js';

type P = Readonly<Record<string, string | number | boolean>>;
type Say = (p: P, limit: number | undefined) => string;

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
const phaseNames: Record<string, string> = { white: 'white', blue: 'blue', red: 'red' };

function spoken(
  table: Readonly<Record<string, string>>,
  words: string | number | boolean | undefined,
): string {
  return list(
    String(words ?? '')
      .split(' ')
      .filter(Boolean)
      .map((w) => table[w] ?? w),
  );
}

export const secs = (n: number | string | boolean | undefined): string => `${String(n)} s`;
const after = (p: P): string => (p['seconds'] === undefined ? '' : ` after ${secs(p['seconds'])}`);

const watched: Record<'watched-too-short', Say> = {
  'watched-too-short': (p, limit) => `Watched for ${secs(p['seconds'])} only; the limit is ${secs(limit)}.`,
};

const position: Record<BedsideCodes['hyperabduction'], Say> = {
  'pulse-and-symptoms': (p) =>
    `Pulse ${p['pulse'] === 'lost' ? 'lost' : 'weaker'}, with ${spoken(symptoms, p['symptoms'])}: positive.`,
  symptoms: (p) => `${sentence(spoken(symptoms, p['symptoms']))} brought on: positive.`,
  'pulse-lost': () => 'Pulse lost without symptoms: common in healthy people.',
  'pulse-reduced': () => 'Pulse weaker without symptoms: common in healthy people.',
  negative: () => 'Pulse kept, no symptoms: negative.',
};

const artery = (name: string, verdict: unknown, seconds: unknown): string => {
  if (verdict === undefined) return `${name} not yet let go`;
  if (verdict === 'blocked')
    return `${name} let go: palm stays white, so the ${name} artery or the arch may be blocked`;
  const time = seconds === undefined ? '' : ` after ${secs(seconds as number)}`;
  return verdict === 'incomplete' ? `${name}: watched too short` : `${name} let go: pink${time}`;
};
const arteries: Say = (p, limit) =>
  `${sentence(artery('radial', p['radial'], p['radialSeconds']))}; ${artery('ulnar', p['ulnar'], p['ulnarSeconds'])}. Limit ${secs(limit)}.`;

/** What each reading means, in a sentence that names the limit it used. */
const readings: { readonly [Id in BedsideTestId]: Readonly<Record<BedsideCodes[Id], Say>> } = {
  elevation: {
    'keeps-colour': () => 'Keeps its colour at 90°: normal.',
    'not-raised-fully': (p) => `Keeps its colour at ${p['angle']}°; raise it to 90° to call it normal.`,
    'pale-below-limit': (p, limit) => `Pale at ${p['angle']}°${after(p)}: severe, below ${limit}°.`,
    'pale-in-range': (p, limit) =>
      `Pale at ${p['angle']}°${after(p)}: an ischaemic leg pales between 15° and 30°; below ${limit}° is severe.`,
    'pale-high': (p, limit) =>
      `Pale at ${p['angle']}°${after(p)}: a normal leg keeps its colour; below ${limit}° is severe.`,
  },
  'colour-return': {
    usual: (p) => `Pink after ${secs(p['seconds'])}: usual is about 10 s.`,
    'slower-than-usual': (p, limit) =>
      `Pink after ${secs(p['seconds'])}: slower than usual, within ${secs(limit)}.`,
    prolonged: (p, limit) => `Pink after ${secs(p['seconds'])}: prolonged, limit ${secs(limit)}.`,
    severe: (p, limit) => `Pink after ${secs(p['seconds'])}: severe, beyond ${secs(limit)}.`,
    'not-returned': (p, limit) => `Still pale after ${secs(p['seconds'])}: prolonged, limit ${secs(limit)}.`,
    ...watched,
  },
  'dependent-rubor': {
    rubor: (p) => `Dusky red${after(p)}: goes with arterial disease.`,
    'no-rubor': (p) => `No redness in ${secs(p['seconds'])}.`,
    'hung-too-short': (p, limit) =>
      `No redness${p['seconds'] === undefined ? ' so far' : ` in ${secs(p['seconds'])}`}; let it hang for ${secs(limit)}.`,
  },
  'venous-filling': {
    usual: (p) => `Vein full after ${secs(p['seconds'])}: usual is about 15 s.`,
    'slower-than-usual': (p, limit) =>
      `Vein full after ${secs(p['seconds'])}: slower than usual, within ${secs(limit)}.`,
    prolonged: (p, limit) => `Vein full after ${secs(p['seconds'])}: prolonged, beyond ${secs(limit)}.`,
    severe: (p, limit) => `Vein full after ${secs(p['seconds'])}: severe, beyond ${secs(limit)}.`,
    'not-filled': (p, limit) =>
      `Vein still empty after ${secs(p['seconds'])}: prolonged, beyond ${secs(limit)}.`,
    ...watched,
    unreliable: (p) => `Vein full after ${secs(p['seconds'])}: says nothing with incompetent veins.`,
  },
  'hand-arch': {
    patent: arteries,
    slow: (p, limit) => `Slow. ${arteries(p, limit)}`,
    blocked: arteries,
    'tracing-lost': (p) =>
      `Tracing lost for two minutes (class D) while the ${p['barbeau'] === 'D' ? 'radial' : 'ulnar'} artery is pressed: the other may not feed the hand alone.`,
    'tracing-kept': () => 'Tracing kept or back within two minutes: the other artery feeds the hand.',
    'one-artery': (p, limit) => arteries(p, limit),
  },
  'cold-provocation': {
    'three-phases': () => 'White, blue and red in turn: a full attack.',
    'two-phases': () => 'White and blue: enough for an attack.',
    'single-phase': (p) =>
      `Only ${spoken(phaseNames, p['phases'])}: white and blue are the least that counts.`,
    'slow-rewarming': (p, limit) => `Warm again after ${p['rewarm']} min: slow, beyond ${limit} min.`,
    'no-change': () => 'No change of colour.',
    'rewarming-only': (p) => `Warm again after ${p['rewarm']} min.`,
  },
  scalene: Object.fromEntries(
    Object.entries(position).map(([code, say]) => [
      code,
      (p: P, limit: number | undefined) =>
        `${sentence(spoken(ways, p['ways']))}: ${say(p, limit).replace(/^./, (c) => c.toLowerCase())}`,
    ]),
  ) as typeof position,
  hyperabduction: position,
  costoclavicular: position,
  'arm-stress': {
    'stopped-early': (p, limit) =>
      `Stopped at ${secs(p['seconds'])} of ${limit} for ${spoken(stops, p['stopped'])}: positive.`,
    'symptoms-early': (p, limit) =>
      `Stopped at ${secs(p['seconds'])} of ${limit} with ${spoken(symptoms, p['symptoms'])}: positive.`,
    symptoms: (p) => `Completed, with ${spoken(symptoms, p['symptoms'] ?? p['stopped'])}: positive.`,
    'fatigue-only': (p) => `Stopped at ${secs(p['seconds'])} by tiredness alone: normal.`,
    'too-short': (p, limit) =>
      `Stopped at ${secs(p['seconds'])} of ${limit} without a symptom: says nothing.`,
    completed: (p) => `${secs(p['seconds'])} completed without trouble: negative.`,
  },
};

export const notes: Record<BedsideNote, string> = {
  'pallor-within-seconds': 'Pallor within seconds goes with severe disease.',
  'pallor-minutes': 'Pallor after minutes goes with mild disease.',
  'incompetent-veins': 'The veins are incompetent: an early filling says nothing.',
  'rewarming-slow': 'Rewarming is slow.',
  'rewarming-between': 'Rewarming is slower than usual.',
  'rewarming-usual': 'Rewarming takes the usual time.',
  'absent-before': 'The pulse was absent before: it cannot be lost.',
  'symptoms-not-asked': 'Symptoms not asked for.',
  'pulse-not-compared': 'Pulse not compared.',
};

/** What a result means; the words of the reading come first, then what weakens or completes it. */
export function readingWords<Id extends BedsideTestId>(
  id: Id,
  reading: BedsideReading<BedsideCodes[Id]>,
): string {
  const { code, params = {}, limit } = reading;
  if (code === 'not-done') return `Not done: ${examination.reasons[params['reason'] as Reason]}.`;
  if (code === 'incomplete') return 'Not complete yet.';
  return readings[id][code](params, limit);
}
