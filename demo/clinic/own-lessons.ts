import type { Lesson } from 'pulse-map/lesson';
import { remember, remembered } from './small-store.js';

/*
 * Lessons of one's own, kept in this browser as text, so that the presenter's window finds the same.
 */

const KEPT = 'alder-row-clinic-lesson';

/** Where a lesson of one's own comes from; its address, too. */
export const OWN_LESSONS = ['written'] as const;
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
