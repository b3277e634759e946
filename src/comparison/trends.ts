import { SIDES, type Side } from '../anatomy/index.js';
import type { Examination } from '../examination/index.js';
import {
  type IndexKind,
  indexOf,
  mmHgAt,
  numeratorOf,
  type PressureSettings,
  pressureSettings,
  REAL_CHANGE,
} from '../pressures/index.js';

/** What is followed from visit to visit, each leg apart. */
export const TREND_MEASURES = [
  'ankle-index',
  'toe-index',
  'ankle-pressure',
  'toe-pressure',
  'distance',
] as const;
export type TrendMeasure = (typeof TREND_MEASURES)[number];

/**
 * What one visit knows of a measure on one side: a number (a ratio, mmHg, or metres), an artery that could not be compressed, which
 * has no number to compare, or nothing.
 */
export type TrendValue = number | 'incompressible' | undefined;
export type TrendValues = Readonly<Record<TrendMeasure, Readonly<Partial<Record<Side, TrendValue>>>>>;

/**
 * How much a measure differs between two measurements when nothing has changed.
 * - `difference`: by so much, up or down;
 * - `factor`: from the value divided by it to the value times it;
 * - `of-arm`: by such a share of the arm pressure.
 */
export interface LeastChange {
  readonly by: 'difference' | 'factor' | 'of-arm';
  readonly value: number;
  readonly source: string;
}

const ROMANOS =
  'Romanos MT et al., J Foot Ankle Res 2010;3:31, doi:10.1186/1757-1146-3-31: the wider limits of agreement, of one or of two examiners';

/**
 * The least change that is more than scatter. That of the ankle pressure is the index's, taken times the arm pressure, so that the
 * two plots never disagree. That of the walking distance was measured on a treadmill; what is told scatters no less.
 */
export const LEAST_CHANGES: Readonly<Record<TrendMeasure, LeastChange>> = {
  'ankle-index': { by: 'difference', ...REAL_CHANGE },
  'toe-index': { by: 'difference', value: 0.28, source: ROMANOS },
  'ankle-pressure': { by: 'of-arm', ...REAL_CHANGE },
  'toe-pressure': { by: 'difference', value: 29, source: ROMANOS },
  distance: {
    by: 'factor',
    value: 1.47,
    source:
      'Vasc Med 1997;2:93-97, doi:10.1177/1358863X9700200204: pain-free distance at constant load, coefficient of repeatability',
  },
};

const settingsOf = (one: Examination): PressureSettings => pressureSettings(one.method);

function index(one: Examination, kind: IndexKind, side: Side): TrendValue {
  const read = one.pressures && indexOf(kind, side, one.pressures, settingsOf(one));
  return read?.band === 'incompressible' ? 'incompressible' : read?.value;
}

function pressure(one: Examination, kind: IndexKind, side: Side): TrendValue {
  if (!one.pressures) return undefined;
  const { numerator, incompressible } = numeratorOf(one.pressures, kind, side, settingsOf(one).ankle);
  return incompressible ? 'incompressible' : numerator?.mmHg;
}

const READERS: Readonly<Record<TrendMeasure, (one: Examination, side: Side) => TrendValue>> = {
  'ankle-index': (one, side) => index(one, 'ankle', side),
  'toe-index': (one, side) => index(one, 'toe', side),
  'ankle-pressure': (one, side) => pressure(one, 'ankle', side),
  'toe-pressure': (one, side) => pressure(one, 'toe', side),
  distance: (one, side) => one.history?.leg?.[side]?.distance,
};

/** What a visit knows of one measure on one side, by the method that its own record states. */
export function trendValue(one: Examination, measure: TrendMeasure, side: Side): TrendValue {
  return READERS[measure](one, side);
}

/** What a visit knows of every measure. */
export function trendValues(one: Examination): TrendValues {
  const of = (measure: TrendMeasure) =>
    Object.fromEntries(SIDES.map((side) => [side, trendValue(one, measure, side)]));
  return Object.fromEntries(TREND_MEASURES.map((measure) => [measure, of(measure)])) as TrendValues;
}

/** The higher arm pressure of a visit, in mmHg. */
export function armPressure(one: Examination): number | undefined {
  const arms = SIDES.flatMap((side) => mmHgAt(one.pressures?.brachial, side) ?? []);
  return arms.length ? Math.max(...arms) : undefined;
}

/**
 * The range in which a later value says nothing, since measuring alone scatters as widely. Both ends lie outside: what reaches one
 * has changed.
 * @param arm the arm pressure of that visit in mmHg, which the ankle pressure's scatter is a share of
 */
export function scatterOf(
  measure: TrendMeasure,
  value: number,
  arm?: number,
): { readonly from: number; readonly to: number } | undefined {
  const { by, value: limit } = LEAST_CHANGES[measure];
  if (by === 'factor') return { from: value / limit, to: value * limit };
  if (by === 'of-arm' && arm === undefined) return undefined;
  const spread = by === 'of-arm' ? limit * arm! : limit;
  return { from: Math.max(0, value - spread), to: value + spread };
}

/** Whether a value differs from an earlier one by no more than measuring scatters. */
export function isScatter(measure: TrendMeasure, from: number, to: number, arm?: number): boolean {
  const { by, value: limit } = LEAST_CHANGES[measure];
  if (by === 'factor') return to < from * limit && to * limit > from;
  if (by === 'of-arm' && arm === undefined) return false;
  // In thousandths, so that 0.85 to 1.00 is exactly 0.15.
  return Math.round(Math.abs(to - from) * 1000) < Math.round((by === 'of-arm' ? limit * arm! : limit) * 1000);
}
