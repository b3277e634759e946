import type { Level } from '../anatomy/index.js';
import * as PRESSURE_SOURCES from './published.js';
import type { Figure } from './sources.js';

/** A limit and on which side of it a value is abnormal; the value exactly at the limit counts when `inclusive`. */
export interface Limit {
  readonly value: number;
  readonly side: 'above' | 'below';
  readonly inclusive: boolean;
}

/* @__NO_SIDE_EFFECTS__ */
function above(value: number, inclusive = false): Limit {
  return { value, side: 'above', inclusive };
}

/* @__NO_SIDE_EFFECTS__ */
function below(value: number, inclusive = false): Limit {
  return { value, side: 'below', inclusive };
}

/** Whether a value lies on the abnormal side of a limit. */
export function beyond(value: number, limit: Limit): boolean {
  if (value === limit.value) return limit.inclusive;
  return limit.side === 'above' ? value > limit.value : value < limit.value;
}

export const BANDS = ['abnormal', 'borderline', 'normal', 'incompressible'] as const;
export type Band = (typeof BANDS)[number];

/**
 * Published standards of the ankle index: which pressures are divided, to how many decimals, and how the result is
 * called. Bounds are for values already rounded; the two standards agree.
 */
export const INDEX_STANDARDS = {
  '2016': {
    arm: 'higher',
    ankle: 'higher',
    decimals: 2,
    abnormalTo: 0.9,
    borderlineTo: 0.99,
    normalTo: 1.4,
    source: PRESSURE_SOURCES.guideline2016,
  },
  '2024': {
    arm: 'higher',
    ankle: 'higher',
    decimals: 2,
    abnormalTo: 0.9,
    borderlineTo: 0.99,
    normalTo: 1.4,
    source: PRESSURE_SOURCES.guideline2024,
  },
} as const;

/** Which ankle pressure is divided. */
export const ANKLE_RULES = {
  higher: { value: 'higher', source: PRESSURE_SOURCES.guideline2016 },
  lower: { value: 'lower', source: PRESSURE_SOURCES.aha2012 },
} as const satisfies Record<string, Figure<string>>;

/** Which arm pressure it is divided by. The mean is used unless the arms differ by `unlessDiffering` mmHg or more. */
export const ARM_RULES = {
  higher: { value: 'higher', source: PRESSURE_SOURCES.guideline2016 },
  mean: { value: 'mean', unlessDiffering: 10, source: PRESSURE_SOURCES.getAbi },
} as const;

/** Above which index an artery counts as incompressible. */
export const INCOMPRESSIBLE_LIMITS = {
  '1.40': { value: above(1.4), source: PRESSURE_SOURCES.guideline2024 },
  '1.30': { value: above(1.3), source: PRESSURE_SOURCES.laboratory },
} as const satisfies Record<string, Figure<Limit>>;

/** At or below which ankle index an abnormal value is severe. */
export const SEVERE_INDEX_LIMITS = {
  '0.40': { value: below(0.4, true), source: PRESSURE_SOURCES.guideline2005 },
  '0.30': { value: below(0.3, true), source: 'Hong Kong Practitioner 2004;26(9):384' },
} as const satisfies Record<string, Figure<Limit>>;

/** Toe index: abnormal at or below 0.70, or by the stricter research criterion below 0.60. */
export const TOE_LIMITS = {
  '0.70': { value: below(0.7, true), source: PRESSURE_SOURCES.guideline2016 },
  '0.60': { value: below(0.6), source: PRESSURE_SOURCES.suominen2008 },
} as const satisfies Record<string, Figure<Limit>>;

/** Wrist index; above `INCOMPRESSIBLE_WRIST` the arteries are probably calcified. */
export const WRIST_LIMITS = {
  '1.00': { value: below(1), source: PRESSURE_SOURCES.laboratory },
  '0.90': { value: below(0.9), source: PRESSURE_SOURCES.memory },
  '0.85': { value: below(0.85), source: PRESSURE_SOURCES.memory },
} as const satisfies Record<string, Figure<Limit>>;
export const INCOMPRESSIBLE_WRIST: Figure<Limit> = { value: above(1.3), source: PRESSURE_SOURCES.laboratory };

/** Finger index: normal above this. */
export const FINGER_LIMITS = {
  '0.80': { value: below(0.8, true), source: PRESSURE_SOURCES.laboratory },
  '0.75': { value: below(0.75, true), source: PRESSURE_SOURCES.laboratory2 },
} as const satisfies Record<string, Figure<Limit>>;

/** Difference between the arms, in mmHg. */
export const ARM_DIFFERENCE_LIMITS = {
  '10': { value: above(10, true), source: PRESSURE_SOURCES.clark2012 },
  '15': { value: above(15, true), source: `${PRESSURE_SOURCES.clark2012}; ${PRESSURE_SOURCES.shadman2004}` },
  'over-15': { value: above(15), source: `${PRESSURE_SOURCES.guideline2016} (from memory)` },
  'over-20': { value: above(20), source: PRESSURE_SOURCES.laboratory },
} as const satisfies Record<string, Figure<Limit>>;

/** Difference between the two arteries of one wrist, in mmHg, that points to the lower one. */
export const WRIST_DIFFERENCE_LIMITS = {
  '30': { value: above(30, true), source: PRESSURE_SOURCES.laboratory },
  '20': { value: above(20, true), source: PRESSURE_SOURCES.laboratory2 },
} as const satisfies Record<string, Figure<Limit>>;

/** Fall from upper arm to wrist beyond which the arteries between are suspect, in mmHg. */
export const ARM_DROP_LIMITS = {
  '10': { value: above(10), source: PRESSURE_SOURCES.laboratory2 },
  '20': { value: above(20), source: PRESSURE_SOURCES.memory },
} as const satisfies Record<string, Figure<Limit>>;

/** Fall between neighbouring cuffs, in mmHg: below `suspicious` normal, beyond `significant` a lesion between them. */
export const DROP_LIMITS = {
  '30': { suspicious: above(20, true), significant: above(30), source: PRESSURE_SOURCES.laboratory },
  '20': { suspicious: above(20), significant: above(20), source: PRESSURE_SOURCES.studyGuide },
} as const;

/** Difference between the legs at one level, in mmHg, that points to the lower side. */
export const SIDE_DIFFERENCE_LIMITS = {
  '20': { value: above(20), source: PRESSURE_SOURCES.studyGuide },
  '30': { value: above(30), source: PRESSURE_SOURCES.studyGuide },
} as const satisfies Record<string, Figure<Limit>>;

/** Lowest normal thigh index: two cuffs on the thigh (four in all), or one (three in all). */
export const THIGH_LIMITS = {
  twoCuffs: { value: below(1.2), source: PRESSURE_SOURCES.laboratory },
  oneCuff: { value: below(1), source: PRESSURE_SOURCES.laboratory },
} as const satisfies Record<string, Figure<Limit>>;

/** Exercise: fall of the index in percent, fall of the ankle pressure in mmHg, and the index itself afterwards. */
export const EXERCISE_LIMITS = {
  'more-than': {
    indexFall: above(20),
    ankleFall: above(30),
    indexAfter: below(0.9),
    source: `${PRESSURE_SOURCES.aha2012} (index after exercise from memory)`,
  },
  'at-least': {
    indexFall: above(20, true),
    ankleFall: above(30, true),
    indexAfter: below(0.9),
    source: `secondary sources restating ${PRESSURE_SOURCES.aha2012}`,
  },
} as const;

interface ThreatLimits {
  readonly ankle?: Limit;
  readonly toe?: Limit;
  readonly tcpo2?: Limit;
  readonly index?: Limit;
}
/** A published criterion of limb threat. */
export interface ThreatCriterion {
  readonly restPain: ThreatLimits;
  readonly tissueLoss: ThreatLimits;
  /** A flat volume curve belongs to it too. */
  readonly flatCurve?: true;
  readonly source: string;
}

/* @__NO_SIDE_EFFECTS__ */
function both(limits: ThreatLimits, source: string): ThreatCriterion {
  return { restPain: limits, tissueLoss: limits, source };
}

/** Absolute pressures that support a threatened limb, with rest pain and with tissue loss, in mmHg. */
export const THREAT_CRITERIA = {
  'gvg-2019': {
    ...both(
      { ankle: below(50), toe: below(30), tcpo2: below(30), index: below(0.4) },
      `${PRESSURE_SOURCES.gvg2019} (figures from memory; toe and oxygen pressure also in ${PRESSURE_SOURCES.ghirardini2024})`,
    ),
    flatCurve: true,
  },
  'parc-2015': {
    restPain: { ankle: below(50), toe: below(30), tcpo2: below(20) },
    tissueLoss: { ankle: below(70), toe: below(50), tcpo2: below(40) },
    source: PRESSURE_SOURCES.parc2015,
  },
  'consensus-1991': both({ ankle: below(50, true), toe: below(30, true) }, PRESSURE_SOURCES.gvg2019),
  'tasc-2': {
    restPain: { ankle: below(50), toe: below(30) },
    tissueLoss: { ankle: below(70), toe: below(50) },
    source: PRESSURE_SOURCES.ghirardini2024,
  },
  'esc-2017': both(
    { ankle: below(50), toe: below(30), tcpo2: below(30), index: below(0.4) },
    PRESSURE_SOURCES.ghirardini2024,
  ),
  'iwgdf-2023': both(
    { ankle: below(50), toe: below(30), tcpo2: below(30), index: below(0.4) },
    PRESSURE_SOURCES.ghirardini2024,
  ),
  'acc-aha': both({ toe: below(30), tcpo2: below(30) }, PRESSURE_SOURCES.ghirardini2024),
} as const satisfies Record<string, ThreatCriterion>;

/** Which level of a leg a low or falling cuff pressure points to. */
export const DROP_LEVELS = {
  thighLowBoth: { value: ['aorto-iliac'], source: PRESSURE_SOURCES.laboratory },
  thighLowOne: { value: ['aorto-iliac', 'femoro-popliteal'], source: PRESSURE_SOURCES.laboratory },
  thighToCalf: { value: ['femoro-popliteal'], source: PRESSURE_SOURCES.laboratory },
  calfToAnkle: { value: ['infrapopliteal'], source: PRESSURE_SOURCES.laboratory },
  ankleToToe: {
    value: ['infrapopliteal'],
    source: `${PRESSURE_SOURCES.laboratory} (ankle to toe from memory)`,
  },
} as const satisfies Record<string, Figure<readonly Level[]>>;
