import type { Side } from '../anatomy/index.js';
import type {
  Accuracy,
  BedsideNote,
  BedsideReading,
  ColdPhase,
  FalsePositives,
  Limits,
  RatePeople,
} from '../bedside/index.js';
import type { BedsideTestId, OutletSymptom, ScaleneWay, StopReason } from '../examination/index.js';
import type { BedsideLine, MeasuredStatement, RateRange } from '../statements/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { BedsideHow } from './en/bedside-how.js';
import type { ExaminationWords } from './examination.js';
import { paragraph, sentence } from './phrases.js';
import type { Speech } from './speech.js';
import { render, type Renderings } from './render.js';
import { together } from './terms.js';

/** The words of one line of the summary. */
interface LineWords {
  subject(test: BedsideTestId, side: Side): string;
  phrases(measured: readonly MeasuredStatement[]): readonly string[];
  note(note: string): string;
  read<Id extends BedsideTestId>(id: Id, reading: BedsideReading<Id>): string;
}

/** Says one side of one test: what was measured, any note, and what it means. */
function bedsideLine({ subject, phrases, note, read }: LineWords): (line: BedsideLine) => string {
  return (line) => {
    const what = [...phrases(line.measured), ...(line.note ? [note(line.note)] : [])];
    const found = what.length ? `${what.join('; ')}.` : '';
    return `${subject(line.test, line.side)}: ${paragraph([found, read(line.test, line.reading)])}`;
  };
}

/** The words of what was measured, and of published rates. */
export interface BedsideTable {
  readonly outcomes: Readonly<Record<FalsePositives['outcome'], string>>;
  readonly bounds: Readonly<Record<NonNullable<FalsePositives['bound']>, string>>;
  /** How long a position was held, and how the hand was. */
  over(seconds: string): string;
  readonly posture: string;
  /** Before a figure that is a bound. */
  readonly upTo: string;
  share(percent: string): string;
  fromTo(least: string, most: string): string;
  /** As they stand after a share of them, and at the head of several rates. */
  readonly people: Readonly<Record<RatePeople, string>>;
  readonly among: Readonly<Record<RatePeople, string>>;
  rate(share: string, people: string, outcome: string): string;
  rates(among: string, ranges: string): string;
  readonly found: Readonly<Record<Accuracy['of'], string>>;
  readonly cleared: Readonly<Record<Accuracy['of'], string>>;
  sensitivity(share: string, of: string): string;
  specificity(share: string, of: string): string;
  readonly measured: {
    readonly pale: string;
    readonly notPale: string;
    readonly red: string;
    readonly notRed: string;
    readonly incompetent: string;
    readonly noChange: string;
    readonly noSymptoms: string;
    readonly nothingFelt: string;
    readonly methods: Readonly<Record<'modified' | 'original', string>>;
    at(angle: string): string;
    held(time: string): string;
    armsUp(time: string): string;
    immersed(time: string): string;
    pink(time: string): string;
    stillPale(time: string): string;
    filled(time: string): string;
    stillEmpty(time: string): string;
    releasedPink(artery: string, time: string): string;
    releasedWhite(artery: string, time: string): string;
    tracing(artery: string, barbeau: string): string;
    water(celsius: string): string;
    phase(phase: string, time: string): string;
    rewarmed(minutes: string): string;
    pulseBefore(grade: string): string;
    pulseDuring(grade: string): string;
    symptomAt(symptom: string, time: string): string;
    stopped(by: string): string;
  };
  note(note: string): string;
  /** A limit that is usual. */
  usual(limit: string): string;
}

interface BedsideAround {
  readonly anatomy: Pick<AnatomyWords, 'arteries' | 'sides'>;
  readonly examination: Pick<ExaminationWords, 'grades'>;
  readonly speech: Speech;
  readonly how: Readonly<Record<BedsideTestId, BedsideHow>>;
  readonly readings: {
    readonly notes: Readonly<Record<BedsideNote, string>>;
    readonly phases: Readonly<Record<ColdPhase, string>>;
    readonly stops: Readonly<Record<StopReason, string>>;
    readonly symptoms: Readonly<Record<OutletSymptom, string>>;
    readonly ways: Readonly<Record<ScaleneWay, string>>;
    readonly secs: (seconds: number) => string;
    readonly readingWords: <Id extends BedsideTestId>(id: Id, reading: BedsideReading<Id>) => string;
  };
}

const UNITS: Readonly<Record<Limits['unit'], string>> = { s: 's', min: 'min', deg: '°' };

/** Words of the bedside tests, with the labels of their controls. */
export function bedsideFrom<L extends object>(
  labels: L,
  w: BedsideTable,
  { anatomy, examination, speech: { decimal, list }, how, readings }: BedsideAround,
) {
  const { notes, phases, stops, symptoms, ways, secs, readingWords } = readings;
  const limit = (value: number, unit: Limits['unit']): string =>
    `${decimal(value)}${unit === 'deg' ? '' : ' '}${UNITS[unit]}`;
  const percent = (fraction: number): string => w.share(`${Math.round(fraction * 100)}`);

  /** What parts a figure from a plain rate: the condition of the test, a bound, the number of people. */
  const provided = ({ condition: { over, posture } = {}, bound, count }: Partial<FalsePositives>): string => {
    const all = [
      ...(over === undefined ? [] : [w.over(decimal(over))]),
      ...(posture ? [w.posture] : []),
      ...(bound ? [w.bounds[bound]] : []),
      ...(count === undefined ? [] : [`n = ${count}`]),
    ];
    return all.length ? ` (${all.join(', ')})` : '';
  };
  const upTo = (bound: FalsePositives['bound']): string => (bound ? w.upTo : '');

  /** One rate; where sources differ, from the least to the most. */
  const range = ({ outcome, least, most, bound, condition }: RateRange): string => {
    const share = w.share(least === most ? decimal(most) : w.fromTo(decimal(least), decimal(most)));
    return `${upTo(bound)}${share} ${w.outcomes[outcome]}${provided({ bound, condition })}`;
  };

  const measured: Renderings<MeasuredStatement> = {
    pale: () => w.measured.pale,
    'not-pale': () => w.measured.notPale,
    red: () => w.measured.red,
    'not-red': () => w.measured.notRed,
    'incompetent-veins': () => w.measured.incompetent,
    'no-change': () => w.measured.noChange,
    'no-symptoms': () => w.measured.noSymptoms,
    'nothing-felt': () => w.measured.nothingFelt,
    angle: ({ angle }) => w.measured.at(decimal(angle)),
    time: ({ seconds }) => secs(seconds),
    held: ({ seconds }) => w.measured.held(secs(seconds)),
    'arms-up': ({ seconds }) => w.measured.armsUp(secs(seconds)),
    immersed: ({ seconds }) => w.measured.immersed(secs(seconds)),
    pink: ({ seconds }) => w.measured.pink(secs(seconds)),
    'still-pale': ({ seconds }) => w.measured.stillPale(secs(seconds)),
    filled: ({ seconds }) => w.measured.filled(secs(seconds)),
    'still-empty': ({ seconds }) => w.measured.stillEmpty(secs(seconds)),
    'hand-method': ({ method }) => w.measured.methods[method],
    'released-pink': ({ artery, seconds }) =>
      w.measured.releasedPink(anatomy.arteries[artery], secs(seconds)),
    'released-white': ({ artery, seconds }) =>
      w.measured.releasedWhite(anatomy.arteries[artery], secs(seconds)),
    tracing: ({ pressed, barbeau }) => w.measured.tracing(anatomy.arteries[pressed], barbeau),
    water: ({ celsius }) => w.measured.water(decimal(celsius)),
    phase: ({ phase, seconds }) => w.measured.phase(phases[phase], secs(seconds)),
    rewarmed: ({ minutes }) => w.measured.rewarmed(decimal(minutes)),
    'pulse-before': ({ grade }) => w.measured.pulseBefore(examination.grades[grade]),
    'pulse-during': ({ grade }) => w.measured.pulseDuring(examination.grades[grade]),
    symptoms: ({ symptoms: felt }) => felt.map((one) => symptoms[one]).join(', '),
    'symptom-at': ({ symptom, seconds }) => w.measured.symptomAt(symptoms[symptom], secs(seconds)),
    stopped: ({ by }) => w.measured.stopped(stops[by]),
    way: ({ way, found }) => `${ways[way]}: ${phrases(found).join(', ')}`,
  };
  const phrases = (found: readonly MeasuredStatement[]): string[] =>
    found.map((one) => render(measured, one));

  return together(labels, {
    how,
    named: (id: BedsideTestId, eponym: string | undefined) =>
      eponym ? `${how[id].name} (${eponym})` : how[id].name,
    read: readingWords,
    notes,
    ways,
    symptoms,
    stops,
    units: UNITS,
    limitOption: limit,
    usualLimit: (value: number, unit: Limits['unit']) => w.usual(limit(value, unit)),
    rate: (figure: FalsePositives) =>
      `${w.rate(
        sentence(`${upTo(figure.bound)}${w.share(decimal(figure.percent))}`),
        w.people[figure.people],
        w.outcomes[figure.outcome],
      )}${provided(figure)}`,
    /** The published rates in some people in one sentence; where sources differ, from the least to the most. */
    ratesInShort: (ranges: readonly RateRange[]) =>
      w.rates(w.among[ranges[0]?.people ?? 'healthy'], list(ranges.map(range))),
    accuracy: ({ of, sensitivity, specificity, condition }: Accuracy) =>
      `${w.sensitivity(percent(sensitivity), w.found[of])}, ${w.specificity(percent(specificity), w.cleared[of])}${provided({ condition })}.`,
    otherSide: (side: string, said: string) => `${sentence(side)}: ${said}`,
    /** One side of one test, with what it means. */
    line: bedsideLine({
      subject: (test, side) => `${how[test].name}, ${anatomy.sides[side]}`,
      phrases,
      note: (note) => w.note(note),
      read: readingWords,
    }),
  });
}
