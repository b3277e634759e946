import { svg, type SVGTemplateResult } from 'lit';
import { GLYPH_SIZE, LABEL_TYPE, type MarkKind } from '../../drawing/index.js';
import { SCALES, type ScaleId } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import { glyphParts, markIcon, type Shown, shownForStep } from '../common/glyph.js';
import type { SiteView } from './site-view.js';

/** Sizes in px: the margin around, the height of a row, the gap between sign and words, and between items. */
const MARGIN = 16;
const ROW = 28;
const GAP = 6;
const BETWEEN = 20;
const SIGN = GLYPH_SIZE.legend;

/** A sign and what it means. */
export interface LegendItem {
  readonly sign: SVGTemplateResult | undefined;
  readonly text: string;
}

function glyph(shown: Shown, text: string): LegendItem {
  return { sign: svg`<g transform="scale(${SIGN / 24})">${glyphParts(shown)}</g>`, text };
}

/** The scale in use, and every sign that the picture has beside it. */
function items(sites: Iterable<SiteView>, scale: ScaleId, { examination, map }: Messages): LegendItem[] {
  const shown = [...sites].map((site) => site.shown);
  const has = (kind: Shown['kind']): boolean => shown.some((one) => one.kind === kind);
  const plain = (kind: Shown['kind'], text: string): LegendItem[] =>
    has(kind) ? [glyph({ kind, numeral: null, marks: [] }, text)] : [];
  const mark = (kind: MarkKind, text: string): LegendItem[] =>
    shown.some(({ marks }) => marks.includes(kind)) ? [{ sign: markIcon(kind, SIGN), text }] : [];
  return [
    { sign: undefined, text: `${map.scale} ${examination.scales[scale]}:` },
    ...SCALES[scale].steps.map((step) => glyph(shownForStep(step), examination.step(step))),
    ...plain('could-not', map.couldNotExamine),
    ...plain('not-examined', examination.notExamined),
    ...mark('systolic', `${map.bruit}, ${map.bruitOptions.systolic}`),
    ...mark('continuous', `${map.bruit}, ${map.bruitOptions.continuous}`),
    ...mark('thrill', map.thrill),
    ...mark('expansile', map.expansile),
  ];
}

/** The legend under a picture of the figure, in as many rows as its width asks for. */
export function pictureLegend(
  sites: Iterable<SiteView>,
  scale: ScaleId,
  top: number,
  width: number,
  words: Messages,
  more: readonly LegendItem[],
): { readonly template: SVGTemplateResult; readonly height: number } {
  let x = MARGIN;
  let row = 0;
  const placed = [...items(sites, scale, words), ...more].map(({ sign, text }) => {
    const lead = sign ? SIGN + GAP : 0;
    const wide = lead + text.length * LABEL_TYPE.perLetter;
    if (x > MARGIN && x + wide > width - MARGIN) {
      x = MARGIN;
      row++;
    }
    const item = svg`<g transform="translate(${x} ${top + row * ROW})">${sign}<text class="label" x=${lead} y="15">${text}</text></g>`;
    x += wide + BETWEEN;
    return item;
  });
  return { template: svg`<g>${placed}</g>`, height: (row + 1) * ROW + MARGIN / 2 };
}
