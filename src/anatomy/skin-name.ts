import type { Laterality } from './sides.js';
import type { SkinRegionId } from './surface.js';

/** Areas that only the plates tell apart; `met-head-1` is the head of the first metatarsal bone, `base-5` the base of the fifth. */
export const PLATE_AREAS = [
  'thenar',
  'hypothenar',
  'palm',
  'buttock',
  'thigh-back',
  'popliteal-fossa',
  'calf',
  'gaiter',
  'achilles',
  'medial-malleolus',
  'lateral-malleolus',
  'dorsum',
  'instep',
  'base-5',
  'met-head-1',
  'met-head-2',
  'met-head-3',
  'met-head-4',
  'met-head-5',
  'first-web',
] as const;
export type PlateArea = (typeof PLATE_AREAS)[number];

/** Which face of a part of a limb. */
export const SKIN_FACES = ['palmar', 'dorsal', 'plantar', 'medial', 'lateral', 'posterior'] as const;
export type SkinFace = (typeof SKIN_FACES)[number];

/** What a mark covers, for words: a region, of a long one the third, of several in a row the first and the last. */
export interface SkinName {
  readonly region: SkinRegionId | PlateArea | 'fingers' | 'toes';
  readonly side: Laterality;
  readonly third?: 'upper' | 'mid' | 'lower';
  /** The far end, where the mark covers everything from `region` to there. */
  readonly to?: SkinName['region'];
  /** Which face of the region, where it was marked on a plate that shows one. */
  readonly face?: SkinFace;
}
