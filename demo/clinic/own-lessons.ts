import {
  type Examination,
  isEmptyRecord,
  type LanguageTag,
  messagesFor,
  parseExaminationText,
} from 'pulse-map/core';
import type { Lesson } from 'pulse-map/lesson';
import { examinationLanguage } from './language.js';
import { fetchWords } from './languages.js';
import { remember, remembered } from './small-store.js';

/*
 * Lessons of one's own, kept in this browser as text, so that the presenter's window finds the same.
 */

const KEPT = 'alder-row-clinic-lesson';

/** Where a lesson of one's own comes from; its address, too. */
export const OWN_LESSONS = ['written', 'record'] as const;
export type OwnLesson = (typeof OWN_LESSONS)[number];

export const isOwnLesson = (id: string): id is OwnLesson => (OWN_LESSONS as readonly string[]).includes(id);

/** Keeps the text of a lesson. */
export function keepOwnLesson(which: OwnLesson, text: string): void {
  remember(`${KEPT}-${which}`, text);
}

/** The lesson that was kept, if it still is one. */
export async function ownLesson(which: OwnLesson): Promise<Lesson | undefined> {
  const text = remembered(`${KEPT}-${which}`);
  if (!text) return undefined;
  const { parseLessonText } = await import('pulse-map/lesson');
  const read = parseLessonText(text);
  return read.ok ? read.lesson : undefined;
}

const TEXTS = {
  title: { en: 'A record', de: 'Eine Aufzeichnung' },
  story: {
    en: 'The findings of one examination, step by step. Name, dates and notes are left out.',
    de: 'Die Befunde einer Untersuchung, Schritt für Schritt. Name, Daten und Notizen sind entfernt.',
  },
  answer: {
    en: 'The record does not say what was found in the end. Discuss what the findings come to.',
    de: 'Die Aufzeichnung sagt nicht, was sich am Ende fand. Zu besprechen ist, was die Befunde ergeben.',
  },
};

/** What was left out of the record that is shown, in words. */
export const leftOut = (): string => remembered(`${KEPT}-left-out`) ?? '';

/** What of the file of the record that is shown could not be read, a line each. */
export const notRead = (): readonly string[] =>
  (remembered(`${KEPT}-not-read`) ?? '').split('\n').filter(Boolean);

/** A record, what of its file was not read, or what is wrong with the file: where, what stands there, what was expected. */
type RecordRead =
  { readonly examination: Examination; readonly unread: readonly string[] } | { readonly wrong: string };

function resourceOf(text: string): unknown {
  try {
    const json: unknown = JSON.parse(text);
    return typeof json === 'object' && json !== null && 'resourceType' in json ? json : undefined;
  } catch {
    return undefined;
  }
}

async function bundleRead(json: unknown, language: LanguageTag): Promise<RecordRead> {
  const { fromBundle, unreadText } = await import('pulse-map/fhir');
  const { examination, unread } = fromBundle(json);
  const lines = unread.map(({ path, why }) => `${path ? `${path}: ` : ''}${unreadText(why, language)}`);
  if (!isEmptyRecord(examination)) return { examination, unread: lines };
  const { resourceType } = json as { readonly resourceType: unknown };
  return {
    wrong: `resourceType: found ${JSON.stringify(resourceType)}; expected a "Bundle" with findings that can be read. ${lines[0] ?? ''}`,
  };
}

/** A record of this demonstration, or a FHIR bundle of it or of others. */
async function recordRead(text: string, language: LanguageTag): Promise<RecordRead> {
  const resource = resourceOf(text);
  if (resource) return bundleRead(resource, language);
  const parsed = parseExaminationText(text);
  if (parsed.ok) return { examination: parsed.value, unread: [] };
  const { fault } = messagesFor(language).examination;
  return { wrong: parsed.faults.slice(0, 1).map(fault).join() };
}

/**
 * Makes a lesson of a record, without name and dates, and keeps it.
 * @returns what is wrong with the text; nothing where it was kept
 */
export async function keepRecordLesson(text: string): Promise<string | undefined> {
  const language = examinationLanguage();
  const [{ lessonOfRecord, namelessOf, removedNames }] = await Promise.all([
    import('pulse-map/lesson'),
    fetchWords(language),
  ]);
  const read = await recordRead(text, language);
  if ('wrong' in read) return read.wrong;
  const nameless = namelessOf(read.examination);
  keepOwnLesson('record', JSON.stringify(lessonOfRecord(nameless, TEXTS)));
  const names = removedNames(nameless, language).map((name) => name.toLocaleLowerCase(language));
  const unknown = nameless.unknown ? [`${nameless.unknown} fields of a later version`] : [];
  remember(`${KEPT}-left-out`, [...names, ...unknown].join(', '));
  remember(`${KEPT}-not-read`, read.unread.join('\n'));
  return undefined;
}
