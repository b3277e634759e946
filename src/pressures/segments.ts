import { type Level, oppositeSide, SIDES, type Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import { denominatorOf, mmHgAt, numeratorOf, ratio } from './indices.js';
import type { PressureSettings } from './settings.js';
import { beyond, DROP_LEVELS, DROP_LIMITS, SIDE_DIFFERENCE_LIMITS, THIGH_LIMITS } from './tables.js';

/** Stations of a leg at which a pressure is taken, from the thigh outward. */
export const LEG_STATIONS = ['high-thigh', 'low-thigh', 'calf', 'ankle', 'toe'] as const;
export type LegStation = (typeof LEG_STATIONS)[number];

interface SegmentCommon {
  readonly side: Side;
  readonly at: LegStation;
  readonly limit: number;
  readonly strength: 'suspicious' | 'significant';
  readonly levels: readonly Level[];
}

/** A finding from the pressures along a leg, in mmHg. */
export type SegmentFinding = SegmentCommon &
  (
    | { readonly code: 'thigh-low'; readonly index: number }
    /** Pressure fall from the next measured station above. */
    | { readonly code: 'drop'; readonly from: LegStation; readonly mmHg: number }
    /** How much lower this side is than the other. */
    | { readonly code: 'side-difference'; readonly mmHg: number }
  );

/** The pressure at each measured station of a leg, in mmHg. The ankle is that of its arteries which the settings choose. */
export function legProfile(
  pressures: Pressures,
  side: Side,
  settings: PressureSettings,
): { station: LegStation; mmHg: number }[] {
  return LEG_STATIONS.flatMap((station) => {
    const mmHg =
      station === 'ankle'
        ? numeratorOf(pressures, 'ankle', side, settings.ankle).numerator?.mmHg
        : mmHgAt(pressures[station], side);
    return mmHg === undefined ? [] : [{ station, mmHg }];
  });
}

/** The levels between two stations, each once, from the trunk outward. */
function levelsBetween(from: LegStation, to: LegStation): Level[] {
  const steps: (readonly Level[])[] = [
    DROP_LEVELS.thighToCalf.value,
    DROP_LEVELS.thighToCalf.value,
    DROP_LEVELS.calfToAnkle.value,
    DROP_LEVELS.ankleToToe.value,
  ];
  const crossed = steps.slice(LEG_STATIONS.indexOf(from), LEG_STATIONS.indexOf(to)).flat();
  return [...new Set(crossed)];
}

function thigh(pressures: Pressures, side: Side, settings: PressureSettings) {
  const { denominator } = denominatorOf(pressures.brachial, settings.arm);
  const high = mmHgAt(pressures['high-thigh'], side);
  const low = mmHgAt(pressures['low-thigh'], side);
  const mmHg = high ?? low;
  if (mmHg === undefined || !denominator) return undefined;
  const { value: limit } =
    high !== undefined && low !== undefined ? THIGH_LIMITS.twoCuffs : THIGH_LIMITS.oneCuff;
  const index = ratio(mmHg, denominator.mmHg);
  const at: LegStation = high === undefined ? 'low-thigh' : 'high-thigh';
  return { at, index, limit: limit.value, low: beyond(index, limit) };
}

/**
 * What the cuffs of one leg say of the arteries under them, for the localisation: the calf cuff of the popliteal, the thigh cuff
 * of the femoral, each over the higher arm. The thigh reads high under a narrow cuff, so it is put in relation to the lowest
 * normal thigh index: 1 is just normal for both.
 */
export function cuffRatios(
  pressures: Pressures,
  side: Side,
  settings: PressureSettings,
): { femoral?: number; popliteal?: number } {
  const { denominator } = denominatorOf(pressures.brachial, settings.arm);
  const calf = mmHgAt(pressures.calf, side);
  const top = thigh(pressures, side, settings);
  return {
    ...(top && { femoral: ratio(top.index, top.limit) }),
    ...(calf !== undefined && denominator && { popliteal: ratio(calf, denominator.mmHg) }),
  };
}

function thighFindings(pressures: Pressures, settings: PressureSettings): SegmentFinding[] {
  const sides = SIDES.map((side) => ({ side, ...thigh(pressures, side, settings) })).filter((t) => t.low);
  const { value: levels } = sides.length === 2 ? DROP_LEVELS.thighLowBoth : DROP_LEVELS.thighLowOne;
  return sides.map(({ side, at, index, limit }) => ({
    code: 'thigh-low',
    side,
    at: at as LegStation,
    index: index as number,
    limit: limit as number,
    strength: 'significant',
    levels,
  }));
}

function drops(pressures: Pressures, side: Side, settings: PressureSettings): SegmentFinding[] {
  const { suspicious, significant } = DROP_LIMITS[settings.drop];
  const profile = legProfile(pressures, side, settings).filter(({ station }) => station !== 'toe');
  return profile.slice(1).flatMap(({ station: at, mmHg }, i): SegmentFinding[] => {
    const above = profile[i];
    if (!above) return [];
    const drop = above.mmHg - mmHg;
    const strength = beyond(drop, significant)
      ? 'significant'
      : beyond(drop, suspicious)
        ? 'suspicious'
        : undefined;
    if (!strength) return [];
    const limit = strength === 'significant' ? significant.value : suspicious.value;
    const levels = levelsBetween(above.station, at);
    return [{ code: 'drop', side, at, from: above.station, mmHg: drop, limit, strength, levels }];
  });
}

/** Levels at or above a station: a side that is lower there is diseased somewhere on the way. */
function levelsDownTo(station: LegStation): Level[] {
  return [...new Set<Level>(['aorto-iliac', ...levelsBetween('high-thigh', station)])];
}

function sideDifferences(pressures: Pressures, settings: PressureSettings): SegmentFinding[] {
  const limit = SIDE_DIFFERENCE_LIMITS[settings.sideDifference].value;
  const [right, left] = SIDES.map((side) => legProfile(pressures, side, settings));
  for (const { station, mmHg } of right ?? []) {
    const other = left?.find((at) => at.station === station);
    if (station === 'toe' || !other || !beyond(Math.abs(mmHg - other.mmHg), limit)) continue;
    const side: Side = mmHg < other.mmHg ? 'right' : oppositeSide('right');
    // The first station at which the sides part says most; what follows below it is its consequence.
    return [
      {
        code: 'side-difference',
        side,
        at: station,
        mmHg: Math.abs(mmHg - other.mmHg),
        limit: limit.value,
        strength: 'suspicious',
        levels: levelsDownTo(station),
      },
    ];
  }
  return [];
}

/**
 * What the pressures along both legs point to: a low thigh, a fall between neighbouring cuffs, a side lower than the
 * other. Where a cuff was left out, the fall is given to every level it spans.
 */
export function segmentFindings(pressures: Pressures, settings: PressureSettings): SegmentFinding[] {
  return [
    ...thighFindings(pressures, settings),
    ...SIDES.flatMap((side) => drops(pressures, side, settings)),
    ...sideDifferences(pressures, settings),
  ];
}
