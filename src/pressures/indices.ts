import { SIDES, type Side } from '../anatomy/index.js';
import type { Pressure, PressureSite, Pressures } from '../examination/index.js';
import { type PressureSettings } from './settings.js';
import {
  ARM_RULES,
  type Band,
  beyond,
  FINGER_LIMITS,
  INCOMPRESSIBLE_LIMITS,
  INCOMPRESSIBLE_WRIST,
  INDEX_STANDARDS,
  SEVERE_INDEX_LIMITS,
  TOE_LIMITS,
  WRIST_LIMITS,
} from './tables.js';

export type IndexKind = 'ankle' | 'toe' | 'wrist' | 'finger';
export type SidePressures = Partial<Record<Side, Pressure>>;

/** One pressure used in a calculation. */
export interface Used {
  readonly site: PressureSite;
  readonly side: Side;
  readonly mmHg: number;
}

/** A pressure that a calculation needs and the record lacks. */
export interface Wanted {
  readonly site: PressureSite;
  readonly side: Side;
}

/** What an index is divided by. */
export interface Denominator {
  readonly mmHg: number;
  /** One arm, or both where their mean was taken. */
  readonly from: readonly Used[];
}

/** One index of one limb. */
export interface IndexReading {
  readonly kind: IndexKind;
  readonly side: Side;
  /** Rounded as the standard says; missing when it cannot be computed. */
  readonly value?: number;
  readonly numerator?: Used;
  readonly denominator?: Denominator;
  readonly band?: Band;
  /** An abnormal ankle index at or below the severe limit. */
  readonly severe?: true;
  /** Pressures that are needed, or would make the index more reliable. */
  readonly missing: readonly Wanted[];
}

const SITES_OF: Record<IndexKind, readonly PressureSite[]> = {
  ankle: ['dorsalis-pedis', 'posterior-tibial'],
  toe: ['toe'],
  wrist: ['radial', 'ulnar'],
  finger: ['finger'],
};

/** The number recorded at a site; `undefined` when there is none, for whatever reason. */
export function mmHgAt(sides: SidePressures | undefined, side: Side): number | undefined {
  const value = sides?.[side];
  return typeof value === 'number' ? value : undefined;
}

/** Denominator of the indices, the same for all limbs. A missing arm is reported, never guessed. */
export function denominatorOf(
  brachial: SidePressures | undefined,
  rule: PressureSettings['arm'],
): { denominator?: Denominator; missing: Wanted[] } {
  const arms = SIDES.flatMap((side): Used[] => {
    const mmHg = mmHgAt(brachial, side);
    return mmHg === undefined ? [] : [{ site: 'brachial', side, mmHg }];
  });
  const missing = SIDES.filter((side) => mmHgAt(brachial, side) === undefined).map((side): Wanted => ({
    site: 'brachial',
    side,
  }));
  const [first, second] = arms;
  if (!first) return { missing };
  const higher = second && second.mmHg > first.mmHg ? second : first;
  if (higher.mmHg <= 0) return { missing };
  if (rule === 'mean' && second && Math.abs(first.mmHg - second.mmHg) < ARM_RULES.mean.unlessDiffering) {
    return { denominator: { mmHg: (first.mmHg + second.mmHg) / 2, from: [first, second] }, missing };
  }
  return { denominator: { mmHg: higher.mmHg, from: [higher] }, missing };
}

/** The upper arm of one side alone. */
function ownArm(
  brachial: SidePressures | undefined,
  side: Side,
): { denominator?: Denominator; missing: Wanted[] } {
  const mmHg = mmHgAt(brachial, side);
  if (mmHg === undefined || mmHg <= 0) return { missing: [{ site: 'brachial', side }] };
  return { denominator: { mmHg, from: [{ site: 'brachial', side, mmHg }] }, missing: [] };
}

/** A ratio of two pressures in mmHg, rounded half up. Computed in integer hundredths of mmHg so that exact halves stay exact. */
export function ratio(numerator: number, denominator: number, decimals = 2): number {
  const scale = 10 ** decimals;
  return Math.round((scale * Math.round(numerator * 100)) / Math.round(denominator * 100)) / scale;
}

/** The band of a rounded ankle index. */
export function ankleBand(value: number, settings: PressureSettings): Band {
  const standard = INDEX_STANDARDS[settings.standard];
  if (beyond(value, INCOMPRESSIBLE_LIMITS[settings.incompressible].value)) return 'incompressible';
  if (value <= standard.abnormalTo) return 'abnormal';
  return value <= standard.borderlineTo ? 'borderline' : 'normal';
}

function bandOf(kind: IndexKind, value: number, settings: PressureSettings): Band {
  switch (kind) {
    case 'ankle':
      return ankleBand(value, settings);
    case 'toe':
      return beyond(value, TOE_LIMITS[settings.toe].value) ? 'abnormal' : 'normal';
    case 'wrist':
      if (beyond(value, INCOMPRESSIBLE_WRIST.value)) return 'incompressible';
      if (beyond(value, WRIST_LIMITS[settings.wrist].value)) return 'abnormal';
      return beyond(value, WRIST_LIMITS['1.00'].value) ? 'borderline' : 'normal';
    case 'finger':
      return beyond(value, FINGER_LIMITS[settings.finger].value) ? 'abnormal' : 'normal';
  }
}

/** The pressure a limb's index is taken from, the higher or lower of two arteries. */
export function numeratorOf(
  pressures: Partial<Record<PressureSite, SidePressures | undefined>>,
  kind: IndexKind,
  side: Side,
  rule: PressureSettings['ankle'],
): { numerator?: Used; incompressible: boolean; missing: Wanted[] } {
  const sites = SITES_OF[kind];
  const used = sites.flatMap((site): Used[] => {
    const mmHg = mmHgAt(pressures[site], side);
    return mmHg === undefined ? [] : [{ site, side, mmHg }];
  });
  const stiff = sites.filter((site) => pressures[site]?.[side] === 'incompressible');
  const missing = sites
    .filter((site) => mmHgAt(pressures[site], side) === undefined && !stiff.includes(site))
    .map((site): Wanted => ({ site, side }));
  // An incompressible artery has the higher pressure of the two; only the lower rule can ignore it.
  const lower = kind === 'ankle' && rule === 'lower';
  if (stiff.length && (!lower || !used.length)) return { incompressible: true, missing };
  const sorted = [...used].sort((a, b) => b.mmHg - a.mmHg);
  const numerator = lower ? sorted.at(-1) : sorted[0];
  return numerator ? { numerator, incompressible: false, missing } : { incompressible: false, missing };
}

/**
 * The index of one limb. Nothing measured on the limb gives `undefined`.
 * @param pressures in mmHg
 */
export function indexOf(
  kind: IndexKind,
  side: Side,
  pressures: Pressures,
  settings: PressureSettings,
): IndexReading | undefined {
  const top = numeratorOf(pressures, kind, side, settings.ankle);
  if (!top.numerator && !top.incompressible) return undefined;
  // The wrist is compared with its own arm: the index then tells of the arteries between the two cuffs.
  const bottom =
    kind === 'wrist' ? ownArm(pressures.brachial, side) : denominatorOf(pressures.brachial, settings.arm);
  const missing = [...bottom.missing, ...top.missing];
  const base = { kind, side, missing };
  if (top.incompressible) {
    return {
      ...base,
      band: 'incompressible',
      ...(bottom.denominator && { denominator: bottom.denominator }),
    };
  }
  const { numerator } = top as { numerator: Used };
  if (!bottom.denominator) return { ...base, numerator };
  const value = ratio(numerator.mmHg, bottom.denominator.mmHg, INDEX_STANDARDS[settings.standard].decimals);
  const band = bandOf(kind, value, settings);
  const severe =
    kind === 'ankle' && band === 'abnormal' && beyond(value, SEVERE_INDEX_LIMITS[settings.severeIndex].value);
  return { ...base, numerator, denominator: bottom.denominator, value, band, ...(severe && { severe }) };
}
