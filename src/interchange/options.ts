import type { FhirVersion } from './resource.js';

/** A reference as FHIR has it; at least one of its fields must be there. */
export interface FhirReference {
  /** Such as `Patient/123` or an absolute URL. */
  readonly reference?: string;
  readonly type?: string;
  readonly identifier?: { readonly system?: string; readonly value?: string };
  /** What a person reads. */
  readonly display?: string;
}

export const BUNDLE_KINDS = ['collection', 'document'] as const;
export type BundleKind = (typeof BUNDLE_KINDS)[number];

/** How a record is written as FHIR. */
export interface BundleOptions {
  /** R4 (4.0.1) by default. */
  readonly fhirVersion?: FhirVersion;
  /** A loose `collection` by default; a `document` begins with a Composition and needs a point in time. */
  readonly kind?: BundleKind;
  /** The patient. */
  readonly subject?: FhirReference;
  readonly encounter?: FhirReference;
  /** Who examined; the record's examiner by name where it is left out. */
  readonly performer?: FhirReference;
  /** Codes of SNOMED CT beside all others. Off by default, since using them needs a licence in some countries. */
  readonly snomed?: boolean;
  /** Language of the words, as BCP 47 tag; it must have been registered. English by default. */
  readonly language?: string;
  /** What names this examination in the host, so that an amended record keeps its ids. Without it they follow from the record. */
  readonly id?: string;
  /** When the bundle is made, with `Z` or an offset; a document without it bears the time of the examination. */
  readonly timestamp?: string;
  /** Indices, stages, flags and the localisation that follow from the record, each marked as derived. On by default. */
  readonly derived?: boolean;
}
