import type { BedsideResult, BedsideTestId } from '../examination/index.js';

/** How far a reading is from what is usual, mildest last but for what says nothing. */
export const VERDICTS = ['not-done', 'incomplete', 'normal', 'borderline', 'abnormal', 'severe'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** A limit a test can be judged by, and where it stands. */
export interface LimitOption {
  readonly value: number;
  /** Whether a value exactly at the limit is still normal. */
  readonly normalAt: boolean;
  readonly source: string;
}

/** The limits published for one test, in `unit`; `usual` is the one used unless another is chosen. */
export interface Limits {
  readonly unit: 's' | 'min' | 'deg';
  readonly usual: number;
  readonly options: readonly LimitOption[];
}

/** How often healthy people test positive, in percent. */
export interface FalsePositives {
  readonly outcome: 'pulse' | 'pain' | 'tingling' | 'positive' | 'stopped' | 'pulse-any-test';
  readonly percent: number;
  /** Set where the figure is the highest reported, or the upper bound of an interval. */
  readonly bound?: 'highest-reported' | 'upper-95';
  readonly people: 'healthy' | 'carpal-tunnel';
  readonly source: string;
}

/** What each test can say, besides that it was not done or is incomplete. */
export interface BedsideCodes {
  elevation: 'keeps-colour' | 'not-raised-fully' | 'pale-below-limit' | 'pale-in-range' | 'pale-high';
  'colour-return':
    'usual' | 'slower-than-usual' | 'prolonged' | 'severe' | 'not-returned' | 'watched-too-short';
  'dependent-rubor': 'rubor' | 'no-rubor' | 'hung-too-short';
  'venous-filling':
    | 'usual'
    | 'slower-than-usual'
    | 'prolonged'
    | 'severe'
    | 'not-filled'
    | 'watched-too-short'
    | 'unreliable';
  'hand-arch': 'patent' | 'slow' | 'blocked' | 'tracing-lost' | 'tracing-kept' | 'one-artery';
  'cold-provocation':
    'three-phases' | 'two-phases' | 'single-phase' | 'slow-rewarming' | 'no-change' | 'rewarming-only';
  scalene: PositionCode;
  hyperabduction: PositionCode;
  costoclavicular: PositionCode;
  'arm-stress': 'stopped-early' | 'symptoms-early' | 'symptoms' | 'fatigue-only' | 'too-short' | 'completed';
}
export type PositionCode = 'pulse-and-symptoms' | 'symptoms' | 'pulse-lost' | 'pulse-reduced' | 'negative';

/** Things that weaken or complete a reading. */
export const BEDSIDE_NOTES = [
  'pallor-within-seconds',
  'pallor-minutes',
  'incompetent-veins',
  'rewarming-slow',
  'rewarming-between',
  'rewarming-usual',
  'absent-before',
  'symptoms-not-asked',
  'pulse-not-compared',
] as const;
export type BedsideNote = (typeof BEDSIDE_NOTES)[number];

/** What one test of one side says, as data. Beside the code stand the figures the words need. */
export interface BedsideReading<Code extends string = BedsideCodes[BedsideTestId]> {
  readonly verdict: Verdict;
  readonly code: Code | 'not-done' | 'incomplete';
  readonly limit?: number;
  /** Further figures and words of the record. */
  readonly params?: Readonly<Record<string, string | number | boolean>>;
  readonly notes?: readonly BedsideNote[];
}

/** How well a test tells disease, as fractions. */
export interface Accuracy {
  readonly sensitivity: number;
  readonly specificity: number;
  readonly source: string;
}

/** One bedside test: what it is called, what it is judged by, and what a result means. */
export interface BedsideTest<Id extends BedsideTestId = BedsideTestId> {
  readonly id: Id;
  /** The person's name the trade knows it by. */
  readonly eponym?: string;
  readonly limb: 'leg' | 'arm';
  readonly limits?: Limits;
  readonly falsePositives?: readonly FalsePositives[];
  readonly accuracy?: Accuracy;
  /**
   * What a result of one side means.
   * @param limit in the unit of `limits`; the result's own limit comes first, then this, then the usual one
   */
  evaluate(result: BedsideResult<Id>, limit?: number): BedsideReading<BedsideCodes[Id]>;
}

/** The limit a result is judged by. A figure from no table counts as strict: at the limit is still normal. */
export function limitFor(limits: Limits, ...chosen: readonly (number | undefined)[]): LimitOption {
  const value = chosen.find((limit) => limit !== undefined) ?? limits.usual;
  return (
    limits.options.find((option) => option.value === value) ?? {
      value,
      normalAt: true,
      source: 'set by the examiner',
    }
  );
}

/** Whether a value is slow by a limit. */
export function over(value: number, { value: limit, normalAt }: LimitOption): boolean {
  return normalAt ? value > limit : value >= limit;
}

export const NOT_DONE = (reason: string): BedsideReading<never> => ({
  verdict: 'not-done',
  code: 'not-done',
  params: { reason },
});
export const INCOMPLETE: BedsideReading<never> = { verdict: 'incomplete', code: 'incomplete' };
export const PRACTICE = 'common practice, no source';
export const MEMORY = 'from memory';
