import { assembled } from '../assemble.js';
import { type FromBundle, type Reading, unread } from '../found.js';
import type { Kept } from '../kept.js';
import { type Around, aroundOf, type Entry, type ReadOptions, refusal } from '../read-frame.js';
import { at, textAt } from '../resource.js';
import { readAnswers } from './read-answers.js';

/** Reads one QuestionnaireResponse, unless it is refused as a whole. */
export function readResponse(
  entry: Entry,
  options: ReadOptions,
  around: Around,
): Reading & { readonly kept: readonly Kept[] } {
  const { resource, path } = entry;
  const read = readAnswers(resource, path);
  // One that was entered in error is read where the record itself says so, and not as this patient's findings.
  const isError =
    around.isError ||
    read.found.some(({ path: [part], value }) => part === 'amendments' && value === 'entered-in-error');
  const why = refusal(entry, options, { ...around, isError });
  if (why) return { ...unread(path, why), kept: [] };
  const isOpen = textAt(resource, 'status') === 'in-progress';
  const open = { path: ['status'], value: 'preliminary', at: path ? `${path}.status` : 'status' };
  const left = ['contained', 'extension'].filter((name) => at(resource, name) !== undefined);
  return {
    found: isOpen ? [...read.found, open] : read.found,
    unread: [
      ...read.unread,
      ...left.map((name) => ({ path: path ? `${path}.${name}` : name, why: 'not-kept' as const })),
    ],
    kept: read.kept,
  };
}

/**
 * Reads a FHIR QuestionnaireResponse, R4 or R5, by the linkIds of `toQuestionnaire`, in whatever groups they stand. Never throws. Answers to
 * other questions, of another type or with words that the form does not offer are listed with their place and why; nothing is guessed, and
 * of two answers to one question neither is taken. The time of the examination is that of its own item, not that of the form.
 * @param response JSON of any kind
 */
export function fromResponse(response: unknown, options: ReadOptions = {}): FromBundle {
  if (textAt(response, 'resourceType') !== 'QuestionnaireResponse')
    return { ...assembled([], []), unread: [{ path: '', why: 'no-response' }] };
  const entry = { resource: response as Entry['resource'], path: '' };
  const { found, unread: left, kept } = readResponse(entry, options, aroundOf([entry], false));
  const { examination, unread: refused } = assembled(found, kept);
  const seen = new Map([...left, ...refused].map((one) => [`${one.path} ${one.why}`, one]));
  return { examination, unread: [...seen.values()] };
}
