import { scaleUtc } from 'd3-scale';
import {
  isWorseThanNormal,
  type LimbObservation,
  OBSERVED,
  OBSERVED_RANGES,
  OBSERVED_WORDS,
  type ObservationChart,
  type Observed,
} from '../triage/index.js';

/** One field of one round. */
export interface RoundMark {
  readonly at: number;
  /** From the first round, 0, to the last, 1. */
  readonly x: number;
  /** From the best, 0, to the worst that the row has room for, 1. */
  readonly y: number;
  /** `lost` is a signal that is not heard; a number has no verdict of its own and is `plain`. */
  readonly kind: 'plain' | 'worse' | 'lost';
}

/** One field over the hours: stretches of rounds that looked at it, one after the other. Between stretches nothing is known. */
export interface RoundsRow {
  readonly field: Observed;
  readonly stretches: readonly (readonly RoundMark[])[];
}

export interface RoundsPlot {
  readonly rows: readonly RoundsRow[];
  readonly ticks: readonly { readonly at: number; readonly x: number }[];
}

/** The least range of the refill, in seconds, so that a change of one is not drawn as a collapse. */
const REFILL = 6;
/** About so many ticks, and never more than fit a telephone. */
const TICKS = 3;
const MOST_TICKS = 5;
const HOUR = 3_600_000;

/** How far from the best a value lies, from 0 to 1. */
function depth(field: Observed, row: LimbObservation, most: number): number | undefined {
  const value = row[field];
  if (value === undefined) return undefined;
  if (typeof value === 'number') return value / most;
  const words: readonly string[] = OBSERVED_WORDS[field as keyof typeof OBSERVED_WORDS];
  return words.indexOf(value) / (words.length - 1);
}

function kindOf(field: Observed, row: LimbObservation): RoundMark['kind'] {
  if (field === 'signal' && row.signal === 'absent') return 'lost';
  return isWorseThanNormal(field, row[field]) ? 'worse' : 'plain';
}

/**
 * A chart drawn over the hours, in shares of whatever room there is. One round alone stands in the middle.
 * @param shift how far the clock on the wall is ahead of UTC, in ms, so that a tick stands at its full hour
 */
export function roundsPlot({ observations }: ObservationChart, shift = 0): RoundsPlot {
  const times = observations.map(({ at }) => Date.parse(at));
  let [from, to] = [times[0] ?? 0, times.at(-1) ?? 0];
  if (from === to) [from, to] = [from - HOUR, to + HOUR];
  const scale = scaleUtc([from + shift, to + shift], [0, 1]);
  const most = {
    refill: Math.max(REFILL, ...observations.map(({ refill = 0 }) => refill)),
    pain: OBSERVED_RANGES.pain[1],
  };
  const rows = OBSERVED.map((field): RoundsRow => {
    const stretches: RoundMark[][] = [];
    let open: RoundMark[] | undefined;
    observations.forEach((row, i) => {
      const y = depth(field, row, field === 'refill' || field === 'pain' ? most[field] : 1);
      if (y === undefined) {
        open = undefined;
        return;
      }
      const mark = { at: times[i]!, x: scale(times[i]! + shift), y, kind: kindOf(field, row) };
      if (open) open.push(mark);
      else stretches.push((open = [mark]));
    });
    return { field, stretches };
  });
  const all = scale.ticks(TICKS);
  const every = Math.ceil(all.length / MOST_TICKS);
  const ticks = all
    .filter((_, i) => i % every === 0)
    .map((tick) => ({ at: tick.valueOf() - shift, x: scale(tick) }));
  return { rows, ticks };
}
