/** Why something could not be examined. */
export const REASONS = [
  'dressing',
  'cast',
  'oedema',
  'pain',
  'amputated',
  'line-in-place',
  'no-cuff',
  'dialysis-access',
  'declined',
  'other',
] as const;
/** A word for why something could not be examined. */
export type Reason = (typeof REASONS)[number];

/** The reasons that can keep a finger or a stethoscope off a site; the others are about cuffs. */
export const SITE_REASONS = REASONS.filter((reason) => reason !== 'no-cuff' && reason !== 'dialysis-access');

/** Longest free text kept in one field, in UTF-16 units. */
export const LONGEST_TEXT = 2000;

/** A value for each side of the patient. A side left out was not examined. */
export interface Sided<T> {
  /** The patient's right. */
  readonly right?: T;
  /** The patient's left. */
  readonly left?: T;
}

/** A value in the midline, where there is no side. */
export interface Midline<T> {
  readonly midline?: T;
}

/** A change to some fields: those left out stay, those that are `undefined` go. */
export type Patch<T> = { readonly [K in keyof T]?: T[K] | undefined };
