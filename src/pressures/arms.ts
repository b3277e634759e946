import { type Level, SIDES, type Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import { mmHgAt } from './indices.js';
import type { PressureSettings } from './settings.js';
import { ARM_DIFFERENCE_LIMITS, ARM_DROP_LIMITS, beyond, WRIST_DIFFERENCE_LIMITS } from './tables.js';

interface ArmCommon {
  readonly side: Side;
  readonly mmHg: number;
  readonly limit: number;
  readonly levels: readonly Level[];
}

/** A finding from the arm pressures. */
export type ArmFinding = ArmCommon &
  (
    | { readonly code: 'arm-difference' | 'arm-drop' }
    /** `artery` is the lower of the two at one wrist. */
    | { readonly code: 'wrist-difference'; readonly artery: 'radial' | 'ulnar' }
  );

/** Difference between the arms and the lower side; `undefined` unless both were measured. */
export function armDifference(pressures: Pressures): { mmHg: number; lower?: Side } | undefined {
  const right = mmHgAt(pressures.brachial, 'right');
  const left = mmHgAt(pressures.brachial, 'left');
  if (right === undefined || left === undefined) return undefined;
  if (right === left) return { mmHg: 0 };
  const lower: Side = right < left ? 'right' : 'left';
  return { mmHg: Math.abs(right - left), lower };
}

/** Findings from the pressures of both arms, by the limits chosen. */
export function armFindings(pressures: Pressures, settings: PressureSettings): ArmFinding[] {
  const found: ArmFinding[] = [];
  const difference = armDifference(pressures);
  const apart = ARM_DIFFERENCE_LIMITS[settings.armDifference].value;
  if (difference?.lower && beyond(difference.mmHg, apart)) {
    found.push({
      code: 'arm-difference',
      side: difference.lower,
      mmHg: difference.mmHg,
      limit: apart.value,
      levels: ['arm-inflow', 'axillo-brachial'],
    });
  }
  for (const side of SIDES) {
    const radial = mmHgAt(pressures.radial, side);
    const ulnar = mmHgAt(pressures.ulnar, side);
    const upper = mmHgAt(pressures.brachial, side);
    const wrist = Math.max(radial ?? -1, ulnar ?? -1);
    const drop = ARM_DROP_LIMITS[settings.armDrop].value;
    if (upper !== undefined && wrist >= 0 && beyond(upper - wrist, drop)) {
      found.push({
        code: 'arm-drop',
        side,
        mmHg: upper - wrist,
        limit: drop.value,
        levels: ['axillo-brachial', 'forearm-hand'],
      });
    }
    const wrists = WRIST_DIFFERENCE_LIMITS[settings.wristDifference].value;
    if (radial !== undefined && ulnar !== undefined && beyond(Math.abs(radial - ulnar), wrists)) {
      found.push({
        code: 'wrist-difference',
        side,
        mmHg: Math.abs(radial - ulnar),
        limit: wrists.value,
        levels: ['forearm-hand'],
        artery: radial < ulnar ? 'radial' : 'ulnar',
      });
    }
  }
  return found;
}
