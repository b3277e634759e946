import type { Json } from '../examination/index.js';
import type { UnreadCode } from '../statements/index.js';
import type { Found, Reading, Unread } from './found.js';
import { at, listAt, textAt } from './resource.js';
import { exactText, fhirTime } from './values.js';

/*
 * Whom a resource is about, when, and whether it stands: what decides that it is read at all.
 */

/** A resource of a bundle, and where it stands. */
export interface Entry {
  readonly resource: Json;
  readonly path: string;
}

/** Which findings of a bundle are wanted. */
export interface ReadOptions {
  /** The patient, by the reference that the bundle has, such as `Patient/123`. Findings about anyone else are not read. */
  readonly subject?: string;
  /** The day, as `2026-05-01` in the time of the place where it was found, of a bundle with findings of several. */
  readonly day?: string;
}

/** What the resources of a bundle are about, and when they were found. */
export interface Around {
  readonly subjects: ReadonlySet<string>;
  readonly days: ReadonlySet<string>;
  /** Whether the record that they make up says of itself that it was entered in error. */
  readonly isError: boolean;
}

/** Statuses of what is said and stands, of Observations and of answers to a form. */
const STANDS = ['final', 'amended', 'corrected', 'preliminary', 'completed', 'in-progress'];

function subjectOf(resource: unknown): string | undefined {
  const subject = at(resource, 'subject');
  const [system, value] = ['system', 'value'].map((name) => textAt(at(subject, 'identifier'), name));
  return textAt(subject, 'reference') ?? (value === undefined ? undefined : `${system ?? ''}|${value}`);
}

const isSame = (one: string, asked: string): boolean =>
  one === asked || one.endsWith(`/${asked}`) || asked.endsWith(`/${one}`);

/** The day on which something was found; of a span its first. */
function dayOf(resource: unknown): string | undefined {
  const time =
    textAt(resource, 'effectiveDateTime') ??
    textAt(resource, 'effectiveInstant') ??
    textAt(at(resource, 'effectivePeriod'), 'start') ??
    textAt(resource, 'authored');
  return time?.slice(0, 10);
}

/** What is around each of some resources. */
export function aroundOf(entries: readonly Entry[], isError: boolean): Around {
  const some = (of: (resource: unknown) => string | undefined): ReadonlySet<string> =>
    new Set(entries.flatMap(({ resource }) => of(resource) ?? []));
  return { subjects: some(subjectOf), days: some(dayOf), isError };
}

/** Why a resource is not read at all, if it is not. */
export function refusal(
  { resource }: Entry,
  { subject, day }: ReadOptions,
  { subjects, days, isError }: Around,
): UnreadCode | undefined {
  if (['modifierExtension', 'implicitRules', 'focus'].some((name) => at(resource, name) !== undefined))
    return 'modifier';
  const about = subjectOf(resource);
  if (subject !== undefined && about !== undefined && !isSame(about, subject)) return 'other-patient';
  if (subject === undefined && subjects.size > 1) return 'several-patients';
  const found = dayOf(resource);
  if (day !== undefined && found !== undefined && found !== day) return 'other-day';
  if (day === undefined && days.size > 1) return 'several-days';
  const status = textAt(resource, 'status') ?? '';
  return STANDS.includes(status) || (isError && status === 'entered-in-error') ? undefined : 'status';
}

/** What of the frame all Observations of another program share: when, and who examined. */
export function frameOf(entries: readonly Entry[]): Reading {
  const found: Found[] = [];
  const left: Unread[] = [];
  const times = new Map<string, string>();
  const names = new Map<string, string>();
  for (const { resource, path } of entries) {
    const time = exactText(resource, 'effectiveDateTime', fhirTime);
    if ('value' in time) times.set(String(time.value), `${path}.effectiveDateTime`);
    for (const performer of listAt(resource, 'performer')) {
      const name = textAt(performer, 'display');
      if (name) names.set(name, `${path}.performer`);
    }
    for (const name of ['effectivePeriod', 'effectiveInstant', 'effectiveTiming'])
      if (at(resource, name) !== undefined) left.push({ path: `${path}.${name}`, why: 'partial-time' });
  }
  const [time] = times;
  if (times.size > 1) for (const path of times.values()) left.push({ path, why: 'several' });
  else if (time && !time[0].includes('T')) left.push({ path: time[1], why: 'partial-time' });
  else if (time) found.push({ path: ['examinedAt'], value: time[0], at: time[1] });
  const [name] = names;
  if (names.size > 1) for (const path of names.values()) left.push({ path, why: 'several' });
  else if (name?.[0]) found.push({ path: ['examiner'], value: name[0], at: name[1] });
  return { found, unread: left };
}
