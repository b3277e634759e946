import { parseExaminationText } from 'pulse-map/core';
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

/**
 * Makes a lesson of a record, without name and dates, and keeps it.
 * @returns false where the text is no record
 */
export async function keepRecordLesson(text: string): Promise<boolean> {
  const parsed = parseExaminationText(text);
  if (!parsed.ok) return false;
  const language = examinationLanguage();
  const [{ lessonOfRecord, namelessOf, removedNames }] = await Promise.all([
    import('pulse-map/lesson'),
    fetchWords(language),
  ]);
  const nameless = namelessOf(parsed.value);
  keepOwnLesson('record', JSON.stringify(lessonOfRecord(nameless, TEXTS)));
  const names = removedNames(nameless, language).map((name) => name.toLocaleLowerCase(language));
  const unknown = nameless.unknown ? [`${nameless.unknown} fields of a later version`] : [];
  remember(`${KEPT}-left-out`, [...names, ...unknown].join(', '));
  return true;
}
