import { type LimbKey, type Place, PLACES, siteDefinition } from '../anatomy/index.js';
import type { PulseRegion } from './types.js';

/** Regions in the order of a letter: trunk, then legs, arms, head; right before left. */
export const REGIONS_TOLD: readonly PulseRegion[] = [
  'trunk',
  'right leg',
  'left leg',
  'right arm',
  'left arm',
  'right head',
  'left head',
];

/** The limbs that are looked at and asked about. */
export const LIMBS_TOLD = [
  'right leg',
  'left leg',
  'right arm',
  'left arm',
] as const satisfies readonly LimbKey[];

/** The region a place belongs to; a kidney and the aorta belong to the trunk. */
export function regionOf({ site, side }: Place): PulseRegion {
  const { region } = siteDefinition(site);
  return region === 'trunk' || side === 'midline' ? 'trunk' : `${side} ${region}`;
}

/** Every place of a region, proximal first. */
export function placesIn(region: PulseRegion): readonly Place[] {
  return PLACES.filter((place) => regionOf(place) === region);
}

/** Side and kind of a limb. */
export function limbOf(limb: LimbKey): { side: 'right' | 'left'; kind: 'leg' | 'arm' | 'head' } {
  const [side, kind] = limb.split(' ') as ['right' | 'left', 'leg' | 'arm' | 'head'];
  return { side, kind };
}
