import { type Level, type LimbKind, SIDES, type Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import { armDifference, armFindings, type ArmFinding } from './arms.js';
import { type ExerciseReading, exerciseReadings } from './exercise.js';
import {
  denominatorOf,
  type Denominator,
  type IndexKind,
  indexOf,
  type IndexReading,
  type Wanted,
} from './indices.js';
import { type SegmentFinding, segmentFindings } from './segments.js';
import { type PressureSettings, pressureSettings } from './settings.js';

/** The reading of all pressures of one visit. */
export interface PressureReading {
  readonly settings: PressureSettings;
  readonly denominator?: Denominator;
  /** Arms without a pressure, told whenever any index needs one. */
  readonly missingArms: readonly Wanted[];
  readonly armDifference?: { readonly mmHg: number; readonly lower?: Side };
  readonly indices: readonly IndexReading[];
  readonly arms: readonly ArmFinding[];
  readonly segments: readonly SegmentFinding[];
  readonly exercise: readonly ExerciseReading[];
}

const KINDS: readonly IndexKind[] = ['ankle', 'toe', 'wrist', 'finger'];

/**
 * Reads the systolic pressures of one visit: indices with their bands, arm difference, pressure falls along the legs and
 * the effect of exercise. Methods and limits come from the settings; their sources are in the tables.
 * @param pressures in mmHg; nothing measured gives an empty reading
 */
export function readPressures(
  pressures: Pressures = {},
  settings?: Partial<PressureSettings>,
): PressureReading {
  const chosen = pressureSettings(settings);
  const indices = KINDS.flatMap((kind) =>
    SIDES.flatMap((side) => indexOf(kind, side, pressures, chosen) ?? []),
  );
  const { denominator, missing } = denominatorOf(pressures.brachial, chosen.arm);
  const difference = armDifference(pressures);
  return {
    settings: chosen,
    missingArms: missing,
    indices,
    arms: armFindings(pressures, chosen),
    segments: segmentFindings(pressures, chosen),
    exercise: exerciseReadings(pressures, chosen),
    ...(denominator && { denominator }),
    ...(difference && { armDifference: difference }),
  };
}

/** The index of one kind on one side, if it was measured. */
export function indexIn(reading: PressureReading, kind: IndexKind, side: Side): IndexReading | undefined {
  return reading.indices.find((index) => index.kind === kind && index.side === side);
}

/** A pressure finding as evidence on the level of disease in a limb. */
export interface LevelEvidence {
  readonly side: Side;
  readonly limb: Exclude<LimbKind, 'head'>;
  readonly levels: readonly Level[];
  readonly strength: 'suspicious' | 'significant';
  readonly finding: SegmentFinding | ArmFinding;
}

/** All findings of a reading that point to a level of a limb, for the localisation. */
export function pressureEvidence(reading: PressureReading): LevelEvidence[] {
  return [
    ...reading.segments.map((finding): LevelEvidence => ({
      side: finding.side,
      limb: 'leg',
      levels: finding.levels,
      strength: finding.strength,
      finding,
    })),
    ...reading.arms.map((finding): LevelEvidence => ({
      side: finding.side,
      limb: 'arm',
      levels: finding.levels,
      strength: 'significant',
      finding,
    })),
  ];
}
