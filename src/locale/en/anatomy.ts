import {
  type ArteryId,
  type LimbKey,
  type Level,
  type Region,
  type Laterality,
} from '../../anatomy/index.js';
import { namesFrom } from '../names.js';
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

const names = namesFrom({
  arteries,
  sites,
  sided: (name, side) => `${sides[side]} ${name}`,
  aorticFork: 'aortic fork',
  popliteal: (part, side) => `${sides[side]} ${part} ${arteries.popliteal}`,
});

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
  ...names,
};
export type AnatomyWords = typeof anatomy;
