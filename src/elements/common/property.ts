import type { PropertyDeclaration } from 'lit';
import { property as reactive } from 'lit/decorators.js';
import { show } from '../../examination/index.js';
import { warn } from './unknown-attribute.js';

/** What a property may hold. */
export interface Shape {
  /** For the message, after "expected". */
  readonly expected: string;
  /** @returns what the property then holds; `undefined` where the value is refused. May throw, as reading a value may. */
  readonly take: (value: unknown) => unknown;
  /** What it holds instead of a refused value, and how the message puts that; else what it holds in a new element. */
  readonly instead?: { readonly value: (given: unknown) => unknown; readonly words: string };
}

export const shape = (expected: string, holds: (value: unknown) => boolean): Shape => ({
  expected,
  take: (value) => (holds(value) ? value : undefined),
});

/** Whether a value is an object, no list, of which every field can be read. */
const isObject = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && Object.values(value).length >= 0;

/** For settings, choices, texts by name: plain data. */
export const OBJECT = shape(
  'an object of plain data',
  (value) => isObject(value) && Boolean(JSON.stringify(value)),
);

/** For a text that is no attribute. */
export const TEXT = shape('text', (value) => typeof value === 'string');

/** For one of some words. */
export const oneOf = (words: readonly string[]): Shape =>
  shape(words.join(', '), (value) => words.includes(value as string));

/** For a list, each of whose entries `holds`. */
export const listOf = (what: string, holds: (one: never) => boolean): Shape =>
  shape(`a list of ${what}`, (value) => Array.isArray(value) && value.every((one) => holds(one as never)));

/** For a record, or its text. A list, or what is neither, is kept all the same, so that it is shown as one that cannot be read. */
export const RECORD: Shape = {
  expected: 'a record or its text',
  take: (value) =>
    (Array.isArray(value) && value.length >= 0) || isObject(value) || typeof value === 'string'
      ? value
      : undefined,
  instead: { value: (given) => given, words: 'not read' },
};

export const TEXTS = listOf('texts', (one) => typeof one === 'string');

/** What an attribute may hold, by the type it is declared with. */
const ATTRIBUTES = new Map<unknown, Shape>([
  [
    String,
    {
      expected: 'text',
      take: (value) => (typeof value === 'string' || Number.isFinite(value) ? String(value) : undefined),
    },
  ],
  [Number, { expected: 'a finite number', take: (value) => (Number.isFinite(value) ? value : undefined) }],
  [
    Boolean,
    {
      expected: 'true or false',
      take: (value) => (typeof value === 'boolean' ? value : undefined),
      instead: { value: () => true, words: 'taken as true, as in HTML' },
    },
  ],
]);

function taken(take: Shape['take'], value: unknown): unknown {
  try {
    return take(value);
  } catch {
    return undefined;
  }
}

/**
 * Guards what is set.
 * @param accessor whether the class wrote it, so that it has no initializer
 */
function guarded(
  descriptor: PropertyDescriptor,
  name: string,
  { expected, take, instead }: Shape,
  accessor: boolean,
): PropertyDescriptor {
  // The first value comes from the first element's own initializer.
  let known = accessor;
  let initial: unknown;
  return {
    ...descriptor,
    set(this: Element, given: unknown): void {
      if (!known) [known, initial] = [true, given];
      const nothing = given === null || given === undefined || given === initial;
      let next = nothing ? initial : taken(take, given);
      if (!nothing && next === undefined) {
        next = instead ? instead.value(given) : initial;
        warn(this, name, show(given), expected, instead?.words ?? `taken as ${show(initial) || 'not given'}`);
      }
      descriptor.set?.call(this, next);
    },
  };
}

/* eslint-disable @typescript-eslint/no-explicit-any -- what TypeScript asks of a decorator of fields and accessors alike */

/**
 * Lit's decorator, guarded: what is no value of the property is refused with a warning that names it, and the property then
 * holds what it holds in a new element, as it does for `null` and `undefined`. What it held before might be another patient's.
 */
export function property(
  options: PropertyDeclaration & { readonly shape?: Shape } = {},
): (proto: object, name: string) => any {
  const {
    attribute,
    type = String,
    shape: own = attribute === false ? undefined : ATTRIBUTES.get(type),
  } = options;
  const declare = reactive(options);
  return (proto, name) => {
    const accessor = declare(proto, name) as PropertyDescriptor | undefined;
    const descriptor = Object.getOwnPropertyDescriptor(proto, name);
    if (!own || !descriptor) return accessor;
    const safe = guarded(descriptor, name, own, accessor !== undefined);
    Object.defineProperty(proto, name, safe);
    return accessor && safe;
  };
}

/** The same guard for an accessor that renders nothing by itself. */
export function checked(own: Shape): (proto: object, name: string, accessor: any) => any {
  return (_proto, name, accessor) => guarded(accessor as PropertyDescriptor, name, own, true);
}
