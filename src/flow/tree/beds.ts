import type { Laterality } from '../../anatomy/index.js';
import { type Bed, type Sided } from './types.js';

/*
 * Resting flows in ml/min. Leg: Holland CK et al., Ultrasound Med Biol 1998 (common femoral 284 ± 21, superficial femoral
 * 152 ± 10, popliteal 72 ± 5, dorsalis pedis 3 ± 1). The rest: usual shares of the cardiac output, from memory. Reserves, the
 * tie of a bed to an effort and the place along a raised limb: rules of thumb.
 */

type Row = readonly [
  id: string,
  node: string,
  flow: number,
  reserve: number,
  kind: Bed['kind'],
  region: Bed['region'],
  ends: boolean,
  rest?: Partial<Bed>,
];
const build = (side: Laterality, rows: readonly Row[]): Bed[] =>
  rows.map(([id, node, flow, reserve, kind, region, ends, rest]) => ({
    id: side === 'midline' ? id : `${side} ${id}`,
    node: side === 'midline' ? node : `${side} ${node}`,
    flow,
    reserve,
    kind,
    region,
    side,
    ends,
    ...rest,
  }));

export const TRUNK_BEDS: readonly Bed[] = build('midline', [
  ['heart', 'root', 250, 4, 'heart', 'trunk', false],
  ['brain stem', 'basilar', 180, 2.5, 'brain', 'head', true],
  ['chest wall', 'thoracic', 230, 3, 'trunk', 'trunk', false],
  ['upper gut', 'coeliac end', 700, 3, 'gut', 'trunk', true],
  ['small bowel', 'superior mesenteric end', 450, 3, 'gut', 'trunk', true],
  ['large bowel', 'inferior mesenteric end', 70, 3, 'gut', 'trunk', true],
  ['loins', 'midline abdominal-aorta', 120, 3, 'trunk', 'trunk', false],
]);

export const bedsOf: Sided<Bed[]> = (side) =>
  build(side, [
    ['brain', 'carotid end', 265, 2.5, 'brain', 'head', true],
    ['face', 'external carotid end', 130, 3, 'muscle', 'head', false],
    ['scalp', 'temporal end', 15, 4, 'skin', 'head', true],
    ['kidney', 'renal end', 520, 1.8, 'kidney', 'trunk', true],
    ['chest wall, front', 'internal thoracic end', 10, 3, 'trunk', 'trunk', true],
    ['shoulder', 'shoulder', 60, 6, 'muscle', 'arm', false, { effort: 'upper-arm', along: 0.1 }],
    ['upper arm', 'upper arm', 30, 8, 'muscle', 'arm', false, { effort: 'upper-arm', along: 0.4 }],
    ['forearm', 'interosseous', 40, 8, 'muscle', 'arm', true, { effort: 'forearm', along: 0.7 }],
    ['fingers', 'superficial arch', 25, 5, 'skin', 'arm', true, { along: 1, hand: true }],
    ['palm', 'deep arch', 15, 5, 'skin', 'arm', true, { along: 1, hand: true }],
    ['pelvis', 'pelvis', 180, 6, 'muscle', 'leg', true, { effort: 'buttock', along: 0 }],
    ['deep thigh', 'thigh', 132, 8, 'muscle', 'leg', true, { effort: 'thigh', along: 0.3 }],
    ['inner thigh', 'mid thigh', 80, 8, 'muscle', 'leg', false, { effort: 'thigh', along: 0.3 }],
    ['calf, sural', 'popliteal', 38, 12, 'muscle', 'leg', false, { effort: 'calf', along: 0.65 }],
    ['calf, anterior', 'anterior calf', 8, 12, 'muscle', 'leg', false, { effort: 'calf', along: 0.65 }],
    ['calf, posterior', 'posterior calf', 6, 12, 'muscle', 'leg', false, { effort: 'calf', along: 0.65 }],
    ['calf, peroneal', 'peroneal end', 6, 12, 'muscle', 'leg', true, { effort: 'calf', along: 0.65 }],
    ['sole', 'sole', 10, 4.5, 'skin', 'leg', true, { along: 1 }],
    ['instep', 'instep', 3, 4.5, 'skin', 'leg', true, { along: 1 }],
  ]);

/** The exponent with which resting flow follows the driving pressure: near zero where the bed regulates itself. Rule of thumb. */
export const EXPONENT: Readonly<Record<Bed['kind'], number>> = {
  brain: 0.05,
  kidney: 0.08,
  gut: 0.3,
  heart: 0.3,
  trunk: 0.4,
  muscle: 0.4,
  skin: 0.5,
};

/** Time constant of a bed's compliance and resistance, in s: trunk from ADAN56's own terminals, limbs chosen here so that the ankle index of a sound adult lies in its published band. */
export const TIME_CONSTANT: Readonly<Record<Bed['region'], number>> = {
  head: 0.28,
  trunk: 0.28,
  arm: 0.4,
  leg: 0.6,
};
