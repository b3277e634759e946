/** How far an examination is: still being entered or waiting for a signature, or complete. */
export const RECORD_STATES = ['preliminary', 'final'] as const;
export type RecordState = (typeof RECORD_STATES)[number];

/**
 * What an amendment does: `amended` changes something, `entered-in-error` says that the examination never took place so or belongs to
 * another patient, `restored` takes that back.
 */
export const AMENDMENT_KINDS = ['amended', 'entered-in-error', 'restored'] as const;
export type AmendmentKind = (typeof AMENDMENT_KINDS)[number];

/** Most amendments kept in one record. */
export const MOST_AMENDMENTS = 100;

/** That a finished examination was changed: when, by whom and why, as the page that holds the record supplies it. */
export interface Amendment {
  readonly kind: AmendmentKind;
  /** When; ISO 8601 with `Z` or an offset. */
  readonly at: string;
  /** Who; missing where the page does not say. */
  readonly by?: string;
  /** In the words of whoever amended. */
  readonly why?: string;
}
