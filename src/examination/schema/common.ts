import * as z from 'zod/mini';
import { LONGEST_TEXT, type Midline, REASONS, type Sided } from '../types/common.js';
import type { Expectation, RuleCode } from '../faults.js';

/**
 * The fields of an interface as schemas: the compiler asks for each of them, refuses any other, and holds each to its type. A field that
 * may be missing is `z.optional(…)`.
 */
export type Fields<T> = {
  readonly [K in keyof T]-?: object extends Pick<T, K>
    ? z.ZodMiniOptional<z.ZodMiniType<NonNullable<T[K]>>>
    : z.ZodMiniType<T[K]>;
};

/** What is told of a value that breaks a rule; see `Expectation`. */
export interface RuleParams {
  readonly expected: Expectation;
  /** The value alone is wrong, not together with others. */
  readonly alone?: true;
  /** The fields the rule looks at. It does not apply where one of them holds what this version does not know. */
  readonly reads?: readonly string[];
}

/** An object with the fields of `T`. Fields of later versions pass (see `ParseOptions.strict`). */
export function object<T extends object>(fields: Fields<T>, ...rules: readonly Rule<T>[]): z.ZodMiniType<T> {
  const all = z.looseObject(fields) as unknown as z.ZodMiniType<T>;
  return rules.length ? all.check(...rules) : all;
}

export type Rule<T> = z.core.$ZodCheck<T>;

/** A rule between fields of one object: holds, or is a fault at the first of the fields it reads. */
export function rule<T>(
  expected: RuleCode,
  reads: readonly [keyof T & string, ...(keyof T & string)[]],
  holds: (value: T) => boolean,
): Rule<T> {
  const params: RuleParams = { expected: { code: expected }, reads };
  return z.refine<T>(holds, { path: [reads[0]], params: params as never });
}

/** A rule over one value. */
export function only<T>(expected: RuleCode, holds: (value: T) => boolean, alone?: true): Rule<T> {
  const params: RuleParams = { expected: { code: expected }, ...(alone && { alone }) };
  return z.refine<T>(holds, { params: params as never });
}

export const reasonSchema = z.enum(REASONS);
export const textSchema = z.string().check(z.minLength(1), z.maxLength(LONGEST_TEXT));

const INSTANT =
  /^(\d{4})-(\d{2})-(\d{2})T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d+)?)?(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;

/** Whether it is a time, of a day that exists: there is no 31 April, and 29 February in leap years only. */
function isInstant(text: string): boolean {
  const [, year, month, day] = INSTANT.exec(text) ?? [];
  const date = new Date(`${year}-${month}-${day}T00:00:00Z`);
  return !Number.isNaN(date.valueOf()) && date.getUTCDate() === Number(day);
}

/** A point in time, ISO 8601 with `Z` or an offset, to the minute or finer. */
export const instantSchema = z.string().check(only('instant', isInstant, true));

/** A value for each side, each of which may be left out. */
export function sided<T>(schema: z.ZodMiniType<T>): z.ZodMiniType<Sided<T>> {
  return z.looseObject({ right: z.optional(schema), left: z.optional(schema) }) as never;
}

/** A value for the midline. */
export function midline<T>(schema: z.ZodMiniType<T>): z.ZodMiniType<Midline<T>> {
  return z.looseObject({ midline: z.optional(schema) }) as never;
}
