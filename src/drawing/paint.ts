import type { Token } from './palette.js';

/** How one class of shape is painted. Widths are in px, before the factor that a page may set for all lines. */
export interface Paint {
  readonly fill?: Token | 'none';
  readonly fillOpacity?: number;
  readonly stroke?: Token | 'none';
  readonly width?: number;
  readonly strokeOpacity?: number;
  readonly dash?: string;
  readonly dashOffset?: number;
  readonly cap?: 'round' | 'butt';
  readonly join?: 'round';
  /** The rim is painted before the fill that makes overlapping contours one shape. */
  readonly rimFirst?: true;
  /** Weight and size of type in px. */
  readonly type?: readonly [weight: number, size: number];
}

/** The paint of each class, by its selector. Style sheet and still picture are both made from it. */
export type PaintTable = Readonly<Record<string, Paint>>;

const RIM: Paint = { stroke: 'body-edge', width: 1.25 };

/** Body and arteries, which are drawn in tenths of a figure unit. */
export const GROUND_PAINT = {
  '.rim': { fill: 'body-edge', stroke: 'body-edge', width: 1.2, join: 'round' },
  '.body': { fill: 'body', stroke: 'body-edge', width: 1.6, join: 'round', rimFirst: true },
  '.hints': { ...RIM, fill: 'none', cap: 'round', join: 'round' },
  '.form': { ...RIM, width: 0.9, fill: 'none', cap: 'round' },
  '.helps': { fill: 'none', stroke: 'ink-2', width: 2.2, cap: 'round', join: 'round' },
  '.organ': { fill: 'vessel', fillOpacity: 0.14 },
  '.heart': { ...RIM, fill: 'body', fillOpacity: 0.72 },
  '.artery': { fill: 'vessel' },
  '.artery.deep': { fill: 'deep' },
  '.artery.behind': { fill: 'deep', fillOpacity: 0.5 },
  '.hollow': { fill: 'body', stroke: 'mute', width: 1.5, rimFirst: true },
} as const satisfies PaintTable;

/** What lies over the body, in px: names, leaders, lesions, collaterals. */
export const FIGURE_PAINT = {
  '.leaders path': { fill: 'none', stroke: 'edge', width: 1, strokeOpacity: 0.7, join: 'round' },
  '.letters': { fill: 'ink-2', type: [600, 22] },
  '.labels': { fill: 'ink', stroke: 'paper', width: 3, join: 'round', rimFirst: true, type: [400, 14] },
  '.label.quiet': { fill: 'ink-2' },
  '.collateral': { fill: 'none', stroke: 'vessel', width: 2, dash: '1 5', cap: 'round' },
  '.lesions .ridge': { fill: 'gone', stroke: 'gone', width: 0.75, join: 'round' },
  '.lesions .narrowing .ridge': { fill: 'paper', stroke: 'gone', width: 1.75, join: 'round' },
  '.lesions .feet': { fill: 'none', stroke: 'gone', width: 2, cap: 'round' },
  '.percent': { fill: 'ink', stroke: 'paper', width: 4, rimFirst: true, type: [600, 14] },
} as const satisfies PaintTable;

/** Selectors of type, whose rim keeps it readable on any ground and does not follow the factor for lines. */
const OF_TYPE = new Set(['.labels', '.percent']);

/** The parts of the glyphs, in the 24 units of their box. */
export const GLYPH_PAINT = {
  '.glyph path': { fill: 'none', cap: 'round', join: 'round' },
  '.glyph .halo': { fill: 'body', stroke: 'body', width: 7.5 },
  '.glyph .mark-halo': { stroke: 'body', width: 5 },
  '.glyph .numeral': { width: 2 },
  '.mark': { fill: 'none', stroke: 'ink', width: 2, cap: 'round', join: 'round' },
  '.glyph .mark': { stroke: 'ink', width: 2 },
  '.g-not-examined .dash': { fill: 'paper', stroke: 'mute', width: 1.7, dash: '2.35 2.05', cap: 'butt' },
  '.g-unknown .dash': { fill: 'paper', stroke: 'mute', width: 1.7, dash: '2.35 2.05', cap: 'butt' },
  '.g-normal .line': { fill: 'paper', stroke: 'pulse', width: 2 },
  '.g-normal .numeral': { stroke: 'pulse' },
  '.g-bounding .line': { fill: 'paper', stroke: 'pulse', width: 1.6 },
  '.g-bounding .fill': { fill: 'pulse' },
  '.g-bounding .numeral': { stroke: 'paper' },
  '.g-reduced .fill': { fill: 'weak', stroke: 'weak-edge', width: 1.8 },
  '.g-reduced .numeral': { stroke: 'weak-ink' },
  '.g-absent .fill': { fill: 'gone' },
  '.g-absent .numeral': { stroke: 'gone-ink' },
  '.g-could-not .line': { fill: 'paper', stroke: 'mute', width: 1.8 },
  '.g-could-not .bar': { stroke: 'mute', width: 2.2 },
  '.g-unknown .bar': { stroke: 'mute', width: 1.6 },
  '.g-listen .bar': { stroke: 'mute', width: 1.6 },
} as const satisfies PaintTable;

/** Units of the shapes of a table: a px, tenths of a figure unit, or px that the factor for lines leaves alone. */
export type PaintUnit = 'px' | 'ground' | 'fixed';

const tokenOf = (token: string): string => (token === 'none' ? token : `var(--_${token})`);

function declared(selector: string, paint: Paint, unit: PaintUnit): string {
  const { width, type } = paint;
  const fixed = unit === 'fixed' || OF_TYPE.has(selector);
  const factors = fixed ? '' : unit === 'ground' ? 'var(--_px)*var(--_stroke)*' : 'var(--_stroke)*';
  const colour = (token: string): string =>
    selector.endsWith('halo') ? `var(--_halo,${tokenOf(token)})` : tokenOf(token);
  const all: readonly (readonly [string, string | number | undefined])[] = [
    ['fill', paint.fill && colour(paint.fill)],
    ['fill-opacity', paint.fillOpacity],
    ['stroke', paint.stroke && colour(paint.stroke)],
    ['stroke-width', width && (factors ? `calc(${factors}${width}px)` : `${width}px`)],
    ['stroke-opacity', paint.strokeOpacity],
    ['stroke-dasharray', paint.dash],
    ['stroke-dashoffset', paint.dashOffset],
    ['stroke-linecap', paint.cap],
    ['stroke-linejoin', paint.join],
    ['paint-order', paint.rimFirst && 'stroke'],
    ['font', type && `${type[0]} ${type[1]}px var(--_font)`],
  ];
  return all.map(([name, value]) => (value === undefined ? '' : `${name}:${value};`)).join('');
}

/** The style sheet of a table; colours are the private custom properties of the tokens. */
export function styleSheetOf(table: PaintTable, unit: PaintUnit = 'px'): string {
  return Object.entries(table)
    .map(([selector, paint]) => `${selector}{${declared(selector, paint, unit)}}`)
    .join('');
}
