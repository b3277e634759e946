import { svg, type SVGTemplateResult } from 'lit';
import { GLYPH_SIZE, LABEL_TYPE, type MarkKind, RIDGE_SIGN } from '../../../drawing/index.js';
import { SCALES, type ScaleId } from '../../../examination/index.js';
import { large } from '../../common/choices.js';
import { glyphParts, markIcon } from '../../common/glyph.js';
import { type Shown, shownForStep } from '../../../drawing/shown.js';
import type { FigureView, LegendItem } from '../figure/render.js';

/** Sizes in px: the margin around, the height of a row, the gap between sign and words, and between items. */
const MARGIN = 16;
const ROW = 28;
const GAP = 6;
const BETWEEN = 20;
const SIGN = GLYPH_SIZE.legend;

function glyph(shown: Shown, text: string): LegendItem {
  return { sign: svg`<g transform="scale(${SIGN / 24})">${glyphParts(shown)}</g>`, text };
}

/** Entries for what is drawn on the arteries. */
function arteryItems({ ridges, flow, collaterals, words: { map } }: FigureView): LegendItem[] {
  const half = SIGN / 2;
  const lesion = (kind: 'block' | 'narrowing'): LegendItem[] =>
    ridges.some(({ mark }) => mark.kind === kind)
      ? [
          {
            sign: svg`<g class="lesions"><g class=${kind}><path class="ridge" d=${RIDGE_SIGN.outline}></path><path class="feet" d=${RIDGE_SIGN.feet}></path></g></g>`,
            text: map.likely[kind],
          },
        ]
      : [];
  const line = (name: string, d: string, text: string, has: boolean): LegendItem[] =>
    has ? [{ sign: svg`<path class="sign ${name}" d=${d}></path>`, text }] : [];
  return [
    ...lesion('block'),
    ...lesion('narrowing'),
    ...line(
      'hollow',
      `M0 ${half - 3}H${SIGN}V${half + 3}H0Z`,
      map.noPulse,
      flow.some((one) => one.flow === 'none'),
    ),
    ...line('collateral', `M0 ${half}H${SIGN}`, map.collaterals, collaterals.length > 0),
  ];
}

/** The scale, and every other sign used in the picture. */
function items(view: FigureView, scale: ScaleId): LegendItem[] {
  const { examination, map } = view.words;
  const shown = [...view.sites.values()].map((site) => site.shown);
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
    ...plain('unknown', examination.unknownHere),
    ...mark('systolic', examination.bruits.systolic),
    ...mark('continuous', examination.bruits.continuous),
    ...mark('thrill', map.thrill),
    ...mark('expansile', map.expansile),
    ...arteryItems(view),
    ...view.skin.legend(),
  ];
}

/**
 * The legend under a picture of the figure, in as many rows as it needs.
 * @param gap between figure and legend in px
 */
export function pictureLegend(
  view: FigureView,
  scale: ScaleId,
  gap: number,
): { readonly template: SVGTemplateResult; readonly height: number } {
  const { width, height } = view.layout;
  const top = height + gap;
  let x = MARGIN;
  let row = 0;
  const placed = items(view, scale).map(({ sign, text }) => {
    const lead = sign ? SIGN + GAP : 0;
    const wide = lead + text.length * LABEL_TYPE.perLetter;
    if (x > MARGIN && x + wide > width - MARGIN) {
      x = MARGIN;
      row++;
    }
    const item = svg`<g transform="translate(${x} ${top + row * ROW})">${sign}<text class="label" x=${lead} y="15">${large(text)}</text></g>`;
    x += wide + BETWEEN;
    return item;
  });
  return { template: svg`<g class="labels">${placed}</g>`, height: gap + (row + 1) * ROW + MARGIN / 2 };
}
