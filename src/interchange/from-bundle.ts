import { assembled } from './assemble.js';
import { SYSTEMS } from './codes.js';
import { changedDerived } from './read-derived.js';
import { isOfForm } from './form/read-answers.js';
import { readResponse } from './form/read-response.js';
import { type FromBundle, joined, type Reading, type Unread, unread } from './found.js';
import type { Kept } from './kept.js';
import { aroundOf, type Entry, frameOf, type ReadOptions, refusal } from './read-frame.js';
import { positionOf, readKept, readOwn } from './read-own.js';
import { readStrange } from './read-strange.js';
import { at, codesIn, listAt, textAt } from './resource.js';

const isDerived = (resource: unknown): boolean => codesIn(at(resource, 'code'), SYSTEMS.derived).length > 0;
const ownCodes = (resource: unknown): readonly string[] => codesIn(at(resource, 'code'), SYSTEMS.field);

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
  const records = observations.filter(({ resource }) => ownCodes(resource).includes('record'));
  // Beside Observations of ours the answers to the form would say all of it a second time.
  const answers = records.length ? [] : entries.filter(({ resource }) => isOfForm(resource));
  const isRead = (one: Entry): boolean =>
    isObservation(one) || answers.includes(one) || isOurComposition(one.resource);
  const isError = records.some(({ resource }) => textAt(resource, 'status') === 'entered-in-error');
  const around = aroundOf([...observations, ...answers], isError);
  const readings: Reading[] = entries
    .filter((one) => !isRead(one))
    .map(({ path }) => unread(path, 'other-resource'));
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
  const [form] = answers;
  if (form && answers.length === 1) {
    const own = readResponse(form, options, around);
    readings.push(own);
    for (const one of own.kept) kept.push(one);
  } else for (const { path } of answers) readings.push(unread(path, 'several'));
  for (const { resource, path } of strange) readings.push(readStrange(resource, path));
  if (records.length === 0) readings.push(frameOf(strange));
  const all = joined(readings);
  const { examination, unread: refused } = assembled(all.found, kept);
  const changed = changedDerived(examination, derived);
  return { examination, unread: inOrder([...all.unread, ...refused, ...changed]) };
}
