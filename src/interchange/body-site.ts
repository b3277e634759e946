import {
  ARTERY_CODES,
  type ArteryId,
  CODE_SYSTEMS,
  type Laterality,
  SITE_IDS,
  siteDefinition,
  type SiteId,
} from '../anatomy/index.js';
import { messagesFor } from '../locale/index.js';
import { EXTENSIONS, type NamedPlace, SNOMED_PLACES, SNOMED_SIDES, SYSTEMS } from './codes.js';
import { at, codesIn, listAt, textAt } from './resource.js';

/** Where a `bodySite` says that something was found. */
export interface BodySite {
  /** Every side that it names; more than one is a contradiction. */
  readonly sides: readonly Laterality[];
  /** What its published codes name. */
  readonly places: readonly NamedPlace[];
  /** This library's own names of the place: side, then site or limb. */
  readonly own: readonly string[];
  /** The site whose name stands in its text. */
  readonly site: SiteId | undefined;
}

const SIDE_WORDS: readonly (readonly [Laterality, RegExp])[] = [
  ['right', /\b(right|rechte?[rns]?|rechts)\b/i],
  ['left', /\b(left|linke?[rns]?|links)\b/i],
];

/** The sides that a text names. */
export function saidSides(text: string): readonly Laterality[] {
  return SIDE_WORDS.filter(([, word]) => word.test(text)).map(([side]) => side);
}

/** Arteries by the codes of the open terminologies, which have no sides; a code shared by two names neither. */
const OPEN_CODES: ReadonlyMap<string, readonly ArteryId[]> = (() => {
  const found = new Map<string, ArteryId[]>();
  for (const artery of Object.keys(ARTERY_CODES) as ArteryId[]) {
    for (const code of [ARTERY_CODES[artery].uberon, ARTERY_CODES[artery].fma])
      if (code) found.set(code, [...(found.get(code) ?? []), artery]);
  }
  return found;
})();

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\b(right|left|the|artery|arterial|pulse|site|of)\b/g, ' ')
    .replace(/[^a-z]+/g, ' ')
    .trim();

const SITE_NAMES: ReadonlyMap<string, SiteId> = new Map(
  SITE_IDS.map((site) => [plain(messagesFor('en').anatomy.sites[site]), site]),
);

/** The site on an artery of a published code; `undefined` where there is none or the map has several. */
export function siteOn(artery: ArteryId | undefined): SiteId | undefined {
  const sites = SITE_IDS.filter((site) => siteDefinition(site).artery === artery);
  return sites.length === 1 ? sites[0] : undefined;
}

function lateralities(bodySite: unknown): readonly Laterality[] {
  return listAt(bodySite, 'extension').flatMap((extension): readonly Laterality[] => {
    if (textAt(extension, 'url') !== EXTENSIONS.laterality) return [];
    const value = at(extension, 'valueCodeableConcept');
    const published = codesIn(value, SYSTEMS.snomed).flatMap((code) => SNOMED_SIDES.get(code) ?? []);
    const own = codesIn(value, SYSTEMS.place).filter(
      (code): code is 'right' | 'left' => code === 'right' || code === 'left',
    );
    return [...published, ...own];
  });
}

/** Reads a `bodySite`: what each of its codes, its extension and its text say, side by side. */
export function readBodySite(bodySite: unknown): BodySite {
  const own = codesIn(bodySite, SYSTEMS.place);
  const snomed = codesIn(bodySite, SYSTEMS.snomed).flatMap((code) => SNOMED_PLACES.get(code) ?? []);
  const open = [...codesIn(bodySite, CODE_SYSTEMS.uberon), ...codesIn(bodySite, CODE_SYSTEMS.fma)].flatMap(
    (code): NamedPlace[] => {
      const arteries = OPEN_CODES.get(code) ?? [];
      const only = arteries.length === 1 ? arteries[0] : undefined;
      return only ? [{ artery: only }] : [];
    },
  );
  const text = textAt(bodySite, 'text') ?? '';
  const said = saidSides(text);
  const places = [...snomed, ...open];
  const sides: Laterality[] = [
    ...own.map((code) => code.split(' ')[0] as Laterality),
    ...places.flatMap(({ side }) => side ?? []),
    ...lateralities(bodySite),
    ...(said.length === 1 ? said : []),
  ];
  return { sides: [...new Set(sides)], places, own, site: SITE_NAMES.get(plain(text.slice(0, 200))) };
}
