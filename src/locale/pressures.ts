import type { Level, Side } from '../anatomy/index.js';
import type {
  Method,
  NoPressure,
  Pressure,
  PressureSite,
  PressureUnit,
  VolumeCurve,
} from '../examination/index.js';
import {
  type ArmFinding,
  type ArmsDoubt,
  type Band,
  type ExerciseReading,
  fromMmHg,
  type IndexChange,
  type IndexKind,
  type IndexReading,
  type LegStation,
  type SegmentFinding,
  type Threat,
  type Used,
  type Wanted,
} from '../pressures/index.js';
import {
  type ExerciseChange,
  exerciseChanges,
  type MethodStatement,
  type PressureStatement,
  type UsedMethod,
} from '../statements/index.js';
import type { CuffCaution, CuffCautionCode, CuffRule } from '../triage/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { ExaminationWords } from './examination.js';
import { paragraph, sentence } from './phrases.js';
import type { Speech } from './speech.js';
import { render, type Renderings } from './render.js';
import { together } from './terms.js';
import { eachWord } from './words.js';

type Of<K extends string> = Readonly<Record<K, string>>;
type Station = LegStation | 'arm';
type Change = Exclude<ExerciseChange, { readonly code: 'index-after' }>;
/** Puts a pressure with its unit, or other words, into a phrase. */
type With = (words: string) => string;

/** What a choice of method is called, and each of its options. */
export type MethodWords = {
  readonly [K in keyof Method]-?: {
    readonly label: string;
    readonly options: Of<NonNullable<Method[K]>>;
  };
};
type MethodLabels = Of<keyof Method>;
type MethodOptions = { readonly [K in keyof Method]-?: MethodWords[K]['options'] };

/** The words and sentences in which a language tells of pressures. */
export interface PressureTable {
  readonly sites: Of<PressureSite>;
  readonly stations: Of<Station>;
  readonly kinds: Of<IndexKind>;
  readonly bands: Of<Band>;
  readonly severe: string;
  readonly curves: Of<VolumeCurve>;
  /** Why there is no number, beside what keeps a site from being examined. */
  readonly noPressure: Of<Exclude<NoPressure, keyof ExaminationWords['reasons']>>;
  at(site: string, side: string): string;
  atAfter(site: string, side: string): string;
  /** What a finding points to, with the levels as alternatives. */
  readonly pointsTo: With;
  /** In its place where no level is left out. */
  readonly anyLevel: string;
  thighLow(index: string, limit: string): string;
  drop(by: string, from: string, at: string, strength: string): string;
  readonly strengths: Of<Extract<SegmentFinding, { code: 'drop' }>['strength']>;
  sideDifference(by: string, at: string): string;
  armDifference(side: string, by: string): string;
  armDrop(side: string, by: string): string;
  wristDifference(side: string, artery: string, by: string): string;
  readonly ways: Of<Change['way']>;
  ankleChange(way: string, by: string): string;
  indexChange(way: string, percent: string): string;
  readonly indexAfter: With;
  readonly verdicts: Of<ExerciseReading['code']>;
  readonly times: Of<ExerciseReading['missing'][number]['when']>;
  afterExercise: With;
  readonly missing: With;
  readonly measures: Of<Threat['measure']>;
  readonly atMost: With;
  readonly below: With;
  /** Pressures or indices of one side, each with the limit it lies beyond. */
  threat(measured: string): string;
  /** A flat volume curve at the ankle, in the range of a threatened limb. */
  readonly flatCurve: string;
  /** A change of the ankle index since the visit before that is real. */
  indexSince(now: string, before: string, by: string, fell: boolean): string;
  ankleAboveLowArms(side: string, index: string, below: string): string;
  readonly armsApart: With;
  readonly armPulses: string;
  readonly lowThoughHypertensive: With;
  readonly belowRecorded: With;
  readonly bothArms: With;
  readonly cuffReasons: Of<CuffCautionCode>;
  readonly cuffRules: Of<CuffRule>;
  readonly methodLabels: MethodLabels;
  readonly methodOptions: MethodOptions;
  readonly byDefault: string;
  readonly oxygen: With;
  volumeCurve(side: string, shape: string): string;
  readonly walked: Of<'walk-completed' | 'walk-not-completed'>;
  readonly minutes: With;
  readonly noteAfter: With;
  readonly note: With;
  readonly mean: With;
  higher(side: string, figure: string): string;
  readonly denominator: With;
  readonly oneArm: With;
  readonly incompressible: string;
  readonly whyFor: With;
  readonly siteAfter: With;
  refused(field: string, typed: string, highest: string): string;
}

interface Around {
  readonly anatomy: Pick<AnatomyWords, 'arteries' | 'levels' | 'limbs' | 'sides'>;
  readonly examination: Pick<ExaminationWords, 'reasons'>;
  readonly speech: Speech;
}

/** A finding that leaves all of them open does not localise. */
const LEVELS_OF_A_LEG = 3;

const UNITS: Of<PressureUnit> = { mmHg: 'mmHg', kPa: 'kPa' };

/** Each choice of method with its options, looked up when they are read. */
function settingsFrom(w: Pick<PressureTable, 'methodLabels' | 'methodOptions'>): MethodWords {
  const fields = Object.keys(w.methodOptions) as (keyof Method)[];
  const entries = fields.map((field) => [
    field,
    {
      get label() {
        return w.methodLabels[field];
      },
      get options() {
        return w.methodOptions[field];
      },
    },
  ]);
  return Object.fromEntries(entries) as MethodWords;
}

/** Words of the pressures, with the labels of their controls. */
export function pressuresFrom<L extends object>(
  labels: L,
  w: PressureTable,
  { anatomy, examination, speech: { decimal, either, list } }: Around,
) {
  const { sides } = anatomy;
  /** kPa to one decimal, mmHg as they were recorded. */
  const number = (mmHg: number, unit: PressureUnit): string =>
    unit === 'kPa' ? decimal(fromMmHg(mmHg, unit), 1) : decimal(fromMmHg(mmHg, unit));
  const withUnit = (mmHg: number, unit: PressureUnit): string => `${number(mmHg, unit)} ${UNITS[unit]}`;
  const noPressure = together(w.noPressure, examination.reasons) as Of<NoPressure>;
  /** A pressure with its unit, or why there is none. */
  const pressure = (value: Pressure, unit: PressureUnit): string =>
    typeof value === 'number' ? withUnit(value, unit) : noPressure[value];
  const place = ({ side, site }: Wanted): string => w.at(w.sites[site], sides[side]);
  const ofSide = (side: Side, said: string): string => `${sentence(sides[side])}: ${said}`;

  /** What an index is called, empty where it could not be judged. */
  const band = (reading: Pick<IndexReading, 'band' | 'severe'>): string =>
    reading.severe ? w.severe : reading.band ? w.bands[reading.band] : '';

  const pointing = (found: string, levels: readonly Level[]): string => {
    const names = levels.map((level) => anatomy.levels[level]);
    return `${found}; ${names.length < LEVELS_OF_A_LEG ? w.pointsTo(either(names)) : w.anyLevel}.`;
  };
  const segments = (unit: PressureUnit): Renderings<SegmentFinding> => ({
    'thigh-low': ({ index, limit }) => w.thighLow(decimal(index, 2), decimal(limit, 1)),
    drop: ({ mmHg, from, at, strength }) =>
      w.drop(withUnit(mmHg, unit), w.stations[from], w.stations[at], w.strengths[strength]),
    'side-difference': ({ mmHg, at }) => w.sideDifference(withUnit(mmHg, unit), w.stations[at]),
  });
  const arms = (unit: PressureUnit): Renderings<ArmFinding> => ({
    'arm-difference': ({ side, mmHg }) => w.armDifference(sides[side], withUnit(mmHg, unit)),
    'arm-drop': ({ side, mmHg }) => w.armDrop(sides[side], withUnit(mmHg, unit)),
    'wrist-difference': ({ side, artery, mmHg }) =>
      w.wristDifference(sides[side], anatomy.arteries[artery], withUnit(mmHg, unit)),
  });

  const changes = (unit: PressureUnit): Renderings<ExerciseChange> => ({
    ankle: ({ way, mmHg }) => w.ankleChange(w.ways[way], withUnit(mmHg, unit)),
    index: ({ way, percent }) => w.indexChange(w.ways[way], decimal(percent)),
    'index-after': ({ index }) => w.indexAfter(decimal(index, 2)),
  });
  const exercise = (reading: ExerciseReading, unit: PressureUnit): string => {
    const found = exerciseChanges(reading).map((change) => render(changes(unit), change));
    const wanted = reading.missing.map((one) => `${place(one)} ${w.times[one.when]}`);
    return paragraph([
      `${w.afterExercise(sentence(sides[reading.side]))}: ${[...found, w.verdicts[reading.code]].join('; ')}.`,
      wanted.length ? w.missing(list(wanted)) : '',
    ]);
  };

  const threat = (side: Side, threats: readonly Threat[], unit: PressureUnit): string => {
    const measured = threats.map(({ measure, value, limit, inclusive }) => {
      const show = (n: number): string => (measure === 'index' ? decimal(n, 2) : withUnit(n, unit));
      return `${w.measures[measure]} ${show(value)}, ${w[inclusive ? 'atMost' : 'below'](show(limit))}`;
    });
    return ofSide(side, w.threat(measured.join('; ')));
  };

  const doubts = (unit: PressureUnit): Renderings<ArmsDoubt> => ({
    'ankle-above-low-arms': ({ side, index, below }) =>
      w.ankleAboveLowArms(sides[side], decimal(index, 2), withUnit(below, unit)),
    'arms-apart': ({ mmHg }) => w.armsApart(withUnit(mmHg, unit)),
    'arm-pulses': () => w.armPulses,
    'low-though-hypertensive': ({ below }) => w.lowThoughHypertensive(withUnit(below, unit)),
    'below-recorded': ({ mmHg }) => w.belowRecorded(withUnit(mmHg, unit)),
  });

  const settings = settingsFrom(w);
  const method = ({ field, option }: MethodStatement): string =>
    `${settings[field].label}: ${(settings[field].options as Readonly<Record<string, string>>)[option] ?? ''}`;
  /** What was chosen, and then what holds because nobody chose. */
  const methodsUsed = (all: readonly UsedMethod[]): string => {
    const said = (byDefault: boolean): string =>
      all
        .filter((one) => one.byDefault === byDefault)
        .map((one) => method(one.method))
        .join('; ');
    const [chosen, usual] = [said(false), said(true)];
    return paragraph([chosen && `${chosen}.`, usual && `${sentence(w.byDefault)}: ${usual}.`]);
  };

  const statements = (unit: PressureUnit): Renderings<PressureStatement> => ({
    pressure: ({ site, side, value }) => `${place({ site, side })} ${pressure(value, unit)}`,
    oxygen: ({ side, value }) => `${w.oxygen(sides[side])} ${pressure(value, unit)}`,
    'pressure-after': ({ site, side, value }) =>
      `${w.atAfter(w.sites[site], sides[side])} ${pressure(value, unit)}`,
    'volume-curve': ({ side, shape }) => w.volumeCurve(sides[side], w.curves[shape]),
    'walk-completed': ({ code }) => w.walked[code],
    'walk-not-completed': ({ code }) => w.walked[code],
    walked: ({ minutes }) => w.minutes(decimal(minutes)),
    'note-after': ({ note }) => w.noteAfter(note),
    note: ({ note }) => w.note(note),
  });

  /** What the higher arm, or the mean of both, comes to. */
  const denominator = (from: readonly Used[], unit: PressureUnit): string => {
    const figures = list(from.map(({ mmHg }) => number(mmHg, unit)));
    const [only, other] = from;
    if (other) return w.mean(figures);
    return only ? w.higher(sides[only.side], figures) : '';
  };

  return together(labels, {
    units: UNITS,
    get sites() {
      return eachWord(w.sites, sentence);
    },
    get stations() {
      return eachWord(w.stations, sentence);
    },
    kinds: w.kinds,
    bands: w.bands,
    curves: w.curves,
    noPressure,
    /** Choices where sources disagree, in the order in which they are offered. */
    settings,
    get byDefault() {
      return w.byDefault;
    },
    field: (site: string, side: Side) => `${site}, ${sides[side]}`,
    whyFor: (field: string) => w.whyFor(field),
    number,
    pressure,
    band,
    /** An index to two decimals and what it is called. */
    index: (reading: IndexReading): string =>
      [reading.value === undefined ? '' : decimal(reading.value, 2), band(reading)]
        .filter(Boolean)
        .join(', '),
    /** Which pressures went into the index, as a sum; empty where one is missing. */
    sum: ({ numerator, denominator: divisor }: IndexReading, unit: PressureUnit): string =>
      numerator && divisor ? `${number(numerator.mmHg, unit)} ÷ ${number(divisor.mmHg, unit)}` : '',
    sums: (all: readonly string[]) => `${list(all)}.`,
    siteAfter: (site: string) => w.siteAfter(site),
    denominator: (from: readonly Used[], unit: PressureUnit) => w.denominator(denominator(from, unit)),
    oneArm: (missing: Side) => sentence(w.oneArm(sides[missing])),
    incompressible: (side: Side) => ofSide(side, w.incompressible),
    /** Beside every index while both arms may be obstructed. */
    bothArms: (found: readonly ArmsDoubt[], unit: PressureUnit) =>
      w.bothArms(list(found.map((doubt) => render(doubts(unit), doubt)))),
    segment: (finding: SegmentFinding, unit: PressureUnit) =>
      ofSide(finding.side, pointing(render(segments(unit), finding), finding.levels)),
    arm: (finding: ArmFinding, unit: PressureUnit) =>
      sentence(pointing(render(arms(unit), finding), finding.levels)),
    exercise,
    threat,
    flatCurve: (side: Side) => ofSide(side, w.flatCurve),
    indexSince: ({ side, value, before, by }: IndexChange) =>
      ofSide(side, w.indexSince(decimal(value, 2), decimal(before, 2), decimal(Math.abs(by), 2), by < 0)),
    plotSummary: (
      side: Side,
      values: readonly (readonly [Station, number])[],
      unit: PressureUnit,
    ): string => {
      const figures = values.map(([station, mmHg]) => `${w.stations[station]} ${number(mmHg, unit)}`);
      return ofSide(side, `${figures.join(', ')} ${UNITS[unit]}.`);
    },
    /** A value that was typed and cannot be a pressure. */
    refused: (field: string, typed: string, highest: string, unit: PressureUnit) =>
      w.refused(field, typed, `${decimal(highest)} ${UNITS[unit]}`),
    /** What it is about, and what was chosen. */
    method,
    /** The same of each, and which of them are the default because nobody chose. */
    methodsUsed,
    /** Why no cuff belongs on a limb, or not before something else. */
    cuff: ({ limb: { kind, side }, code, rule }: CuffCaution) =>
      `${sentence(anatomy.limbs[`${side} ${kind}`])}, ${w.cuffReasons[code]}: ${w.cuffRules[rule]}.`,
    said: (statement: PressureStatement, unit: PressureUnit) => render(statements(unit), statement),
  });
}
