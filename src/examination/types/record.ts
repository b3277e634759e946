import type { Amendment, RecordState } from './amendments.js';
import type { Bedside } from './bedside.js';
import type { TeamCall } from './calls.js';
import type { Circulation } from './circulation.js';
import type { Context } from './context.js';
import type { PatientHistory } from './history.js';
import type { Inspection } from './inspection.js';
import type { Carried } from './json.js';
import type { Mark } from './marks.js';
import type { Method } from './method.js';
import type { Pressures } from './pressures.js';
import type { Bruits, Delays, Pulses } from './pulses.js';
import type { Staging } from './staging.js';

export const FORMAT_NAME = 'pulse-map';
/** A reader of a major version reads all its minor versions. */
export const FORMAT_MAJOR = 1;
/** Raised with every field or word the record gains. */
export const FORMAT_MINOR = 1;
/** The tag of a record: `pulse-map/1` or `pulse-map/1.N`. */
export type Format = `pulse-map/1` | `pulse-map/1.${number}`;
/** The tag this version writes. */
export const FORMAT = `${FORMAT_NAME}/${FORMAT_MAJOR}.${FORMAT_MINOR}` satisfies Format as Format;

/** How grades are entered and shown. Stored, since a number without its scale is ambiguous. */
export const SCALE_IDS = ['0-3', '0-4', 'words'] as const;
/** A scale on which grades are shown and entered. */
export type ScaleId = (typeof SCALE_IDS)[number];

export const ONSETS = ['acute', 'chronic', 'unknown'] as const;
export type Onset = (typeof ONSETS)[number];

/**
 * One examination of one patient, as plain JSON; frozen where this library hands it out. Every part but `format` and `scale` may be
 * missing: missing is "not examined". Right and left are always the patient's.
 *
 * A record of a later minor version may hold more than these types say: fields beside them, which every edit leaves in place (see
 * `unknownFields`), and words this version does not know, which stand in `carried`.
 */
export interface Examination {
  /** The version that wrote the record. */
  readonly format: Format;
  /** How grades are entered and shown; grades themselves are words. */
  readonly scale: ScaleId;
  /** When the examination took place: ISO 8601 with `Z` or an offset, to the minute or finer. Missing: not said. */
  readonly examinedAt?: string;
  /** Who examined. */
  readonly examiner?: string;
  /** Whether it is finished. Missing: not said. What becomes of it later stands in `amendments`; see `statusOf`. */
  readonly status?: RecordState;
  /** How it was changed once it was finished, in the order it was recorded, at most `MOST_AMENDMENTS`. Missing: it was not. */
  readonly amendments?: readonly Amendment[];
  /** How the trouble began. Missing: not asked; `unknown`: asked, and not known. */
  readonly onset?: Onset;
  /** What is known about the patient before a pulse is felt. */
  readonly context?: Context;
  /** Shock, blood pressure and heart rate. */
  readonly circulation?: Circulation;
  readonly pulses?: Pulses;
  readonly bruits?: Bruits;
  readonly delays?: Delays;
  readonly history?: PatientHistory;
  readonly inspection?: Inspection;
  /** What is drawn on the skin, in the order it was recorded, at most `MOST_MARKS`. */
  readonly marks?: readonly Mark[];
  readonly bedside?: Bedside;
  /** In mmHg. */
  readonly pressures?: Pressures;
  /** Choices of method and limits where sources disagree. Missing: the defaults. */
  readonly method?: Method;
  readonly staging?: Staging;
  /** Which teams were called and when, in the order it was recorded, at most `MOST_CALLS`. Missing: no call was noted. */
  readonly calls?: readonly TeamCall[];
  /**
   * Words of a later minor version, taken from where this version's types have no room for them. What stands at such a place is
   * recorded in a way this version does not know: it is locked (see `isLocked`), and never "not examined".
   * `formatExamination` puts them back, and so does reading the record again.
   */
  readonly carried?: readonly Carried[];
}

/** An examination in which nothing has been recorded. */
export function emptyExamination(scale: ScaleId = '0-3'): Examination {
  return Object.freeze({ format: FORMAT, scale });
}
