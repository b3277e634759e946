import type { LimbHistory, PatientHistory, RiskFactor } from '../examination/index.js';
import { type FieldStatement, fieldStatements, stated } from './stated.js';

/** From so many hours on, one speaks of days. */
const HOURS_AS_DAYS = 48;

/** How long something has lasted, as one says it. */
export type DurationStatement =
  { readonly code: 'hours'; readonly hours: number } | { readonly code: 'days'; readonly days: number };

/** Something in the history of one limb. */
export type LimbHistoryStatement =
  FieldStatement<LimbHistory, 'symptom' | 'severity' | 'distance' | 'onset' | 'note'> | DurationStatement;

function duration(hours: number): DurationStatement {
  return hours < HOURS_AS_DAYS ? { code: 'hours', hours } : { code: 'days', days: Math.round(hours / 24) };
}

/** Everything recorded in the history of one limb. */
export function limbHistoryStatements(history: LimbHistory): LimbHistoryStatement[] {
  return [
    ...fieldStatements(history, ['symptom', 'severity', 'distance', 'onset']),
    ...stated(history.hours, duration),
    ...fieldStatements(history, ['note']),
  ];
}

/** Something in the history that is not about one limb. */
export type HistoryStatement =
  | FieldStatement<PatientHistory, 'rhythm' | 'operations'>
  | { readonly code: 'risks'; readonly risks: readonly RiskFactor[] }
  /** Asked, and none named. */
  | { readonly code: 'no-risks' };

/** Everything in the history that is not about one limb. */
export function historyStatements(history: PatientHistory): HistoryStatement[] {
  return [
    ...fieldStatements(history, ['rhythm']),
    ...stated(history.risks, (risks): HistoryStatement =>
      risks.length ? { code: 'risks', risks } : { code: 'no-risks' },
    ),
    ...fieldStatements(history, ['operations']),
  ];
}
