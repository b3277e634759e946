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
  LegStation,
  SegmentFinding,
  Threat,
  Used,
  Wanted,
} from '../../pressures/index.js';
import { type ExerciseChange, exerciseChanges, type PressureStatement } from '../../statements/index.js';
import type { CuffCautionCode, CuffRule } from '../../triage/index.js';
import { threatNames } from '../citations.js';
import type { PressureWords } from '../en/pressures.js';
import { indexWords, type MethodWords, methodWords, pressureNumbers } from '../pressure-numbers.js';
import { render, type Renderings } from '../render.js';
import { together } from '../terms.js';
import { anatomy } from './anatomy.js';
import { examination } from './examination.js';
import { decimal, list, paragraph, sentence } from './phrases.js';

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

const units: Record<PressureUnit, string> = { mmHg: 'mmHg', kPa: 'kPa' };

const noPressure: Record<NoPressure, string> = together(
  { incompressible: 'nicht komprimierbar' },
  examination.reasons,
);

const side = (s: Side): string => anatomy.sides[s];

const { number, withUnit } = pressureNumbers(decimal, units);

/** A pressure with its unit, or why there is none. */
const pressure = (value: Pressure, unit: PressureUnit): string =>
  typeof value === 'number' ? withUnit(value, unit) : noPressure[value];

const place = ({ side: s, site }: Wanted): string => `${sites[site]} ${side(s)}`;

const points = (levels: readonly Level[]): string =>
  `spricht für die ${list(
    levels.map((level) => anatomy.levels[level]),
    'oder',
  )}`;

const strengths: Record<SegmentFinding['strength'], string> = {
  suspicious: 'verdächtig',
  significant: 'bedeutsam',
};

const segments = (unit: PressureUnit): Renderings<SegmentFinding> => ({
  'thigh-low': (f) => `Oberschenkelindex ${decimal(f.index, 2)}, unter ${decimal(f.limit, 1)}`,
  drop: (f) =>
    `Abfall um ${withUnit(f.mmHg, unit)} zwischen ${stations[f.from]} und ${stations[f.at]}, ${strengths[f.strength]}`,
  'side-difference': (f) => `${stations[f.at]} um ${withUnit(f.mmHg, unit)} tiefer als auf der anderen Seite`,
});

const arms = (unit: PressureUnit): Renderings<ArmFinding> => ({
  'arm-difference': (f) => `Armdruck um ${withUnit(f.mmHg, unit)} tiefer als am anderen Arm`,
  'arm-drop': (f) => `Abfall um ${withUnit(f.mmHg, unit)} zwischen Oberarm und Handgelenk`,
  'wrist-difference': (f) =>
    `${anatomy.sites[f.artery]} am Handgelenk um ${withUnit(f.mmHg, unit)} tiefer als die andere`,
});

/** What a side shows and what it points to: "Links: …; spricht für die Oberschenkeletage." */
const finding = (of: Side, found: string, levels: readonly Level[]): string =>
  `${sentence(side(of))}: ${found}; ${points(levels)}.`;

const verbs = { falls: 'fällt', rises: 'steigt' };

const changes = (unit: PressureUnit): Renderings<ExerciseChange> => ({
  ankle: ({ way, mmHg }) => `Knöcheldruck ${verbs[way]} um ${withUnit(mmHg, unit)}`,
  index: ({ way, percent }) => `Index ${verbs[way]} um ${decimal(percent)} %`,
  'index-after': ({ index }) => `Index danach ${decimal(index, 2)}`,
});

const verdicts: Record<ExerciseReading['code'], string> = {
  abnormal: 'spricht für eine Arterienerkrankung',
  normal: 'innerhalb der verwendeten Grenzen',
  incomplete: 'zu wenig gemessen für eine Aussage',
};

const times: Record<ExerciseReading['missing'][number]['when'], string> = {
  rest: 'in Ruhe',
  after: 'danach',
};

function exercise(reading: ExerciseReading, unit: PressureUnit): string {
  const found = exerciseChanges(reading).map((change) => render(changes(unit), change));
  const wanted = reading.missing.map((one) => `${place(one)} ${times[one.when]}`);
  return paragraph([
    `${sentence(side(reading.side))}, nach Belastung: ${[...found, verdicts[reading.code]].join('; ')}.`,
    wanted.length ? `Es fehlen: ${list(wanted)}.` : '',
  ]);
}

const measures: Record<Threat['measure'], string> = {
  ankle: 'Knöcheldruck',
  toe: 'Zehendruck',
  tcpo2: 'Sauerstoffdruck',
  index: 'Knöchelindex',
};

function threat({ side: of, measure, value, limit, inclusive }: Threat, unit: PressureUnit): string {
  const show = (n: number): string => (measure === 'index' ? decimal(n, 2) : withUnit(n, unit));
  return `${sentence(side(of))}: ${measures[measure]} ${show(value)}, ${inclusive ? 'bei oder unter' : 'unter'} ${show(limit)}: im Bereich einer bedrohten Extremität.`;
}

const doubts = (unit: PressureUnit): Renderings<ArmsDoubt> => ({
  'ankle-above-low-arms': ({ side: of, index, below }) =>
    `ABI ${side(of)} ${decimal(index, 2)} bei Armdrücken unter ${withUnit(below, unit)} beidseits`,
  'arms-apart': ({ mmHg }) => `Arme um ${withUnit(mmHg, unit)} verschieden und kein niedriger ABI`,
  'arm-pulses': 'Pulse an beiden Armen schwach oder fehlend',
  'low-though-hypertensive': ({ below }) =>
    `beide Armdrücke unter ${withUnit(below, unit)} trotz erfasster Hypertonie`,
  'below-recorded': ({ mmHg }) => `Blutdruck mit ${withUnit(mmHg, unit)} erfasst`,
});

const cuffReasons: Record<CuffCautionCode, string> = {
  acute: 'akut ischämisch',
  access: 'Dialyseshunt',
  thrombosis: 'Zeichen einer tiefen Venenthrombose',
  graft: 'Bypass oder Stent',
  wound: 'Wunde',
  infection: 'Infektionszeichen',
  pain: 'starker Schmerz',
};
const cuffRules: Record<CuffRule, string> = {
  'call-first': 'den Anruf nie wegen einer Druckmessung aufschieben',
  'no-cuff': 'keine Manschette an dieser Extremität',
  'ask-first': 'vor einer Manschette die örtliche Regel klären; stattdessen Zehendruck oder Kurvenform',
  elsewhere: 'keine Manschette darüber; anderswo anlegen oder an der Zehe messen',
};

const settings: MethodWords = {
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
    options: threatNames('Europäischer Konsens 1991'),
  },
  severeIndex: {
    label: 'Knöchelindex schwer vermindert',
    options: { '0.40': 'bis 0,40', '0.30': 'bis 0,30' },
  },
  wrist: {
    label: 'Handgelenkindex auffällig',
    options: { '1.00': 'unter 1,00', '0.90': 'unter 0,90', '0.85': 'unter 0,85' },
  },
  finger: { label: 'Fingerindex auffällig', options: { '0.80': 'bis 0,80', '0.75': 'bis 0,75' } },
  wristDifference: {
    label: 'Handgelenkarterien verschieden',
    options: { '30': 'ab 30 mmHg', '20': 'ab 20 mmHg' },
  },
  armDrop: {
    label: 'Abfall vom Arm zum Handgelenk',
    options: { '10': 'über 10 mmHg', '20': 'über 20 mmHg' },
  },
  sideDifference: {
    label: 'Beine verschieden',
    options: { '20': 'um über 20 mmHg', '30': 'um über 30 mmHg' },
  },
};

const curves: Record<VolumeCurve, string> = {
  normal: 'normal',
  'notch-lost': 'Inzisur fehlt',
  rounded: 'abgerundet',
  flat: 'flach',
};

const statements = (unit: PressureUnit): Renderings<PressureStatement> => ({
  pressure: ({ site, side: of, value }) => `${sites[site]} ${side(of)} ${pressure(value, unit)}`,
  oxygen: ({ side: of, value }) => `Sauerstoffdruck am Fuß ${side(of)} ${pressure(value, unit)}`,
  'pressure-after': ({ site, side: of, value }) =>
    `${sites[site]} nach Belastung ${side(of)} ${pressure(value, unit)}`,
  'volume-curve': ({ side: of, shape }) => `Volumenkurve am Knöchel ${side(of)}: ${curves[shape]}`,
  'walk-completed': 'Gehtest vollständig',
  'walk-not-completed': 'Gehtest nicht vollständig',
  walked: ({ minutes }) => `${decimal(minutes)} Minuten gegangen`,
  'note-after': ({ note }) => `nach Belastung: ${note}`,
  note: ({ note }) => `Notiz: ${note}`,
});

/** What the index is divided by, in the accusative. */
function denominator(from: readonly Used[], unit: PressureUnit): string {
  const figures = from.map(({ mmHg }) => number(mmHg, unit)).join(' und ');
  const [only, other] = from;
  if (other) return `das Mittel beider Arme (${figures})`;
  return only ? `den Arm mit dem höheren Druck, ${side(only.side)} (${figures})` : '';
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
  ...indexWords({ number, decimal, bands, severe: 'schwer pathologisch' }),
  sums: (all) => `${list(all)}.`,
  siteAfter: (site) => `${site} nach Belastung`,
  denominator: (from, unit) => `Nenner: ${denominator(from, unit)}.`,
  used: 'Verwendete Zahlen sind unterstrichen.',
  noArm: 'Kein ABI ohne Armdruck.',
  oneArm: (missing) =>
    `Armdruck ${side(missing)} nicht erfasst: Ist er höher, liegt jeder Index niedriger als angegeben.`,
  incompressible: (s) =>
    `${sentence(side(s))}: Knöchelarterien nicht komprimierbar; Zehendruck (TBI) messen.`,
  bothArms: (found, unit) =>
    `Die Armarterien können beidseits erkrankt sein (${list(found.map((doubt) => render(doubts(unit), doubt)))}): Jeder Index kann dann zu hoch ausfallen. Absolute Knöchel- und Zehendrücke und Kurvenformen hängen nicht von den Armen ab.`,
  segment: (of, unit) => finding(of.side, render(segments(unit), of), of.levels),
  arm: (of, unit) => finding(of.side, render(arms(unit), of), of.levels),
  exercise,
  threat,
  plot: 'Druck vom Arm bis zur Zehe, rechts und links',
  plotSummary: (s, values, unit) =>
    `${sentence(side(s))}: ${values.map(([station, mmHg]) => `${stations[station]} ${number(mmHg, unit)}`).join(', ')} ${units[unit]}.`,
  refused: (field, typed, highest, unit) =>
    `${field}: „${typed}“ wurde nicht übernommen. Erwartet wird eine Zahl von 0 bis ${highest.replace('.', ',')} ${units[unit]}; 0, wo kein Signal zu hören ist.`,
  refusedArms:
    'Beide Arme bei 0: Dadurch lässt sich nichts teilen. Erwartet wird ein Druck über 0 an mindestens einem Arm.',
  settings,
  volumeCurve: 'Volumenkurve am Knöchel',
  curves,
  ...methodWords(settings, 'als Vorgabe'),
  methods: 'Methode und Grenzen',
  cuffs:
    'Keine Manschette über einer arteriovenösen Fistel oder einem Shunt, an einem Arm mit Lymphödem oder nach Lymphknotenausräumung, an einem Bein mit Verdacht auf tiefe Venenthrombose. Über einem Bypass oder Stent und bei distalem Bypass erst die örtliche Regel klären; bei Ulkus, Verbrennung, Fraktur oder starkem Schmerz die Manschette anderswo anlegen oder an der Zehe messen. Bei akut ischämischer Extremität den Anruf nie wegen einer Druckmessung aufschieben.',
  cuff: ({ limb: { kind, side: of }, code, rule }) =>
    `${sentence(anatomy.limbs[`${of} ${kind}`])}, ${cuffReasons[code]}: ${cuffRules[rule]}.`,
  technique:
    'Rückenlage, 5 bis 10 Minuten Ruhe, Fersen gestützt, Raum 19 bis 22 °C, 2 Stunden nicht geraucht; Manschette mindestens 40 % des Umfangs breit; Dopplersonde 8 bis 10 MHz. Reihenfolge: rechter Arm, rechts Tibialis posterior, rechts Dorsalis pedis, links Tibialis posterior, links Dorsalis pedis, linker Arm; den ersten Arm wiederholen.',
  caution:
    'Mediasklerose (Diabetes, chronische Niereninsuffizienz, Alter) ergibt falsch hohe Knöcheldrücke: Ein normaler ABI schließt eine pAVK nicht aus.',
  said: (statement, unit) => render(statements(unit), statement),
};
