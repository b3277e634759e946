import { css, nothing, svg, type SVGTemplateResult } from 'lit';
import {
  feedingPiece,
  type Limb,
  type Piece,
  pieceAbove,
  piecesTo,
  type Place,
  type PulseSiteId,
  stationsOf,
} from '../../anatomy/index.js';
import {
  drawnLength,
  type DrawnFlow,
  type Footing,
  type LesionMark,
  type Point,
  type Ridge,
  ridgeOver,
  type RidgeSizes,
  runsOf,
} from '../../drawing/index.js';
import { bruitAt, type Examination, pulseAt } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import { glyphParts } from '../common/glyph.js';
import { shownFor } from '../../drawing/shown.js';

const WIDTH = 362;
const HEIGHT = 104;
const MIDDLE = 52;
/** Height available to the branches of a station, and the maximum distance between two. */
const SPREAD = 68;
const MOST_APART = 44;

interface Spot {
  readonly place: Place<PulseSiteId>;
  readonly x: number;
  readonly y: number;
  /** Whether the line forks to reach it. */
  readonly branch: boolean;
}

/** Positions of the stations along the line: evenly spaced, the places of one station stacked. */
function spots(limb: Limb): Spot[] {
  const stations = stationsOf(limb);
  const last = stations.length - 1;
  const step = 250 / Math.max(1, last);
  return stations.flatMap((station, i) => {
    const branch = station.length > 1;
    const apart = branch ? Math.min(MOST_APART, SPREAD / (station.length - 1)) : 0;
    return station.map((place, k) => ({
      place,
      x: branch ? 262 : 14 + i * Math.min(step, 84),
      y: MIDDLE + (k - (station.length - 1) / 2) * apart,
      branch,
    }));
  });
}

/** Where a piece of the way lies along the line, and on which spot's branch. */
interface Run {
  readonly from: number;
  readonly to: number;
  readonly spot: Spot;
}

/** Every piece of the limb's way on the line; those between two stations share the room by their drawn length. */
function runs(all: readonly Spot[]): ReadonlyMap<Piece, Run> {
  const found = new Map<Piece, Run>();
  const fork = all.filter(({ branch }) => !branch).at(-1);
  let above: Spot | undefined;
  for (const spot of all) {
    const start = spot.branch ? fork : above;
    const before = start ? piecesTo(pieceAbove(start.place)) : [];
    const way = piecesTo(pieceAbove(spot.place)).filter((piece) => !before.includes(piece));
    const length = way.reduce((sum, piece) => sum + drawnLength(piece), 0) || 1;
    let x = start?.x ?? 0;
    for (const piece of way) {
      const to = x + ((spot.x - (start?.x ?? 0)) * drawnLength(piece)) / length;
      // Branches share their way as far as it is one.
      if (!found.has(piece)) found.set(piece, { from: x, to, spot });
      x = to;
    }
    if (!spot.branch) above = spot;
  }
  return found;
}

/** Distance before a branch's end at which it leaves the middle, and at which it has reached its own height. */
const LEAVES = 60;
const ARRIVES = 14;

/** Height of the line to a spot, so far along. */
function heightAt({ x, y, branch }: Spot, along: number): number {
  if (!branch) return y;
  const share = Math.min(1, Math.max(0, (along - (x - LEAVES)) / (LEAVES - ARRIVES)));
  return MIDDLE + (y - MIDDLE) * share * share * (3 - 2 * share);
}

const RIDGE: RidgeSizes = { area: 11, least: 1.5, most: 15, smooth: 18 };
/** Distance of a ridge from the middle of its line, and of its ends from the sites that bound it. */
const RIDGE_GAP = 9;
const CLEAR = 15;
/** The largest part of a piece that they stand away from a site. */
const MOST_CLEAR = 0.4;
const STEP = 2;
/** Distance of the names from the line, and where ridges lie between. */
const NAMES = 34;
const NAMES_UNDER_RIDGES = 42;

function ridgesOn(mark: LesionMark, where: ReadonlyMap<Piece, Run>): Ridge[] {
  const known = mark.pieces.filter(({ piece }) => where.has(piece));
  const up = mark.further ? 1 : -1;
  return runsOf(known).flatMap((run) => {
    const footings = run.flatMap(({ piece, weight }, i): Footing[] => {
      const { from, to, spot } = where.get(piece) as Run;
      const clear = Math.min(CLEAR, (to - from) * MOST_CLEAR);
      const start = i === 0 && feedingPiece(piece)?.endsAt ? from + clear : from;
      const end = i === run.length - 1 && piece.endsAt ? to - clear : to;
      const count = Math.max(1, Math.round((end - start) / STEP));
      return Array.from({ length: count }, (_, k) => {
        const x = start + ((k + 0.5) / count) * (end - start);
        return {
          x,
          y: heightAt(spot, x),
          nx: 0,
          ny: up,
          curvature: 0,
          gap: RIDGE_GAP,
          length: (end - start) / count,
          weight: weight / count,
        };
      });
    });
    return footings.length > 1 ? [ridgeOver(footings, RIDGE)] : [];
  });
}

const line = (points: readonly Point[]): string =>
  points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L');

/** A mark with the ridges it is drawn as. */
interface Drawn {
  readonly mark: LesionMark;
  readonly ridges: readonly Ridge[];
}

/** How far a ridge reaches along the line. */
const reach = (ridges: readonly Ridge[]): readonly [number, number] => {
  const xs = ridges.flatMap(({ outline }) => outline.map(([x]) => x));
  return [Math.min(...xs), Math.max(...xs)];
};

/** Room that a number takes beside a ridge. */
const NUMBER = 40;

/** Where the number of a ridge below the line stands: behind its end, or before its start where another ridge lies there. */
function besideRidge(
  { mark, ridges }: Drawn,
  all: readonly Drawn[],
): { x: number; y: number; anchor: string } {
  const [from, to] = reach(ridges);
  const behind = all.some((other) => {
    const [start, end] =
      other.mark.further && other.mark !== mark ? reach(other.ridges) : [Infinity, Infinity];
    return start < to + NUMBER && end > to;
  });
  const y = MIDDLE + RIDGE_GAP + 10;
  return behind ? { x: from - 5, y, anchor: 'end' } : { x: to + 5, y, anchor: 'start' };
}

/** A mark as a ridge along its stretch, with one number. */
function stretch(drawn: Drawn, all: readonly Drawn[], words: Messages): SVGTemplateResult {
  const { mark, ridges } = drawn;
  const crest = ridges[0]?.crest ?? [];
  const percent = mark.strength === undefined ? '' : words.reading.percent(mark.strength);
  // Below the line are the names of the sites: there the number stands at the ridge's end.
  const spot = mark.further
    ? besideRidge(drawn, all)
    : { x: crest[0]?.x ?? 0, y: (crest[0]?.y ?? 0) - 5, anchor: 'middle' };
  return svg`<g class="stretch ${mark.kind}">
    <path class="ridge" d=${ridges.map(({ outline }) => `M${line(outline)}Z`).join('')}></path>
    <path class="feet" d=${ridges.flatMap(({ feet }) => feet.map((foot) => `M${line(foot)}`)).join('')}></path>
    ${
      crest.length && percent
        ? svg`<text class="percent ${mark.further ? 'further' : ''}" x=${spot.x.toFixed(1)} y=${spot.y.toFixed(1)} text-anchor=${spot.anchor}>${percent}</text>`
        : nothing
    }
  </g>`;
}

/** Half the width of a full artery. */
const HALF = 3;

/** What still flows on a stretch where a lesion may lie. */
function thinning({ from, to, spot }: Run, [first, last]: readonly [number, number]): string {
  if (spot.branch) return '';
  const y = (width: number): string => (HALF * width).toFixed(1);
  return `M${from} ${MIDDLE}m0 -${y(first)}L${to} ${MIDDLE - HALF * last}V${MIDDLE + HALF * last}L${from} ${MIDDLE + HALF * first}Z`;
}

/**
 * One limb laid flat, trunk first, with the same glyphs and stretches as the figure. Words beside it say the same, so it is
 * a picture to assistive technology.
 */
export function limbLine(
  examination: Examination,
  limb: Limb,
  marks: readonly LesionMark[],
  flow: readonly DrawnFlow[],
  words: Messages,
): SVGTemplateResult {
  const all = spots(limb);
  const where = runs(all);
  const parts = flow.filter(({ piece }) => where.has(piece));
  const sections = parts.map((part) => ({ ...part, d: pathOf(where.get(part.piece) as Run) }));
  const ridged = marks.map((mark): Drawn => ({ mark, ridges: ridgesOn(mark, where) }));
  const named = MIDDLE + (marks.some(({ further }) => further) ? NAMES_UNDER_RIDGES : NAMES);
  const hollow = sections.filter((section) => section.flow === 'none');
  return svg`<svg class="limb-line" viewBox="-4 0 ${WIDTH} ${HEIGHT}" width="100%" aria-hidden="true">
    ${hollow.map(({ d }) => svg`<path class="rim" d=${d}></path><path class="inner" d=${d}></path>`)}
    ${hollow.map(({ piece, width }) => (width ? svg`<path class="thinning" d=${thinning(where.get(piece) as Run, width)}></path>` : nothing))}
    ${sections.map(({ d, flow: kind }) => (kind === 'none' ? nothing : svg`<path class="tube ${kind}" d=${d}></path>`))}
    ${ridged.map((one) => stretch(one, ridged, words))}
    ${all.map((spot) => {
      const shown = shownFor(
        pulseAt(examination, spot.place),
        bruitAt(examination, spot.place),
        examination.scale,
      );
      return svg`<g transform="translate(${spot.x} ${spot.y})"><g transform="scale(.82) translate(-12 -12)">${glyphParts(shown, true)}</g></g>
        <text class="name" x=${spot.branch ? spot.x + 16 : spot.x} y=${spot.branch ? spot.y + 5 : named} text-anchor=${spot.branch ? 'start' : spot.x < 30 ? 'start' : 'middle'} dx=${!spot.branch && spot.x < 30 ? -14 : nothing}>${words.map.siteTiny(spot.place.site)}</text>`;
    })}
  </svg>`;
}

/** The line of a piece: straight, or the part of a branch's curve. */
function pathOf({ from, to, spot }: Run): string {
  if (!spot.branch) return `M${from} ${MIDDLE}H${to}`;
  const steps = Math.max(2, Math.ceil((to - from) / 6));
  return `M${line(
    Array.from({ length: steps + 1 }, (_, i): Point => {
      const x = from + ((to - from) * i) / steps;
      return [x, heightAt(spot, x)];
    }),
  )}`;
}

export const limbLineStyles = css`
  .limb-line {
    --_halo: var(--_paper);
    max-inline-size: 440px;
    overflow: visible;
  }
  .limb-line .tube,
  .limb-line .rim,
  .limb-line .inner {
    fill: none;
    stroke-linecap: round;
  }
  .limb-line .tube {
    stroke: var(--_vessel);
    stroke-width: 6;
  }
  .limb-line .tube.reduced {
    stroke-width: 3;
  }
  .limb-line .rim {
    stroke: var(--_mute);
    stroke-width: 6;
  }
  .limb-line .inner {
    stroke: var(--_paper);
    stroke-width: 3.2;
  }
  .limb-line .thinning {
    fill: var(--_vessel);
  }
  .limb-line .ridge {
    fill: var(--_gone);
    stroke: var(--_gone);
    stroke-width: 0.75;
    stroke-linejoin: round;
  }
  .limb-line .narrowing .ridge {
    fill: var(--_paper);
    stroke-width: 1.75;
  }
  .limb-line .feet {
    fill: none;
    stroke: var(--_gone);
    stroke-width: 2;
    stroke-linecap: round;
  }
  .limb-line text {
    font: 400 13px var(--_font);
    fill: var(--_ink-2);
  }
  .limb-line .percent {
    font-weight: 600;
    fill: var(--_ink);
  }
`;
