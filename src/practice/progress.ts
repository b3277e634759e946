import type { LimbKey } from '../anatomy/index.js';
import type { HiddenPatient } from './hidden.js';
import { type MarkedPart, MARKED_PARTS, type MarkSheet, markRound } from './marks.js';
import { type Round, secondsAt } from './round.js';

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
  /** Limbs and levels that were truly diseased, for what is missed most. */
  readonly levels: readonly string[];
  /** When, ISO 8601; the page's own clock. */
  readonly at?: string;
}

/** A round as it is kept. */
export function resultOf(patient: HiddenPatient, round: Round, at?: string): Result {
  const sheet: MarkSheet = markRound(patient, round);
  return {
    patient: patient.code,
    points: sheet.points,
    of: sheet.of,
    parts: Object.fromEntries(sheet.parts.map(({ part, points, of }) => [part, [points, of] as const])),
    flagsMissed: sheet.missed.length,
    cautions: sheet.cautions.length,
    acts: round.acts.length,
    seconds: secondsAt(round),
    levels: sheet.right.lesions.map(
      ({ limb, levels }: { limb: LimbKey; levels: readonly string[] }) => `${limb} ${levels[0]}`,
    ),
    ...(at && { at }),
  };
}

const isCount = (value: unknown): value is number =>
  typeof value === 'number' && Number.isFinite(value) && value >= 0;
const isShare = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && value.every(isCount);

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
        Object.entries(parts).every(
          ([name, share]) => (MARKED_PARTS as readonly string[]).includes(name) && isShare(share),
        ) &&
        Array.isArray(levels) &&
        levels.every((level) => typeof level === 'string') &&
        (at === undefined || typeof at === 'string')
      );
    })
    .slice(-MOST_RESULTS);
}

const COLUMNS = ['patient', 'points', 'of', 'flagsMissed', 'cautions', 'acts', 'seconds', 'at'] as const;

/** A cell by RFC 4180, with a text that a spreadsheet would take for a formula put in as text. */
function cell(value: string | number): string {
  const text = typeof value === 'string' && /^[=+\-@\t\r]/.test(value) ? `'${value}` : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Results as CSV (RFC 4180), a row each, with a heading row; the names of the columns are English and do not change. */
export function resultsCSV(results: readonly Result[]): string {
  const heading = [...COLUMNS, ...MARKED_PARTS.flatMap((part) => [part, `${part} of`]), 'levels'];
  const rows = results.map((result): readonly (string | number)[] => [
    ...COLUMNS.map((name) => result[name] ?? ''),
    ...MARKED_PARTS.flatMap((part): readonly (string | number)[] => result.parts[part] ?? ['', '']),
    result.levels.join('; '),
  ]);
  return [heading, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
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
