import type { Examination, Json } from '../examination/index.js';
import type { UnreadCode } from '../statements/index.js';
import { assembled } from './assemble.js';
import { SYSTEMS } from './codes.js';
import { changedDerived } from './read-derived.js';
import { type Found, joined, type Reading, type Unread, unread } from './found.js';
import { type Kept, positionOf, readKept, readOwn } from './read-own.js';
import { readStrange } from './read-strange.js';
import { at, codesIn, listAt, textAt } from './resource.js';
import { exactText, fhirTime } from './values.js';

/** Which findings of a bundle are wanted. */
export interface ReadOptions {
  /** The patient, by the reference that the bundle has, such as `Patient/123`. Findings about anyone else are not read. */
  readonly subject?: string;
  /** The day, as `2026-05-01` in the time of the place where it was found, of a bundle with findings of several. */
  readonly day?: string;
}

/** What was read of a bundle. */
export interface FromBundle {
  readonly examination: Examination;
  /** Everything that was not read, in the order of the bundle. */
  readonly unread: readonly Unread[];
}

interface Entry {
  readonly resource: Json;
  readonly path: string;
}

/** Statuses of what is said and stands. */
const STANDS = ['final', 'amended', 'corrected', 'preliminary'];

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
    textAt(at(resource, 'effectivePeriod'), 'start');
  return time?.slice(0, 10);
}

const isDerived = (resource: unknown): boolean => codesIn(at(resource, 'code'), SYSTEMS.derived).length > 0;
const ownCodes = (resource: unknown): readonly string[] => codesIn(at(resource, 'code'), SYSTEMS.field);

/** Why an Observation is not read at all, if it is not. */
function refusal(
  { resource }: Entry,
  { subject, day }: ReadOptions,
  { subjects, days, isError }: { subjects: ReadonlySet<string>; days: ReadonlySet<string>; isError: boolean },
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
function frameOf(entries: readonly Entry[]): Reading {
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

/** The Composition of a document of ours says nothing that its Observations do not. */
function isOurComposition(resource: unknown): boolean {
  return (
    textAt(resource, 'resourceType') === 'Composition' &&
    codesIn(at(resource, 'type'), SYSTEMS.field).includes('record')
  );
}

function entriesOf(bundle: unknown): readonly Entry[] | undefined {
  if (textAt(bundle, 'resourceType') !== 'Bundle') return undefined;
  return listAt(bundle, 'entry').map((entry, i) => ({
    resource: at(entry, 'resource') ?? null,
    path: `entry[${i}].resource`,
  }));
}

/** By the place of what is told, entries in their order. */
function inOrder(all: readonly Unread[]): readonly Unread[] {
  const entry = ({ path }: Unread): number => Number(/^entry\[(\d+)\]/.exec(path)?.[1] ?? -1);
  const seen = new Map(all.map((one) => [`${one.path} ${one.why}`, one]));
  return [...seen.values()].sort((a, b) => entry(a) - entry(b));
}

/**
 * Reads a FHIR Bundle, R4 or R5, of this library or of others. Never throws. Of other programs' Observations it reads those whose codes,
 * side, scale and unit leave no doubt; everything else is listed with its place and why. Nothing is guessed, and of two values for one
 * thing neither is taken.
 * @param bundle JSON of any kind
 */
export function fromBundle(bundle: unknown, options: ReadOptions = {}): FromBundle {
  const entries = entriesOf(bundle);
  if (!entries) return { ...assembled([], []), unread: [{ path: '', why: 'no-bundle' }] };
  const isObservation = ({ resource }: Entry): boolean => textAt(resource, 'resourceType') === 'Observation';
  const observations = entries.filter(isObservation);
  const others = entries.filter((one) => !isObservation(one) && !isOurComposition(one.resource));
  const some = (of: (resource: unknown) => string | undefined): ReadonlySet<string> =>
    new Set(observations.flatMap(({ resource }) => of(resource) ?? []));
  const records = observations.filter(({ resource }) => ownCodes(resource).includes('record'));
  const isError = records.some(({ resource }) => textAt(resource, 'status') === 'entered-in-error');
  const around = { subjects: some(subjectOf), days: some(dayOf), isError };
  const readings: Reading[] = others.map(({ path }) => unread(path, 'other-resource'));
  const kept: Kept[] = [];
  const derived: Entry[] = [];
  const strange: Entry[] = [];
  // Entries of lists that name no place come after those that do.
  let spare = observations.reduce((most, { resource }) => Math.max(most, positionOf(resource) ?? 0), 0);
  for (const entry of observations) {
    const { resource, path } = entry;
    const why = refusal(entry, options, around);
    const codes = ownCodes(resource);
    if (why) readings.push(unread(path, why));
    else if (isDerived(resource)) derived.push(entry);
    else if (codes.length > 1) readings.push(unread(`${path}.code`, 'contradicts'));
    else if (codes[0] !== undefined) {
      readings.push(readOwn(resource, codes[0], path, (spare += 1)));
      if (codes[0] === 'record') {
        const own = readKept(resource, path);
        for (const one of own.kept) kept.push(one);
        readings.push({ found: [], unread: own.unread });
      }
    } else strange.push(entry);
  }
  readings.push(...strange.map(({ resource, path }) => readStrange(resource, path)));
  if (records.length === 0) readings.push(frameOf(strange));
  const all = joined(readings);
  const { examination, unread: refused } = assembled(all.found, kept);
  const changed = changedDerived(examination, derived);
  return { examination, unread: inOrder([...all.unread, ...refused, ...changed]) };
}
