import { type Json, NO_PRESSURE, REASONS } from '../examination/index.js';
import { EXTENSIONS, SYSTEMS, unitOf } from './codes.js';
import type { Field, Leaf } from './fields.js';
import {
  at,
  codesIn,
  concept,
  type Element,
  element,
  escaped,
  isElement,
  legible,
  listAt,
  ownValue,
  textAt,
} from './resource.js';

/*
 * One value of the record as one `value[x]` and back. What FHIR does not take as it is stands beside it, in an extension, as it was.
 */

/** A value of a field, or why it is none. */
export type Read = { readonly value: Json } | { readonly why: 'not-understood' | 'contradicts' | 'unit' };

const FHIR_TIME =
  /^(?!0000)\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(\.\d{1,9})?(Z|[+-](0\d|1[0-3]):[0-5]\d|[+-]14:00)$/;

/** A time of the record as FHIR writes it: with seconds, and in UTC where FHIR has no such offset; `undefined` where it has no such year. */
export function fhirTime(text: string): string | undefined {
  const [, to, seconds = ':00', part = '', zone] = /^(.{16})(:\d\d)?(\.\d+)?(.+)$/.exec(text) ?? [];
  const whole = `${to}${seconds}${part.slice(0, 10)}${zone}`;
  if (FHIR_TIME.test(whole)) return whole;
  const date = new Date(`${to}${seconds}${zone}`);
  const utc = Number.isNaN(date.valueOf()) ? '' : `${date.toISOString().slice(0, 19)}${part.slice(0, 10)}Z`;
  return FHIR_TIME.test(utc) ? utc : undefined;
}

/** A primitive that FHIR may not take as it is: the value that it takes, and beside it the text that it stands for. */
export function primitive(name: string, text: string, taken: string | undefined): Element {
  if (taken === text) return { [name]: text };
  const extension = [{ url: EXTENSIONS.exact, valueString: escaped(text) }];
  return element({ [name]: taken, [`_${name}`]: { extension } });
}

/** The text of such a primitive; `undefined` where both contradict each other or there is none. */
export function exactText(around: unknown, name: string, take: (text: string) => string | undefined): Read {
  const value = at(around, name);
  const own = listAt(at(around, `_${name}`), 'extension').find(
    (one) => textAt(one, 'url') === EXTENSIONS.exact,
  );
  if (own === undefined) return typeof value === 'string' ? { value } : { why: 'not-understood' };
  try {
    const text: unknown = JSON.parse(textAt(own, 'valueString') ?? '');
    if (typeof text === 'string' && take(text) === value) return { value: text };
  } catch {
    // Not what this library wrote.
  }
  return { why: 'contradicts' };
}

/** Points on the figure, as in an SVG list of points. */
function pointsText(points: Json): string {
  return (points as readonly (readonly number[])[]).map((point) => point.join(',')).join(' ');
}

function readPoints(text: Json | undefined): Read {
  if (typeof text !== 'string') return { why: 'not-understood' };
  const points = text.split(' ').map((point) => point.split(','));
  const numbers = points.map((point) => point.map(Number));
  const isSame = numbers.every((point, i) => point.every((one, j) => String(one) === points[i]?.[j]));
  return isSame ? { value: numbers } : { why: 'not-understood' };
}

export function quantity(value: number, unit: string): Json {
  return { value, unit: unit === '{ratio}' ? '1' : unit, system: SYSTEMS.ucum, code: unit };
}

/** Why there is no value, in FHIR's words and in ours. */
function absentReason(code: string, reason: string, text?: string): Json {
  return concept(
    [
      { system: SYSTEMS.absent, code: reason === 'amputated' ? 'not-applicable' : 'not-performed' },
      { system: SYSTEMS.value, code: `${code}.${reason}` },
    ],
    text,
  );
}

/** Whether a leaf says that there is no value, rather than one. */
export function isReason({ kind, path, value }: Pick<Leaf, 'kind' | 'path' | 'value'>): boolean {
  const name = path.at(-1);
  if (kind === 'pressure') return typeof value === 'string' && value !== 'incompressible';
  return kind === 'word' && (name === 'couldNotExamine' || name === 'notDone');
}

/**
 * The elements that hold the values of a leaf, one for each; a list has one for each of its words.
 * @param say a word of the field as a person reads it
 */
export function elementsOf(
  { field: { code }, kind, path, value }: Leaf,
  say: (word: Json) => string | undefined,
): readonly Element[] {
  if (isReason({ kind, path, value }))
    return [{ dataAbsentReason: absentReason(code, String(value), say(value)) }];
  switch (kind) {
    case 'yes':
    case 'boolean':
      return [{ valueBoolean: value }];
    case 'pressure':
      return typeof value === 'number'
        ? [{ valueQuantity: quantity(value, 'mm[Hg]') }]
        : [{ valueCodeableConcept: ownValue(code, String(value), say(value)) }];
    case 'number':
      return [{ valueQuantity: quantity(value as number, unitOf(code)) }];
    case 'text':
      return [primitive('valueString', value as string, legible(value as string))];
    case 'instant':
      return [primitive('valueDateTime', value as string, fhirTime(value as string))];
    case 'points':
      return [{ valueString: pointsText(value) }];
    case 'words':
      return (value as readonly Json[]).map((word) => ({
        valueCodeableConcept: ownValue(code, String(word), say(word)),
      }));
    case 'empty':
      return [
        { valueCodeableConcept: ownValue(code, Array.isArray(value) ? 'empty-list' : 'empty', say(value)) },
      ];
    default:
      return [{ valueCodeableConcept: ownValue(code, String(value), say(value)) }];
  }
}

/** The words of a concept that belong to a field; another system's beside them are not looked at. */
function wordsOf(value: unknown, code: string): readonly string[] {
  return codesIn(value, SYSTEMS.value).flatMap((own) =>
    own.startsWith(`${code}.`) ? [own.slice(code.length + 1)] : [],
  );
}

function readWord(field: Field, value: Json | undefined): Read {
  const words = wordsOf(value, field.code);
  const [word] = words;
  if (word === undefined) return { why: 'not-understood' };
  if (words.some((one) => one !== word)) return { why: 'contradicts' };
  if (word === 'empty-list') return { value: [] };
  if (word === 'empty') return { value: {} };
  if (!field.words.includes(word)) return { why: 'not-understood' };
  return { value: field.kind === 'integer' ? Number(word) : word };
}

function readQuantity(value: Json | undefined, code: string): Read {
  const number = at(value, 'value');
  if (typeof number !== 'number' || !isElement(value)) return { why: 'not-understood' };
  if (at(value, 'comparator') !== undefined) return { why: 'not-understood' };
  const unit = textAt(value, 'code') ?? textAt(value, 'unit');
  const system = textAt(value, 'system');
  if (system !== undefined && system !== SYSTEMS.ucum) return { why: 'unit' };
  return unit === unitOf(code) || (unit === 'mmHg' && unitOf(code) === 'mm[Hg]')
    ? { value: number }
    : { why: 'unit' };
}

/** The names of the values of an element, such as `valueQuantity`. */
export function valueNames(own: unknown): readonly string[] {
  return isElement(own) ? Object.keys(own).filter((name) => /^_?value[A-Z]/.test(name)) : [];
}

/** The value that an element holds for a field; of a list one of its words. */
export function valueIn(field: Field, own: unknown): Read {
  const absent = at(own, 'dataAbsentReason');
  const names = new Set(valueNames(own).map((name) => name.replace('_', '')));
  if (absent !== undefined) {
    if (names.size) return { why: 'contradicts' };
    const isPressure = field.kind === 'pressure';
    const words = wordsOf(absent, field.code).filter((word) =>
      (isPressure ? NO_PRESSURE : REASONS).includes(word as never),
    );
    return words[0] !== undefined && words.length === 1 ? { value: words[0] } : { why: 'not-understood' };
  }
  if (names.size > 1) return { why: 'contradicts' };
  const [name] = names;
  const value = name === undefined ? undefined : at(own, name);
  if (name === 'valueCodeableConcept') return readWord(field, value);
  switch (field.kind) {
    case 'boolean':
    case 'yes':
      return typeof value === 'boolean' && name === 'valueBoolean' ? { value } : { why: 'not-understood' };
    case 'pressure':
    case 'number':
      return name === 'valueQuantity' ? readQuantity(value, field.code) : { why: 'not-understood' };
    case 'text':
      return name === 'valueString' ? exactText(own, name, legible) : { why: 'not-understood' };
    case 'instant':
      return name === 'valueDateTime' ? exactText(own, name, fhirTime) : { why: 'not-understood' };
    case 'points':
      return name === 'valueString' ? readPoints(value) : { why: 'not-understood' };
    default:
      return { why: 'not-understood' };
  }
}
