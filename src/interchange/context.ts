import { equal } from '../examination/json.js';
import { type Examination, type Json, statusOf } from '../examination/index.js';
import type { Language } from './labels.js';
import type { BundleOptions, FhirReference } from './options.js';
import { type Element, element, legible } from './resource.js';
import { languageOf } from './speech.js';
import { uuidOf } from './uuid.js';
import { fhirTime, primitive } from './values.js';

/** What all resources of one bundle share. */
export interface Context {
  readonly examination: Examination;
  readonly options: BundleOptions;
  readonly language: Language;
  /** The tag of the language of the words. */
  readonly tag: string;
  readonly status: string;
  /** When it was found, as an Observation says it. */
  readonly effective: Element;
  readonly performer: Json | undefined;
  /** The id of what a key names within the bundle, the same for the same record. */
  readonly idOf: (key: string) => string;
}

/** JSON that is the same for equal values, in whatever order their fields stand. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) =>
    typeof one === 'object' && one !== null && !Array.isArray(one)
      ? Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : 1)))
      : one,
  );
}

/** A reference without what is empty; `undefined` where nothing is left, since FHIR takes no empty one. */
function cleaned(reference: FhirReference | undefined): Json | undefined {
  if (!reference) return undefined;
  const { display } = reference;
  const own = element({
    ...reference,
    display: display === undefined ? undefined : legible(display),
  } as Element);
  return equal(own, {}) ? undefined : (own as Json);
}

export function contextOf(examination: Examination, options: BundleOptions): Context {
  const { examinedAt, examiner } = examination;
  const tag = options.language ?? 'en';
  const performer = cleaned(options.performer ?? (examiner ? { display: examiner } : undefined));
  const named = options.id ?? canonical([examination, options.subject ?? null, options.encounter ?? null]);
  const seed = uuidOf(named);
  return {
    examination,
    options: {
      ...options,
      subject: cleaned(options.subject) as never,
      encounter: cleaned(options.encounter) as never,
    },
    language: languageOf(tag),
    tag,
    status: statusOf(examination) ?? 'final',
    effective: examinedAt ? primitive('effectiveDateTime', examinedAt, fhirTime(examinedAt)) : {},
    performer: performer && [performer],
    idOf: (key) => uuidOf(`${seed} ${key}`),
  };
}
