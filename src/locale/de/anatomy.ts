import {
  type ArteryId,
  type Laterality,
  type Level,
  type LimbKey,
  type Region,
  type SiteId,
} from '../../anatomy/index.js';
import { namesFrom } from '../names.js';
import type { AnatomyWords } from '../en/anatomy.js';
import { columnsOf } from '../site-words.js';
import { SITES } from './sites.js';

/*
 * Arteries go by their Latin names without "Arteria", as one says them at the bedside. None of the names changes with case;
 * the side follows the name ("Femoralis links"), so it never has to agree with it either. Only the article tells the gender.
 */

const arteries: Record<ArteryId, string> = {
  'ascending-aorta': 'Aorta ascendens',
  'aortic-arch': 'Arcus aortae',
  brachiocephalic: 'Truncus brachiocephalicus',
  'common-carotid': 'Carotis communis',
  'internal-carotid': 'Carotis interna',
  'external-carotid': 'Carotis externa',
  'superficial-temporal': 'Temporalis superficialis',
  subclavian: 'Subclavia',
  axillary: 'Axillaris',
  brachial: 'Brachialis',
  radial: 'Radialis',
  ulnar: 'Ulnaris',
  'deep-palmar-arch': 'Arcus palmaris profundus',
  'superficial-palmar-arch': 'Arcus palmaris superficialis',
  'thoracic-aorta': 'Aorta thoracica',
  'suprarenal-aorta': 'Aorta suprarenal',
  renal: 'Renalis',
  'infrarenal-aorta': 'Aorta infrarenal',
  'common-iliac': 'Iliaca communis',
  'internal-iliac': 'Iliaca interna',
  'external-iliac': 'Iliaca externa',
  'common-femoral': 'Femoralis communis',
  'deep-femoral': 'Profunda femoris',
  'superficial-femoral': 'Femoralis superficialis',
  popliteal: 'Poplitea',
  'anterior-tibial': 'Tibialis anterior',
  'dorsalis-pedis': 'Dorsalis pedis',
  'tibioperoneal-trunk': 'Truncus tibiofibularis',
  'posterior-tibial': 'Tibialis posterior',
  peroneal: 'Fibularis',
  'plantar-arch': 'Arcus plantaris',
};

/** Arches, trunks and the canal are masculine, every other artery or site is feminine. */
const MASCULINE = /^(Arcus|Truncus|Adduktorenkanal)/;
type Case = 'nominative' | 'genitive' | 'dative';
const ARTICLES: Record<Case, readonly [masculine: string, feminine: string]> = {
  nominative: ['der', 'die'],
  genitive: ['des', 'der'],
  dative: ['dem', 'der'],
};

/** The name of an artery or a site with its article: "der Femoralis links", "des Truncus tibiofibularis". */
export function withArticle(name: string, form: Case): string {
  return `${ARTICLES[form][MASCULINE.test(name) ? 0 : 1]} ${name}`;
}

/** "an der Femoralis links", "am Truncus tibiofibularis". */
export function atName(name: string): string {
  return MASCULINE.test(name) ? `am ${name}` : `an der ${name}`;
}

/** The pulse of a site in one word. */
export function pulseName(site: SiteId): string {
  const { name, pulse } = SITES[site];
  return pulse ?? `${name}puls`;
}

const { sites, codes, technique } = columnsOf(SITES);

const sides: Record<Laterality, string> = { right: 'rechts', left: 'links', midline: 'Mitte' };

const limbs: Record<LimbKey, string> = {
  'right leg': 'rechtes Bein',
  'left leg': 'linkes Bein',
  'right arm': 'rechter Arm',
  'left arm': 'linker Arm',
  'right head': 'Hals und Kopf rechts',
  'left head': 'Hals und Kopf links',
};

/** "am rechten Bein". */
export const atLimb: Record<LimbKey, string> = {
  'right leg': 'am rechten Bein',
  'left leg': 'am linken Bein',
  'right arm': 'am rechten Arm',
  'left arm': 'am linken Arm',
  'right head': 'an Hals und Kopf rechts',
  'left head': 'an Hals und Kopf links',
};

const levels: Record<Level, string> = {
  central: 'zentrale Aorta',
  'aorto-iliac': 'Beckenetage',
  'femoro-popliteal': 'Oberschenkeletage',
  infrapopliteal: 'Unterschenkeletage',
  'arm-inflow': 'Einstrombahn des Arms',
  'axillo-brachial': 'Oberarmetage',
  'forearm-hand': 'Unterarm- und Handetage',
  carotid: 'Carotis',
};

const regions: Record<Region, string> = { head: 'Kopf', arm: 'Arme', trunk: 'Rumpf', leg: 'Beine' };

const KNEE = { 'above-knee': 'supragenual', 'below-knee': 'infragenual' };

const names = namesFrom({
  arteries,
  sites,
  sided: (name, side) => `${name} ${sides[side]}`,
  aorticFork: 'Aortenbifurkation',
  popliteal: (part, side) => `${arteries.popliteal} ${KNEE[part]} ${sides[side]}`,
});

export const anatomy: AnatomyWords = {
  arteries,
  sites,
  codes,
  technique,
  sides,
  sideLetters: { right: 'R', left: 'L' },
  limbs,
  levels,
  regions,
  ...names,
};
