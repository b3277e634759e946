import {
  type ArteryId,
  isPulseSite,
  type Laterality,
  type Level,
  type LimbKey,
  pieceFromKey,
  type PieceKey,
  type Place,
  type PulseSiteId,
  type Region,
  type SiteId,
  type Vessel,
} from '../../anatomy/index.js';
import type { AnatomyWords } from '../en/anatomy.js';

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

const sites: Record<SiteId, string> = {
  'superficial-temporal': 'Temporalis',
  carotid: 'Carotis',
  subclavian: 'Subclavia',
  axillary: 'Axillaris',
  brachial: 'Brachialis',
  radial: 'Radialis',
  ulnar: 'Ulnaris',
  'abdominal-aorta': 'Bauchaorta',
  renal: 'Renalis',
  iliac: 'Iliaca',
  femoral: 'Femoralis',
  'adductor-canal': 'Adduktorenkanal',
  popliteal: 'Poplitea',
  'posterior-tibial': 'Tibialis posterior',
  'dorsalis-pedis': 'Dorsalis pedis',
};

/** The pulse of a site in one word. */
const pulses: Record<PulseSiteId, string> = {
  'superficial-temporal': 'Temporalispuls',
  carotid: 'Carotispuls',
  subclavian: 'Subclaviapuls',
  axillary: 'Axillarispuls',
  brachial: 'Brachialispuls',
  radial: 'Radialispuls',
  ulnar: 'Ulnarispuls',
  'abdominal-aorta': 'Bauchaortenpuls',
  femoral: 'Femoralispuls',
  popliteal: 'Popliteapuls',
  'posterior-tibial': 'Tibialis-posterior-Puls',
  'dorsalis-pedis': 'Dorsalis-pedis-Puls',
};

export function pulseName(site: SiteId): string {
  return isPulseSite(site) ? pulses[site] : `${sites[site]}puls`;
}

const codes: Record<SiteId, string> = {
  'superficial-temporal': 'TE',
  carotid: 'CA',
  subclavian: 'SC',
  axillary: 'AX',
  brachial: 'BR',
  radial: 'RA',
  ulnar: 'UL',
  'abdominal-aorta': 'AO',
  renal: 'RE',
  iliac: 'IL',
  femoral: 'FE',
  'adductor-canal': 'AK',
  popliteal: 'PO',
  'posterior-tibial': 'TP',
  'dorsalis-pedis': 'DP',
};

const technique: Record<SiteId, string> = {
  'superficial-temporal': 'Vor dem Ohr, knapp über dem Jochbogen, mit leichter Fingerkuppe.',
  carotid: 'Neben dem Kehlkopf, vor dem Kopfnicker; sanft, tief am Hals, nie beide Seiten zugleich.',
  subclavian: 'Hinter der Mitte des Schlüsselbeins, nach unten gegen die erste Rippe gedrückt.',
  axillary: 'Hoch in der Achselhöhle, nach außen gegen den Oberarmknochen gedrückt.',
  brachial: 'Innen neben der Bizepssehne, in der Beuge des gestreckten Ellenbogens.',
  radial: 'Am Handgelenk auf der Daumenseite, zwischen Knochen und Beugesehne.',
  ulnar: 'Am Handgelenk auf der Kleinfingerseite, gleich außen neben der Beugesehne.',
  'abdominal-aorta':
    'Über dem Nabel, etwas links, in der Tiefe; beidseits eine Hand, um die Breite abzuschätzen.',
  renal: 'Stethoskop eine Handbreit über dem Nabel, zwei Finger neben der Mittellinie.',
  iliac: 'Stethoskop auf halbem Weg zwischen Nabel und Leistenmitte.',
  femoral: 'In der Leiste knapp unter dem Band, mitten zwischen Darmbeinstachel und Schambeinfuge.',
  'adductor-canal': 'Stethoskop innen am Oberschenkel, eine Handbreit über dem Knie.',
  popliteal: 'Knie leicht gebeugt, die Fingerkuppen beider Hände tief in der Kniekehle.',
  'posterior-tibial': 'Hinter dem Innenknöchel, ein Drittel des Wegs zur Ferse.',
  'dorsalis-pedis': 'Auf dem Fußrücken, gleich außen neben der Großzehensehne, leicht.',
};

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

const SIDELESS = new Set<ArteryId>(['brachiocephalic']);

/** "Femoralis links", "Bauchaorta". */
function place({ site, side }: Place): string {
  return side === 'midline' ? sites[site] : `${sites[site]} ${sides[side]}`;
}

function vessel({ artery, side }: Vessel): string {
  return side === 'midline' || SIDELESS.has(artery) ? arteries[artery] : `${arteries[artery]} ${sides[side]}`;
}

/** A piece of artery in words; the part matters only where the trade tells parts apart. */
function piece(key: PieceKey): string {
  const found = pieceFromKey(key);
  if (!found) return key;
  if (found.artery === 'infrarenal-aorta' && found.stretch === 'distal') return 'Aortenbifurkation';
  if (found.artery !== 'popliteal' || found.stretch === 'whole') return vessel(found);
  return `${arteries.popliteal} ${found.stretch === 'proximal' ? 'supragenual' : 'infragenual'} ${sides[found.side]}`;
}

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
  place,
  vessel,
  piece,
};
