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
