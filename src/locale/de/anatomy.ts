import type { ArteryId, Laterality, Level, LimbKey, Place, SiteId } from '../../anatomy/index.js';
import { anatomyFrom } from '../anatomy.js';
import { placesFrom } from '../places.js';
import { say, termsFrom } from '../terms.js';
import { SITES } from './sites.js';
import { techniques } from './techniques.js';

/*
 * Arteries go by their Latin names without "Arteria", as one says them at the bedside. Plain names are feminine too. None of the names changes with case;
 * the side follows the name ("Femoralis links"), so it never has to agree with it either. Only the article tells the gender.
 */

const arteries = termsFrom<ArteryId>({
  'ascending-aorta': { trade: 'Aorta ascendens', plain: 'Hauptschlagader (am Herzen)' },
  'aortic-arch': { trade: 'Arcus aortae', plain: 'Hauptschlagader (Bogen)' },
  brachiocephalic: { trade: 'Truncus brachiocephalicus', plain: 'Schlagader für Arm und Kopf' },
  'common-carotid': { trade: 'Carotis communis', plain: 'Halsschlagader' },
  'internal-carotid': { trade: 'Carotis interna', plain: 'Halsschlagader zum Gehirn' },
  'external-carotid': { trade: 'Carotis externa', plain: 'Halsschlagader zum Gesicht' },
  'superficial-temporal': { trade: 'Temporalis superficialis', plain: 'Schläfenarterie' },
  subclavian: { trade: 'Subclavia', plain: 'Schlüsselbeinarterie' },
  vertebral: { trade: 'Vertebralis', plain: 'Halsschlagader an der Wirbelsäule' },
  'internal-thoracic': { trade: 'Thoracica interna', plain: 'Brustwandarterie neben dem Brustbein' },
  axillary: { trade: 'Axillaris', plain: 'Achselarterie' },
  brachial: { trade: 'Brachialis', plain: 'Oberarmarterie' },
  radial: { trade: 'Radialis', plain: 'Unterarmarterie auf der Daumenseite' },
  ulnar: { trade: 'Ulnaris', plain: 'Unterarmarterie auf der Kleinfingerseite' },
  'deep-palmar-arch': { trade: 'Arcus palmaris profundus', plain: 'Handarterie (tiefer Bogen)' },
  'superficial-palmar-arch': {
    trade: 'Arcus palmaris superficialis',
    plain: 'Handarterie (oberflächlicher Bogen)',
  },
  'thoracic-aorta': { trade: 'Aorta thoracica', plain: 'Hauptschlagader im Brustkorb' },
  'suprarenal-aorta': { trade: 'Aorta suprarenal', plain: 'Bauchschlagader oberhalb der Nierenarterien' },
  renal: { trade: 'Renalis', plain: 'Nierenarterie' },
  'infrarenal-aorta': { trade: 'Aorta infrarenal', plain: 'Bauchschlagader unterhalb der Nierenarterien' },
  'common-iliac': { trade: 'Iliaca communis', plain: 'Beckenarterie' },
  'internal-iliac': { trade: 'Iliaca interna', plain: 'Beckenarterie (innere)' },
  'external-iliac': { trade: 'Iliaca externa', plain: 'Beckenarterie (äußere)' },
  'common-femoral': { trade: 'Femoralis communis', plain: 'Leistenarterie' },
  'deep-femoral': { trade: 'Profunda femoris', plain: 'Oberschenkelarterie (tiefe)' },
  'superficial-femoral': { trade: 'Femoralis superficialis', plain: 'Oberschenkelarterie' },
  popliteal: { trade: 'Poplitea', plain: 'Kniekehlenarterie' },
  'anterior-tibial': { trade: 'Tibialis anterior', plain: 'Schienbeinarterie (vordere)' },
  'dorsalis-pedis': { trade: 'Dorsalis pedis', plain: 'Fußrückenarterie' },
  'tibioperoneal-trunk': {
    trade: 'Truncus tibiofibularis',
    plain: 'Unterschenkelarterie (gemeinsamer Stamm)',
  },
  'posterior-tibial': { trade: 'Tibialis posterior', plain: 'Schienbeinarterie (hintere)' },
  peroneal: { trade: 'Fibularis', plain: 'Wadenbeinarterie' },
  'plantar-arch': { trade: 'Arcus plantaris', plain: 'Fußsohlenarterie' },
});

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

/** The pulse of a site in one word; in plain words the pulse at a place. */
export function pulseName(site: SiteId, many: '' | 'e' = ''): string {
  const { name, pulse, plain } = SITES[site];
  return say(`${pulse ?? `${name}puls`}${many}`, `Puls${many} an der ${plain.name}`);
}

/** The same with its side. */
export function pulseAt({ site, side }: Place): string {
  return `${pulseName(site)}${side === 'midline' ? '' : ` ${sides[side]}`}`;
}

const sides: Record<Laterality, string> = { right: 'rechts', left: 'links', midline: 'Mitte' };

/** "am rechten Bein". */
export const atLimb: Record<LimbKey, string> = {
  'right leg': 'am rechten Bein',
  'left leg': 'am linken Bein',
  'right arm': 'am rechten Arm',
  'left arm': 'am linken Arm',
  'right head': 'an Hals und Kopf rechts',
  'left head': 'an Hals und Kopf links',
};

const KNEE = termsFrom({
  'above-knee': { trade: 'supragenual', plain: '(oberer Teil)' },
  'below-knee': { trade: 'infragenual', plain: '(unterer Teil)' },
});

const sided = (name: string, side: Laterality): string => `${name} ${sides[side]}`;

const places = placesFrom({
  sites: SITES,
  sides,
  sideLetters: { right: 'R', left: 'L' },
  limbs: {
    'right leg': 'rechtes Bein',
    'left leg': 'linkes Bein',
    'right arm': 'rechter Arm',
    'left arm': 'linker Arm',
    'right head': 'Hals und Kopf rechts',
    'left head': 'Hals und Kopf links',
  },
  sided,
});

export const anatomy = anatomyFrom(places, {
  arteries,
  technique: techniques,
  levels: termsFrom<Level>({
    central: { trade: 'zentrale Aorta', plain: 'Hauptschlagader' },
    'aorto-iliac': { trade: 'Beckenetage', plain: 'Bauch- und Beckenschlagadern' },
    'femoro-popliteal': { trade: 'Oberschenkeletage', plain: 'Oberschenkel und Kniekehle' },
    infrapopliteal: { trade: 'Unterschenkeletage', plain: 'Unterschenkel' },
    'arm-inflow': { trade: 'Einstrombahn des Arms', plain: 'Zufluss des Arms' },
    'axillo-brachial': { trade: 'Oberarmetage', plain: 'Achsel und Oberarm' },
    'forearm-hand': { trade: 'Unterarm- und Handetage', plain: 'Unterarm und Hand' },
    carotid: { trade: 'Carotis', plain: 'Hals' },
  }),
  regions: { head: 'Kopf', arm: 'Arme', trunk: 'Rumpf', leg: 'Beine' },
  sided,
  aorticFork: () => say('Aortenbifurkation', 'Aufzweigung der Bauchschlagader'),
  popliteal: (part, side) => `${arteries.popliteal} ${KNEE[part]} ${sides[side]}`,
});
