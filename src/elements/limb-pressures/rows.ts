import type { PressureSite } from '../../examination/index.js';

/** A row of the table: a cuff at rest, or after exercise. */
export interface Row {
  readonly site: PressureSite | 'tcpo2';
  readonly after?: true;
}

export const MAIN: readonly Row[] = (['brachial', 'dorsalis-pedis', 'posterior-tibial', 'toe'] as const).map(
  (site) => ({ site }),
);
export const SEGMENTS: readonly Row[] = (['high-thigh', 'low-thigh', 'calf', 'tcpo2'] as const).map(
  (site) => ({
    site,
  }),
);
export const ARMS: readonly Row[] = (['radial', 'ulnar', 'finger'] as const).map((site) => ({ site }));
export const EXERCISE: readonly Row[] = (['brachial', 'dorsalis-pedis', 'posterior-tibial'] as const).map(
  (site) => ({
    site,
    after: true,
  }),
);
