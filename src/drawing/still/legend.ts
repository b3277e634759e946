import { MARK_KINDS, type MarkKind as SkinKind, SCALES, type ScaleId } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { Collateral } from '../collaterals.js';
import { untoldIn } from '../finding-lines.js';
import type { DrawnFlow } from '../flow.js';
import { GLYPH_SIZE, type MarkKind } from '../glyphs.js';
import { LABEL_TYPE, type Layout } from '../layout.js';
import { DIGIT_KINDS, type DigitKind, type DigitView } from '../plates/digits.js';
import type { PlacedRidges } from '../placed-ridges.js';
import { type Shown, shownForStep } from '../shown.js';
import type { SiteViews } from '../site-view.js';

/** What a legend explains: a glyph or a mark beside it, what is drawn on arteries, a mark on the skin. */
export type LegendSign =
  | { readonly of: 'glyph'; readonly shown: Shown }
  | { readonly of: 'mark'; readonly mark: MarkKind }
  | { readonly of: 'lesion'; readonly kind: 'block' | 'narrowing' }
  | { readonly of: 'hollow' | 'collateral'; readonly d: string }
  | { readonly of: 'skin'; readonly kind: SkinKind }
  | { readonly of: 'digit'; readonly kind: DigitKind };

/** An entry of a picture's legend. */
export interface LegendItem {
  readonly sign?: LegendSign;
  readonly text: string;
}

/** An entry in its place, in px; `lead` is the room of its sign. */
export interface PlacedItem extends LegendItem {
  readonly x: number;
  readonly y: number;
  readonly lead: number;
}

/** What a legend has to explain. */
export interface Explained {
  readonly layout: Layout;
  readonly sites: SiteViews;
  readonly ridges: readonly PlacedRidges[];
  readonly flow: readonly DrawnFlow[];
  readonly collaterals: readonly Collateral[];
  /** Kinds of mark drawn on the skin. */
  readonly skin: ReadonlySet<SkinKind>;
  /** Fingers or toes, where any was looked at. */
  readonly digits?: readonly DigitView[] | undefined;
  readonly words: Messages;
}

/** Sizes in px: the margin around, the height of a row, the gap between sign and words, and between items. */
const MARGIN = 16;
const ROW = 28;
const GAP = 6;
const BETWEEN = 20;
/** Side of a sign in px. */
export const SIGN = GLYPH_SIZE.legend;

/** Entries for what is drawn on the arteries. */
function arteryItems({ ridges, flow, collaterals, words: { map } }: Explained): LegendItem[] {
  const half = SIGN / 2;
  const lesion = (kind: 'block' | 'narrowing'): LegendItem[] =>
    ridges.some(({ mark }) => mark.kind === kind)
      ? [{ sign: { of: 'lesion', kind }, text: map.likely[kind] }]
      : [];
  const line = (of: 'hollow' | 'collateral', d: string, text: string, has: boolean): LegendItem[] =>
    has ? [{ sign: { of, d }, text }] : [];
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

/** Entries for fingers and toes: what stands at any of them. */
function digitItems({ digits = [] }: Explained): LegendItem[] {
  return DIGIT_KINDS.flatMap((kind): LegendItem[] => {
    const said = new Set(digits.filter((digit) => digit.kind === kind).map((digit) => digit.said));
    return [...said].map((text) => ({ sign: { of: 'digit', kind }, text }));
  });
}

/** What was found at sites where it has no room beside the name, in pieces no longer than a row. */
function untoldItems({ layout, sites }: Explained): LegendItem[] {
  const most = (layout.width - 2 * MARGIN) / LABEL_TYPE.perLetter;
  return untoldIn(layout.findings).flatMap((key) => {
    const rows: string[] = [];
    for (const phrase of sites.get(key)?.name.split('; ') ?? []) {
      const row = [...rows.slice(-1), phrase].join('; ');
      if (rows.length && row.length <= most) rows[rows.length - 1] = row;
      else rows.push(phrase);
    }
    return rows.map((text) => ({ text }));
  });
}

/** The scale, and every other sign used in the picture. */
function items(view: Explained, scale: ScaleId): LegendItem[] {
  const { examination, map, marks } = view.words;
  const shown = [...view.sites.values()].map((site) => site.shown);
  const glyph = (one: Shown, text: string): LegendItem => ({ sign: { of: 'glyph', shown: one }, text });
  const plain = (kind: Shown['kind'], text: string): LegendItem[] =>
    shown.some((one) => one.kind === kind) ? [glyph({ kind, numeral: null, marks: [] }, text)] : [];
  const mark = (kind: MarkKind, text: string): LegendItem[] =>
    shown.some((one) => one.marks.includes(kind)) ? [{ sign: { of: 'mark', mark: kind }, text }] : [];
  return [
    { text: `${map.scale} ${examination.scales[scale]}:` },
    ...SCALES[scale].steps.map((step) => glyph(shownForStep(step), examination.step(step))),
    ...plain('could-not', map.couldNotExamine),
    ...plain('not-examined', examination.notExamined),
    ...plain('unknown', examination.unknownHere),
    ...mark('systolic', examination.bruits.systolic),
    ...mark('continuous', examination.bruits.continuous),
    ...mark('thrill', map.thrill),
    ...mark('expansile', map.expansile),
    ...arteryItems(view),
    ...MARK_KINDS.filter((kind) => view.skin.has(kind)).map((kind): LegendItem => ({
      sign: { of: 'skin', kind },
      text: marks.kindWord(kind),
    })),
    ...digitItems(view),
    ...untoldItems(view),
  ];
}

/**
 * The legend under a picture of the figure, in as many rows as it needs.
 * @param gap between figure and legend in px
 */
export function placedLegend(
  view: Explained,
  scale: ScaleId,
  gap: number,
): { readonly items: readonly PlacedItem[]; readonly height: number } {
  const { width, height } = view.layout;
  const top = height + gap;
  let x = MARGIN;
  let row = 0;
  const placed = items(view, scale).map((item): PlacedItem => {
    const lead = item.sign ? SIGN + GAP : 0;
    const wide = lead + item.text.length * LABEL_TYPE.perLetter;
    if (x > MARGIN && x + wide > width - MARGIN) {
      x = MARGIN;
      row++;
    }
    const at = { ...item, x, y: top + row * ROW, lead };
    x += wide + BETWEEN;
    return at;
  });
  return { items: placed, height: gap + (row + 1) * ROW + MARGIN / 2 };
}
