import type { Place, Side } from '../anatomy/index.js';
import type { ChangeWeight, LeastChange, TrendMeasure, TrendValue } from '../comparison/index.js';
import type { AnatomyWords } from './anatomy.js';
import { sentence } from './phrases.js';
import type { Of } from './words.js';

/** The words in which a language shows the visits of a patient over time. */
export interface VisitsTable {
  /** Tag by which dates are written. */
  readonly dates: string;
  readonly name: string;
  count(visits: number): string;
  readonly empty: string;
  /** Under a single visit. */
  readonly alone: string;
  /** Instead of the changes while fewer than two visits are chosen. */
  readonly chooseTwo: string;
  /** Two ways to show the visits. */
  readonly ways: Of<'figure' | 'table'>;
  readonly way: string;
  /** Before the date on the button that opens a visit; not seen, since the date is. */
  readonly open: string;
  readonly pick: string;
  readonly earlier: string;
  readonly later: string;
  readonly noDate: string;
  readonly first: string;
  readonly unread: string;
  readonly inError: string;
  /** Changes of the sites since the visit before. */
  changes(count: number): string;
  readonly noChange: string;
  /** What a site's change weighs, before its name. */
  readonly weights: Of<ChangeWeight>;
  readonly measures: Of<TrendMeasure>;
  readonly short: Of<TrendMeasure>;
  readonly unknown: string;
  readonly incompressible: string;
  metres(count: string): string;
  /** Names the slider that reads the plots. */
  readonly reader: string;
  at(when: string): string;
  /** What the shaded band is, by how the least change is told. */
  readonly bands: Readonly<Record<LeastChange['by'], (value: string, when: string) => string>>;
  readonly keys: string;
  reading(done: number, all: number): string;
  /** Head of the table's first column. */
  readonly visit: string;
  readonly changed: string;
}

interface Areas {
  readonly anatomy: Pick<AnatomyWords, 'place' | 'sides' | 'sideLetters'>;
  readonly decimal: (value: number, digits?: number) => string;
  readonly list: (parts: readonly string[]) => string;
}

/** What the ticks of a time axis differ by. */
type Unit = 'year' | 'month' | 'day' | 'minute';
const FORMATS: Readonly<Record<Unit | 'date' | 'moment', Intl.DateTimeFormatOptions>> = {
  year: { year: 'numeric' },
  month: { month: 'short', year: 'numeric' },
  day: { day: 'numeric', month: 'short' },
  minute: { hour: '2-digit', minute: '2-digit' },
  date: { day: 'numeric', month: 'short', year: 'numeric' },
  moment: { day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' },
};
const formats = new Map<string, Intl.DateTimeFormat>();

/** The clock on the wall where it was written; making a format costs more than a thousand uses of it. */
function written(tag: string, format: keyof typeof FORMATS, wall: number): string {
  const key = `${tag} ${format}`;
  let made = formats.get(key);
  if (!made) formats.set(key, (made = new Intl.DateTimeFormat(tag, { ...FORMATS[format], timeZone: 'UTC' })));
  return made.format(wall);
}

/** Builds the words of the visits: one builder for every language. */
export function visitsFrom(table: VisitsTable, { anatomy, decimal, list }: Areas) {
  const number = (measure: TrendMeasure, value: number): string => {
    if (measure === 'distance') return table.metres(decimal(Math.round(value)));
    return measure.endsWith('pressure') ? `${decimal(Math.round(value))} mmHg` : decimal(value, 2);
  };
  const value = (measure: TrendMeasure, told: TrendValue): string =>
    told === undefined
      ? table.unknown
      : told === 'incompressible'
        ? table.incompressible
        : number(measure, told);
  return {
    table,
    value,
    /** When a visit took place: its date, or its time as well, as the clock showed where it was written. */
    when: (at: string | undefined, timed: boolean): string => {
      const wall = at ? Date.parse(at.includes('T') ? `${at.slice(0, 16)}Z` : `${at}T00:00Z`) : NaN;
      if (Number.isNaN(wall)) return table.noDate;
      return written(table.dates, timed && at!.includes('T') ? 'moment' : 'date', wall);
    },
    /** A tick of a time axis, in ms of the clock on the wall. */
    tick: (wall: number, unit: Unit): string => written(table.dates, unit, wall),
    /** A level of a plot, without its unit. */
    level: (measure: TrendMeasure, level: number): string =>
      decimal(level, measure.endsWith('index') ? 1 : undefined),
    number,
    /** "R 1.02, L 0.78", both sides always named. */
    both: (measure: TrendMeasure, sides: Readonly<Partial<Record<Side, TrendValue>>>): string =>
      `${anatomy.sideLetters.right} ${value(measure, sides.right)}, ${anatomy.sideLetters.left} ${value(measure, sides.left)}`,
    /** What the plots read at a visit, as one sentence. */
    read: (
      when: string,
      told: readonly (readonly [TrendMeasure, Partial<Record<Side, TrendValue>>])[],
    ): string =>
      [
        table.at(when),
        ...told.map(
          ([measure, sides]) =>
            `${table.measures[measure]}: ${anatomy.sides.right} ${value(measure, sides.right)}; ${anatomy.sides.left} ${value(measure, sides.left)}.`,
        ),
      ].join(' '),
    /** Where something changed, gravest first. */
    places: (changed: readonly { readonly place: Place; readonly weight: ChangeWeight }[]): string =>
      sentence(
        list(changed.map(({ place, weight }) => `${anatomy.place(place)} (${table.weights[weight]})`)),
      ),
    band: ({ by, value: limit }: LeastChange, measure: TrendMeasure, when: string): string =>
      table.bands[by](by === 'difference' ? number(measure, limit) : decimal(limit, 2), when),
  };
}
export type VisitsWords = ReturnType<typeof visitsFrom>;
