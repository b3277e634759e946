import type { ArteryId } from '../anatomy/index.js';
import type { Point } from './geometry.js';

/*
 * The figure as data, in units of a 1200 x 1500 box. The patient faces the reader; coordinates are of the patient's left
 * (x > AXIS), the right is its mirror image unless given. The drawing is our own and is not to scale: hands, lower legs
 * and feet are enlarged so that every site can be hit with a finger.
 */

export { AXIS, FIGURE_HEIGHT, FIGURE_WIDTH } from '../anatomy/index.js';

/** Depth of an artery: near the skin, deep in muscle, in the trunk behind the heart, behind a joint. */
export type Depth = 'near' | 'deep' | 'trunk' | 'behind';

export interface Course {
  readonly points: readonly Point[];
  /** Another course on the right, where the sides differ. */
  readonly right?: readonly Point[];
  readonly depth: Depth;
  /** Where along its length a deep artery comes to the surface, or one at the surface goes deep. */
  readonly changesDepthAt?: number;
}

export const COURSES: Readonly<Record<ArteryId, Course>> = {
  'ascending-aorta': {
    points: [
      [600, 418],
      [580, 396],
      [573, 362],
      [584, 334],
      [606, 320],
    ],
    depth: 'near',
  },
  'aortic-arch': {
    points: [
      [606, 320],
      [630, 328],
      [641, 362],
    ],
    depth: 'near',
  },
  brachiocephalic: {
    points: [
      [588, 330],
      [574, 310],
      [562, 284],
    ],
    depth: 'near',
  },
  'common-carotid': {
    points: [
      [604, 322],
      [617, 296],
      [635, 260],
      [642, 230],
      [641, 200],
    ],
    right: [
      [562, 284],
      [558, 248],
      [559, 200],
    ],
    depth: 'near',
  },
  'internal-carotid': {
    points: [
      [641, 200],
      [634, 172],
      [628, 144],
      [624, 118],
    ],
    depth: 'deep',
  },
  'external-carotid': {
    points: [
      [641, 200],
      [649, 174],
      [656, 146],
    ],
    depth: 'near',
  },
  'superficial-temporal': {
    points: [
      [656, 146],
      [657, 112],
      [649, 80],
    ],
    depth: 'near',
  },
  subclavian: {
    points: [
      [630, 330],
      [643, 303],
      [662, 275],
      [692, 264],
      [730, 290],
    ],
    right: [
      [562, 284],
      [542, 268],
      [508, 264],
      [470, 290],
    ],
    depth: 'near',
  },
  vertebral: {
    points: [
      [674, 268],
      [648, 254],
      [628, 232],
      [620, 204],
      [619, 172],
      [610, 150],
      [602, 132],
    ],
    right: [
      [538, 266],
      [558, 254],
      [574, 232],
      [580, 204],
      [581, 172],
      [590, 150],
      [598, 132],
    ],
    depth: 'deep',
  },
  'internal-thoracic': {
    points: [
      [674, 268],
      [672, 292],
      [662, 330],
      [656, 384],
      [653, 440],
      [650, 486],
    ],
    right: [
      [538, 266],
      [533, 292],
      [538, 330],
      [544, 384],
      [547, 440],
      [550, 486],
    ],
    depth: 'deep',
  },
  axillary: {
    points: [
      [730, 290],
      [752, 316],
      [768, 348],
      [782, 380],
    ],
    depth: 'near',
  },
  brachial: {
    points: [
      [782, 380],
      [804, 420],
      [835, 461],
      [862, 484],
    ],
    depth: 'near',
  },
  radial: {
    points: [
      [862, 484],
      [903.4, 501.2],
      [944, 525.8],
      [976.8, 555.3],
      [1007.3, 587.1],
    ],
    depth: 'near',
  },
  ulnar: {
    points: [
      [862, 484],
      [881.9, 522],
      [905.3, 563.4],
      [933.7, 597.1],
      [958.7, 623.9],
      [973.9, 647.6],
    ],
    depth: 'near',
  },
  'deep-palmar-arch': {
    points: [
      [1007.3, 587.1],
      [1028, 606.4],
      [1035.4, 631.3],
      [1020.5, 651.1],
      [997.1, 657.1],
      [976, 648.5],
    ],
    depth: 'deep',
  },
  'superficial-palmar-arch': {
    points: [
      [973.9, 647.6],
      [991.1, 667.2],
      [1016, 680.4],
      [1042.2, 674.7],
      [1055, 654],
      [1051.5, 633.7],
    ],
    depth: 'near',
  },
  'thoracic-aorta': {
    points: [
      [641, 362],
      [637, 416],
      [623, 472],
      [609, 518],
    ],
    depth: 'trunk',
  },
  'suprarenal-aorta': {
    points: [
      [609, 518],
      [606, 532],
      [604.5, 540],
    ],
    depth: 'near',
  },
  renal: {
    points: [
      [606, 538],
      [644, 537],
      [692, 554],
    ],
    depth: 'deep',
  },
  'infrarenal-aorta': {
    points: [
      [604.5, 540],
      [602, 572],
      [600, 612],
    ],
    depth: 'near',
  },
  'common-iliac': {
    points: [
      [600, 612],
      [612, 630],
      [628, 652],
    ],
    depth: 'near',
  },
  'external-iliac': {
    points: [
      [628, 652],
      [650, 688],
      [672, 724],
    ],
    depth: 'near',
  },
  'internal-iliac': {
    points: [
      [628, 652],
      [632, 688],
      [624, 728],
    ],
    depth: 'deep',
  },
  'common-femoral': {
    points: [
      [672, 724],
      [682, 748],
      [685, 776],
    ],
    depth: 'near',
  },
  'superficial-femoral': {
    points: [
      [685, 776],
      [683, 820],
      [679, 866],
      [684, 912],
      [697, 948],
    ],
    depth: 'near',
    changesDepthAt: 0.76,
  },
  'deep-femoral': {
    points: [
      [685, 776],
      [700, 808],
      [713, 858],
      [718, 918],
    ],
    depth: 'deep',
  },
  popliteal: {
    points: [
      [697, 948],
      [707, 978],
      [712, 1012],
      [713, 1056],
    ],
    depth: 'behind',
  },
  'tibioperoneal-trunk': {
    points: [
      [713, 1056],
      [712, 1094],
    ],
    depth: 'behind',
  },
  'anterior-tibial': {
    points: [
      [713, 1056],
      [734, 1078],
      [752, 1112],
      [759, 1168],
      [756, 1250],
      [766, 1322],
    ],
    depth: 'near',
  },
  'dorsalis-pedis': {
    points: [
      [766, 1322],
      [778, 1350],
      [802, 1382],
      [834, 1416],
    ],
    depth: 'near',
  },
  'posterior-tibial': {
    points: [
      [712, 1094],
      [698, 1120],
      [694, 1168],
      [704, 1250],
      [712, 1304],
      [708, 1348],
      [724, 1390],
    ],
    depth: 'deep',
    changesDepthAt: 0.55,
  },
  peroneal: {
    points: [
      [712, 1094],
      [724, 1120],
      [728, 1168],
      [734, 1240],
      [740, 1288],
    ],
    depth: 'deep',
  },
  'plantar-arch': {
    points: [
      [724, 1390],
      [750, 1408],
      [786, 1421],
      [818, 1430],
      [834, 1416],
    ],
    depth: 'deep',
  },
};

/** Arteries that continue their parent instead of branching off; their joint is drawn without a kink. */
export const CONTINUES: Partial<Record<ArteryId, ArteryId>> = {
  'aortic-arch': 'ascending-aorta',
  'thoracic-aorta': 'aortic-arch',
  'suprarenal-aorta': 'thoracic-aorta',
  'infrarenal-aorta': 'suprarenal-aorta',
  axillary: 'subclavian',
  brachial: 'axillary',
  'external-carotid': 'common-carotid',
  'superficial-temporal': 'external-carotid',
  'external-iliac': 'common-iliac',
  'common-femoral': 'external-iliac',
  'superficial-femoral': 'common-femoral',
  popliteal: 'superficial-femoral',
  'tibioperoneal-trunk': 'popliteal',
  'posterior-tibial': 'tibioperoneal-trunk',
  'dorsalis-pedis': 'anterior-tibial',
};
