import {
  type Level,
  levelOf,
  type Limb,
  LIMBS,
  pathTo,
  type PulseSiteId,
  stationsOf,
  vesselKey,
  type VesselKey,
  vesselOf,
  VESSELS,
} from '../../src/anatomy/index.js';
import { type Examination, type Grade, pulseAt } from '../../src/examination/index.js';
import type { PressureEvidence } from '../../src/localisation/network/index.js';
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

export const SCORED_LIMBS = LIMBS.filter(({ kind }) => kind !== 'head');

/** Everything on the way from the heart to the end of a limb, proximal first. */
function wayTo(limb: Limb): VesselKey[] {
  const sites = stationsOf(limb).flat();
  const way = new Set(sites.flatMap((place) => pathTo(vesselOf(place)).map(vesselKey)));
  for (const vessel of VESSELS) {
    const path = pathTo(vessel).map(vesselKey);
    const own = limb.kind === 'leg' ? 'common-femoral' : 'axillary';
    if (path.includes(vesselKey({ artery: own, side: limb.side }))) way.add(vesselKey(vessel));
  }
  return VESSELS.map(vesselKey).filter((key) => way.has(key));
}

export function gradesOf(examination: Examination, limb: Limb): Map<PulseSiteId, Grade> {
  const out = new Map<PulseSiteId, Grade>();
  for (const place of stationsOf(limb).flat()) {
    const grade = place.side === 'midline' ? undefined : pulseAt(examination, place)?.grade;
    if (grade) out.set(place.site, grade);
  }
  return out;
}

const isWeak = (grade: Grade): boolean => grade === 'absent' || grade === 'reduced';

/** Whether the pulses stated can decide the level at all. */
function decidable({ kind }: Limb, grades: Map<PulseSiteId, Grade>): boolean {
  const any = (...sites: PulseSiteId[]): boolean => sites.some((site) => grades.has(site));
  return kind === 'leg'
    ? any('femoral') && any('popliteal', 'posterior-tibial', 'dorsalis-pedis')
    : any('brachial', 'axillary') && any('radial', 'ulnar');
}

/** The most proximal lesion on the way to a limb, if there is one. */
export function truthOf(one: PublishedCase, limb: Limb): VesselKey | undefined {
  const lesions = lesionsOf(one);
  return wayTo(limb).find((key) => lesions.includes(key));
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
    const artery = VESSELS.find((vessel) => vesselKey(vessel) === truth)!.artery;
    const levels: Level[] =
      artery === 'common-femoral' ? ['aorto-iliac', 'femoro-popliteal'] : [levelOf(artery, limb.kind)];
    return [{ id: one.id, limb, examination, pressures, truth, levels, decidable: decidable(limb, grades) }];
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
