import type { Grade } from '../examination/index.js';

/*
 * The glyphs of the map in a 24-unit box centred on 12, 12. The shape shows the finding, the numeral depends on the scale.
 */

/** What a place shows: a grade, could not be examined, not examined, or recorded by a later version. */
export type GlyphKind = Grade | 'could-not' | 'not-examined' | 'listen' | 'unknown';

/** One part of a glyph: path data and which of the paint classes it takes. */
export interface GlyphPart {
  readonly d: string;
  readonly paint: 'fill' | 'line' | 'dash' | 'bar';
}

function circle(r: number, cx = 12, cy = 12): string {
  return `M${cx - r} ${cy}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}

export const GLYPHS: Readonly<Record<GlyphKind, readonly [GlyphPart, GlyphPart?]>> = {
  absent: [
    {
      d: 'M5 3.5H19A1.5 1.5 0 0 1 20.5 5V19A1.5 1.5 0 0 1 19 20.5H5A1.5 1.5 0 0 1 3.5 19V5A1.5 1.5 0 0 1 5 3.5Z',
      paint: 'fill',
    },
  ],
  reduced: [
    {
      d: 'M7.2 6.6H16.8C18.7 6.6 19.9 7.7 20.64 9A9.15 9.15 0 1 1 3.36 9C4.1 7.7 5.3 6.6 7.2 6.6Z',
      paint: 'fill',
    },
  ],
  normal: [{ d: circle(9), paint: 'line' }],
  bounding: [
    { d: circle(10.75), paint: 'line' },
    { d: circle(8), paint: 'fill' },
  ],
  'could-not': [
    { d: 'M12 1.8 22.2 12 12 22.2 1.8 12Z', paint: 'line' },
    { d: 'M7.8 12H16.2', paint: 'bar' },
  ],
  'not-examined': [{ d: circle(5.6), paint: 'dash' }],
  unknown: [
    { d: circle(9), paint: 'dash' },
    {
      d: 'M9.4 9.8C9.4 8.2 10.5 7.2 12 7.2S14.6 8.2 14.6 9.7C14.6 11.6 12 11.7 12 13.8M12 16.7V16.8',
      paint: 'bar',
    },
  ],
  listen: [{ d: 'M8.4 14.6V11.4M12 14.6V8.4M15.6 14.6V10', paint: 'bar' }],
};

/** Numerals as strokes, so that no font is needed and every size is the same drawing. */
export const NUMERALS: readonly string[] = [
  'M12 7.4C13.7 7.4 15 9.4 15 12S13.7 16.6 12 16.6 9 14.6 9 12 10.3 7.4 12 7.4Z',
  'M9.8 9.2 12.4 7.3V16.7',
  'M9.1 9.9C9.2 8.3 10.4 7.3 12 7.3c1.7 0 2.9 1 2.9 2.5 0 1.7-1.3 2.7-2.9 4.2L9 16.7H15.2',
  'M9.2 7.3H14.7L11.7 10.9C13.8 10.9 15.1 12.1 15.1 13.8 15.1 15.6 13.7 16.7 12 16.7 10.6 16.7 9.6 16.2 8.9 15.3',
  'M13.6 16.7V7.3L8.9 13.8H15.3',
];

/** Vertical offset of the numeral in its shape. */
export const NUMERAL_SHIFT: Partial<Record<GlyphKind, number>> = { reduced: 1.5 };

/** Additional findings, each at its own position around the glyph. */
export type MarkKind = 'systolic' | 'continuous' | 'thrill' | 'expansile';
export const MARKS: Readonly<Record<MarkKind, string>> = {
  systolic: 'M20.8 1.6V-2M24.1 1.6V-5.2M27.4 1.6V-3.4',
  continuous: 'M20.8 1.6V-2M24.1 1.6V-5.2M27.4 1.6V-3.4M20.8 1.6H27.4',
  thrill: 'M3.5 28.6 6.3 26.2 9.2 30.2 12 26.2 14.8 30.2 17.7 26.2 20.5 28.6',
  expansile: 'M-1.6 7.6-5.2 12-1.6 16.4M25.6 7.6 29.2 12 25.6 16.4',
};

/** The box of each mark alone: left, top, width, height. */
export const MARK_BOXES: Readonly<Record<MarkKind, readonly [number, number, number, number]>> = {
  systolic: [17, -8, 14, 14],
  continuous: [17, -8, 14, 14],
  thrill: [1, 20, 22, 16],
  expansile: [-7, 0, 38, 24],
};

/** Side of the box a glyph is drawn in, in px: on the map, in the chooser, in legends. */
export const GLYPH_SIZE = { map: 24, chooser: 30, legend: 20 } as const;
/** Radius of the target around a site, in px. */
export const TARGET_RADIUS = 22;

/** Sign of a likely lesion in a legend: a ridge between two feet, in a box of 20. */
export const RIDGE_SIGN = {
  outline: 'M3 14C6 14 6 5 10 5S14 14 17 14Z',
  feet: 'M2 16V10M18 16V10',
} as const;
