import { SIDES, type Side } from '../anatomy/index.js';
import type { Pressures } from '../examination/index.js';
import { denominatorOf, numeratorOf, ratio, type Wanted } from './indices.js';
import type { PressureSettings } from './settings.js';
import { beyond, EXERCISE_LIMITS } from './tables.js';

/** Effect of exercise on one leg. Values that cannot be computed are absent, and `missing` lists what they need. */
export interface ExerciseReading {
  readonly side: Side;
  /** Ankle pressures at rest and afterwards, in mmHg. */
  readonly rest?: number;
  readonly after: number;
  readonly fall?: number;
  readonly indexAfter?: number;
  /** In percent of the index at rest. */
  readonly indexFall?: number;
  /** Which limits were passed. */
  readonly met: readonly ('ankle-fall' | 'index-fall' | 'index-after')[];
  readonly code: 'abnormal' | 'normal' | 'incomplete';
  readonly missing: readonly (Wanted & { readonly when: 'rest' | 'after' })[];
}

/** Effect of exercise on the ankle pressure of each leg that was measured afterwards. */
export function exerciseReadings(pressures: Pressures, settings: PressureSettings): ExerciseReading[] {
  const later = pressures.afterExercise;
  if (!later) return [];
  return SIDES.flatMap((side): ExerciseReading[] => {
    const after = numeratorOf(later, 'ankle', side, settings.ankle).numerator?.mmHg;
    if (after === undefined) return [];
    const rest = numeratorOf(pressures, 'ankle', side, settings.ankle);
    const arms = {
      rest: denominatorOf(pressures.brachial, settings.arm),
      after: denominatorOf(later.brachial, settings.arm),
    };
    const before = rest.numerator?.mmHg;
    const fall = before === undefined ? undefined : before - after;
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
      ...(indexAfter !== undefined && beyond(indexAfter, limits.indexAfter)
        ? (['index-after'] as const)
        : []),
    ];
    const judged = fall !== undefined || indexAfter !== undefined;
    return [
      {
        side,
        after,
        met,
        code: met.length ? 'abnormal' : judged ? 'normal' : 'incomplete',
        missing: [
          ...(before === undefined ? rest.missing.map((m) => ({ ...m, when: 'rest' as const })) : []),
          ...(arms.after.denominator
            ? []
            : arms.after.missing.map((m) => ({ ...m, when: 'after' as const }))),
        ],
        ...(before !== undefined && { rest: before, fall: fall as number }),
        ...(indexAfter !== undefined && { indexAfter }),
        ...(indexFall !== undefined && { indexFall }),
      },
    ];
  });
}
