import type { PulseSiteId } from '../anatomy/index.js';
import type { Examination, InjuryPlace, InjurySign } from '../examination/index.js';
import { contextOf, inspectionOf, type StagedKind, type StagedLimb } from './record.js';

/** Pulses at or beyond each place of injury, and the kind of limb it is on. Source: anatomy. */
const BEYOND_INJURY: Readonly<
  Record<InjuryPlace, { readonly kind: StagedKind; readonly sites: readonly PulseSiteId[] }>
> = {
  pelvis: { kind: 'leg', sites: ['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'] },
  groin: { kind: 'leg', sites: ['femoral', 'popliteal', 'posterior-tibial', 'dorsalis-pedis'] },
  thigh: { kind: 'leg', sites: ['popliteal', 'posterior-tibial', 'dorsalis-pedis'] },
  knee: { kind: 'leg', sites: ['popliteal', 'posterior-tibial', 'dorsalis-pedis'] },
  'lower-leg': { kind: 'leg', sites: ['posterior-tibial', 'dorsalis-pedis'] },
  'ankle-foot': { kind: 'leg', sites: ['posterior-tibial', 'dorsalis-pedis'] },
  shoulder: { kind: 'arm', sites: ['axillary', 'brachial', 'radial', 'ulnar'] },
  'upper-arm': { kind: 'arm', sites: ['brachial', 'radial', 'ulnar'] },
  elbow: { kind: 'arm', sites: ['brachial', 'radial', 'ulnar'] },
  forearm: { kind: 'arm', sites: ['radial', 'ulnar'] },
  'wrist-hand': { kind: 'arm', sites: ['radial', 'ulnar'] },
};

/** An injury of a limb: where, by which signs, and which pulses lie at or beyond it. */
export interface Injury {
  readonly place?: InjuryPlace;
  readonly signs: readonly InjurySign[];
  readonly sites: readonly PulseSiteId[];
}

const WHOLE = { leg: BEYOND_INJURY.pelvis.sites, arm: BEYOND_INJURY.shoulder.sites } as const;

/** The injury of a limb, an operation or puncture included; signs without a place concern the whole limb. */
export function injuryOf(examination: Examination, limb: StagedLimb): Injury | undefined {
  const { injury, devices } = contextOf(examination);
  const { injurySigns: signs = [] } = inspectionOf(examination, limb);
  const told = injury?.[limb.side];
  const sheath = devices?.some(
    ({ kind, limb: of, side }) => kind === 'femoral-sheath' && of === limb.kind && side === limb.side,
  );
  const place =
    told && BEYOND_INJURY[told].kind === limb.kind
      ? told
      : sheath && limb.kind === 'leg'
        ? 'groin'
        : undefined;
  if (!place && !signs.length) return undefined;
  const knee = signs.includes('knee-dislocation') ? 'knee' : undefined;
  const at = place ?? knee;
  return { ...(at && { place: at }), signs, sites: at ? BEYOND_INJURY[at].sites : WHOLE[limb.kind] };
}
