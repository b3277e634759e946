import { SIDES, type Side } from './sides.js';
import {
  type Place,
  placesUpstream,
  PULSE_PLACES,
  type PulseSiteId,
  type Region,
  siteDefinition,
} from './sites.js';

/** The limbs a reading covers: each arm, each leg, and each side of the neck and head. */
export const LIMB_KINDS = ['leg', 'arm', 'head'] as const;
export type LimbKind = (typeof LIMB_KINDS)[number];
/** One arm, one leg, or one side of neck and head, which are read as a limb. */
export interface Limb {
  readonly side: Side;
  readonly kind: LimbKind;
}
/** A stable text key of a limb, `side kind`, such as `left leg`. */
export type LimbKey = `${Side} ${LimbKind}`;

/** Every limb that a reading is given for: legs, arms, heads, right before left. */
export const LIMBS: readonly Limb[] = LIMB_KINDS.flatMap((kind) => SIDES.map((side) => ({ side, kind })));

/** The key under which a reading holds a limb. */
export function limbKey(limb: Limb): LimbKey {
  return `${limb.side} ${limb.kind}`;
}

/** The limb a region's pulses belong to; a pulse of the trunk lies on the way to both legs. */
const LIMB_OF: Readonly<Record<Region, LimbKind>> = { head: 'head', arm: 'arm', trunk: 'leg', leg: 'leg' };

function stations({ side, kind }: Limb): Place<PulseSiteId>[][] {
  const own = PULSE_PLACES.filter(
    (place) =>
      LIMB_OF[siteDefinition(place.site).region] === kind &&
      (place.side === side || place.side === 'midline'),
  );
  const found: Place<PulseSiteId>[][] = [];
  for (const place of own) (found[placesUpstream(place, own).length] ??= []).push(place);
  return found;
}

const STATIONS = new Map(LIMBS.map((limb) => [limbKey(limb), stations(limb)]));

/**
 * The pulse places of a limb, station by station from the trunk outward. The places of one station are fed by the same
 * place upstream, each through its own artery; a station may hold any number of them.
 */
export function stationsOf(limb: Limb): readonly (readonly Place<PulseSiteId>[])[] {
  return STATIONS.get(limbKey(limb)) ?? [];
}
