import { type Parsed, parseWith } from '../examination/index.js';
import { type Lesson, type LessonInput, lessonOf } from './lesson.js';
import { lessonSchema } from './schema.js';

/**
 * Reads an unknown value as a lesson and fills in every default. Never throws.
 * @param input plain data, for instance from `JSON.parse`
 * @returns the lesson, or every fault with its path, what was found and what was expected
 */
export function parseLesson(input: unknown): Parsed<Lesson> {
  const parsed = parseWith(lessonSchema, input, { strict: true });
  return parsed.ok ? { ok: true, value: lessonOf(parsed.value as LessonInput) } : parsed;
}
