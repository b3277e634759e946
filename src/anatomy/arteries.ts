import { type Laterality, type Side, SIDES } from './sides.js';

/** Which sides an artery or a site exists on. */
export type Occurrence = 'paired' | 'midline' | 'right';

export interface ArteryDefinition {
  readonly occurs: Occurrence;
  /** The artery it arises from; `null` only for the root. Paired arteries that arise differently on each side name both. */
  readonly from: ArteryId | null | { readonly right: ArteryId; readonly left: ArteryId };
  /** Where on that artery it leaves, as a fraction of its length by side; at its end where not named. */
  readonly leavesAt?: { readonly right: number; readonly left: number };
  /** The artery whose branch completes the arch, for the arches of hand and foot. */
  readonly joinedBy?: ArteryId;
}

/**
 * Every artery of the tree and the artery it arises from, proximal before distal.
 * Source of the branching: HRA-VCCF vessel table (CC BY 4.0), checked in `tests/unit/anatomy`.
 * Both branches of the first part of the subclavian leave it where the vertebral does in the ADAN56 network (Boileau 2015,
 * lengths of its segments; the internal thoracic opposite to it: Gray's Anatomy, from memory).
 * The abdominal aorta is split at the renal arteries, since a block means something else above and below them.
 */
const DEFINITIONS = {
  'ascending-aorta': { occurs: 'midline', from: null },
  'aortic-arch': { occurs: 'midline', from: 'ascending-aorta' },
  brachiocephalic: { occurs: 'right', from: 'aortic-arch' },
  'common-carotid': { occurs: 'paired', from: { right: 'brachiocephalic', left: 'aortic-arch' } },
  'internal-carotid': { occurs: 'paired', from: 'common-carotid' },
  'external-carotid': { occurs: 'paired', from: 'common-carotid' },
  'superficial-temporal': { occurs: 'paired', from: 'external-carotid' },
  subclavian: { occurs: 'paired', from: { right: 'brachiocephalic', left: 'aortic-arch' } },
  vertebral: { occurs: 'paired', from: 'subclavian', leavesAt: { right: 0.28, left: 0.55 } },
  'internal-thoracic': { occurs: 'paired', from: 'subclavian', leavesAt: { right: 0.28, left: 0.55 } },
  axillary: { occurs: 'paired', from: 'subclavian' },
  brachial: { occurs: 'paired', from: 'axillary' },
  radial: { occurs: 'paired', from: 'brachial' },
  ulnar: { occurs: 'paired', from: 'brachial' },
  'deep-palmar-arch': { occurs: 'paired', from: 'radial', joinedBy: 'ulnar' },
  'superficial-palmar-arch': { occurs: 'paired', from: 'ulnar', joinedBy: 'radial' },
  'thoracic-aorta': { occurs: 'midline', from: 'aortic-arch' },
  'suprarenal-aorta': { occurs: 'midline', from: 'thoracic-aorta' },
  renal: { occurs: 'paired', from: 'suprarenal-aorta' },
  'infrarenal-aorta': { occurs: 'midline', from: 'suprarenal-aorta' },
  'common-iliac': { occurs: 'paired', from: 'infrarenal-aorta' },
  'internal-iliac': { occurs: 'paired', from: 'common-iliac' },
  'external-iliac': { occurs: 'paired', from: 'common-iliac' },
  'common-femoral': { occurs: 'paired', from: 'external-iliac' },
  'deep-femoral': { occurs: 'paired', from: 'common-femoral' },
  'superficial-femoral': { occurs: 'paired', from: 'common-femoral' },
  popliteal: { occurs: 'paired', from: 'superficial-femoral' },
  'anterior-tibial': { occurs: 'paired', from: 'popliteal' },
  'dorsalis-pedis': { occurs: 'paired', from: 'anterior-tibial' },
  'tibioperoneal-trunk': { occurs: 'paired', from: 'popliteal' },
  'posterior-tibial': { occurs: 'paired', from: 'tibioperoneal-trunk' },
  peroneal: { occurs: 'paired', from: 'tibioperoneal-trunk' },
  'plantar-arch': { occurs: 'paired', from: 'posterior-tibial', joinedBy: 'dorsalis-pedis' },
} as const satisfies Record<
  string,
  { occurs: Occurrence; from: unknown; leavesAt?: unknown; joinedBy?: string }
>;

export type ArteryId = keyof typeof DEFINITIONS;
export type MidlineArteryId = {
  [A in ArteryId]: (typeof DEFINITIONS)[A]['occurs'] extends 'midline' ? A : never;
}[ArteryId];
export const ARTERIES: Readonly<Record<ArteryId, ArteryDefinition>> = DEFINITIONS;
export const ARTERY_IDS = Object.keys(DEFINITIONS) as ArteryId[];

/** One artery on one side of one patient. */
export interface Vessel {
  readonly artery: ArteryId;
  readonly side: Laterality;
}

/** A stable text key of a vessel, `side artery`, such as `left popliteal`. */
export type VesselKey = `${Laterality} ${ArteryId}`;

export function vesselKey(vessel: Vessel): VesselKey {
  return `${vessel.side} ${vessel.artery}`;
}

/** The side to name a vessel with; `undefined` for an artery that is not paired. */
export function sideInName({ artery, side }: Vessel): Side | undefined {
  return ARTERIES[artery].occurs === 'paired' && side !== 'midline' ? side : undefined;
}

/** The sides on which something with this occurrence exists. */
export function sidesOf(occurs: Occurrence): readonly Laterality[] {
  if (occurs === 'paired') return SIDES;
  return [occurs];
}

/** Every vessel of the body, proximal before distal. */
export const VESSELS: readonly Vessel[] = ARTERY_IDS.flatMap((artery) =>
  sidesOf(ARTERIES[artery].occurs).map((side) => ({ artery, side })),
);

/** The vessel that this one arises from; `undefined` for the root of the tree. */
export function parentVessel({ artery, side }: Vessel): Vessel | undefined {
  const { from } = ARTERIES[artery];
  if (from === null) return undefined;
  const parent = typeof from === 'string' ? from : from[side as Side];
  const { occurs } = ARTERIES[parent];
  return { artery: parent, side: occurs === 'paired' ? side : occurs };
}

/** Where this vessel leaves the one it arises from, as a fraction of that one's length; 1 is its end. */
export function leavesAt({ artery, side }: Vessel): number {
  return ARTERIES[artery].leavesAt?.[side as Side] ?? 1;
}

/** The vessels that arise from this one, in the order of the table. */
export function childVessels(vessel: Vessel): Vessel[] {
  const key = vesselKey(vessel);
  return VESSELS.filter((child) => {
    const parent = parentVessel(child);
    return parent !== undefined && vesselKey(parent) === key;
  });
}

/** The path from the heart to this vessel, inclusive. */
export function pathTo(vessel: Vessel): Vessel[] {
  const path: Vessel[] = [];
  for (let at: Vessel | undefined = vessel; at; at = parentVessel(at)) path.unshift(at);
  return path;
}
