import * as z from 'zod/mini';

/** Why something could not be examined. */
export const REASONS = [
  'dressing',
  'cast',
  'oedema',
  'pain',
  'amputated',
  'line-in-place',
  'declined',
  'other',
] as const;
export type Reason = (typeof REASONS)[number];
export const reasonSchema = z.enum(REASONS);

/** Longest free text kept in one field, in UTF-16 units. */
export const LONGEST_TEXT = 2000;
export const textSchema = z.string().check(z.minLength(1), z.maxLength(LONGEST_TEXT));

const INSTANT =
  /^(\d{4})-(\d{2})-(\d{2})T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d+)?)?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;
const INSTANT_EXPECTED = 'a date and time with "Z" or an offset, such as "2026-05-01T10:30+02:00"';

/** Whether the day of a date exists: there is no 31 April, and 29 February in leap years only. */
function dayExists(text: string): boolean {
  const [, year, month, day] = INSTANT.exec(text) ?? [];
  const date = new Date(`${year}-${month}-${day}T00:00:00Z`);
  return !Number.isNaN(date.valueOf()) && date.getUTCDate() === Number(day);
}

/** A point in time, ISO 8601 with `Z` or an offset, to the minute or finer. */
export const instantSchema = z
  .string()
  .check(
    z.regex(INSTANT, { error: INSTANT_EXPECTED, abort: true }),
    z.refine(dayExists, { params: { expected: INSTANT_EXPECTED, code: 'not-allowed' } }),
  );

/** A value for each side, each of which may be left out. */
export function sided<T extends z.ZodMiniType>(schema: T) {
  return z.strictObject({ right: z.optional(schema), left: z.optional(schema) });
}

/** A value for the midline. */
export function midline<T extends z.ZodMiniType>(schema: T) {
  return z.strictObject({ midline: z.optional(schema) });
}

/**
 * A rule between fields of one object: holds, or is a fault at `path`.
 * @param expected what would have been right, in plain words of the record
 */
export function rule<T>(holds: (value: T) => boolean, path: string, expected: string) {
  return z.refine<T>(holds, { path: [path], params: { expected } });
}
