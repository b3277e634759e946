import type { Accuracy, FalsePositives, Limits, RatePeople } from '../../bedside/index.js';
import type { BedsideTestId } from '../../examination/index.js';
import type { MeasuredStatement, RateRange } from '../../statements/index.js';
import { bedsideLine } from '../bedside.js';
import { render, type Renderings } from '../render.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { notes, phases, readingWords, secs, stops, symptoms, ways } from './bedside-readings.js';
import { examination } from './examination.js';
import { decimal, list, sentence } from './phrases.js';

const outcomes: Record<FalsePositives['outcome'], string> = {
  pulse: 'lose or change the pulse',
  pain: 'feel pain',
  tingling: 'feel tingling',
  positive: 'test positive',
  stopped: 'stop early',
  'pulse-any-test': 'lose the pulse in one or other position',
};

const people: Record<RatePeople, string> = {
  healthy: 'healthy people',
  'transradial-access': 'patients before transradial access',
  'carpal-tunnel': 'people with carpal tunnel syndrome',
};
const bounds: Record<NonNullable<FalsePositives['bound']>, string> = {
  'highest-reported': 'highest reported figure',
  'upper-95': 'upper 95% confidence limit',
};

/** What parts a figure from a plain rate: the condition of the test, a bound, the number of people. */
function provided({ condition: { over, posture } = {}, bound, count }: Partial<FalsePositives>): string {
  const notes = [
    ...(over === undefined ? [] : [`over ${over} s`]),
    ...(posture ? ['hand held straight'] : []),
    ...(bound ? [bounds[bound]] : []),
    ...(count === undefined ? [] : [`n = ${count}`]),
  ];
  return notes.length ? ` (${notes.join(', ')})` : '';
}
const upTo = (bound: FalsePositives['bound']): string => (bound ? 'at most ' : '');

const rate = (figure: FalsePositives): string =>
  `${sentence(upTo(figure.bound))}${decimal(figure.percent)}% of ${people[figure.people]} ${outcomes[figure.outcome]}${provided(figure)}`;

/** One rate; where sources differ, from the least to the most. */
const range = ({ outcome, least, most, bound, condition }: RateRange): string =>
  `${upTo(bound)}${least === most ? '' : `${decimal(least)} to `}${decimal(most)}% ${outcomes[outcome]}${provided({ bound, condition })}`;

const targets: Record<Accuracy['of'], readonly [found: string, cleared: string]> = {
  'arterial-disease': ['people with arterial disease', 'those without it'],
  'inadequate-collateral': [
    'hands with inadequate collateral flow by plethysmography',
    'hands with adequate flow',
  ],
};

const percent = (fraction: number): string => `${Math.round(fraction * 100)}%`;

const units: Record<Limits['unit'], string> = { s: 's', min: 'min', deg: '°' };

const measured: Renderings<MeasuredStatement> = {
  pale: 'pale',
  'not-pale': 'not pale',
  red: 'dependent rubor',
  'not-red': 'no redness',
  'incompetent-veins': 'incompetent veins',
  'no-change': 'no change of colour',
  angle: ({ angle }) => `at ${decimal(angle)}°`,
  time: ({ seconds }) => secs(seconds),
  held: ({ seconds }) => `held ${secs(seconds)}`,
  'arms-up': ({ seconds }) => `arms up ${secs(seconds)}`,
  immersed: ({ seconds }) => `immersed ${secs(seconds)}`,
  pink: ({ seconds }) => `pink after ${secs(seconds)}`,
  'still-pale': ({ seconds }) => `still pale after ${secs(seconds)}`,
  filled: ({ seconds }) => `full after ${secs(seconds)}`,
  'still-empty': ({ seconds }) => `still empty after ${secs(seconds)}`,
  'hand-method': ({ method }) => `${method} test`,
  'released-pink': ({ artery, seconds }) => `${artery} released: pink after ${secs(seconds)}`,
  'released-white': ({ artery, seconds }) => `${artery} released: no palmar flush for ${secs(seconds)}`,
  tracing: ({ pressed, barbeau }) => `plethysmography, ${pressed} pressed: class ${barbeau}`,
  water: ({ celsius }) => `water ${decimal(celsius)} °C`,
  phase: ({ phase, seconds }) => `${phases[phase]} after ${secs(seconds)}`,
  rewarmed: ({ minutes }) => `warm again after ${decimal(minutes)} min`,
  'pulse-before': ({ grade }) => `pulse ${examination.grades[grade]} before`,
  'pulse-during': ({ grade }) => `${examination.grades[grade]} during`,
  symptoms: ({ symptoms: felt }) => felt.map((one) => symptoms[one]).join(', '),
  'symptom-at': ({ symptom, seconds }) => `${symptoms[symptom]} at ${secs(seconds)}`,
  stopped: ({ by }) => `stopped by ${stops[by]}`,
  'no-symptoms': 'no symptoms',
  'nothing-felt': 'nothing felt',
  way: ({ way, found }) => `${ways[way]}: ${phrases(found).join(', ')}`,
};
const phrases = (found: readonly MeasuredStatement[]): string[] => found.map((one) => render(measured, one));

export const bedside = {
  title: 'Bedside tests',
  how: bedsideHow,
  named: (id: BedsideTestId, eponym: string | undefined) =>
    eponym ? `${bedsideHow[id].name} (${eponym})` : bedsideHow[id].name,
  sides: 'Side',
  steps: 'How it is done',
  notDone: 'Not done, and why',
  done: 'Done after all',
  note: 'Note',
  read: readingWords,
  notes,
  limit: 'Limit used',
  limitOption: (value: number, unit: Limits['unit']) => `${value}${unit === 'deg' ? '' : ' '}${units[unit]}`,
  units,
  rates: 'Published rates',
  /** The published rates in some people in one sentence; where sources differ, from the least to the most. */
  ratesInShort: (ranges: readonly RateRange[]) =>
    `Of ${people[ranges[0]?.people ?? 'healthy']} ${list(ranges.map(range))}.`,
  rate,
  accuracy: ({ of, sensitivity, specificity, condition }: Accuracy) =>
    `Sensitivity ${percent(sensitivity)} (${targets[of][0]}), specificity ${percent(specificity)} (${targets[of][1]})${provided({ condition })}.`,
  ways,
  symptoms,
  stops,
  clear: 'Clear this test',
  correct: 'Correct by hand',
  correctSide: (what: string, side: string) => `Correct ${what}, ${side}`,
  again: 'Again',
  start: 'Start',
  stop: 'Stop',
  lap: 'Lap',
  notDoneWhy: 'Why',
  wasDone: 'Done',
  reset: 'Reset',
  seconds: 'seconds',
  keys: 'Keeps time while the screen is off.',
  otherSide: (side: string, said: string) => `${sentence(side)}: ${said}`,
  usualLimit: (value: number, unit: Limits['unit']) =>
    `Usual, ${value}${unit === 'deg' ? '' : ' '}${units[unit]}`,
  timer: 'Stopwatch',
  laps: 'Laps',
  time: 'Time in seconds',
  refusedTime: (typed: string, highest: number, unit: string) =>
    `“${typed}” was not taken. Expected a number from 0 to ${highest} ${unit}.`,
  elevation: {
    figure: (side: string, angle: number) => `${sentence(side)} leg in profile, raised to ${angle} degrees`,
    angle: 'Angle',
    handle: (side: string) => `Angle of the ${side} leg`,
    degrees: (angle: number) => `${angle} degrees`,
    raise: 'Raise by 5 degrees',
    lower: 'Lower by 5 degrees',
    drag: 'Drag the leg, or use the arrow keys',
    pale: 'Turned pale here',
    paleAgain: 'Mark pallor again',
    kept: 'Kept its colour',
    paleMark: 'Pale',
    raised: 'raised',
    start: 'Leg is up: start',
    sensor: 'Set by the phone on the shin',
    sensorOn: 'Phone sets the angle; lay it along the shin',
    sensorOff: 'Stop using the phone',
    sensorRefused: 'The phone’s sensor may not be used here. Set the angle by hand.',
    sensorMissing: 'This device gives no angle. Set it by hand.',
    range: 'An ischaemic leg pales in the thick part of the arc.',
  },
  colourReturn: {
    start: 'Foot is down: start',
    stop: 'Pink again',
    never: 'Still pale',
    label: 'since lowering',
  },
  rubor: { start: 'Feet hang: start', red: 'Dusky red', none: 'No redness' },
  venous: {
    start: 'Foot is down: start',
    stop: 'Vein is full',
    never: 'Still empty',
    incompetent: 'Incompetent veins',
  },
  hand: {
    method: 'Form of the test',
    methods: { modified: 'Modified', original: 'Original' },
    fist: (seconds: number) => `Fist for ${seconds} s, then open.`,
    released: { radial: 'Radial artery released', ulnar: 'Ulnar artery released' },
    figure: (side: string, name: string) => `${sentence(side)} palm, ${name} artery released`,
    start: 'Released: start',
    stop: 'Colour is back',
    never: 'Stays white',
    within: (limit: number) => `Palm pink within ${limit} s`,
    beyond: (limit: number) => `Beyond ${limit} s`,
    stillPale: 'still pale',
    white: 'Palm stays white',
    tracing: 'Plethysmography (Barbeau)',
    barbeau: 'Radial pressed',
    barbeauReverse: 'Ulnar pressed',
    classes: {
      A: 'A, not damped',
      B: 'B, damped',
      C: 'C, lost, back within 2 min',
      D: 'D, lost for 2 min',
    },
  },
  cold: {
    start: 'Out of the water: start',
    warm: 'Warm again',
    since: 'since the hand came out of the water',
    usual: (celsius: number, seconds: number) => `Usual: ${celsius} °C for ${seconds} s.`,
    water: 'Water',
    immersed: 'Time in the water',
    phases: { white: 'White', blue: 'Blue', red: 'Red' },
    noChange: 'No change of colour',
    rewarm: 'Warm again after',
  },
  position: {
    before: 'Pulse before',
    during: 'Pulse in position',
    symptoms: 'Symptoms',
    none: 'None',
    hold: (seconds: number) => `Hold for ${seconds} s`,
    start: 'In position: start',
  },
  stress: {
    start: 'Arms up: start',
    stop: 'Stop here',
    left: (text: string, of: string) => `${text} left of ${of}`,
    leftOf: (of: string) => `left of ${of}`,
    ready: 'Ready',
    said: 'Yes',
    up: 'Arm stayed up',
    beat: { open: 'Open', close: 'Close' },
    pace: (seconds: number) => `one cycle every ${seconds} s`,
    soundOff: 'Sound off',
    soundOn: 'Sound on',
    felt: 'Felt so far',
    feltAt: (symptom: string, side: string) => `${sentence(symptom)}, ${side}`,
    mark: '+',
    nothing: 'Nothing felt',
    why: 'Stopped because of',
    over: 'Three minutes are over.',
  },
  /** One side of one test, with what it means. */
  line: bedsideLine({
    subject: (test, side) => `${bedsideHow[test].name}, ${anatomy.sides[side]}`,
    phrases,
    note: (note) => `note: ${note}`,
    read: readingWords,
  }),
};
export type BedsideWords = typeof bedside;
