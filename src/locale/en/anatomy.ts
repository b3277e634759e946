import {
  type ArteryId,
  type LimbKey,
  type Level,
  pieceFromKey,
  type PieceKey,
  type Place,
  type Region,
  type Laterality,
  type SiteId,
  type Vessel,
} from '../../anatomy/index.js';

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

const sites: Record<SiteId, string> = {
  'superficial-temporal': 'superficial temporal',
  carotid: 'carotid',
  subclavian: 'subclavian',
  axillary: 'axillary',
  brachial: 'brachial',
  radial: 'radial',
  ulnar: 'ulnar',
  'abdominal-aorta': 'abdominal aorta',
  renal: 'renal',
  iliac: 'iliac',
  femoral: 'femoral',
  'adductor-canal': 'adductor canal',
  popliteal: 'popliteal',
  'posterior-tibial': 'posterior tibial',
  'dorsalis-pedis': 'dorsalis pedis',
};

/** Short codes for where a name does not fit; a legend names them. */
const codes: Record<SiteId, string> = {
  'superficial-temporal': 'ST',
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
  'adductor-canal': 'AC',
  popliteal: 'PO',
  'posterior-tibial': 'PT',
  'dorsalis-pedis': 'DP',
};

/** Where to put the finger or the stethoscope and how: common practice, own words. */
const technique: Record<SiteId, string> = {
  'superficial-temporal': 'In front of the ear, just above the cheekbone, with a light fingertip.',
  carotid: 'Beside the voice box, in front of the neck muscle; gently, low in the neck, one side at a time.',
  subclavian: 'Behind the middle of the collarbone, pressing down against the first rib.',
  axillary: 'High in the armpit, pressed outward against the upper arm bone.',
  brachial: 'On the inner side of the biceps tendon in the bend of the straight elbow.',
  radial: 'At the wrist on the thumb side, between the bone and the flexor tendon.',
  ulnar: 'At the wrist on the little-finger side, just outside the flexor tendon.',
  'abdominal-aorta':
    'Above the navel and a little to the left, deep, with a hand on either side to judge its width.',
  renal: 'Stethoscope a hand’s breadth above the navel, two fingers out from the midline.',
  iliac: 'Stethoscope halfway between the navel and the middle of the groin.',
  femoral: 'In the groin just below the ligament, midway between the hip spine and the pubic symphysis.',
  'adductor-canal': 'Stethoscope on the inner thigh, a hand’s breadth above the knee.',
  popliteal: 'Knee slightly bent, fingertips of both hands deep in the hollow behind it.',
  'posterior-tibial': 'Behind the inner ankle, one third of the way to the heel.',
  'dorsalis-pedis': 'On the back of the foot, just outside the tendon of the big toe, lightly.',
};

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
