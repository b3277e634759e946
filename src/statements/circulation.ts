import type { Circulation } from '../examination/index.js';
import { type FieldStatement, fieldStatements, stated } from './stated.js';

/** Something about the circulation as a whole. */
export type CirculationStatement =
  | FieldStatement<Circulation, 'shock' | 'heartRate'>
  | { readonly code: 'blood-pressure'; readonly systolic?: number; readonly diastolic?: number };

/** Everything recorded of the circulation as a whole. */
export function circulationStatements(circulation: Circulation): CirculationStatement[] {
  const { systolic, diastolic } = circulation;
  return [
    ...fieldStatements(circulation, ['shock']),
    ...stated(systolic ?? diastolic, () => ({
      code: 'blood-pressure' as const,
      ...(systolic !== undefined && { systolic }),
      ...(diastolic !== undefined && { diastolic }),
    })),
    ...fieldStatements(circulation, ['heartRate']),
  ];
}
