/** Why something of a FHIR bundle was not read into a record. Each language has a sentence for each. */
export const UNREAD_CODES = [
  /** No FHIR bundle with a list of entries. */
  'no-bundle',
  /** No FHIR QuestionnaireResponse. */
  'no-response',
  /** A kind of resource that holds no findings of this examination. */
  'other-resource',
  /** An element that changes the meaning of what it stands in. */
  'modifier',
  /** Entered in error, cancelled, or not yet done. */
  'status',
  /** About another patient than asked for. */
  'other-patient',
  /** The bundle is about several patients, and none was asked for. */
  'several-patients',
  /** Findings of several days, and none was asked for; or of another day than asked for. */
  'several-days',
  'other-day',
  /** A time without its hour, or a span. */
  'partial-time',
  /** Several times, examiners or others of what the record holds once. */
  'several',
  /** A code that names nothing of the record. */
  'unknown-code',
  /** No place, or one that the map does not have. */
  'no-place',
  'no-side',
  'sides-differ',
  /** The ankle has two arteries, and which one is not said. */
  'which-artery',
  /** A strength without its scale, or on one that is not known here. */
  'scale',
  'unit',
  'not-understood',
  /** Two parts of one value contradict each other. */
  'contradicts',
  /** Two values for the same thing. */
  'two-values',
  /** The record has no place for it. */
  'not-kept',
  /** The rules of the record do not take it together with the rest. */
  'refused',
  /** Not examined, without a reason that the record knows. */
  'no-reason',
  /** Follows from the record, and is derived anew. */
  'derived',
  /** Differs from what follows from the record. */
  'derived-differs',
] as const;
export type UnreadCode = (typeof UNREAD_CODES)[number];
