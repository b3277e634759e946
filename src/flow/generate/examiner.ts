import { LISTENING_PLACES, PULSE_PLACES, type PulseSiteId } from '../../anatomy/index.js';
import type { Examination, Grade } from '../../examination/index.js';
import { HIGHEST_PRESSURE } from '../../examination/types/pressures.js';
import { between, type Chance, chanceOf, happens, pick, scatter } from './chance.js';

/** How often each true pulse is reported as each. */
type Report = Readonly<Record<'absent' | 'reduced' | 'normal', Readonly<Partial<Record<Grade, number>>>>>;

/** How well an examiner feels, listens and measures. */
export interface ExaminerSkill {
  readonly report: Readonly<Record<'easy' | 'foot-front' | 'foot-back' | 'deep' | 'hard', Report>>;
  /** Share of bruits heard, and of silent places called a bruit. */
  readonly bruitHeard: number;
  readonly bruitImagined: number;
  /** Standard deviation of a cuff reading as a share. */
  readonly cuff: number;
  /** Standard deviation of a time as a share. */
  readonly time: number;
}

/**
 * An examiner with published reliability.
 * - A normal pulse missed: dorsalis pedis 14.7 and posterior tibial 8.7 in 100 people with normal ankle and toe index (Armstrong D
 *   et al., Canadian Cardiovascular Congress 2013); femoral at most 5 in 100 (Brearley S et al., Ann R Coll Surg Engl 1992;74:169-171).
 * - An absent pulse reported: up to 20 in 100 (Brearley 1992); half of that taken at the foot.
 * - Normal and reduced are told apart little better than by chance: kappa 0.01 to 0.15 (McGee S, Evidence-Based Physical
 *   Diagnosis, from memory); four in ten reduced pulses are called normal, one in ten normal ones reduced.
 * - Bruits: sensitivity 0.8 of a limb bruit for a stenosis, specificity 0.75 to 0.95 (McGee SR, Boyko EJ 1998).
 * - Cuff: a change of 0.15 in the index is real (Aboyans V et al., Circulation 2012), so that its standard deviation is about 0.06.
 * - Popliteal and arm: no figure was found; rules of thumb between those of the groin and of the foot.
 */
export const PUBLISHED_EXAMINER: ExaminerSkill = {
  report: {
    easy: {
      normal: { normal: 0.89, reduced: 0.08, absent: 0.03 },
      reduced: { normal: 0.4, reduced: 0.5, absent: 0.1 },
      absent: { normal: 0.01, reduced: 0.04, absent: 0.95 },
    },
    deep: {
      normal: { normal: 0.8, reduced: 0.1, absent: 0.1 },
      reduced: { normal: 0.3, reduced: 0.45, absent: 0.25 },
      absent: { normal: 0.02, reduced: 0.08, absent: 0.9 },
    },
    'foot-front': {
      normal: { normal: 0.77, reduced: 0.09, absent: 0.14 },
      reduced: { normal: 0.3, reduced: 0.4, absent: 0.3 },
      absent: { normal: 0.03, reduced: 0.07, absent: 0.9 },
    },
    'foot-back': {
      normal: { normal: 0.82, reduced: 0.1, absent: 0.08 },
      reduced: { normal: 0.3, reduced: 0.42, absent: 0.28 },
      absent: { normal: 0.03, reduced: 0.07, absent: 0.9 },
    },
    hard: {
      normal: { normal: 0.8, reduced: 0.1, absent: 0.1 },
      reduced: { normal: 0.35, reduced: 0.45, absent: 0.2 },
      absent: { normal: 0.02, reduced: 0.06, absent: 0.92 },
    },
  },
  bruitHeard: 0.8,
  bruitImagined: 0.04,
  cuff: 0.05,
  time: 0.15,
};

const GROUP: Readonly<Record<PulseSiteId, keyof ExaminerSkill['report']>> = {
  'superficial-temporal': 'hard',
  carotid: 'easy',
  subclavian: 'hard',
  axillary: 'hard',
  brachial: 'easy',
  radial: 'easy',
  ulnar: 'hard',
  'abdominal-aorta': 'deep',
  femoral: 'easy',
  popliteal: 'deep',
  'posterior-tibial': 'foot-back',
  'dorsalis-pedis': 'foot-front',
};

type Sides = Record<string, Record<string, unknown> | undefined> | undefined;

function blur(value: unknown, chance: Chance, share: number): unknown {
  if (typeof value !== 'number' || value === 0) return value;
  return Math.min(HIGHEST_PRESSURE, Math.max(1, Math.round(value * (1 + share * scatter(chance)))));
}

function blurCuffs(part: unknown, chance: Chance, share: number): void {
  for (const [site, sides] of Object.entries((part ?? {}) as Record<string, unknown>)) {
    if (site === 'afterExercise') blurCuffs(sides, chance, share);
    else if (sides && typeof sides === 'object') {
      const cell = sides as Record<string, unknown>;
      for (const side of Object.keys(cell)) cell[side] = blur(cell[side], chance, share);
    }
  }
}

/** What an examiner of this skill reports of a true record. Silence stays silence. */
export function asReported(truth: Examination, seed: number, skill = PUBLISHED_EXAMINER): Examination {
  const chance = chanceOf(seed);
  const record = JSON.parse(JSON.stringify(truth)) as Record<string, unknown>;
  const pulses = record.pulses as Record<string, Sides> | undefined;
  for (const { site, side } of PULSE_PLACES) {
    const finding = pulses?.[site]?.[side];
    const grade = finding?.grade as Grade | undefined;
    if (!finding || !grade) continue;
    const true3 = grade === 'bounding' ? 'normal' : grade;
    const table = Object.entries(skill.report[GROUP[site]][true3]) as [Grade, number][];
    const told = pick(chance, table);
    finding.grade = told === 'normal' && grade === 'bounding' && happens(chance, 0.6) ? 'bounding' : told;
    if (finding.grade === 'absent') delete finding.thrill;
  }
  const bruits = record.bruits as Record<string, Sides> | undefined;
  for (const { site, side } of LISTENING_PLACES) {
    const finding = bruits?.[site]?.[side];
    if (!finding?.bruit) continue;
    if (finding.bruit !== 'none') {
      if (!happens(chance, skill.bruitHeard)) finding.bruit = 'none';
    } else if (happens(chance, skill.bruitImagined)) finding.bruit = 'systolic';
  }
  blurCuffs(record.pressures, chance, skill.cuff);
  const bedside = (record.bedside ?? {}) as Record<string, Sides>;
  for (const [test, sides] of Object.entries(bedside)) {
    // How long the raised arms worked is what the clock was set to, or when they gave up: no sign that one may see too late.
    if (test === 'arm-stress') continue;
    for (const result of Object.values(sides ?? {})) {
      if (!result || typeof result.seconds !== 'number') continue;
      result.seconds = Math.round(
        result.seconds * Math.max(0.2, 1 + skill.time * scatter(chance)) + between(chance, 0, 1),
      );
    }
  }
  return record as unknown as Examination;
}
