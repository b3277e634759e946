import { type Place, PULSE_PLACES, type Side, SIDES, siteDefinition } from '../anatomy/index.js';
import { restNormal } from './edits-whole.js';
import { unstatedPlaces } from './queries.js';
import type { Examination } from './types/record.js';

/** A part of the body whose pulses are stated as normal in one act. */
export type Portion =
  | { readonly part: 'head' | 'trunk' }
  | { readonly part: 'arm' | 'hand' | 'leg' | 'foot'; readonly side: Side };

/** A portion with the places that are not stated yet: what an act would write, and all it would write. */
export interface Unstated {
  readonly portion: Portion;
  readonly places: readonly Place[];
}

const ENDS = {
  leg: ['foot', ['posterior-tibial', 'dorsalis-pedis']],
  arm: ['hand', ['radial', 'ulnar']],
} as const;

/** A limb by the name of its end where nothing else of it is left to state. */
function portionOf(kind: 'arm' | 'leg', side: Side, places: readonly Place[]): Portion {
  const [end, sites] = ENDS[kind];
  const only = places.every(({ site }) => (sites as readonly string[]).includes(site));
  return { part: only ? end : kind, side };
}

/**
 * What could be stated as normal, portion by portion: head and neck, each arm, the trunk, each leg. A portion with nothing
 * left is left out.
 * @param among the places on the screen; others are never offered
 */
export function unstatedPortions(
  examination: Examination,
  among: readonly Place[] = PULSE_PLACES,
): readonly Unstated[] {
  const open = unstatedPlaces(examination).filter((place) =>
    among.some(({ site, side }) => site === place.site && side === place.side),
  );
  const within = (region: string, side?: Side): Place[] =>
    open.filter(
      (place) => siteDefinition(place.site).region === region && (side === undefined || place.side === side),
    );
  const limbs = (kind: 'arm' | 'leg'): Unstated[] =>
    SIDES.map((side) => {
      const places = within(kind, side);
      return { portion: portionOf(kind, side, places), places };
    });
  return [
    { portion: { part: 'head' } as const, places: within('head') },
    ...limbs('arm'),
    { portion: { part: 'trunk' } as const, places: within('trunk') },
    ...limbs('leg'),
  ].filter(({ places }) => places.length > 0);
}

/** States the pulses of a portion as normal: those it named, as far as they are not stated meanwhile. */
export function portionNormal(examination: Examination, { places }: Unstated): Examination {
  return restNormal(examination, places);
}
