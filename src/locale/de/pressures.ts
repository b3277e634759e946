import type { Side } from '../../anatomy/index.js';
import type { NoPressure, Pressure, Pressures, PressureSite, PressureUnit } from '../../examination/index.js';
import {
  type ArmFinding,
  type Band,
  type ExerciseReading,
  fromMmHg,
  type IndexReading,
  type LegStation,
  type SegmentFinding,
  type Threat,
  type Used,
  type Wanted,
} from '../../pressures/index.js';
import type { PressureWords } from '../en/pressures.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, sentence } from './phrases.js';

const sites: Record<PressureSite, string> = {
  brachial: 'Arm',
  radial: 'Radialis am Handgelenk',
  ulnar: 'Ulnaris am Handgelenk',
  finger: 'Finger',
  'high-thigh': 'Oberschenkel oben',
  'low-thigh': 'Oberschenkel unten',
  calf: 'Wade',
  'dorsalis-pedis': 'Dorsalis pedis',
  'posterior-tibial': 'Tibialis posterior',
  toe: 'Großzehe',
};

const stations: Record<LegStation | 'arm', string> = {
  arm: 'Arm',
  'high-thigh': 'Oberschenkel oben',
  'low-thigh': 'Oberschenkel unten',
  calf: 'Wade',
  ankle: 'Knöchel',
  toe: 'Zehe',
};

const bands: Record<Band, string> = {
  abnormal: 'pathologisch',
  borderline: 'grenzwertig',
  normal: 'normal',
  incompressible: 'nicht komprimierbar',
};
const SEVERE = 'schwer pathologisch';

const units: Record<PressureUnit, string> = { mmHg: 'mmHg', kPa: 'kPa' };

const noPressure: Record<NoPressure, string> = {
  incompressible: 'nicht komprimierbar',
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
  return unit === 'kPa' ? decimal(shown, 1) : decimal(shown);
}

const place = ({ side: s, site }: Wanted): string => `${sites[site]} ${side(s)}`;

function band({ band: of, severe }: IndexReading): string {
  return severe ? SEVERE : of ? bands[of] : '';
}

/** An index to two decimals and what it is called. */
function index(reading: IndexReading): string {
  const { value } = reading;
  return [value === undefined ? '' : decimal(value, 2), band(reading)].filter(Boolean).join(', ');
}

/** Which pressures went into the index, as a sum. */
function sum({ numerator, denominator }: IndexReading, unit: PressureUnit): string {
  if (!numerator || !denominator) return '';
  return `${number(numerator.mmHg, unit)} ÷ ${number(denominator.mmHg, unit)}`;
}

function denominator(from: readonly Used[], unit: PressureUnit): string {
  const [only] = from;
  if (from.length > 1)
    return `das Mittel beider Arme (${from.map(({ mmHg }) => number(mmHg, unit)).join(' und ')})`;
  return only ? `den Arm mit dem höheren Druck, ${side(only.side)} (${number(only.mmHg, unit)})` : '';
}

const points = (levels: readonly (keyof typeof anatomy.levels)[]): string =>
  `spricht für die ${list(
    levels.map((level) => anatomy.levels[level]),
    'oder',
  )}`;

const strengths: Record<SegmentFinding['strength'], string> = {
  suspicious: 'verdächtig',
  significant: 'bedeutsam',
};

function segment(f: SegmentFinding, unit: PressureUnit): string {
  const who = sentence(side(f.side));
  const by = f.mmHg === undefined ? '' : `${number(f.mmHg, unit)} ${units[unit]}`;
  switch (f.code) {
    case 'thigh-low':
      return `${who}: Oberschenkelindex ${decimal(f.index, 2)}, unter ${decimal(f.limit, 1)}; ${points(f.levels)}.`;
    case 'drop':
      return `${who}: Abfall um ${by} zwischen ${f.from ? stations[f.from] : ''} und ${stations[f.at]}, ${strengths[f.strength]}; ${points(f.levels)}.`;
    case 'side-difference':
      return `${who}: ${stations[f.at]} um ${by} tiefer als auf der anderen Seite; ${points(f.levels)}.`;
  }
}

function arm(f: ArmFinding, unit: PressureUnit): string {
  const who = sentence(side(f.side));
  const by = `${number(f.mmHg, unit)} ${units[unit]}`;
  switch (f.code) {
    case 'arm-difference':
      return `${who}: Armdruck um ${by} tiefer als am anderen Arm; ${points(f.levels)}.`;
    case 'arm-drop':
      return `${who}: Abfall um ${by} zwischen Oberarm und Handgelenk; ${points(f.levels)}.`;
    case 'wrist-difference':
      return `${who}: ${f.artery ? anatomy.sites[f.artery] : 'eine Arterie'} am Handgelenk um ${by} tiefer als die andere; ${points(f.levels)}.`;
  }
}

function exercise(e: ExerciseReading, unit: PressureUnit): string {
  const way = (by: number): string => (by >= 0 ? 'fällt' : 'steigt');
  const parts = [
    ...(e.fall === undefined
      ? []
      : [`Knöcheldruck ${way(e.fall)} um ${number(Math.abs(e.fall), unit)} ${units[unit]}`]),
    ...(e.indexFall === undefined
      ? []
      : [`Index ${way(e.indexFall)} um ${decimal(Math.abs(e.indexFall))} %`]),
    ...(e.indexAfter === undefined ? [] : [`Index danach ${decimal(e.indexAfter, 2)}`]),
  ];
  const verdict = {
    abnormal: 'spricht für eine Arterienerkrankung',
    normal: 'innerhalb der verwendeten Grenzen',
    incomplete: 'zu wenig gemessen für eine Aussage',
  }[e.code];
  const missing = e.missing.length
    ? ` Es fehlen: ${list(e.missing.map((m) => `${place(m)} ${m.when === 'rest' ? 'in Ruhe' : 'danach'}`))}.`
    : '';
  return `${sentence(side(e.side))}, nach Belastung: ${[...parts, verdict].join('; ')}.${missing}`;
}

function threat(t: Threat, unit: PressureUnit): string {
  const name = {
    ankle: 'Knöcheldruck',
    toe: 'Zehendruck',
    tcpo2: 'Sauerstoffdruck',
    index: 'Knöchelindex',
  }[t.measure];
  const show = (n: number): string =>
    t.measure === 'index' ? decimal(n, 2) : `${number(n, unit)} ${units[unit]}`;
  const limit = `${t.inclusive ? 'bei oder unter' : 'unter'} ${show(t.limit)}`;
  return `${sentence(side(t.side))}: ${name} ${show(t.value)}, ${limit}: im Bereich einer bedrohten Extremität.`;
}

/** Every pressure recorded, in phrases. */
function said(p: Pressures, order: readonly PressureSite[]): string[] {
  const unit = p.unit ?? 'mmHg';
  const of = (
    name: string,
    both: { right?: Pressure | undefined; left?: Pressure | undefined } | undefined,
  ) =>
    (['right', 'left'] as const).flatMap((s) => {
      const value = both?.[s];
      return value === undefined ? [] : [`${name} ${side(s)} ${pressure(value, unit)}`];
    });
  const after = p.afterExercise;
  return [
    ...order.flatMap((site) => of(sites[site], p[site])),
    ...of('Sauerstoffdruck am Fuß', p.tcpo2),
    ...(['brachial', 'dorsalis-pedis', 'posterior-tibial'] as const).flatMap((site) =>
      of(`${sites[site]} nach Belastung`, after?.[site]),
    ),
    ...(after?.completed === undefined
      ? []
      : [after.completed ? 'Gehtest vollständig' : 'Gehtest nicht vollständig']),
    ...(after?.minutes === undefined ? [] : [`${decimal(after.minutes)} Minuten gegangen`]),
    ...(after?.note ? [`nach Belastung: ${after.note}`] : []),
    ...(p.note ? [`Notiz: ${p.note}`] : []),
  ];
}

export const pressures: PressureWords = {
  title: 'Drücke',
  how: 'Systolisch, im Liegen, nach fünf bis zehn Minuten Ruhe.',
  unit: 'Einheit',
  units,
  sites,
  tcpo2: 'Sauerstoffdruck am Fuß',
  stations,
  field: (site, s) => `${site}, ${side(s)}`,
  kinds: { ankle: 'Knöchelindex', toe: 'Zehenindex', wrist: 'Handgelenksindex', finger: 'Fingerindex' },
  bands,
  noPressure,
  why: 'Warum keine Zahl',
  whyFor: (field) => `${field}: warum keine Zahl`,
  measured: 'Gemessen',
  legs: 'Knöchel und Zehe',
  segments: 'Oberschenkel und Wade',
  arms: 'Handgelenk und Finger',
  afterExercise: 'Nach Belastung',
  completed: 'Ganze Strecke gegangen',
  yes: 'Ja',
  no: 'Nein',
  minutes: 'Minuten gegangen',
  stoppedBy: 'Grund für das Ende',
  number,
  pressure,
  index,
  band,
  sum,
  sums: (all) => `${list(all)}.`,
  siteAfter: (site) => `${site} nach Belastung`,
  denominator: (from, unit) => `Geteilt durch ${denominator(from, unit)}.`,
  used: 'Verwendete Zahlen sind unterstrichen.',
  noArm: 'Kein Index ohne Armdruck: Er wird nicht geschätzt.',
  oneArm: (missing) =>
    `Der Armdruck ${side(missing)} fehlt: Ein höherer Druck dort würde jeden Index senken.`,
  incompressible: (s) =>
    `${sentence(side(s))}: Die Knöchelarterien lassen sich mit der Manschette nicht verschließen; ein Zehendruck sagt mehr.`,
  missing: (wanted) => `Nicht gemessen: ${list(wanted.map(place))}.`,
  segment,
  arm,
  exercise,
  threat,
  plot: 'Druck vom Arm bis zur Zehe, rechts und links',
  plotSummary: (s, values, unit) =>
    `${sentence(side(s))}: ${values.map(([station, mmHg]) => `${stations[station]} ${number(mmHg, unit)}`).join(', ')} ${units[unit]}.`,
  refused: (field, typed, highest, unit) =>
    `${field}: „${typed}“ wurde nicht übernommen. Erwartet wird eine Zahl von 0 bis ${highest.replace('.', ',')} ${units[unit]}; 0, wo kein Signal zu hören ist.`,
  refusedArms:
    'Beide Arme bei 0: Dadurch lässt sich nichts teilen. Erwartet wird ein Druck über 0 an mindestens einem Arm.',
  standards: { '2016': 'Leitlinie AHA/ACC 2016', '2024': 'Leitlinie ACC/AHA 2024' },
  settings: {
    standard: {
      label: 'Standard des Knöchelindex',
      options: { '2016': 'Leitlinie AHA/ACC 2016', '2024': 'Leitlinie ACC/AHA 2024' },
    },
    ankle: {
      label: 'Geteilte Knöchelarterie',
      options: { higher: 'Die mit dem höheren Druck', lower: 'Die mit dem tieferen Druck (empfindlicher)' },
    },
    arm: {
      label: 'Geteilt durch',
      options: {
        higher: 'Den Arm mit dem höheren Druck',
        mean: 'Das Mittel beider Arme, außer bei 10 mmHg Unterschied',
      },
    },
    incompressible: { label: 'Nicht komprimierbar über', options: { '1.40': '1,40', '1.30': '1,30' } },
    toe: {
      label: 'Zehenindex pathologisch',
      options: { '0.70': 'bei oder unter 0,70', '0.60': 'unter 0,60' },
    },
    armDifference: {
      label: 'Arme unterscheiden sich',
      options: {
        '10': 'ab 10 mmHg',
        '15': 'ab 15 mmHg',
        'over-15': 'über 15 mmHg',
        'over-20': 'über 20 mmHg',
      },
    },
    drop: {
      label: 'Abfall zwischen Manschetten',
      options: { '30': 'über 30 mmHg (verdächtig ab 20)', '20': 'über 20 mmHg' },
    },
    exercise: {
      label: 'Abfall bei Belastung',
      options: { 'more-than': 'über 30 mmHg oder 20 %', 'at-least': 'ab 30 mmHg oder 20 %' },
    },
    threat: {
      label: 'Bedrohte Extremität nach',
      options: {
        'gvg-2019': 'Global Vascular Guidelines 2019',
        'parc-2015': 'PARC 2015',
        'consensus-1991': 'Europäischer Konsens 1991',
        'tasc-2': 'TASC II',
        'esc-2017': 'ESC 2017',
        'iwgdf-2023': 'IWGDF 2023',
        'acc-aha': 'ACC/AHA',
      },
    },
  },
  methods: 'Methode und Grenzen',
  caution:
    'Nicht komprimierbare Arterien, häufig bei Diabetes und Nierenerkrankung, lassen Knöcheldrücke zu hoch erscheinen.',
  said,
};
