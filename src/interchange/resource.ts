import type { Json } from '../examination/index.js';
import { SYSTEMS } from './codes.js';

/** A FHIR resource or element as plain JSON. */
export type Element = { readonly [name: string]: Json | undefined };

/** A version of FHIR: 4.0.1 or 5.0.0. */
export const FHIR_VERSIONS = ['R4', 'R5'] as const;
export type FhirVersion = (typeof FHIR_VERSIONS)[number];

export interface CodeAndSystem {
  readonly system: string;
  readonly code: string;
}

/** A field of unknown JSON, of its own and not inherited; `undefined` for anything but an object. */
export function at(value: unknown, name: string): Json | undefined {
  return isElement(value) && Object.hasOwn(value, name)
    ? (value as Readonly<Record<string, Json>>)[name]
    : undefined;
}

export function isElement(value: unknown): value is Readonly<Record<string, Json>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A list of unknown JSON; empty for anything else. */
export function listAt(value: unknown, name: string): readonly Json[] {
  const list = at(value, name);
  return Array.isArray(list) ? (list as readonly Json[]) : [];
}

export function textAt(value: unknown, name: string): string | undefined {
  const text = at(value, name);
  return typeof text === 'string' ? text : undefined;
}

/** The codes of a CodeableConcept in one system. */
export function codesIn(concept: unknown, system: string): readonly string[] {
  return listAt(concept, 'coding').flatMap((coding) => {
    const code = textAt(coding, 'code');
    return code !== undefined && textAt(coding, 'system') === system ? [code] : [];
  });
}

/** Without fields that are `undefined` or an empty list, which FHIR does not take. */
export function element(fields: Element): Element {
  return Object.fromEntries(
    Object.entries(fields).filter(
      ([, field]) => field !== undefined && !(Array.isArray(field) && field.length === 0),
    ),
  );
}

/** A CodeableConcept of some codings and a text. */
export function concept(codings: readonly CodeAndSystem[], text?: string): Json {
  return element({ coding: codings as unknown as Json, text: text ? legible(text) : undefined }) as Json;
}

/** A concept of this library's words for a field. */
export function ownValue(code: string, word: string, text?: string): Json {
  return concept([{ system: SYSTEMS.value, code: `${code}.${word}` }], text);
}

/** What XML and with it FHIR does not take: control characters, halves of surrogate pairs, and the two that are no characters. */
const ILLEGIBLE = /[^\P{Cc}\t\n\r]|\p{Cs}|[\ufffe\uffff]/gu;

/** Text as FHIR takes it, with a mark in place of each character that it does not. */
export function legible(text: string): string {
  return text.replace(ILLEGIBLE, '\ufffd');
}

/** A JSON string of a text in characters that FHIR takes. */
export function escaped(text: string): string {
  return JSON.stringify(text).replace(
    ILLEGIBLE,
    (char) => `\\u${char.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
