/** Highest figures that can be entered: mmHg and beats a minute. */
export const HIGHEST_SYSTOLIC = 300;
export const HIGHEST_HEART_RATE = 300;

/** The circulation as a whole; nothing is compulsory. */
export interface Circulation {
  /** Shock by the examiner's judgement; `false` was looked for. Missing: not said. */
  readonly shock?: boolean;
  /** Blood pressure in mmHg, up to `HIGHEST_SYSTOLIC`. */
  readonly systolic?: number;
  /** In mmHg, never above the systolic. */
  readonly diastolic?: number;
  /** Beats a minute, up to `HIGHEST_HEART_RATE`. */
  readonly heartRate?: number;
}
