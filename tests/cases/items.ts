import {
  type Level,
  type Limb,
  LIMBS,
  type PulseSiteId,
  stationsOf,
  type Vessel,
  vesselKey,
  type VesselKey,
} from '../../src/anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../../src/examination/index.js';
import type { PressureEvidence } from '../../src/localisation/network/index.js';
import { isWeak, rightLevels, SCORED_LIMBS, wayTo } from '../tools/limb-ways.js';
import { lesionsOf, recordOf } from './convert.js';
import type { PublishedCase } from './form.js';

/** One limb of one case with its true answer. */
export interface Item {
  readonly id: string;
  readonly limb: Limb;
  readonly examination: Examination;
  readonly pressures: PressureEvidence;
  readonly truth: VesselKey;
  /** Levels that count as right: a common femoral lesion is right at either neighbouring one. */
  readonly levels: readonly Level[];
  readonly decidable: boolean;
}

export function gradesOf(examination: Examination, limb: Limb): Map<PulseSiteId, Grade> {
  const out = new Map<PulseSiteId, Grade>();
  for (const place of stationsOf(limb).flat()) {
    const grade = place.side === 'midline' ? undefined : pulseAt(examination, place)?.grade;
    if (grade) out.set(place.site, grade);
  }
  return out;
}

/** Whether the pulses stated can decide the level at all. */
function decidable({ kind }: Limb, grades: Map<PulseSiteId, Grade>): boolean {
  const any = (...sites: PulseSiteId[]): boolean => sites.some((site) => grades.has(site));
  return kind === 'leg'
    ? any('femoral') && any('popliteal', 'posterior-tibial', 'dorsalis-pedis')
    : any('brachial', 'axillary') && any('radial', 'ulnar');
}

/** The most proximal lesion on the way to a limb, if there is one. */
export function truthOf(one: PublishedCase, limb: Limb): Vessel | undefined {
  const lesions = lesionsOf(one);
  return wayTo(limb).find((vessel) => lesions.includes(vesselKey(vessel)));
}

/** The limbs of a case that are scored. */
export function itemsOf(one: PublishedCase): Item[] {
  if (one.strength !== 'good' && one.strength !== 'fair') return [];
  const { examination, pressures } = recordOf(one);
  return SCORED_LIMBS.flatMap((limb): Item[] => {
    const grades = gradesOf(examination, limb);
    if (![...grades.values()].some(isWeak)) return [];
    const truth = truthOf(one, limb);
    if (!truth) return [];
    const levels = rightLevels(truth, limb);
    return [
      {
        id: one.id,
        limb,
        examination,
        pressures,
        truth: vesselKey(truth),
        levels,
        decidable: decidable(limb, grades),
      },
    ];
  });
}

/** Limbs of a case whose pulses were stated and are all normal. */
export function normalLimbsOf(examination: Examination): Limb[] {
  return SCORED_LIMBS.filter((limb) => {
    const grades = [...gradesOf(examination, limb).values()];
    return grades.length > 0 && !grades.some(isWeak);
  });
}

/** Whether every pulse stated in a record is normal, and at least one is. */
export function isAllNormal(examination: Examination): boolean {
  const grades = LIMBS.flatMap((limb) => [...gradesOf(examination, limb).values()]);
  return grades.length > 0 && !grades.some(isWeak);
}
