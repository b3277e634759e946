import type {
  Bedside,
  BedsideResult,
  BedsideTestId,
  OutletPosition,
  OutletSymptom,
} from '../../examination/index.js';
import { type Accuracy, type FalsePositives, type Limits, readBedside } from '../../bedside/index.js';
import { anatomy } from './anatomy.js';
import { bedsideHow } from './bedside-how.js';
import { notes, readingWords, secs, stops, symptoms, ways } from './bedside-readings.js';
import { examination } from './examination.js';
import { list, sentence } from './phrases.js';

const outcomes: Record<FalsePositives['outcome'], string> = {
  pulse: 'lose or change the pulse',
  pain: 'feel pain',
  tingling: 'feel tingling',
  positive: 'test positive',
  stopped: 'stop early',
  'pulse-any-test': 'lose the pulse in one or other position',
};

function rate({ outcome, percent, bound, people }: FalsePositives): string {
  const how = bound === undefined ? '' : 'up to ';
  const who = people === 'healthy' ? 'healthy people' : 'people with carpal tunnel syndrome';
  return `${how}${percent}% of ${who} ${outcomes[outcome]}`;
}

function ratesInShort(rates: readonly FalsePositives[]): string {
  const by = new Map<FalsePositives['outcome'], number[]>();
  for (const { outcome, percent } of rates) by.set(outcome, [...(by.get(outcome) ?? []), percent]);
  const parts = [...by].map(([outcome, all]) => {
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return `${least === most ? '' : `${least} to `}${most}% ${outcomes[outcome]}`;
  });
  return `Of healthy people ${list(parts)}.`;
}

const percent = (fraction: number): string => `${Math.round(fraction * 100)}%`;

const units: Record<Limits['unit'], string> = { s: 's', min: 'min', deg: '°' };

function seen(p: OutletPosition): string[] {
  return [
    ...(p.before ? [`pulse ${examination.grades[p.before]} before`] : []),
    ...(p.during ? [`${examination.grades[p.during]} during`] : []),
    ...(p.symptoms
      ? [p.symptoms.length ? p.symptoms.map((s) => symptoms[s]).join(', ') : 'no symptoms']
      : []),
    ...(p.seconds === undefined ? [] : [`held ${secs(p.seconds)}`]),
  ];
}

const opt = (value: number | undefined, say: (n: number) => string): string[] =>
  value === undefined ? [] : [say(value)];

/** What was measured in each test, in phrases. */
const measured: { readonly [Id in BedsideTestId]: (r: BedsideResult<Id>) => string[] } = {
  elevation: (r) => [
    ...(r.pallor === undefined ? [] : [r.pallor ? 'pale' : 'not pale']),
    ...opt(r.angle, (n) => `at ${n}°`),
    ...opt(r.seconds, (n) => `${n} s`),
  ],
  'colour-return': (r) =>
    opt(r.seconds, (n) => (r.returned === false ? `still pale after ${n} s` : `pink after ${n} s`)),
  'dependent-rubor': (r) => [
    ...(r.rubor === undefined ? [] : [r.rubor ? 'dusky red' : 'no redness']),
    ...opt(r.seconds, (n) => `${n} s`),
  ],
  'venous-filling': (r) => [
    ...opt(r.seconds, (n) => (r.filled === false ? `still empty after ${n} s` : `full after ${n} s`)),
    ...(r.incompetentVeins ? ['incompetent veins'] : []),
  ],
  'hand-arch': (r) => [
    ...(r.method ? [`${r.method} test`] : []),
    ...(['radial', 'ulnar'] as const).flatMap((a) =>
      opt(
        r[a]?.seconds,
        (n) => `${a} let go: ${r[a]?.returned === false ? 'white for' : 'pink after'} ${n} s`,
      ),
    ),
    ...(r.barbeau ? [`plethysmography, radial pressed: class ${r.barbeau}`] : []),
    ...(r.barbeauReverse ? [`plethysmography, ulnar pressed: class ${r.barbeauReverse}`] : []),
  ],
  'cold-provocation': (r) => [
    ...opt(r.water, (n) => `water ${n} °C`),
    ...opt(r.immersed, (n) => `immersed ${n} s`),
    ...opt(r.white, (n) => `white after ${n} s`),
    ...opt(r.blue, (n) => `blue after ${n} s`),
    ...opt(r.red, (n) => `red after ${n} s`),
    ...(r.noChange ? ['no change of colour'] : []),
    ...opt(r.rewarm, (n) => `warm again after ${n} min`),
  ],
  scalene: (r) =>
    (['toward', 'away', 'traction'] as const).flatMap((way) => {
      const p = r[way];
      return p ? [`${ways[way]}: ${seen(p).join(', ')}`] : [];
    }),
  hyperabduction: seen,
  costoclavicular: seen,
  'arm-stress': (r) => [
    ...opt(r.seconds, (n) => `arms up ${n} s`),
    ...(r.stopped ? [`stopped by ${stops[r.stopped]}`] : []),
    ...(Object.keys(r.felt ?? {}) as OutletSymptom[]).flatMap((s) =>
      opt(r.felt?.[s], (n) => `${symptoms[s]} at ${n} s`),
    ),
    ...(r.nothingFelt ? ['nothing felt'] : []),
    ...(r.before ? [`pulse ${examination.grades[r.before]} before`] : []),
    ...(r.during ? [`${examination.grades[r.during]} during`] : []),
  ],
};

/** Everything recorded of the tests, one line a test and side, with what it means. */
function said(bedside: Bedside): string[] {
  return (Object.keys(bedsideHow) as BedsideTestId[]).flatMap((id) =>
    (['right', 'left'] as const).flatMap((side) => {
      const result = bedside[id]?.[side];
      const reading = readBedside(id, side, bedside);
      if (!result || !reading) return [];
      const what = result.notDone ? [] : (measured[id] as (r: typeof result) => string[])(result);
      const note = result.note ? [`note: ${result.note}`] : [];
      return [
        `${bedsideHow[id].name}, ${anatomy.sides[side]}: ${[...what, ...note].join('; ')}${what.length || note.length ? '. ' : ''}${readingWords(id, reading as never)}`,
      ];
    }),
  );
}

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
  limitOption: (value: number, unit: Limits['unit'], source: string) =>
    `${value}${unit === 'deg' ? '' : ' '}${units[unit]}: ${source}`,
  units,
  rates: 'Published rates and their sources',
  /** The published rates in healthy people in one sentence; where sources differ, from the least to the most. */
  ratesInShort,
  rate,
  accuracy: ({ sensitivity, specificity }: Accuracy) =>
    `Finds ${percent(sensitivity)} of the diseased and clears ${percent(specificity)} of the healthy.`,
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
  keys: 'Runs on while the screen sleeps.',
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
    released: { radial: 'Radial let go', ulnar: 'Ulnar let go' },
    figure: (side: string, name: string) => `${sentence(side)} palm, ${name} artery released`,
    start: 'Let go: start',
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
  said,
};
export type BedsideWords = typeof bedside;
