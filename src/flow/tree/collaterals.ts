import type { Laterality } from '../../anatomy/index.js';
import type { Collateral, Sided } from './types.js';

/*
 * Conductances in ml/min per mmHg, fresh and developed. All are rules of thumb, chosen so that single blocks give ankle indices
 * in their published ranges (the table of checks names the rows that this makes no check of).
 */

type Row = readonly [from: string, to: string, route: string, fresh: number, developed: number];

const build = (side: Laterality, rows: readonly Row[]): Collateral[] =>
  rows.map(([from, to, route, fresh, developed]) => {
    const name = (node: string): string =>
      node.startsWith('=') ? node.slice(1) : side === 'midline' ? node : `${side} ${node}`;
    return {
      id: `${name(from)} > ${name(to)}`,
      from: name(from),
      to: name(to),
      route,
      side,
      fresh,
      developed,
    };
  });

export const TRUNK_COLLATERALS: readonly Collateral[] = build('midline', [
  ['right renal origin', 'inferior mesenteric', 'lumbar chain', 0.3, 9],
  ['superior mesenteric end', 'inferior mesenteric end', 'marginal artery of the colon', 0.25, 8],
  ['right pelvis', 'left pelvis', 'lateral sacral, obturator and pudendal', 0.4, 5],
  ['right external carotid end', 'left external carotid end', 'facial, across the midline', 0.3, 1.5],
  ['right vertebral origin', 'left vertebral origin', 'deep cervical, across the midline', 0.05, 0.3],
]);

export const collateralsOf: Sided<Collateral[]> = (side) =>
  build(side, [
    ['vertebral origin', '=upper thoracic', 'internal thoracic and intercostal', 0.1, 12],
    ['vertebral origin', 'groin', 'internal thoracic and epigastric', 0.06, 1.2],
    ['=upper thoracic', 'groin', 'subcostal and deep circumflex iliac', 0.05, 1],
    ['=inferior mesenteric end', 'pelvis', 'superior and middle rectal', 0.15, 2.5],
    ['=inferior mesenteric', 'pelvis', 'iliolumbar', 0.25, 7],
    ['=inferior mesenteric', 'groin', 'lumbar and circumflex iliac', 0.1, 1.8],
    ['pelvis', 'thigh', 'gluteal, obturator and circumflex femoral', 0.5, 6],
    ['pelvis', 'femoral fork', 'gluteal and circumflex iliac', 0.25, 2.6],
    ['thigh', 'above knee', 'perforating and lateral circumflex to genicular', 0.6, 3],
    ['thigh', 'mid thigh', 'muscular branches of the thigh', 0.3, 1.5],
    ['mid thigh', 'above knee', 'muscular branches at the adductor canal', 0.15, 0.5],
    ['adductor canal', 'anterior tibial origin', 'descending genicular and tibial recurrent', 0.15, 0.9],
    ['above knee', 'tibial fork', 'genicular and sural', 0.25, 1.3],
    ['peroneal end', 'ankle front', 'perforating peroneal', 0.06, 0.4],
    ['peroneal end', 'posterior-tibial', 'communicating peroneal', 0.06, 0.4],
    ['popliteal', 'anterior calf', 'muscular, anterior calf', 0.03, 0.2],
    ['popliteal', 'posterior calf', 'muscular, posterior calf', 0.03, 0.2],
    ['popliteal', 'peroneal end', 'muscular, lateral calf', 0.02, 0.1],
    ['anterior calf', 'ankle front', 'along the anterior tibial', 0.03, 0.25],
    ['posterior calf', 'posterior-tibial', 'along the posterior tibial', 0.03, 0.25],
    ['vertebral origin', 'upper arm', 'suprascapular and subscapular', 0.5, 5],
    ['upper arm', 'elbow', 'deep brachial and recurrent', 0.4, 3.2],
    ['interosseous', 'radial end', 'interosseous, to the radial wrist', 0.05, 0.3],
    ['interosseous', 'ulnar end', 'interosseous, to the ulnar wrist', 0.05, 0.3],
    ['external carotid end', 'vertebral origin', 'occipital and thyrocervical', 0.1, 0.8],
    ['external carotid end', 'carotid end', 'ophthalmic', 0.15, 1.2],
  ]);

/** Pressure difference at which a developed collateral is half open, mmHg. Rule of thumb. */
export const HALF_OPEN = 12;
/** Radius of a collateral vessel for the inertia of its blood, cm. Rule of thumb. */
export const COLLATERAL_RADIUS = 0.06;
