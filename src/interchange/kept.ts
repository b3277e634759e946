import { type Examination, type Json, type RecordPath, unknownFields } from '../examination/index.js';
import { fieldAt } from '../examination/patch.js';
import { at } from './resource.js';
import type { Unread } from './found.js';

/*
 * What this version of the record does not know, at its place, as JSON in parts of a length that FHIR takes.
 */

/** Longest text of one value; FHIR takes a megabyte. */
const LONGEST = 500_000;

/** ASCII only, so that it may be cut anywhere. */
const ascii = (json: string): string =>
  json.replace(/[^\x20-\x7e]/g, (char) => `\\u${char.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** The parts of each entry of later versions. */
export function keptTexts(examination: Examination): readonly (readonly string[])[] {
  const fields = unknownFields(examination).map((path) => ({ path, value: fieldAt(examination, path) }));
  const all = [...fields, ...(examination.carried ?? []).map((one) => ({ ...one, carried: true }))];
  return all.map((one) => {
    const json = ascii(JSON.stringify(one));
    return Array.from({ length: Math.ceil(json.length / LONGEST) }, (_, i) =>
      json.slice(i * LONGEST, (i + 1) * LONGEST),
    );
  });
}

/** An entry of a later version, as it was kept. */
export interface Kept {
  readonly path: RecordPath;
  readonly value: Json;
  readonly carried: boolean;
  readonly at: string;
}

/** JSON of such an entry, and where it stands. */
export interface KeptText {
  readonly text: string;
  readonly at: string;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Reads the entries of later versions. */
export function readKeptTexts(texts: readonly KeptText[]): {
  readonly kept: readonly Kept[];
  readonly unread: readonly Unread[];
} {
  const kept: Kept[] = [];
  const unread: Unread[] = [];
  for (const { text, at: place } of texts) {
    const one = parsed(text);
    const way = at(one, 'path');
    const value = at(one, 'value');
    const isPath =
      Array.isArray(way) &&
      way.length > 0 &&
      way.length <= 40 &&
      way.every((key) => typeof key === 'string' || typeof key === 'number');
    if (isPath && value !== undefined)
      kept.push({ path: way as RecordPath, value, carried: at(one, 'carried') === true, at: place });
    else unread.push({ path: place, why: 'not-understood' });
  }
  return { kept, unread };
}
