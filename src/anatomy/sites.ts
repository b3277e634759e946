import { type ArteryId, type Occurrence, sidesOf, type Vessel } from './arteries.js';
import type { Laterality } from './sides.js';

/** The parts of the body that an examination is reported by. */
export const REGIONS = ['head', 'arm', 'trunk', 'leg'] as const;
export type Region = (typeof REGIONS)[number];

export interface SiteDefinition {
  readonly occurs: Exclude<Occurrence, 'right'>;
  readonly artery: ArteryId;
  /** Where on the artery, as a fraction of its length from its origin. */
  readonly at: number;
  readonly region: Region;
}

/**
 * Where a pulse is felt, in the order of examination: from the trunk outward, head and arms before the legs.
 * Landmark and technique are words and live in the locale.
 */
const PULSE_DEFINITIONS = {
  'superficial-temporal': { occurs: 'paired', artery: 'superficial-temporal', at: 0.45, region: 'head' },
  carotid: { occurs: 'paired', artery: 'common-carotid', at: 0.65, region: 'head' },
  subclavian: { occurs: 'paired', artery: 'subclavian', at: 0.86, region: 'arm' },
  axillary: { occurs: 'paired', artery: 'axillary', at: 0.72, region: 'arm' },
  brachial: { occurs: 'paired', artery: 'brachial', at: 0.72, region: 'arm' },
  radial: { occurs: 'paired', artery: 'radial', at: 0.84, region: 'arm' },
  ulnar: { occurs: 'paired', artery: 'ulnar', at: 0.97, region: 'arm' },
  'abdominal-aorta': { occurs: 'midline', artery: 'infrarenal-aorta', at: 0.35, region: 'trunk' },
  femoral: { occurs: 'paired', artery: 'common-femoral', at: 0.6, region: 'leg' },
  popliteal: { occurs: 'paired', artery: 'popliteal', at: 0.5, region: 'leg' },
  'posterior-tibial': { occurs: 'paired', artery: 'posterior-tibial', at: 0.85, region: 'leg' },
  'dorsalis-pedis': { occurs: 'paired', artery: 'dorsalis-pedis', at: 0.45, region: 'leg' },
} as const satisfies Record<string, SiteDefinition>;

/** Where one listens for a bruit, in the order of examination. */
const LISTENING_DEFINITIONS = {
  carotid: { occurs: 'paired', artery: 'common-carotid', at: 0.65, region: 'head' },
  subclavian: { occurs: 'paired', artery: 'subclavian', at: 0.86, region: 'arm' },
  axillary: { occurs: 'paired', artery: 'axillary', at: 0.72, region: 'arm' },
  'abdominal-aorta': { occurs: 'midline', artery: 'infrarenal-aorta', at: 0.35, region: 'trunk' },
  renal: { occurs: 'paired', artery: 'renal', at: 0.95, region: 'trunk' },
  iliac: { occurs: 'paired', artery: 'external-iliac', at: 0.25, region: 'leg' },
  femoral: { occurs: 'paired', artery: 'common-femoral', at: 0.6, region: 'leg' },
  'adductor-canal': { occurs: 'paired', artery: 'superficial-femoral', at: 0.72, region: 'leg' },
  popliteal: { occurs: 'paired', artery: 'popliteal', at: 0.5, region: 'leg' },
} as const satisfies Record<string, SiteDefinition>;

export type PulseSiteId = keyof typeof PULSE_DEFINITIONS;
export type ListeningSiteId = keyof typeof LISTENING_DEFINITIONS;
/** Any place on the map: a pulse is felt there, or a bruit listened for, or both. */
export type SiteId = PulseSiteId | ListeningSiteId;

export const PULSE_SITES: Readonly<Record<PulseSiteId, SiteDefinition>> = PULSE_DEFINITIONS;
export const LISTENING_SITES: Readonly<Record<ListeningSiteId, SiteDefinition>> = LISTENING_DEFINITIONS;
export const PULSE_SITE_IDS = Object.keys(PULSE_DEFINITIONS) as PulseSiteId[];
export const LISTENING_SITE_IDS = Object.keys(LISTENING_DEFINITIONS) as ListeningSiteId[];

/** Every place on the map in the order of the table: proximal to distal, head first. */
export const SITE_IDS: readonly SiteId[] = [
  'superficial-temporal',
  'carotid',
  'subclavian',
  'axillary',
  'brachial',
  'radial',
  'ulnar',
  'abdominal-aorta',
  'renal',
  'iliac',
  'femoral',
  'adductor-canal',
  'popliteal',
  'posterior-tibial',
  'dorsalis-pedis',
];

/** One place on one side of one patient. */
export interface Place<S extends SiteId = SiteId> {
  readonly site: S;
  readonly side: Laterality;
}

/** A stable text key of a place, `side site`, such as `left popliteal`. */
export type PlaceKey = `${Laterality} ${SiteId}`;

export function placeKey(place: Place): PlaceKey {
  return `${place.side} ${place.site}`;
}

export function isPulseSite(site: string): site is PulseSiteId {
  return Object.hasOwn(PULSE_DEFINITIONS, site);
}

export function isListeningSite(site: string): site is ListeningSiteId {
  return Object.hasOwn(LISTENING_DEFINITIONS, site);
}

/** The anatomy of a place, whether felt, heard or both (both share one definition of the artery). */
export function siteDefinition(site: SiteId): SiteDefinition {
  return isPulseSite(site) ? PULSE_SITES[site] : LISTENING_SITES[site as ListeningSiteId];
}

function places<S extends SiteId>(ids: readonly S[]): readonly Place<S>[] {
  return ids.flatMap((site) => sidesOf(siteDefinition(site).occurs).map((side) => ({ site, side })));
}

/** The 23 places where a pulse is felt, in the order of examination, right before left. */
export const PULSE_PLACES = places(PULSE_SITE_IDS);
/** The 17 places where one listens, in the order of examination, right before left. */
export const LISTENING_PLACES = places(LISTENING_SITE_IDS);
/** Every place on the map. */
export const PLACES = places(SITE_IDS);

const KNOWN_PLACES = new Map<string, Place>(PLACES.map((place) => [placeKey(place), place]));

/** The place with this key, or `undefined` where there is none (`left abdominal-aorta`). */
export function placeFromKey(key: string): Place | undefined {
  return KNOWN_PLACES.get(key);
}

/** The vessel a place lies on. */
export function vesselOf({ site, side }: Place): Vessel {
  return { artery: siteDefinition(site).artery, side };
}
