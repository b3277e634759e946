import type { Observed, StagedLimb } from '../triage/index.js';
import type { AnatomyWords } from './anatomy.js';
import type { Of } from './words.js';

/** The words in which a language shows a limb watched by the hour. */
export interface ChartTable {
  /** Tag by which times are written. */
  readonly dates: string;
  title(limb: string): string;
  readonly fields: Of<Observed>;
  readonly notLooked: string;
  readonly units: Of<'refill' | 'pain'>;
  due(time: string, minutes: string): string;
  overdue(time: string, minutes: string): string;
  readonly first: string;
  every(minutes: string): string;
  readonly record: string;
  readonly undo: string;
  recorded(time: string): string;
  readonly takenBack: string;
  readonly nothing: string;
  readonly rounds: string;
  /** Name of the drawing of the rounds over time. */
  readonly course: string;
  /** How that drawing is read. */
  readonly key: string;
  readonly unread: string;
  readonly caution: string;
}

interface Areas {
  readonly anatomy: Pick<AnatomyWords, 'limbs'>;
  readonly decimal: (value: number) => string;
}

/** Builds the words of a chart: one builder for every language. */
export function chartFrom(table: ChartTable, { anatomy, decimal }: Areas) {
  const time = (at: number): string =>
    new Intl.DateTimeFormat(table.dates, { hour: '2-digit', minute: '2-digit' }).format(at);
  const day = (at: number): string =>
    new Intl.DateTimeFormat(table.dates, { day: 'numeric', month: 'short' }).format(at);
  return {
    table,
    time,
    day,
    /** The time of a round, with its day where the rounds run over more than one. */
    moment: (at: number, first: number, last: number): string =>
      day(first) === day(last) ? time(at) : `${day(at)}, ${time(at)}`,
    title: ({ kind, side }: StagedLimb): string => table.title(anatomy.limbs[`${side} ${kind}`]),
    /** When the next round is due, or how long it is overdue. */
    due: (at: number, now: number): string => {
      const minutes = decimal(Math.round(Math.abs(at - now) / 60_000));
      return at < now ? table.overdue(time(at), minutes) : table.due(time(at), minutes);
    },
    every: (minutes: number): string => table.every(decimal(minutes)),
    number: (field: 'refill' | 'pain', value: number): string => `${decimal(value)}${table.units[field]}`,
  };
}
export type ChartWords = ReturnType<typeof chartFrom>;
