/** A time in a unit that a person thinks in. */
export interface LongTime {
  readonly unit: 'week' | 'month' | 'year';
  readonly count: number;
  /** Whether the days make just so many; a month and a year are never exact. */
  readonly exact: boolean;
}

/** Days of a mean month and year. */
const MONTH = 30.44;
const YEAR = 365.25;
/** From so many days on, a week, a month and a year are what is thought in. */
const FROM = { week: 14, month: 60, year: 700 } as const;

/** Days in the unit that they are thought in, to the nearest whole; nothing for a few days. */
export function longTime(days: number): LongTime | undefined {
  if (days < FROM.week) return undefined;
  if (days < FROM.month) return { unit: 'week', count: Math.round(days / 7), exact: days % 7 === 0 };
  if (days < FROM.year) return { unit: 'month', count: Math.round(days / MONTH), exact: false };
  return { unit: 'year', count: Math.round(days / YEAR), exact: false };
}
