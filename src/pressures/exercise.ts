import { SIDES, type Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import { denominatorOf, mmHgAt, ratio, type Wanted } from './indices.js';
import type { PressureSettings } from './settings.js';
import { beyond, EXERCISE_LIMITS } from './tables.js';

const ANKLE_ARTERIES = ['dorsalis-pedis', 'posterior-tibial'] as const;
export type AnkleArtery = (typeof ANKLE_ARTERIES)[number];

/**
 * Effect of exercise on one artery of one leg. Values that cannot be computed are absent, and `missing` lists what they need.
 */
export interface ExerciseReading {
  readonly side: Side;
  /** The artery compared; where none was measured both times, the one measured afterwards. */
  readonly artery: AnkleArtery;
  /** Its pressures at rest and afterwards, in mmHg. */
  readonly rest?: number;
  readonly after: number;
  readonly fall?: number;
  readonly indexRest?: number;
  readonly indexAfter?: number;
  /** In percent of the index at rest. */
  readonly indexFall?: number;
  /** Which limits were passed. */
  readonly met: readonly ('ankle-fall' | 'index-fall' | 'index-after')[];
  readonly code: 'abnormal' | 'normal' | 'incomplete';
  readonly missing: readonly (Wanted & { readonly when: 'rest' | 'after' })[];
}

/** The artery measured both times with the higher pressure at rest, else the higher one measured afterwards. */
function arteryOf(pressures: Pressures, side: Side): AnkleArtery | undefined {
  const later = ANKLE_ARTERIES.filter((site) => mmHgAt(pressures.afterExercise?.[site], side) !== undefined);
  const both = later.filter((site) => mmHgAt(pressures[site], side) !== undefined);
  const by = both.length ? pressures : pressures.afterExercise;
  return [...(both.length ? both : later)].sort(
    (a, b) => (mmHgAt(by?.[b], side) ?? 0) - (mmHgAt(by?.[a], side) ?? 0),
  )[0];
}

/** Effect of exercise on the ankle pressure of each leg that was measured afterwards. */
export function exerciseReadings(pressures: Pressures, settings: PressureSettings): ExerciseReading[] {
  const later = pressures.afterExercise;
  if (!later) return [];
  return SIDES.flatMap((side): ExerciseReading[] => {
    const artery = arteryOf(pressures, side);
    const after = artery && mmHgAt(later[artery], side);
    if (artery === undefined || after === undefined) return [];
    const before = mmHgAt(pressures[artery], side);
    const arms = {
      rest: denominatorOf(pressures.brachial, settings.arm),
      after: denominatorOf(later.brachial, settings.arm),
    };
    const fall = before === undefined ? undefined : before - after;
    const indexRest =
      before === undefined || !arms.rest.denominator ? undefined : ratio(before, arms.rest.denominator.mmHg);
    const indexAfter = arms.after.denominator && ratio(after, arms.after.denominator.mmHg);
    const exact =
      before === undefined || before === 0 || !arms.rest.denominator || !arms.after.denominator
        ? undefined
        : 100 * (1 - (after * arms.rest.denominator.mmHg) / (before * arms.after.denominator.mmHg));
    const indexFall = exact === undefined ? undefined : Math.round(exact * 10) / 10;
    const limits = EXERCISE_LIMITS[settings.exercise];
    const met: ExerciseReading['met'] = [
      ...(fall !== undefined && beyond(fall, limits.ankleFall) ? (['ankle-fall'] as const) : []),
      ...(indexFall !== undefined && beyond(indexFall, limits.indexFall) ? (['index-fall'] as const) : []),
      // An index already low at rest says nothing new when it is low afterwards.
      ...(indexAfter !== undefined &&
      indexRest !== undefined &&
      indexRest > limits.indexAfter.value &&
      beyond(indexAfter, limits.indexAfter)
        ? (['index-after'] as const)
        : []),
    ];
    const judged = fall !== undefined;
    return [
      {
        side,
        artery,
        after,
        met,
        code: met.length ? 'abnormal' : judged ? 'normal' : 'incomplete',
        missing: [
          ...(before === undefined ? [{ site: artery, side, when: 'rest' as const }] : []),
          ...(arms.after.denominator
            ? []
            : arms.after.missing.map((m) => ({ ...m, when: 'after' as const }))),
        ],
        ...(before !== undefined && { rest: before, fall: fall as number }),
        ...(indexRest !== undefined && { indexRest }),
        ...(indexAfter !== undefined && { indexAfter }),
        ...(indexFall !== undefined && { indexFall }),
      },
    ];
  });
}
