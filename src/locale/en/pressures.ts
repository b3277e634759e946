import type { Level, Side } from '../../anatomy/index.js';
import type {
  NoPressure,
  Pressure,
  PressureSite,
  PressureUnit,
  VolumeCurve,
} from '../../examination/index.js';
import type {
  ArmFinding,
  ArmsDoubt,
  Band,
  ExerciseReading,
  IndexKind,
  LegStation,
  SegmentFinding,
  Threat,
  Used,
  Wanted,
} from '../../pressures/index.js';
import { type ExerciseChange, exerciseChanges, type PressureStatement } from '../../statements/index.js';
import type { CuffCaution, CuffCautionCode, CuffRule } from '../../triage/index.js';
import { threatNames } from '../citations.js';
import { indexWords, type MethodWords, methodWords, pressureNumbers } from '../pressure-numbers.js';
import { render, type Renderings } from '../render.js';
import { together } from '../terms.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { capitalised, decimal, list, paragraph, sentence } from './phrases.js';

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

const noPressure: Record<NoPressure, string> = together(
  { incompressible: 'incompressible' },
  examination.reasons,
);

const side = (s: Side): string => anatomy.sides[s];

const { number, withUnit } = pressureNumbers(decimal, units);

/** A pressure with its unit, or why there is none. */
const pressure = (value: Pressure, unit: PressureUnit): string =>
  typeof value === 'number' ? withUnit(value, unit) : noPressure[value];

const place = ({ side: s, site }: Wanted): string => `${side(s)} ${sites[site]}`;

const points = (levels: readonly Level[]): string =>
  `points to the ${list(
    levels.map((level) => anatomy.levels[level]),
    'or',
  )} level`;

const segments = (unit: PressureUnit): Renderings<SegmentFinding> => ({
  'thigh-low': (f) => `thigh index ${decimal(f.index, 2)}, below ${decimal(f.limit, 1)}`,
  drop: (f) =>
    `falls by ${withUnit(f.mmHg, unit)} from ${stations[f.from]} to ${stations[f.at]}, ${f.strength}`,
  'side-difference': (f) => `${withUnit(f.mmHg, unit)} lower than the other side at the ${stations[f.at]}`,
});

const arms = (unit: PressureUnit): Renderings<ArmFinding> => ({
  'arm-difference': (f) => `The ${side(f.side)} arm is ${withUnit(f.mmHg, unit)} lower than the other`,
  'arm-drop': (f) => `${sentence(side(f.side))}: falls by ${withUnit(f.mmHg, unit)} from upper arm to wrist`,
  'wrist-difference': (f) =>
    `${sentence(side(f.side))}: the ${f.artery} artery is ${withUnit(f.mmHg, unit)} lower than the other at the wrist`,
});

const changes = (unit: PressureUnit): Renderings<ExerciseChange> => ({
  ankle: (change) => `ankle ${change.way} by ${withUnit(change.mmHg, unit)}`,
  index: (change) => `index ${change.way} by ${decimal(change.percent)}%`,
  'index-after': ({ index }) => `index afterwards ${decimal(index, 2)}`,
});

const verdicts: Record<ExerciseReading['code'], string> = {
  abnormal: 'supports arterial disease',
  normal: 'within the limits used',
  incomplete: 'not enough measured to tell',
};

const times: Record<ExerciseReading['missing'][number]['when'], string> = {
  rest: 'at rest',
  after: 'afterwards',
};

function exercise(reading: ExerciseReading, unit: PressureUnit): string {
  const found = exerciseChanges(reading).map((change) => render(changes(unit), change));
  const wanted = reading.missing.map((one) => `${place(one)} ${times[one.when]}`);
  return paragraph([
    `${sentence(side(reading.side))}, after exercise: ${[...found, verdicts[reading.code]].join('; ')}.`,
    wanted.length ? `Missing: ${list(wanted)}.` : '',
  ]);
}

const measures: Record<Threat['measure'], string> = {
  ankle: 'ankle pressure',
  toe: 'toe pressure',
  tcpo2: 'oxygen pressure',
  index: 'ankle index',
};

function threat({ side: of, measure, value, limit, inclusive }: Threat, unit: PressureUnit): string {
  const show = (n: number): string => (measure === 'index' ? decimal(n, 2) : withUnit(n, unit));
  return `${sentence(side(of))}: ${measures[measure]} ${show(value)}, ${inclusive ? 'at or below' : 'below'} ${show(limit)}: in the range of a threatened limb.`;
}

const doubts = (unit: PressureUnit): Renderings<ArmsDoubt> => ({
  'ankle-above-low-arms': ({ side: of, index, below }) =>
    `${side(of)} ABPI ${decimal(index, 2)} with both arms below ${withUnit(below, unit)}`,
  'arms-apart': ({ mmHg }) => `arms ${withUnit(mmHg, unit)} apart and no low ABPI`,
  'arm-pulses': 'pulses weak or absent in both arms',
  'low-though-hypertensive': ({ below }) =>
    `both arms below ${withUnit(below, unit)} although hypertension is recorded`,
  'below-recorded': ({ mmHg }) => `blood pressure recorded as ${withUnit(mmHg, unit)}`,
});

const cuffReasons: Record<CuffCautionCode, string> = {
  acute: 'acutely ischaemic',
  access: 'dialysis access',
  thrombosis: 'signs of deep vein thrombosis',
  graft: 'graft or stent',
  wound: 'wound',
  infection: 'signs of infection',
  pain: 'severe pain',
};
const cuffRules: Record<CuffRule, string> = {
  'call-first': 'never delay the call for a pressure',
  'no-cuff': 'no cuff on this limb',
  'ask-first': 'ask your local rule before a cuff; toe pressure or waveform instead',
  elsewhere: 'no cuff over it; cuff elsewhere or measure the toe',
};

const settings: MethodWords = {
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
    options: threatNames('European consensus 1991'),
  },
  severeIndex: {
    label: 'Ankle index severely abnormal',
    options: { '0.40': 'at or below 0.40', '0.30': 'at or below 0.30' },
  },
  wrist: {
    label: 'Wrist index abnormal',
    options: { '1.00': 'below 1.00', '0.90': 'below 0.90', '0.85': 'below 0.85' },
  },
  finger: {
    label: 'Finger index abnormal',
    options: { '0.80': 'at or below 0.80', '0.75': 'at or below 0.75' },
  },
  wristDifference: {
    label: 'Wrist arteries differ',
    options: { '30': 'by 30 mmHg or more', '20': 'by 20 mmHg or more' },
  },
  armDrop: { label: 'Fall from arm to wrist', options: { '10': 'over 10 mmHg', '20': 'over 20 mmHg' } },
  sideDifference: { label: 'Legs differ', options: { '20': 'by over 20 mmHg', '30': 'by over 30 mmHg' } },
};

const curves: Record<VolumeCurve, string> = {
  normal: 'normal',
  'notch-lost': 'notch lost',
  rounded: 'rounded',
  flat: 'flat',
};

const statements = (unit: PressureUnit): Renderings<PressureStatement> => ({
  pressure: ({ site, side: of, value }) => `${side(of)} ${sites[site]} ${pressure(value, unit)}`,
  oxygen: ({ side: of, value }) => `${side(of)} foot oxygen pressure ${pressure(value, unit)}`,
  'pressure-after': ({ site, side: of, value }) =>
    `${side(of)} ${sites[site]} after exercise ${pressure(value, unit)}`,
  'volume-curve': ({ side: of, shape }) => `${side(of)} volume curve at the ankle: ${curves[shape]}`,
  'walk-completed': 'walk completed',
  'walk-not-completed': 'walk not completed',
  walked: ({ minutes }) => `walked ${decimal(minutes)} minutes`,
  'note-after': ({ note }) => `after exercise: ${note}`,
  note: ({ note }) => `note: ${note}`,
});

/** What the higher arm, or the mean of both, comes to. */
function denominator(from: readonly Used[], unit: PressureUnit): string {
  const figures = from.map(({ mmHg }) => number(mmHg, unit)).join(' and ');
  const [only, other] = from;
  if (other) return `mean of both arms (${figures})`;
  return only ? `higher arm, ${side(only.side)} (${figures})` : '';
}

export const pressures = {
  title: 'Pressures',
  how: 'Systolic, lying, after five to ten minutes’ rest.',
  unit: 'Unit',
  units,
  sites: capitalised(sites),
  tcpo2: 'Foot oxygen pressure',
  stations: capitalised(stations),
  field: (site: string, s: Side) => `${site}, ${side(s)}`,
  kinds,
  bands,
  noPressure,
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
  ...indexWords({ number, decimal, bands, severe: 'severely abnormal' }),
  sums: (all: readonly string[]) => `${list(all)}.`,
  siteAfter: (site: string) => `${site} after exercise`,
  denominator: (from: readonly Used[], unit: PressureUnit) => `Denominator: ${denominator(from, unit)}.`,
  used: 'Figures used are underlined.',
  noArm: 'No ABPI without a brachial pressure.',
  oneArm: (missing: Side) =>
    `${sentence(side(missing))} brachial pressure not recorded: if it is higher, every index is lower than shown.`,
  incompressible: (s: Side) =>
    `${sentence(side(s))}: ankle arteries incompressible; measure toe pressure (TBPI).`,
  /** Beside every index while both arms may be obstructed. */
  bothArms: (found: readonly ArmsDoubt[], unit: PressureUnit) =>
    `Both arm arteries may be diseased (${list(found.map((doubt) => render(doubts(unit), doubt)))}): every index may then read too high. Absolute ankle and toe pressures and waveforms do not depend on the arms.`,
  segment: (finding: SegmentFinding, unit: PressureUnit) =>
    `${sentence(side(finding.side))}: ${render(segments(unit), finding)}; ${points(finding.levels)}.`,
  arm: (finding: ArmFinding, unit: PressureUnit) =>
    `${render(arms(unit), finding)}; ${points(finding.levels)}.`,
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
  /** Choices where sources disagree, in the order in which they are offered. */
  settings,
  volumeCurve: 'Volume curve at the ankle',
  curves,
  ...methodWords(settings, 'by default'),
  methods: 'Method and limits',
  /** Before the first cuff. */
  cuffs:
    'No cuff over an arteriovenous fistula or access graft, a lymphoedema or node-clearance arm, or a leg with suspected deep vein thrombosis. Over a bypass or stent, or beyond a distal bypass, ask your local rule first; near an ulcer, burn, fracture or great pain, cuff elsewhere or measure the toe. Never delay the call for an acutely ischaemic limb for a pressure.',
  /** A caution for the cuffs of one limb, by what is recorded. */
  cuff: ({ limb: { kind, side: of }, code, rule }: CuffCaution) =>
    `${sentence(anatomy.limbs[`${of} ${kind}`])}, ${cuffReasons[code]}: ${cuffRules[rule]}.`,
  technique:
    'Supine, rested 5 to 10 minutes, heels supported, room 19 to 22 °C, no smoking for 2 hours; cuff width at least 40% of the circumference; Doppler probe 8 to 10 MHz. Order: right arm, right posterior tibial, right dorsalis pedis, left posterior tibial, left dorsalis pedis, left arm; repeat the first arm.',
  caution:
    'Medial calcification (diabetes, chronic kidney disease, age) gives falsely high ankle pressures: a normal ABPI does not exclude peripheral arterial disease.',
  said: (statement: PressureStatement, unit: PressureUnit) => render(statements(unit), statement),
};
export type PressureWords = typeof pressures;
