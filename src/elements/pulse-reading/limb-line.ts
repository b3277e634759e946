import { css, nothing, svg, type SVGTemplateResult } from 'lit';
import {
  type Limb,
  pieceAbove,
  piecesTo,
  type Place,
  type PulseSiteId,
  stationsOf,
} from '../../anatomy/index.js';
import { BLOCK_BAR, blockLength, type DrawnFlow, type LesionMark, NARROWING } from '../../drawing/index.js';
import { bruitAt, type Examination, pulseAt } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import { glyphParts, shownFor } from '../common/glyph.js';

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

/**
 * One limb laid flat, trunk first, with the same glyphs and block marks as the figure. Words beside it say the same, so it is
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
  const end = (place: Place<PulseSiteId>): DrawnFlow['flow'] => {
    const piece = pieceAbove(place);
    return flow.filter((part) => part.piece === piece).at(-1)?.flow ?? 'full';
  };
  const single = all.filter((spot) => !spot.branch);
  const branches = all.filter((spot) => spot.branch);
  const fork = single.at(-1);
  const path = (spot: Spot): string =>
    `M${fork?.x ?? 0} ${MIDDLE}H${spot.x - 60}C${spot.x - 34} ${MIDDLE} ${spot.x - 40} ${spot.y} ${spot.x - 14} ${spot.y}H${spot.x}`;
  const sections: { d: string; flow: DrawnFlow['flow'] }[] = [];
  single.forEach((spot, i) => {
    const from = i ? (single[i - 1]?.x ?? 0) : 0;
    const mark = marksBetween(single[i - 1]?.place, spot.place, marks)[0];
    const before = i ? end((single[i - 1] as Spot).place) : 'full';
    const at = mark ? (from + spot.x) / 2 : spot.x;
    if (mark) sections.push({ d: `M${from} ${MIDDLE}H${at}`, flow: before });
    sections.push({
      d: `M${mark ? at : from} ${MIDDLE}H${spot.x}`,
      flow: mark || i === 0 ? end(spot.place) : end(spot.place),
    });
  });
  const drawnMarks: { x: number; y: number; mark: LesionMark }[] = [];
  single.forEach((spot, i) => {
    const mark = marksBetween(single[i - 1]?.place, spot.place, marks)[0];
    if (mark) drawnMarks.push({ x: ((single[i - 1]?.x ?? 0) + spot.x) / 2, y: MIDDLE, mark });
  });
  for (const spot of branches) {
    sections.push({ d: path(spot), flow: end(spot.place) });
  }
  const onBranch = branches.map((spot) => marksBetween(fork?.place, spot.place, marks)[0]);
  // If all branches are weak, one mark before the fork represents them all.
  if (onBranch[0] && fork && branches.every(({ place }) => end(place) !== 'full'))
    drawnMarks.push({ x: fork.x + 24, y: MIDDLE, mark: onBranch[0] });
  else
    for (const [i, { x, y }] of branches.entries())
      if (onBranch[i]) drawnMarks.push({ x: x - 20, y, mark: onBranch[i] });
  return svg`<svg class="limb-line" viewBox="-4 0 ${WIDTH} ${HEIGHT}" width="100%" aria-hidden="true">
    ${sections.filter((s) => s.flow === 'none').map((s) => svg`<path class="rim" d=${s.d}></path><path class="inner" d=${s.d}></path>`)}
    ${sections.filter((s) => s.flow !== 'none').map((s) => svg`<path class="tube ${s.flow}" d=${s.d}></path>`)}
    ${drawnMarks.map(({ x, y, mark }) => bar(x, y, mark, words))}
    ${all.map((spot) => {
      const shown = shownFor(
        pulseAt(examination, spot.place),
        bruitAt(examination, spot.place),
        examination.scale,
      );
      return svg`<g transform="translate(${spot.x} ${spot.y})"><g transform="scale(.82) translate(-12 -12)">${glyphParts(shown, true)}</g></g>
        <text class="name" x=${spot.branch ? spot.x + 16 : spot.x} y=${spot.branch ? spot.y + 5 : MIDDLE + 34} text-anchor=${spot.branch ? 'start' : spot.x < 30 ? 'start' : 'middle'} dx=${!spot.branch && spot.x < 30 ? -14 : nothing}>${words.map.siteTiny(spot.place.site)}</text>`;
    })}
  </svg>`;
}

function bar(x: number, y: number, { kind, strength }: LesionMark, { reading }: Messages): SVGTemplateResult {
  const length = blockLength(strength);
  if (!length) return svg``;
  const percent = strength === undefined ? '' : reading.percent(strength);
  return svg`<g transform="translate(${x} ${y})">${
    kind === 'block'
      ? svg`<rect class="gap" x=${-BLOCK_BAR.gap / 2} y=${-length / 2} width=${BLOCK_BAR.gap} height=${length}></rect>
          <rect class="block" x=${-BLOCK_BAR.width / 2} y=${-length / 2} width=${BLOCK_BAR.width} height=${length} rx="1"></rect>`
      : svg`<path class="block" d=${NARROWING}></path>`
  }${percent ? svg`<text class="percent" y=${-length / 2 - 6} text-anchor="middle">${percent}</text>` : nothing}</g>`;
}

/** The marks on the way from one pulse place to the next. */
function marksBetween(
  above: Place<PulseSiteId> | undefined,
  below: Place<PulseSiteId>,
  marks: readonly LesionMark[],
): LesionMark[] {
  const before = above ? piecesTo(pieceAbove(above)) : [];
  const way = piecesTo(pieceAbove(below)).filter((piece) => !before.includes(piece));
  return marks.filter((mark) => way.includes(mark.piece));
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
  .limb-line .gap {
    fill: var(--_paper);
  }
  .limb-line .block {
    fill: var(--_gone);
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
