import type { BedsideResult, BedsideTestId, Reason } from '../examination/index.js';
import type { BedsideReading, IncompleteReading, NotDoneReading } from './readings.js';

export * from './readings.js';

/** A limit of a test, with its source. */
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

/** Whom a rate was counted in. */
export type RatePeople = 'healthy' | 'transradial-access' | 'carpal-tunnel';

/** How the test was done where the rate was counted; a rate says nothing of a test done otherwise. */
export interface RateCondition {
  /** The time beyond which a result counted as positive, in seconds. */
  readonly over?: number;
  readonly posture?: 'hand-straight';
}

/** How often people without the disease test positive, in percent, and under which condition. */
export interface FalsePositives {
  readonly outcome: 'pulse' | 'pain' | 'tingling' | 'positive' | 'stopped' | 'pulse-any-test';
  readonly percent: number;
  /** Set where the figure is the highest reported, or the upper bound of an interval. */
  readonly bound?: 'highest-reported' | 'upper-95';
  readonly people: RatePeople;
  /** Number of people counted. */
  readonly count?: number;
  readonly condition?: RateCondition;
  readonly source: string;
}

/** Diagnostic accuracy of a test, as fractions. */
export interface Accuracy {
  /** What the test was held against. */
  readonly of: 'arterial-disease' | 'inadequate-collateral';
  readonly sensitivity: number;
  readonly specificity: number;
  readonly condition?: RateCondition;
  readonly source: string;
}

/** One bedside test: its names, its limits and how to read a result. */
export interface BedsideTest<Id extends BedsideTestId = BedsideTestId> {
  readonly id: Id;
  /** Eponym of the test. */
  readonly eponym?: string;
  readonly limb: 'leg' | 'arm';
  readonly limits?: Limits;
  readonly falsePositives?: readonly FalsePositives[];
  readonly accuracy?: Accuracy;
  /**
   * Reads the result of one side.
   * @param limit in the unit of `limits`; the result's own limit comes first, then this, then the usual one
   */
  evaluate(result: BedsideResult<Id>, limit?: number): BedsideReading<Id>;
}

/** The limit applied to a result. A limit that is in no table counts as strict: a value at the limit is still normal. */
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

/** Whether a figure holds for a test read with this limit: it was counted with that limit, or with none. */
export function holdsAt({ condition }: { readonly condition?: RateCondition }, limit?: number): boolean {
  return condition?.over === undefined || condition.over === limit;
}

/** Whether a value exceeds a limit. */
export function over(value: number, { value: limit, normalAt }: LimitOption): boolean {
  return normalAt ? value > limit : value >= limit;
}

export const NOT_DONE = (reason: Reason): NotDoneReading => ({
  verdict: 'not-done',
  code: 'not-done',
  params: { reason },
});
export const INCOMPLETE: IncompleteReading = { verdict: 'incomplete', code: 'incomplete' };
export const PRACTICE = 'common practice, no source';
export const MEMORY = 'from memory';
