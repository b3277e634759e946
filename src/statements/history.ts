import type {
  ArmHistory,
  LimbHistory,
  PatientHistory,
  RiskFactor,
  SymptomElsewhere,
} from '../examination/index.js';
import { type FieldStatement, fieldStatements, stated } from './stated.js';

/** From so many hours on, one speaks of days. */
const HOURS_AS_DAYS = 48;

/** How long something has lasted, as one says it. */
export type DurationStatement =
  { readonly code: 'hours'; readonly hours: number } | { readonly code: 'days'; readonly days: number };

const BEFORE_DURATION = [
  'symptom',
  'severity',
  'distance',
  'suddenPain',
  'newComplaint',
  'onset',
  'onsetAt',
] as const;
const AFTER_DURATION = ['coldFingers', 'dizzyOnUse', 'chestPainOnUse', 'note'] as const;

/** Something in the history of one limb. */
export type LimbHistoryStatement =
  | FieldStatement<ArmHistory, (typeof BEFORE_DURATION)[number] | (typeof AFTER_DURATION)[number]>
  | DurationStatement;

function duration(hours: number): DurationStatement {
  return hours < HOURS_AS_DAYS ? { code: 'hours', hours } : { code: 'days', days: Math.round(hours / 24) };
}

/** Everything recorded in the history of one limb. */
export function limbHistoryStatements(history: LimbHistory | ArmHistory): LimbHistoryStatement[] {
  return [
    ...fieldStatements<ArmHistory, (typeof BEFORE_DURATION)[number]>(history, BEFORE_DURATION),
    ...stated(history.hours, duration),
    ...fieldStatements<ArmHistory, (typeof AFTER_DURATION)[number]>(history, AFTER_DURATION),
  ];
}

/** Something in the history that is not about one limb. */
export type HistoryStatement =
  | FieldStatement<PatientHistory, 'rhythm' | 'operations'>
  | { readonly code: 'elsewhere'; readonly symptoms: readonly SymptomElsewhere[] }
  | { readonly code: 'risks'; readonly risks: readonly RiskFactor[] }
  /** Asked, and none named. */
  | { readonly code: 'no-risks' | 'nothing-elsewhere' };

/** Everything in the history that is not about one limb. */
export function historyStatements(history: PatientHistory): HistoryStatement[] {
  return [
    ...fieldStatements(history, ['rhythm']),
    ...stated(history.elsewhere, (symptoms): HistoryStatement =>
      symptoms.length ? { code: 'elsewhere', symptoms } : { code: 'nothing-elsewhere' },
    ),
    ...stated(history.risks, (risks): HistoryStatement =>
      risks.length ? { code: 'risks', risks } : { code: 'no-risks' },
    ),
    ...fieldStatements(history, ['operations']),
  ];
}
