import {
  type ArteryId,
  type LimbKey,
  type Level,
  pieceFromKey,
  type PieceKey,
  type Place,
  type Region,
  type Laterality,
  type Vessel,
} from '../../anatomy/index.js';
import { columnsOf } from '../site-words.js';
import { SITES } from './sites.js';

const arteries: Record<ArteryId, string> = {
  'ascending-aorta': 'ascending aorta',
  'aortic-arch': 'aortic arch',
  brachiocephalic: 'brachiocephalic trunk',
  'common-carotid': 'common carotid',
  'internal-carotid': 'internal carotid',
  'external-carotid': 'external carotid',
  'superficial-temporal': 'superficial temporal',
  subclavian: 'subclavian',
  axillary: 'axillary',
  brachial: 'brachial',
  radial: 'radial',
  ulnar: 'ulnar',
  'deep-palmar-arch': 'deep palmar arch',
  'superficial-palmar-arch': 'superficial palmar arch',
  'thoracic-aorta': 'descending thoracic aorta',
  'suprarenal-aorta': 'aorta above the renals',
  renal: 'renal',
  'infrarenal-aorta': 'aorta below the renals',
  'common-iliac': 'common iliac',
  'internal-iliac': 'internal iliac',
  'external-iliac': 'external iliac',
  'common-femoral': 'common femoral',
  'deep-femoral': 'deep femoral',
  'superficial-femoral': 'superficial femoral',
  popliteal: 'popliteal',
  'anterior-tibial': 'anterior tibial',
  'dorsalis-pedis': 'dorsalis pedis',
  'tibioperoneal-trunk': 'tibioperoneal trunk',
  'posterior-tibial': 'posterior tibial',
  peroneal: 'peroneal',
  'plantar-arch': 'plantar arch',
};

const { sites, codes, technique } = columnsOf(SITES);

const sides: Record<Laterality, string> = { right: 'right', left: 'left', midline: 'midline' };

const limbs: Record<LimbKey, string> = {
  'right leg': 'right leg',
  'left leg': 'left leg',
  'right arm': 'right arm',
  'left arm': 'left arm',
  'right head': 'right neck and head',
  'left head': 'left neck and head',
};

const levels: Record<Level, string> = {
  central: 'central aorta',
  'aorto-iliac': 'aorto-iliac',
  'femoro-popliteal': 'femoro-popliteal',
  infrapopliteal: 'below the knee',
  'arm-inflow': 'inflow of the arm',
  'axillo-brachial': 'axillo-brachial',
  'forearm-hand': 'forearm and hand',
  carotid: 'carotid',
};

const regions: Record<Region, string> = { head: 'Head', arm: 'Arms', trunk: 'Trunk', leg: 'Legs' };

const SIDELESS = new Set<ArteryId>(['brachiocephalic']);

function place({ site, side }: Place): string {
  return side === 'midline' ? sites[site] : `${sides[side]} ${sites[site]}`;
}

function vessel({ artery, side }: Vessel): string {
  return side === 'midline' || SIDELESS.has(artery) ? arteries[artery] : `${sides[side]} ${arteries[artery]}`;
}

/** A piece of artery in words; the part matters only where the trade tells parts apart. */
function piece(key: PieceKey): string {
  const found = pieceFromKey(key);
  if (!found) return key;
  const name = vessel(found);
  if (found.artery === 'infrarenal-aorta' && found.stretch === 'distal') return 'aortic fork';
  if (found.artery !== 'popliteal' || found.stretch === 'whole') return name;
  return `${sides[found.side]} ${found.stretch === 'proximal' ? 'above' : 'below'}-knee ${arteries.popliteal}`;
}

export const anatomy = {
  arteries,
  sites,
  codes,
  technique,
  sides,
  /** Letters that stand for the patient's sides on the figure. */
  sideLetters: { right: 'R', left: 'L' },
  limbs,
  levels,
  regions,
  place,
  vessel,
  piece,
};
export type AnatomyWords = typeof anatomy;
