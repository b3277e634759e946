import * as z from 'zod/mini';
import { only } from './common.js';

/** A number from 0 to `max`, both included. */
export function upTo(max: number) {
  return z.number().check(z.minimum(0), z.maximum(max));
}

/** One of some words, which may be left out. */
export function oneOf<const W extends readonly [string, ...string[]]>(words: W) {
  return z.optional(z.enum(words));
}

/** Any of some words, each at most once. An empty list says that none applies. */
export function listOf<const W extends readonly [string, ...string[]]>(words: W) {
  return z
    .array(z.enum(words))
    .check(only<readonly W[number][]>('each-once', (list) => new Set(list).size === list.length));
}

/** The same, which may be left out: nobody asked. */
export function anyOf<const W extends readonly [string, ...string[]]>(words: W) {
  return z.optional(listOf(words));
}

/** Present and true, or left out. */
export const yes = z.optional(z.literal(true));
