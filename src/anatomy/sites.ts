import {
  ARTERIES,
  type ArteryId,
  type MidlineArteryId,
  type Occurrence,
  pathTo,
  sidesOf,
  type Vessel,
  vesselKey,
} from './arteries.js';
import type { Laterality } from './sides.js';

/** The parts of the body that an examination is reported by. */
export const REGIONS = ['head', 'arm', 'trunk', 'leg'] as const;
export type Region = (typeof REGIONS)[number];

/** Position of a site's label on the whole figure, where it differs from the default of its region. */
export interface SiteLabel {
  /** The group of labels it is spread with: above the hand, between arm and trunk, or below the hand. */
  readonly group?: 'upper' | 'inner' | 'lower';
  /** Figure units right of the axis on the patient's left; `over` and `under` are at the site. */
  readonly lane?: number | 'over' | 'under';
  /** How far above its site the label stands, in figure units; below it when negative. */
  readonly rise?: number;
  /** How many lines are kept free below the name for what was found, where there is room; else one. */
  readonly lines?: number;
}

interface SiteRow {
  readonly artery: ArteryId;
  /** Where on the artery, as a fraction of its length from its origin. */
  readonly at: number;
  readonly region: Region;
  /** A pulse is felt here. */
  readonly felt?: true;
  /** No aneurysm is felt for here, so that an expansile pulsation is not asked of it. Common practice, no source. */
  readonly slender?: true;
  /** One listens here for a bruit. */
  readonly heard?: true;
  /** Arrow keys treat sites with the same row as neighbours, as well as all sites fed by the same site. */
  readonly row?: 'neck' | 'waist';
  readonly label?: SiteLabel;
}

/**
 * Every site, in the order of examination: from the trunk outward, head and arms before the legs. Lists, the record's
 * fields, the stations of a limb, arrow-key navigation and label positions are derived from this table.
 * The origin of the vertebral is heard where the subclavian is, and its targets could not stand 44 px apart: one site.
 * Names and techniques are words and live in the locale.
 */
// prettier-ignore
const SITES = {
  'superficial-temporal': { artery: 'superficial-temporal', at: 0.45, region: 'head', felt: true },
  carotid: { artery: 'common-carotid', at: 0.65, region: 'head', felt: true, heard: true, row: 'neck' },
  subclavian: { artery: 'subclavian', at: 0.86, region: 'arm', felt: true, heard: true, row: 'neck' },
  axillary: { artery: 'axillary', at: 0.72, region: 'arm', felt: true, heard: true },
  brachial: { artery: 'brachial', at: 0.72, region: 'arm', felt: true, label: { rise: 66 } },
  radial: { artery: 'radial', at: 0.84, region: 'arm', felt: true, label: { lane: 'over', rise: 92 } },
  ulnar: { artery: 'ulnar', at: 0.97, region: 'arm', felt: true, label: { group: 'lower', lane: 'under', rise: -158 } },
  'abdominal-aorta': { artery: 'infrarenal-aorta', at: 0.35, region: 'trunk', felt: true, heard: true, row: 'waist', label: { lines: 2 } },
  renal: { artery: 'renal', at: 0.95, region: 'trunk', heard: true, row: 'waist' },
  iliac: { artery: 'external-iliac', at: 0.25, region: 'leg', heard: true, label: { group: 'inner', lane: 790 } },
  femoral: { artery: 'common-femoral', at: 0.6, region: 'leg', felt: true, heard: true, label: { rise: -118 } },
  'adductor-canal': { artery: 'superficial-femoral', at: 0.72, region: 'leg', heard: true },
  popliteal: { artery: 'popliteal', at: 0.5, region: 'leg', felt: true, heard: true },
  'posterior-tibial': { artery: 'posterior-tibial', at: 0.85, region: 'leg', felt: true, slender: true },
  'dorsalis-pedis': { artery: 'dorsalis-pedis', at: 0.45, region: 'leg', felt: true, slender: true },
} as const satisfies Readonly<Record<string, SiteRow>>;

type Sites = typeof SITES;
type SitesWhere<Property> = { [S in keyof Sites]: Sites[S] extends Property ? S : never }[keyof Sites];

/** Any place on the map: a pulse is felt there, or a bruit listened for, or both. */
export type SiteId = keyof Sites;
export type PulseSiteId = SitesWhere<{ felt: true }>;
export type ListeningSiteId = SitesWhere<{ heard: true }>;
/** Sites of which there is one, in the midline. */
export type MidlineSiteId = SitesWhere<{ artery: MidlineArteryId }>;

/** A row of the table of sites, with the occurrence of its artery. */
export interface SiteDefinition extends SiteRow {
  readonly occurs: Occurrence;
}

/** Every site on the map in the order of examination: proximal to distal, head first. */
export const SITE_IDS = Object.keys(SITES) as readonly SiteId[];

const DEFINITIONS = Object.fromEntries(
  SITE_IDS.map((site) => [site, { ...SITES[site], occurs: ARTERIES[SITES[site].artery].occurs }]),
) as Readonly<Record<SiteId, SiteDefinition>>;

/** The definition of a site: its location, and whether it is felt, heard or both. */
export function siteDefinition(site: SiteId): SiteDefinition {
  return DEFINITIONS[site];
}

export function isPulseSite(site: string): site is PulseSiteId {
  return Object.hasOwn(SITES, site) && siteDefinition(site as SiteId).felt === true;
}

/** Whether an expansile pulsation can be felt here: where an aneurysm is looked for, an injured artery of the arm among them. */
export function mayExpand(site: SiteId): boolean {
  return isPulseSite(site) && !siteDefinition(site).slender;
}

export function isListeningSite(site: string): site is ListeningSiteId {
  return Object.hasOwn(SITES, site) && siteDefinition(site as SiteId).heard === true;
}

export function isMidlineSite(site: SiteId): site is MidlineSiteId {
  return siteDefinition(site).occurs === 'midline';
}

/** The sites where a pulse is felt, in the order of examination. */
export const PULSE_SITE_IDS = SITE_IDS.filter(isPulseSite);
/** The sites where one listens for a bruit, in the order of examination. */
export const LISTENING_SITE_IDS = SITE_IDS.filter(isListeningSite);

/** One place on one side of one patient. */
export interface Place<S extends SiteId = SiteId> {
  readonly site: S;
  readonly side: Laterality;
}

/** A stable text key of a place, `side site`, such as `left popliteal`. */
export type PlaceKey = `${Laterality} ${SiteId}`;

/** The key of a place; `placeFromKey` leads back. */
export function placeKey(place: Place): PlaceKey {
  return `${place.side} ${place.site}`;
}

/** Every place on the map, in the order of examination, right before left. */
export const PLACES: readonly Place[] = SITE_IDS.flatMap((site) =>
  sidesOf(siteDefinition(site).occurs).map((side) => ({ site, side })),
);
/** The places where a pulse is felt, in the order of examination, right before left. */
export const PULSE_PLACES = PLACES.filter((place): place is Place<PulseSiteId> => isPulseSite(place.site));
/** The places where one listens, in the order of examination, right before left. */
export const LISTENING_PLACES = PLACES.filter((place): place is Place<ListeningSiteId> =>
  isListeningSite(place.site),
);

const KNOWN_PLACES = new Map<string, Place>(PLACES.map((place) => [placeKey(place), place]));

/** The place with this key, or `undefined` where there is none (`left abdominal-aorta`). */
export function placeFromKey(key: string): Place | undefined {
  return KNOWN_PLACES.get(key);
}

/** The vessel a place lies on. */
export function vesselOf({ site, side }: Place): Vessel {
  return { artery: siteDefinition(site).artery, side };
}

const WAYS = new Map(PLACES.map((place) => [place, pathTo(vesselOf(place)).map(vesselKey)]));
const wayTo = (place: Place): readonly string[] => WAYS.get(place) ?? pathTo(vesselOf(place)).map(vesselKey);

/** Depth of a place on a path: the number of vessels before its own, plus the fraction along its own; -1 off the path. */
function depthOnWay(other: Place, way: readonly string[]): number {
  const vessels = way.indexOf(vesselKey(vesselOf(other)));
  return vessels < 0 ? -1 : vessels + siteDefinition(other.site).at;
}

/** The places upstream of this one, nearest to the heart first. */
export function placesUpstream<P extends Place>(place: Place, among: readonly P[]): P[] {
  const way = wayTo(place);
  const own = depthOnWay(place, way);
  return among
    .map((other) => ({ other, depth: depthOnWay(other, way) }))
    .filter(({ depth }) => depth >= 0 && depth < own)
    .sort((a, b) => a.depth - b.depth)
    .map(({ other }) => other);
}
