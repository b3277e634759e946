import { key, type Section, type Sided } from './types.js';

/*
 * Aorta, neck and head. Lengths and radii: ADAN56 (Boileau E et al., Int J Numer Method Biomed Eng 2015;31(10):e02732,
 * doi:10.1002/cnm.2732). Not in that model: superficial temporal (rule of thumb), communicating arteries (Alastruey J et al.,
 * J Biomech 2007;40:1794-1805, from memory). Both renal arteries are given the mean radius of the two.
 */

const aorta = (
  id: string,
  from: string,
  to: string,
  length: number,
  radii: [number, number],
  rest: Partial<Section> = {},
): Section => ({ id, from, to, length, radii, wall: 'elastic', ...rest });

const ARCH = key('midline', 'aortic-arch');
const THORACIC = key('midline', 'thoracic-aorta');
const SUPRARENAL = key('midline', 'suprarenal-aorta');
const ABOVE_SITE = key('midline', 'infrarenal-aorta', 'proximal');
const BELOW_SITE = key('midline', 'infrarenal-aorta', 'distal');

/** The aorta from valve to bifurcation. */
export const AORTA: readonly Section[] = [
  aorta('ascending aorta', 'root', 'ascending', 4, [1.595, 1.4338], {
    piece: key('midline', 'ascending-aorta'),
    seat: true,
  }),
  aorta('arch to brachiocephalic', 'ascending', 'arch brachiocephalic', 3.4414, [1.4338, 1.2952], {
    piece: ARCH,
    spot: 'origin',
  }),
  aorta('arch to left carotid', 'arch brachiocephalic', 'arch left carotid', 0.9604, [1.2952, 1.2566], {
    piece: ARCH,
    spot: 'before-left-carotid',
    seat: true,
  }),
  aorta('arch to left subclavian', 'arch left carotid', 'arch left subclavian', 0.6979, [1.2566, 1.2284], {
    piece: ARCH,
    spot: 'before-left-subclavian',
  }),
  aorta('isthmus', 'arch left subclavian', 'upper thoracic', 4.3058, [1.2284, 1.055], {
    piece: THORACIC,
    spot: 'isthmus',
    seat: true,
  }),
  aorta('upper thoracic aorta', 'upper thoracic', 'thoracic', 3.8661, [1.055, 0.9823], {
    piece: THORACIC,
    spot: 'mid',
  }),
  aorta('lower thoracic aorta', 'thoracic', 'coeliac', 12.4809, [0.9823, 0.7495], {
    piece: THORACIC,
    spot: 'lower',
  }),
  aorta('aorta to superior mesenteric', 'coeliac', 'superior mesenteric', 1.3988, [0.7495, 0.7319], {
    piece: SUPRARENAL,
    spot: 'coeliac',
  }),
  aorta('aorta to left renal', 'superior mesenteric', 'left renal origin', 0.4319, [0.7319, 0.7265], {
    piece: SUPRARENAL,
    spot: 'mid',
    seat: true,
  }),
  aorta('aorta to right renal', 'left renal origin', 'right renal origin', 1.1977, [0.7265, 0.7114], {
    piece: SUPRARENAL,
    spot: 'renal',
  }),
  aorta('aorta to its pulse site', 'right renal origin', 'midline abdominal-aorta', 3.371, [0.7114, 0.6691], {
    piece: ABOVE_SITE,
    seat: true,
  }),
  aorta(
    'aorta to inferior mesenteric',
    'midline abdominal-aorta',
    'inferior mesenteric',
    2.0379,
    [0.6691, 0.6435],
    {
      piece: BELOW_SITE,
      spot: 'upper',
    },
  ),
  aorta('aorta to bifurcation', 'inferior mesenteric', 'bifurcation', 4.2225, [0.6435, 0.5904], {
    piece: BELOW_SITE,
    spot: 'lower',
    seat: true,
  }),
];

/** Unpaired branches. */
export const TRUNK_BRANCHES: readonly Section[] = [
  aorta('brachiocephalic', 'arch brachiocephalic', 'right neck', 4.7351, [0.6728, 0.6159], {
    piece: key('right', 'brachiocephalic'),
    seat: true,
  }),
  aorta('coeliac', 'coeliac', 'coeliac end', 1.6824, [0.335, 0.3212], { wall: 'muscular' }),
  aorta('superior mesenteric', 'superior mesenteric', 'superior mesenteric end', 21.6398, [0.3926, 0.3926], {
    wall: 'muscular',
  }),
  aorta('inferior mesenteric', 'inferior mesenteric', 'inferior mesenteric end', 9.0239, [0.2077, 0.2077], {
    wall: 'muscular',
  }),
  aorta('anterior communicating', 'right carotid end', 'left carotid end', 0.3, [0.074, 0.074], {
    wall: 'muscular',
  }),
];

const CAROTID = {
  right: { from: 'right neck', length: 8.1219, renal: 3.7717, vertebral: 20.4453 },
  left: { from: 'arch left carotid', length: 12.1319, renal: 2.1837, vertebral: 20.4154 },
} as const;
/** The fraction of the common carotid at which its pulse is felt; its radius there. */
const AT = 0.65;
const CAROTID_AT = 0.4476 + AT * (0.3326 - 0.4476);

/** Neck and head of one side, with the renal artery. */
export const neckOf: Sided<Section[]> = (side) => {
  const { from, length, renal, vertebral } = CAROTID[side];
  const tube = (
    id: string,
    start: string,
    end: string,
    long: number,
    radii: [number, number],
    rest: Partial<Section> = {},
  ): Section => ({
    id: `${side} ${id}`,
    from: start,
    to: `${side} ${end}`,
    length: long,
    radii,
    wall: 'muscular',
    ...rest,
  });
  const n = (name: string): string => `${side} ${name}`;
  return [
    tube('common carotid to its pulse site', from, 'carotid', AT * length, [0.4476, CAROTID_AT], {
      wall: 'elastic',
      piece: key(side, 'common-carotid', 'proximal'),
      seat: true,
    }),
    tube('common carotid to its end', n('carotid'), 'carotid fork', (1 - AT) * length, [CAROTID_AT, 0.3326], {
      wall: 'elastic',
      piece: key(side, 'common-carotid', 'distal'),
      seat: true,
    }),
    tube('internal carotid', n('carotid fork'), 'carotid end', 13.211, [0.2765, 0.2765], {
      piece: key(side, 'internal-carotid'),
      seat: true,
    }),
    tube('external carotid', n('carotid fork'), 'external carotid end', 6.0897, [0.2265, 0.2265], {
      piece: key(side, 'external-carotid'),
      seat: true,
    }),
    tube('temporal to its pulse site', n('external carotid end'), 'superficial-temporal', 3.6, [0.11, 0.1], {
      piece: key(side, 'superficial-temporal', 'proximal'),
      seat: true,
    }),
    tube('temporal to its end', n('superficial-temporal'), 'temporal end', 4.4, [0.1, 0.09], {
      piece: key(side, 'superficial-temporal', 'distal'),
      seat: true,
    }),
    tube('vertebral', n('vertebral origin'), 'basilar', vertebral, [0.1335, 0.1335], {
      to: 'basilar',
      piece: key(side, 'vertebral'),
      seat: true,
    }),
    // Length and radii from memory. What it carries past a block of the aorta is among the collaterals.
    tube('internal thoracic', n('vertebral origin'), 'internal thoracic end', 20, [0.11, 0.08], {
      piece: key(side, 'internal-thoracic'),
      seat: true,
    }),
    tube('posterior communicating', n('carotid end'), 'basilar', 1.5, [0.06, 0.06], { to: 'basilar' }),
    tube('renal', n('renal origin'), 'renal end', renal, [0.29, 0.29], {
      piece: key(side, 'renal'),
      seat: true,
    }),
  ];
};
