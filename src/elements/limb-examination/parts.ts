import {
  type Bedside,
  type BedsideTestId,
  type Examination,
  type Json,
  type PressuresPart,
  putBack,
} from '../../examination/index.js';
import type { ActKind } from '../../localisation/index.js';
import type { PartId } from '../../locale/whole.js';
import type { QuestionCode } from '../../triage/index.js';
import type { HistoryPart } from '../limb-history/element.js';

/** The parts in the order of the bedside. */
export const PARTS: readonly PartId[] = [
  'history',
  'inspection',
  'pulses',
  'bedside',
  'pressures',
  'staging',
  'summary',
];

/** What its parts record. */
export const RECORDED: readonly ActKind[] = [
  'feel',
  'listen',
  'delay',
  'onset',
  'inspect',
  'doppler',
  'pain-level',
  'ankle-pressure',
  'toe-pressure',
  'arm-pressures',
];

/** The part in which each question is answered. */
export const ANSWERED_IN: Readonly<Record<QuestionCode, PartId>> = {
  onset: 'history',
  movement: 'inspection',
  sensation: 'inspection',
  'arterial-doppler': 'pulses',
  'venous-doppler': 'inspection',
  'other-pulses': 'pulses',
  'passive-stretch': 'inspection',
  background: 'history',
  'distal-pulses': 'pulses',
  'ankle-index': 'pressures',
  'forearm-index': 'pressures',
  'other-side-index': 'pressures',
  'abdominal-or-back-pain': 'history',
  'chest-or-back-pain': 'history',
  'other-popliteal-and-aorta': 'pulses',
  'pad-tests': 'pressures',
  toe: 'pressures',
  diabetes: 'history',
  'old-deficit': 'inspection',
  'marks-unrecorded': 'inspection',
};

function leaves(value: unknown): number {
  if (value === undefined) return 0;
  if (Array.isArray(value)) return 1;
  if (typeof value !== 'object' || value === null) return 1;
  return Object.values(value).reduce((sum: number, field) => sum + leaves(field), 0);
}

/** Number of recorded items of a part: values, sites, or sides of tests. */
export function recordedIn(part: PartId, examination: Examination): number {
  const { onset, history, context, circulation, inspection, pulses, bruits, delays } = examination;
  const { bedside, pressures, staging } = examination;
  switch (part) {
    case 'history':
      return leaves({ onset, history, context, circulation });
    case 'inspection':
      return leaves(inspection);
    case 'pulses':
      return sites(pulses) + sites(bruits) + leaves(delays);
    case 'bedside':
      return sides(bedside);
    case 'pressures':
      return leaves({ ...pressures, unit: undefined });
    case 'staging':
      return leaves(staging && mapStages(staging));
    case 'summary':
      return 0;
  }
}

function sites(part: object | undefined): number {
  return Object.values(part ?? {}).reduce((sum: number, both: object) => sum + Object.keys(both).length, 0);
}

function sides(bedside: Bedside | undefined): number {
  return (Object.keys(bedside ?? {}) as BedsideTestId[]).reduce(
    (sum, test) => sum + Object.keys(bedside?.[test] ?? {}).length,
    0,
  );
}

function mapStages(staging: NonNullable<Examination['staging']>): unknown {
  return Object.values(staging).map((limb) =>
    Object.values(limb ?? {}).map((side) => Object.keys(side ?? {})),
  );
}

const OF_HISTORY = ['onset', 'history', 'context', 'circulation'] as const;

/** The slice of a record that the history part edits, memoized by content. */
export class HistorySlice {
  #last: HistoryPart | undefined;

  /** What the history's element takes. */
  of(examination: Examination): HistoryPart | undefined {
    const carried = examination.carried?.filter(({ path }) =>
      (OF_HISTORY as readonly unknown[]).includes(path[0]),
    );
    return withUnknown(this.#slice(examination), { ...examination, carried: carried ?? [] });
  }

  #slice(examination: Examination): HistoryPart | undefined {
    const last = this.#last;
    if (OF_HISTORY.every((field) => last?.[field] === examination[field])) return last;
    const filled = OF_HISTORY.filter((field) => examination[field] !== undefined);
    const slice = Object.fromEntries(filled.map((field) => [field, examination[field]])) as HistoryPart;
    this.#last = Object.keys(slice).length ? slice : undefined;
    return this.#last;
  }
}

/**
 * A part of the record as the element that edits it takes it: what this version does not know stands at its place again.
 * @param at the path of the part
 */
export function withUnknown<T extends object>(
  part: T | undefined,
  { carried = [] }: Examination,
  ...at: readonly string[]
): T | undefined {
  const own = carried.filter(({ path }) => at.every((key, i) => path[i] === key));
  if (!own.length) return part;
  const inward = own.map(({ path, value }) => ({ path: path.slice(at.length), value }));
  return putBack((part ?? {}) as unknown as Json, inward) as T | undefined;
}

/** The pressures of a record with the methods they are read by, as their element takes them. */
export function pressuresPart(examination: Examination): PressuresPart | undefined {
  const method = withUnknown(examination.method, examination, 'method');
  const pressures = withUnknown(examination.pressures, examination, 'pressures');
  return method ? { ...pressures, method } : pressures;
}

/** The fields of the record that the element of the pressures edits. */
export function ofPressuresPart(part: PressuresPart = {}): Pick<Examination, 'pressures' | 'method'> {
  const { method, ...pressures } = part;
  return { pressures: Object.keys(pressures).length ? pressures : undefined, method } as Pick<
    Examination,
    'pressures' | 'method'
  >;
}

/** The set with one more, or without it where it was in. */
export function toggled<T>(set: ReadonlySet<T>, one: T): ReadonlySet<T> {
  return set.has(one) ? new Set([...set].filter((other) => other !== one)) : new Set([...set, one]);
}
