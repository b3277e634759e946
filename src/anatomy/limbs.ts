import { SIDES, type Side } from './sides.js';
import type { Place, PulseSiteId } from './sites.js';

/** What a reading is given for: each arm, each leg, and each side of neck and head. */
export const LIMB_KINDS = ['leg', 'arm', 'head'] as const;
export type LimbKind = (typeof LIMB_KINDS)[number];
export interface Limb {
  readonly side: Side;
  readonly kind: LimbKind;
}
export type LimbKey = `${Side} ${LimbKind}`;

export const LIMBS: readonly Limb[] = LIMB_KINDS.flatMap((kind) => SIDES.map((side) => ({ side, kind })));

export function limbKey(limb: Limb): LimbKey {
  return `${limb.side} ${limb.kind}`;
}

/** The pulse sites of a limb from the trunk outward; the last entry of arm and leg is a pair of twins. */
const WAYS: Record<LimbKind, readonly PulseSiteId[][]> = {
  leg: [['abdominal-aorta'], ['femoral'], ['popliteal'], ['posterior-tibial', 'dorsalis-pedis']],
  arm: [['subclavian'], ['axillary'], ['brachial'], ['radial', 'ulnar']],
  head: [['carotid'], ['superficial-temporal']],
};

/** The pulse places of a limb, station by station from the trunk outward; two at a station are twins fed by one artery. */
export function stationsOf({ side, kind }: Limb): Place<PulseSiteId>[][] {
  return WAYS[kind].map((sites) =>
    sites.map((site) => ({ site, side: site === 'abdominal-aorta' ? 'midline' : side })),
  );
}
