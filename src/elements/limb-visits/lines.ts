import { html, nothing, type TemplateResult } from 'lit';
import { type Side, SIDES } from '../../anatomy/index.js';
import type { TrendMeasure } from '../../comparison/trends.js';
import type { Scatter, TimeAxis, TrendPlot } from '../../drawing/trend-plot.js';
import type { VisitsWords } from '../../locale/visits.js';
import type { SourceWords } from '../common/sources-mark.js';
import { offsetOf } from '../../comparison/visits.js';
import type { LaterPart } from './fetched.js';
import type { VisitLog } from './log.js';
import { renderPlot, type ShownPlot } from './plots.js';

/** Height of one plot, in px. */
const HEIGHT = 168;

/** Axis and lines of one log, which stay as they are while a reader moves along ten thousand visits. */
export class LaidOut {
  #key = '';
  #axis: TimeAxis | undefined;
  readonly #plots = new Map<
    TrendMeasure,
    { readonly scatter: readonly Scatter[]; readonly plot: TrendPlot }
  >();

  /** @param key all that the layout depends on beside the log */
  axis(key: string, make: () => TimeAxis): TimeAxis {
    if (key !== this.#key || !this.#axis) {
      this.#plots.clear();
      this.#key = key;
      this.#axis = make();
    }
    return this.#axis;
  }

  plot(measure: TrendMeasure, make: () => { scatter: readonly Scatter[]; plot: TrendPlot }) {
    const known = this.#plots.get(measure) ?? make();
    this.#plots.set(measure, known);
    return known;
  }
}

interface Lines {
  readonly log: VisitLog;
  readonly laidOut: LaidOut;
  readonly part: LaterPart;
  readonly width: number;
  /** The visit that is read. */
  readonly active: number;
  /** The earlier and the later of two that are compared; the band lies about the first. */
  readonly base: number | undefined;
  readonly until: number | undefined;
  /** The point of time by whose clock the axis is written. */
  readonly shift: string | undefined;
  readonly when: (at: number) => string;
  readonly words: VisitsWords;
  readonly letters: Readonly<Record<Side, string>>;
  readonly sources: SourceWords;
  readonly go: (at: number) => unknown;
  readonly key: (event: KeyboardEvent) => void;
}

function scatterOf({ log, part, base, until }: Lines, measure: TrendMeasure): Scatter[] {
  if (base === undefined || until === undefined) return [];
  const [start, end] = [log.times[base]!, log.times[until]!];
  if (Number.isNaN(start) || Number.isNaN(end)) return [];
  return SIDES.flatMap((side): Scatter[] => {
    const value = log.value(measure, side, base);
    const range = typeof value === 'number' ? part.scatterOf(measure, value, log.arm(base)) : undefined;
    return range ? [{ side, ...range, start, end }] : [];
  });
}

function shownPlot(lines: Lines, axis: TimeAxis, measure: TrendMeasure): ShownPlot {
  const { log, part, words, active, base, width, when } = lines;
  const { scatter, plot } = lines.laidOut.plot(measure, () => {
    const scatter = scatterOf(lines, measure);
    const columns = { times: log.times, values: log.column(measure), counts: log.counts };
    return { scatter, plot: part.trendPlot(columns, axis, scatter, { width, height: HEIGHT }) };
  });
  const sides = log.sides(measure, active);
  const time = log.times[active]!;
  const known = SIDES.filter(
    (side) => typeof sides[side] === 'number' && !Number.isNaN(time) && log.counts(active),
  );
  const least = part.LEAST_CHANGES[measure];
  return {
    measure,
    plot,
    read: known.map((side) => {
      const value = sides[side] as number;
      return { visit: active, time, value, x: axis.x(time), y: plot.y(value) };
    }),
    readSides: known,
    said: words.both(measure, sides),
    band: scatter.length ? words.band(least, measure, when(base!)) : undefined,
    source: least.source,
  };
}

/** The plots of every measure that was taken, over one axis, and the reader that moves through all of them. */
export function renderPlots(lines: Lines): TemplateResult | typeof nothing {
  const { log, laidOut, part, width, active, base, until, words, letters, sources, when, go, key } = lines;
  const { measures } = log;
  const count = log.visits.length;
  const busy =
    log.done < count
      ? html`<p class="hint" role="status">${words.table.reading(log.done, count)}</p>`
      : nothing;
  if (!measures.length) return busy;
  const shift = offsetOf(lines.shift);
  const axis = laidOut.axis([log.done, width, base, until, shift].join(' '), () =>
    part.timeAxis(log.times, width, shift),
  );
  const cursor = Number.isNaN(log.times[active]!) ? undefined : axis.x(log.times[active]!);
  const tick = (time: number): string => words.tick(time + shift, axis.unit);
  const shown = measures.map((measure) => shownPlot(lines, axis, measure));
  const said = words.read(
    when(active),
    measures.map((measure) => [measure, log.sides(measure, active)] as const),
  );
  const read = ({ clientX, currentTarget, pointerType, buttons }: PointerEvent): void => {
    if (pointerType === 'touch' && !buttons) return;
    const svg = (currentTarget as HTMLElement).querySelector('svg')!;
    const near = part.visitNear(
      log.times,
      axis.timeAt(clientX - svg.getBoundingClientRect().left),
      log.counts,
    );
    if (near !== undefined && near !== active) go(near);
  };
  return html`<div class="lines">
    ${busy}
    <div
      class="reader"
      role="slider"
      tabindex="0"
      aria-label=${words.table.reader}
      aria-valuemin="1"
      aria-valuemax=${count}
      aria-valuenow=${active + 1}
      aria-valuetext=${said}
      aria-orientation="horizontal"
      @keydown=${key}
    >
      ${when(active)}
    </div>
    <div class="plots" @pointerdown=${read} @pointermove=${read}>
      ${shown.map((one) => renderPlot(one, axis, cursor, words, letters, tick, sources))}
    </div>
  </div>`;
}
