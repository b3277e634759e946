import type { Examination } from '../examination/index.js';
import type {
  ANKLE_RULES,
  ARM_DIFFERENCE_LIMITS,
  ARM_DROP_LIMITS,
  ARM_RULES,
  DROP_LIMITS,
  EXERCISE_LIMITS,
  FINGER_LIMITS,
  INCOMPRESSIBLE_LIMITS,
  INDEX_STANDARDS,
  SEVERE_INDEX_LIMITS,
  SIDE_DIFFERENCE_LIMITS,
  THREAT_CRITERIA,
  TOE_LIMITS,
  WRIST_DIFFERENCE_LIMITS,
  WRIST_LIMITS,
} from './tables.js';

/** Which published criterion is used wherever sources disagree; each field names an entry of its table. */
export interface PressureSettings {
  readonly standard: keyof typeof INDEX_STANDARDS;
  readonly ankle: keyof typeof ANKLE_RULES;
  readonly arm: keyof typeof ARM_RULES;
  readonly incompressible: keyof typeof INCOMPRESSIBLE_LIMITS;
  readonly severeIndex: keyof typeof SEVERE_INDEX_LIMITS;
  readonly toe: keyof typeof TOE_LIMITS;
  readonly wrist: keyof typeof WRIST_LIMITS;
  readonly finger: keyof typeof FINGER_LIMITS;
  readonly armDifference: keyof typeof ARM_DIFFERENCE_LIMITS;
  readonly wristDifference: keyof typeof WRIST_DIFFERENCE_LIMITS;
  readonly armDrop: keyof typeof ARM_DROP_LIMITS;
  readonly drop: keyof typeof DROP_LIMITS;
  readonly sideDifference: keyof typeof SIDE_DIFFERENCE_LIMITS;
  readonly exercise: keyof typeof EXERCISE_LIMITS;
  readonly threat: keyof typeof THREAT_CRITERIA;
}

/** The latest guideline's standard, and elsewhere the more specific of the published limits. */
export const DEFAULT_PRESSURE_SETTINGS: PressureSettings = {
  standard: '2024',
  ankle: 'higher',
  arm: 'higher',
  incompressible: '1.40',
  severeIndex: '0.40',
  toe: '0.70',
  wrist: '0.90',
  finger: '0.80',
  armDifference: '15',
  wristDifference: '30',
  armDrop: '20',
  drop: '30',
  sideDifference: '20',
  exercise: 'more-than',
  threat: 'gvg-2019',
};

/** What of the choices of a record or a caller is set. */
export type PressureChoices = { readonly [S in keyof PressureSettings]?: PressureSettings[S] | undefined };

/** Settings with the defaults filled in, also where a setting is `undefined`; choices given later win. */
export function pressureSettings(...choices: readonly (PressureChoices | undefined)[]): PressureSettings {
  const chosen = choices.flatMap((own) =>
    Object.entries(own ?? {}).filter(([, value]) => value !== undefined),
  );
  return { ...DEFAULT_PRESSURE_SETTINGS, ...Object.fromEntries(chosen) };
}

/** The settings a record is read by: those of the caller, else those that stand in the record, else the defaults. */
export function methodOf(
  { method }: Pick<Examination, 'method'>,
  choices?: PressureChoices,
): PressureSettings {
  return pressureSettings(method satisfies PressureChoices | undefined, choices);
}
