/** Plain JSON, deeply readonly. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** The names and places from the record inward, such as `['pulses', 'femoral', 'left', 'grade']`. */
export type RecordPath = readonly (string | number)[];

/** A value of a later minor version, and the place in the record where it belongs. */
export interface Carried {
  readonly path: RecordPath;
  readonly value: Json;
}
