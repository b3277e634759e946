import {
  type Place,
  placeFromKey,
  PULSE_PLACES,
  type PulseSiteId,
  type Side,
  SIDES,
} from '../../anatomy/index.js';
import { acrossEnd, type Finding, limbsAt, type PressureEvidence, pulsePiece } from './finding.js';
import { byStrength, indexLikelihood, tempered } from './likelihoods.js';
import type { Cuff, Tables } from './types.js';

/** The cuff whose reading stands for a pulse place. */
const CUFF: Readonly<Partial<Record<PulseSiteId, Cuff>>> = {
  femoral: 'thigh',
  popliteal: 'calf',
  'dorsalis-pedis': 'ankle',
  'posterior-tibial': 'ankle',
  axillary: 'arm',
  brachial: 'arm',
  radial: 'wrist',
  ulnar: 'wrist',
};

/** The sides whose ankle was measured by a cuff. */
export function ankleMeasured({ at, ankle, incompressible }: PressureEvidence, side: Side): boolean {
  const keys = [`${side} dorsalis-pedis`, `${side} posterior-tibial`];
  return (
    ankle?.[side] !== undefined ||
    keys.some((key) => at?.[key] !== undefined || (incompressible?.includes(key) ?? false))
  );
}

function pulsePlace(key: string): Place<PulseSiteId> | undefined {
  const place = placeFromKey(key) as Place<PulseSiteId> | undefined;
  return place && PULSE_PLACES.some((one) => one.site === place.site) ? place : undefined;
}

/** Every pressure as a finding. */
export function cuffs(evidence: PressureEvidence, tables: Tables): Finding[] {
  const { at, ankle, toe, finger, incompressible, fallsAfterExercise } = evidence;
  const { index } = tables;
  const out: Finding[] = [];
  const stiff = (side: Side): number =>
    Object.entries(at ?? {}).filter(
      ([key, value]) => key.startsWith(side) && /pedis|tibial/.test(key) && value > index.incompressible,
    ).length + (incompressible?.filter((key) => key.startsWith(side)).length ?? 0);
  for (const [key, value] of Object.entries(at ?? {})) {
    const place = pulsePlace(key);
    const cuff = place && CUFF[place.site];
    if (!cuff) continue;
    const likelihood = indexLikelihood(cuff, value, tables);
    // One stiff foot is one fact, however many of its arteries show it.
    const power = cuff === 'ankle' && value > index.incompressible ? 1 / stiff(place.side as Side) : 1;
    out.push({
      id: { kind: 'index', place, value },
      factors: [{ piece: pulsePiece(place), ...tempered(likelihood, power) }],
      limbs: limbsAt(place),
    });
  }
  for (const key of incompressible ?? []) {
    const place = pulsePlace(key);
    if (!place || CUFF[place.site] !== 'ankle') continue;
    out.push({
      id: { kind: 'incompressible', place },
      factors: [
        { piece: pulsePiece(place), ...tempered(byStrength(index.stiff), 1 / stiff(place.side as Side)) },
      ],
      limbs: limbsAt(place),
    });
  }
  for (const side of SIDES) {
    const leg = { side, kind: 'leg' } as const;
    const arm = { side, kind: 'arm' } as const;
    const value = ankle?.[side];
    if (value !== undefined) {
      out.push({
        id: { kind: 'ankle-index', side, value },
        factors: acrossEnd(leg, indexLikelihood('ankle', value, tables)),
        limbs: [`${side} leg`],
      });
    }
    for (const [limb, cuff, found] of [
      [leg, 'toe', toe?.[side]],
      [arm, 'finger', finger?.[side]],
    ] as const) {
      if (found === undefined) continue;
      out.push({
        id: { kind: 'digit-index', limb, value: found },
        factors: acrossEnd(limb, indexLikelihood(cuff, found, tables)),
        limbs: [`${side} ${limb.kind}`],
      });
    }
    const falls = fallsAfterExercise?.[side];
    if (falls !== undefined) {
      const { fallsAfterExercise: chance } = index;
      const likelihood = byStrength(falls ? chance : [1 - chance[0], 1 - chance[1], 1 - chance[2]]);
      out.push({
        id: { kind: 'exercise', side, falls },
        factors: acrossEnd(leg, likelihood),
        limbs: [`${side} leg`],
      });
    }
  }
  return out;
}
