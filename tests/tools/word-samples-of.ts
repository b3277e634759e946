import { SIDES } from '../../src/anatomy/index.js';

type Fn = (...args: never[]) => unknown;
type HasFunctions<T> = T extends Fn
  ? true
  : T extends object
    ? true extends { [K in keyof T]: HasFunctions<T[K]> }[keyof T]
      ? true
      : false
    : false;
/** For every function its lists of arguments, in the shape of the words. */
export type Samples<T> = {
  [K in keyof T as HasFunctions<T[K]> extends true ? K : never]: T[K] extends (...args: infer A) => unknown
    ? readonly A[]
    : Samples<T[K]>;
};

export const one = <A>(all: readonly A[]): [A][] => all.map((a) => [a]);
export const two = <A, B>(as: readonly A[], bs: readonly B[]): [A, B][] =>
  as.flatMap((a) => bs.map((b): [A, B] => [a, b]));
export const three = <A, B, C>(as: readonly A[], bs: readonly B[], cs: readonly C[]): [A, B, C][] =>
  two(as, bs).flatMap(([a, b]) => cs.map((c): [A, B, C] => [a, b, c]));
export const each = <A, R>(all: readonly A[], of: (a: A) => readonly R[]): R[] => all.flatMap(of);

export const COUNTS = one([1, 2, 12]);
/** What stands in the place of words that come from elsewhere. */
export const TEXT = one(['xyz']);
export const SIDE = one(SIDES);
