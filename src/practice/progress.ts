import { csvOf } from '../interchange/csv.js';
import { PRACTICE_CAUSES, type PracticeCause } from './causes.js';
import type { HiddenPatient } from './hidden.js';
import { type MarkedPart, MARKED_PARTS, markRound } from './marks.js';
import { type Round, secondsAt } from './round.js';
import type { TrueLesion } from './truth.js';

/** One patient that was done, as it is kept. */
export interface Result {
  readonly patient: string;
  readonly points: number;
  readonly of: number;
  /** Points by part, of those that the patient had. */
  readonly parts: Readonly<Partial<Record<MarkedPart, readonly [points: number, of: number]>>>;
  /** Red flags missed and cautions ignored. */
  readonly flagsMissed: number;
  readonly cautions: number;
  /** Acts, and seconds at the bedside. */
  readonly acts: number;
  readonly seconds: number;
  /** Limbs and levels that were truly diseased and show, such as `left leg femoro-popliteal`. */
  readonly levels: readonly string[];
  /** Those of them that were named on a limb that was examined. Missing in results of earlier versions. */
  readonly located?: readonly string[];
  /** Parts that were not answered. Missing in results of earlier versions. */
  readonly open?: readonly MarkedPart[];
  readonly causeNamed?: PracticeCause;
  /** The causes that the findings leave open, the patient's own first. */
  readonly causes?: readonly PracticeCause[];
  /** When, ISO 8601; the page's own clock. */
  readonly at?: string;
}

const nameOf = ({ limb, levels }: TrueLesion): string => `${limb} ${levels[0]}`;

/** A round as it is kept. */
export function resultOf(patient: HiddenPatient, round: Round, at?: string): Result {
  const sheet = markRound(patient, round);
  const { cause } = round.answer ?? {};
  return {
    patient: patient.code,
    points: sheet.points,
    of: sheet.of,
    parts: Object.fromEntries(sheet.parts.map(({ part, points, of }) => [part, [points, of] as const])),
    flagsMissed: sheet.missed.length,
    cautions: sheet.cautions.length,
    acts: round.acts.length,
    seconds: secondsAt(round),
    levels: sheet.right.lesions.map(nameOf),
    located: sheet.located.map(nameOf),
    open: sheet.parts.flatMap(({ part, open }) => (open ? [part] : [])),
    ...(cause && { causeNamed: cause }),
    causes: sheet.right.causes,
    ...(at && { at }),
  };
}

const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value >= 0;
const isShare = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && value.every(isCount);

const isList = (value: unknown, words?: readonly string[]): boolean =>
  Array.isArray(value) &&
  value.every((one: unknown) => typeof one === 'string' && (!words || words.includes(one)));
/** What later versions added is missing, or right. */
const isAdded = ({ located, open, causeNamed, causes }: Result): boolean =>
  (located === undefined || isList(located)) &&
  (open === undefined || isList(open, MARKED_PARTS)) &&
  (causeNamed === undefined || PRACTICE_CAUSES.includes(causeNamed)) &&
  (causes === undefined || isList(causes, PRACTICE_CAUSES));

/** Most results that are kept; the oldest go first. */
export const MOST_RESULTS = 500;

/** Reads results that were kept; what is none is left out. */
export function readResults(value: unknown): readonly Result[] {
  if (!Array.isArray(value)) return [];
  return value
    .filter((one): one is Result => {
      if (typeof one !== 'object' || one === null) return false;
      const { patient, points, of, parts, flagsMissed, cautions, acts, seconds, levels, at } = one as Result;
      return (
        typeof patient === 'string' &&
        [points, of, flagsMissed, cautions, acts, seconds].every(isCount) &&
        typeof parts === 'object' &&
        parts !== null &&
        Object.entries(parts).every(
          ([name, share]) => (MARKED_PARTS as readonly string[]).includes(name) && isShare(share),
        ) &&
        isList(levels) &&
        isAdded(one as Result) &&
        (at === undefined || typeof at === 'string')
      );
    })
    .slice(-MOST_RESULTS);
}

const COLUMNS = ['patient', 'points', 'of', 'flagsMissed', 'cautions', 'acts', 'seconds', 'at'] as const;

/** Results as CSV (RFC 4180), a row each, with a heading row; the names of the columns are English and do not change. */
export function resultsCSV(results: readonly Result[]): string {
  const heading = [
    ...COLUMNS,
    ...MARKED_PARTS.flatMap((part) => [part, `${part} of`]),
    ...['levels', 'levels located', 'not answered', 'cause named', 'causes that fit'],
  ];
  const rows = results.map((result): readonly (string | number)[] => [
    ...COLUMNS.map((name) => result[name] ?? ''),
    ...MARKED_PARTS.flatMap((part): readonly (string | number)[] => result.parts[part] ?? ['', '']),
    result.levels.join('; '),
    (result.located ?? []).join('; '),
    (result.open ?? []).join('; '),
    result.causeNamed ?? '',
    (result.causes ?? []).join('; '),
  ]);
  return csvOf([heading, ...rows]);
}

/** What a learner's results come to, part by part. */
export interface Tally {
  readonly part: MarkedPart;
  readonly points: number;
  readonly of: number;
}

export function tallyOf(results: readonly Result[]): readonly Tally[] {
  return MARKED_PARTS.flatMap((part): Tally[] => {
    const own = results.flatMap(({ parts }) => (parts[part] ? [parts[part]] : []));
    if (!own.length) return [];
    return [
      {
        part,
        points: own.reduce((sum, [points]) => sum + points, 0),
        of: own.reduce((sum, [, of]) => sum + of, 0),
      },
    ];
  });
}
