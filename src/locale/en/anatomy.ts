import type { ArteryId, Level } from '../../anatomy/index.js';
import { anatomyFrom } from '../anatomy.js';
import { say, termsFrom } from '../terms.js';
import { places, sided } from './places.js';
import { techniques } from './techniques.js';

const arteries = termsFrom<ArteryId>({
  'ascending-aorta': { trade: 'ascending aorta', plain: 'first part of the main artery, leaving the heart' },
  'aortic-arch': { trade: 'aortic arch', plain: 'arch of the main artery' },
  brachiocephalic: {
    trade: 'brachiocephalic trunk',
    plain: 'shared artery to the arm and the head',
  },
  'common-carotid': { trade: 'common carotid', plain: 'main neck artery' },
  'internal-carotid': { trade: 'internal carotid', plain: 'neck artery to the brain' },
  'external-carotid': { trade: 'external carotid', plain: 'neck artery to the face' },
  'superficial-temporal': { trade: 'superficial temporal', plain: 'artery at the temple' },
  subclavian: { trade: 'subclavian', plain: 'artery under the collarbone' },
  vertebral: { trade: 'vertebral', plain: 'neck artery along the spine to the brain' },
  'internal-thoracic': { trade: 'internal thoracic', plain: 'artery behind the ribs, beside the breastbone' },
  axillary: { trade: 'axillary', plain: 'armpit artery' },
  brachial: { trade: 'brachial', plain: 'upper arm artery' },
  radial: { trade: 'radial', plain: 'forearm artery on the thumb side' },
  ulnar: { trade: 'ulnar', plain: 'forearm artery on the little-finger side' },
  'deep-palmar-arch': { trade: 'deep palmar arch', plain: 'deep arch of arteries in the palm' },
  'superficial-palmar-arch': {
    trade: 'superficial palmar arch',
    plain: 'surface arch of arteries in the palm',
  },
  'thoracic-aorta': { trade: 'descending thoracic aorta', plain: 'main artery in the chest' },
  'suprarenal-aorta': { trade: 'suprarenal aorta', plain: 'main artery above the kidneys' },
  renal: { trade: 'renal', plain: 'kidney artery' },
  'infrarenal-aorta': { trade: 'infrarenal aorta', plain: 'main artery below the kidneys' },
  'common-iliac': { trade: 'common iliac', plain: 'pelvic artery' },
  'internal-iliac': { trade: 'internal iliac', plain: 'artery to the buttock and pelvis' },
  'external-iliac': { trade: 'external iliac', plain: 'pelvic artery to the leg' },
  'common-femoral': { trade: 'common femoral', plain: 'groin artery' },
  'deep-femoral': { trade: 'profunda femoris', plain: 'deep thigh artery' },
  'superficial-femoral': { trade: 'superficial femoral', plain: 'main thigh artery' },
  popliteal: { trade: 'popliteal', plain: 'artery behind the knee' },
  'anterior-tibial': { trade: 'anterior tibial', plain: 'front shin artery' },
  'dorsalis-pedis': { trade: 'dorsalis pedis', plain: 'artery on top of the foot' },
  'tibioperoneal-trunk': {
    trade: 'tibioperoneal trunk',
    plain: 'short trunk below the knee that divides into two',
  },
  'posterior-tibial': { trade: 'posterior tibial', plain: 'artery behind the inner ankle' },
  peroneal: { trade: 'peroneal', plain: 'outer calf artery' },
  'plantar-arch': { trade: 'plantar arch', plain: 'arch of arteries in the sole' },
});

export const anatomy = anatomyFrom(places, {
  arteries,
  technique: techniques,
  levels: termsFrom<Level>({
    central: { trade: 'central aorta', plain: 'main artery' },
    'aorto-iliac': { trade: 'aorto-iliac', plain: 'main artery and pelvis' },
    'femoro-popliteal': { trade: 'femoro-popliteal', plain: 'thigh and knee' },
    infrapopliteal: { trade: 'infrapopliteal', plain: 'lower leg' },
    'arm-inflow': { trade: 'brachiocephalic and subclavian', plain: 'artery entering the arm' },
    'axillo-brachial': { trade: 'axillo-brachial', plain: 'armpit and upper arm' },
    'forearm-hand': 'forearm and hand',
    carotid: { trade: 'carotid', plain: 'neck' },
  }),
  regions: { head: 'Head', arm: 'Arms', trunk: 'Trunk', leg: 'Legs' },
  sided,
  aorticFork: () => say('aortic bifurcation', 'place where the main artery divides for the legs'),
  popliteal: (part, side) =>
    `${places.sides[side]} ${say(`${part} ${arteries.popliteal}`, `${arteries.popliteal}, ${part === 'above-knee' ? 'upper' : 'lower'} part`)}`,
});
