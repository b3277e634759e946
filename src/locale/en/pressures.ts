import type { Side } from '../../anatomy/index.js';
import type { NoPressure, Pressure, Pressures, PressureSite, PressureUnit } from '../../examination/index.js';
import {
  type ArmFinding,
  type Band,
  type ExerciseReading,
  fromMmHg,
  type IndexKind,
  type IndexReading,
  type LegStation,
  type PressureSettings,
  type SegmentFinding,
  type Threat,
  type Used,
  type Wanted,
} from '../../pressures/index.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { list, sentence } from './phrases.js';

const sites: Record<PressureSite, string> = {
  brachial: 'arm',
  radial: 'radial, at the wrist',
  ulnar: 'ulnar, at the wrist',
  finger: 'finger',
  'high-thigh': 'high thigh',
  'low-thigh': 'low thigh',
  calf: 'calf',
  'dorsalis-pedis': 'dorsalis pedis',
  'posterior-tibial': 'posterior tibial',
  toe: 'great toe',
};

const stations: Record<LegStation | 'arm', string> = {
  arm: 'arm',
  'high-thigh': 'high thigh',
  'low-thigh': 'low thigh',
  calf: 'calf',
  ankle: 'ankle',
  toe: 'toe',
};

const kinds: Record<IndexKind, string> = {
  ankle: 'Ankle index',
  toe: 'Toe index',
  wrist: 'Wrist index',
  finger: 'Finger index',
};

const bands: Record<Band, string> = {
  abnormal: 'abnormal',
  borderline: 'borderline',
  normal: 'normal',
  incompressible: 'incompressible',
};

const units: Record<PressureUnit, string> = { mmHg: 'mmHg', kPa: 'kPa' };

const noPressure: Record<NoPressure, string> = {
  incompressible: 'incompressible',
  ...examination.reasons,
};

const side = (s: Side): string => anatomy.sides[s];

/** A pressure with its unit, or why there is none. */
function pressure(value: Pressure, unit: PressureUnit): string {
  if (typeof value !== 'number') return noPressure[value];
  return `${number(value, unit)} ${units[unit]}`;
}

function number(mmHg: number, unit: PressureUnit): string {
  const shown = fromMmHg(mmHg, unit);
  return unit === 'kPa' ? shown.toFixed(1) : String(shown);
}

function place({ side: s, site }: Wanted): string {
  return `${side(s)} ${sites[site]}`;
}

/** An index to two decimals and what it is called. */
function index({ value, band, severe }: IndexReading): string {
  const word = band && (severe ? 'severely abnormal' : bands[band]);
  return [value?.toFixed(2), word].filter(Boolean).join(', ');
}

/** Which pressures went into the index, as a sum. */
function sum({ numerator, denominator }: IndexReading, unit: PressureUnit): string {
  if (!numerator || !denominator) return '';
  return `${number(numerator.mmHg, unit)} ÷ ${number(denominator.mmHg, unit)}`;
}

function denominator(from: readonly Used[], unit: PressureUnit): string {
  const [only] = from;
  if (from.length > 1)
    return `mean of both arms (${from.map(({ mmHg }) => number(mmHg, unit)).join(' and ')})`;
  return only ? `higher arm, ${side(only.side)} (${number(only.mmHg, unit)})` : '';
}

const points = (levels: readonly (keyof typeof anatomy.levels)[]): string =>
  `points to the ${list(
    levels.map((level) => anatomy.levels[level]),
    'or',
  )} level`;

function segment(f: SegmentFinding, unit: PressureUnit): string {
  const who = sentence(side(f.side));
  const by = f.mmHg === undefined ? '' : `${number(f.mmHg, unit)} ${units[unit]}`;
  switch (f.code) {
    case 'thigh-low':
      return `${who}: thigh index ${f.index?.toFixed(2)}, below ${f.limit.toFixed(1)}; ${points(f.levels)}.`;
    case 'drop':
      return `${who}: falls by ${by} from ${f.from ? stations[f.from] : ''} to ${stations[f.at]}, ${f.strength}; ${points(f.levels)}.`;
    case 'side-difference':
      return `${who}: ${by} lower than the other side at the ${stations[f.at]}; ${points(f.levels)}.`;
  }
}

function arm(f: ArmFinding, unit: PressureUnit): string {
  const by = `${number(f.mmHg, unit)} ${units[unit]}`;
  switch (f.code) {
    case 'arm-difference':
      return `The ${side(f.side)} arm is ${by} lower than the other; ${points(f.levels)}.`;
    case 'arm-drop':
      return `${sentence(side(f.side))}: falls by ${by} from upper arm to wrist; ${points(f.levels)}.`;
    case 'wrist-difference':
      return `${sentence(side(f.side))}: the ${f.artery} artery is ${by} lower than the other at the wrist; ${points(f.levels)}.`;
  }
}

function exercise(e: ExerciseReading, unit: PressureUnit): string {
  const who = sentence(side(e.side));
  const parts = [
    ...(e.fall === undefined
      ? []
      : [`ankle ${e.fall >= 0 ? 'falls' : 'rises'} by ${number(Math.abs(e.fall), unit)} ${units[unit]}`]),
    ...(e.indexFall === undefined
      ? []
      : [`index ${e.indexFall >= 0 ? 'falls' : 'rises'} by ${Math.abs(e.indexFall)}%`]),
    ...(e.indexAfter === undefined ? [] : [`index afterwards ${e.indexAfter.toFixed(2)}`]),
  ];
  const verdict = {
    abnormal: 'supports arterial disease',
    normal: 'within the limits used',
    incomplete: 'not enough measured to tell',
  }[e.code];
  const missing = e.missing.length
    ? ` Missing: ${list(e.missing.map((m) => `${place(m)} ${m.when === 'rest' ? 'at rest' : 'afterwards'}`))}.`
    : '';
  return `${who}, after exercise: ${[...parts, verdict].join('; ')}.${missing}`;
}

function threat(t: Threat, unit: PressureUnit): string {
  const name = {
    ankle: 'ankle pressure',
    toe: 'toe pressure',
    tcpo2: 'oxygen pressure',
    index: 'ankle index',
  }[t.measure];
  const show = (n: number): string =>
    t.measure === 'index' ? n.toFixed(2) : `${number(n, unit)} ${units[unit]}`;
  const limit = `${t.inclusive ? 'at or below' : 'below'} ${show(t.limit)}`;
  return `${sentence(side(t.side))}: ${name} ${show(t.value)}, ${limit}: in the range of a threatened limb.`;
}

/** Every pressure recorded, in phrases. */
function said(p: Pressures, order: readonly PressureSite[]): string[] {
  const unit = p.unit ?? 'mmHg';
  const of = (
    name: string,
    sides: { right?: Pressure | undefined; left?: Pressure | undefined } | undefined,
  ) =>
    (['right', 'left'] as const).flatMap((s) => {
      const value = sides?.[s];
      return value === undefined ? [] : [`${side(s)} ${name} ${pressure(value, unit)}`];
    });
  const after = p.afterExercise;
  return [
    ...order.flatMap((site) => of(sites[site], p[site])),
    ...of('foot oxygen pressure', p.tcpo2),
    ...(['brachial', 'dorsalis-pedis', 'posterior-tibial'] as const).flatMap((site) =>
      of(`${sites[site]} after exercise`, after?.[site]),
    ),
    ...(after?.completed === undefined ? [] : [after.completed ? 'walk completed' : 'walk not completed']),
    ...(after?.minutes === undefined ? [] : [`walked ${after.minutes} minutes`]),
    ...(after?.note ? [`after exercise: ${after.note}`] : []),
    ...(p.note ? [`note: ${p.note}`] : []),
  ];
}

export const pressures = {
  title: 'Pressures',
  how: 'Systolic, lying, after five to ten minutes’ rest.',
  unit: 'Unit',
  units,
  sites: Object.fromEntries(Object.entries(sites).map(([k, v]) => [k, sentence(v)])) as Record<
    PressureSite,
    string
  >,
  tcpo2: 'Foot oxygen pressure',
  stations: Object.fromEntries(Object.entries(stations).map(([k, v]) => [k, sentence(v)])) as typeof stations,
  field: (site: string, s: Side) => `${site}, ${side(s)}`,
  kinds,
  bands,
  noPressure,
  why: 'Why no number',
  whyFor: (field: string) => `No number for ${field.toLowerCase()}: why`,
  measured: 'Measured',
  legs: 'Ankle and toe',
  segments: 'Thigh and calf',
  arms: 'Wrist and finger',
  afterExercise: 'After exercise',
  completed: 'Whole walk done',
  yes: 'Yes',
  no: 'No',
  minutes: 'Minutes walked',
  stoppedBy: 'What ended it',
  number,
  pressure,
  index,
  band: ({ band, severe }: IndexReading) => (severe ? 'severely abnormal' : band ? bands[band] : ''),
  sum,
  sums: (all: readonly string[]) => `${list(all)}.`,
  siteAfter: (site: string) => `${site} after exercise`,
  denominator: (from: readonly Used[], unit: PressureUnit) => `Divided by the ${denominator(from, unit)}.`,
  used: 'Figures used are underlined.',
  noArm: 'No index without an arm pressure: none is guessed.',
  oneArm: (missing: Side) =>
    `The ${side(missing)} arm is missing: a higher pressure there would lower every index.`,
  incompressible: (s: Side) =>
    `${sentence(side(s))}: the ankle arteries cannot be closed by the cuff; a toe pressure would tell more.`,
  missing: (wanted: readonly Wanted[]) => `Not measured: ${list(wanted.map(place))}.`,
  segment,
  arm,
  exercise,
  threat,
  plot: 'Pressure from arm to toe, right and left',
  plotSummary: (s: Side, values: readonly (readonly [LegStation | 'arm', number])[], unit: PressureUnit) =>
    `${sentence(side(s))}: ${values.map(([station, mmHg]) => `${stations[station]} ${number(mmHg, unit)}`).join(', ')} ${units[unit]}.`,
  /** A value that was typed and cannot be a pressure. */
  refused: (field: string, typed: string, highest: string, unit: PressureUnit) =>
    `${field}: “${typed}” was not taken. Expected a number from 0 to ${highest} ${units[unit]}, 0 where no signal is heard.`,
  refusedArms:
    'Both arms at 0: nothing could be divided by them. Expected a pressure above 0 in at least one arm.',
  standards: { '2016': '2016 AHA/ACC guideline', '2024': '2024 ACC/AHA guideline' },
  /** Choices where sources disagree, in the order in which they are offered. */
  settings: {
    standard: {
      label: 'Standard of the ankle index',
      options: { '2016': '2016 AHA/ACC guideline', '2024': '2024 ACC/AHA guideline' },
    },
    ankle: {
      label: 'Ankle artery divided',
      options: { higher: 'The higher one', lower: 'The lower one (more sensitive)' },
    },
    arm: {
      label: 'Divided by',
      options: { higher: 'The higher arm', mean: 'Mean of both arms, unless 10 mmHg apart' },
    },
    incompressible: { label: 'Incompressible above', options: { '1.40': '1.40', '1.30': '1.30' } },
    toe: { label: 'Toe index abnormal', options: { '0.70': 'at or below 0.70', '0.60': 'below 0.60' } },
    armDifference: {
      label: 'Arms differ',
      options: {
        '10': 'by 10 mmHg or more',
        '15': 'by 15 mmHg or more',
        'over-15': 'by over 15 mmHg',
        'over-20': 'by over 20 mmHg',
      },
    },
    drop: {
      label: 'Fall between cuffs',
      options: { '30': 'over 30 mmHg (suspicious from 20)', '20': 'over 20 mmHg' },
    },
    exercise: {
      label: 'Fall on exercise',
      options: { 'more-than': 'over 30 mmHg or 20%', 'at-least': '30 mmHg or 20% and more' },
    },
    threat: {
      label: 'Threatened limb by',
      options: {
        'gvg-2019': 'Global Vascular Guidelines 2019',
        'parc-2015': 'PARC 2015',
        'consensus-1991': 'European consensus 1991',
        'tasc-2': 'TASC II',
        'esc-2017': 'ESC 2017',
        'iwgdf-2023': 'IWGDF 2023',
        'acc-aha': 'ACC/AHA',
      },
    },
  } satisfies {
    [K in keyof PressureSettings]?: { label: string; options: Record<PressureSettings[K], string> };
  },
  methods: 'Method and limits',
  caution:
    'Incompressible arteries, common in diabetes and kidney disease, make ankle pressures read too high.',
  said,
};
export type PressureWords = typeof pressures;
