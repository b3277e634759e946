import {
  type Color,
  converter,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  filterGrayscale,
  parse,
  wcagContrast,
} from 'culori';
import { describe, expect, it } from 'vitest';
import {
  FORCED,
  type Paint,
  type PaintTable,
  PALETTE,
  type Token,
  type Tone,
} from '../../../src/drawing/index.js';
import { DIGIT_GLYPHS, DIGIT_KINDS, DIGIT_PAINT } from '../../../src/drawing/plates/digits.js';
import { PLATE_PAINT } from '../../../src/drawing/plates/paint.js';

const SCHEMES = ['light', 'dark'] as const satisfies readonly (keyof Tone)[];
type Scheme = (typeof SCHEMES)[number];
type Pair = readonly [front: Token, ground: Token];

/** Words and numerals: WCAG 2.2, success criterion 1.4.3, 4.5 to 1. */
const TEXT: readonly Pair[] = [
  ['ink', 'paper'],
  ['ink', 'ground'],
  ['ink', 'raised'],
  ['ink', 'well'],
  ['ink', 'bar'],
  ['ink', 'danger-soft'],
  ['ink-2', 'paper'],
  ['ink-2', 'ground'],
  ['ink-2', 'raised'],
  ['ink-2', 'well'],
  ['mute', 'paper'],
  ['danger', 'paper'],
  ['danger', 'danger-soft'],
  ['pulse', 'paper'],
  ['paper', 'pulse'],
  ['weak-ink', 'weak'],
  ['gone-ink', 'gone'],
];
/** Marks, edges of fields, arteries: WCAG 2.2, success criterion 1.4.11, 3 to 1. */
const MARKS: readonly Pair[] = [
  ['ink', 'body'],
  ['ink-2', 'body'],
  ['pulse', 'body'],
  ['weak-edge', 'body'],
  ['weak-edge', 'paper'],
  ['gone', 'body'],
  ['gone', 'paper'],
  ['gone', 'bar'],
  ['pulse', 'bar'],
  ['mute', 'body'],
  ['mute', 'paper'],
  ['edge', 'paper'],
  ['edge', 'raised'],
  ['edge', 'ground'],
  ['focus', 'paper'],
  ['focus', 'raised'],
  ['focus', 'ground'],
  ['focus', 'body'],
  ['vessel', 'body'],
  ['deep', 'body'],
  ['danger', 'paper'],
];

describe('contrast', () => {
  for (const scheme of SCHEMES) {
    it.each(TEXT)(`of %s as text on %s is at least 4.5, ${scheme}`, (front, ground) => {
      expect(wcagContrast(PALETTE[front][scheme], PALETTE[ground][scheme])).toBeGreaterThanOrEqual(4.5);
    });
    it.each(MARKS)(`of %s as a mark on %s is at least 3, ${scheme}`, (front, ground) => {
      expect(wcagContrast(PALETTE[front][scheme], PALETTE[ground][scheme])).toBeGreaterThanOrEqual(3);
    });
  }
});

const toLinear = converter('lrgb');
const toRgb = converter('rgb');
const unit = (value: number): number => Math.min(1, Math.max(0, value));

/**
 * The matrices of Machado GM et al., IEEE Trans Vis Comput Graph 2009;15:1291-1298, doi:10.1109/TVCG.2009.113, are for linear
 * light; the library would apply them to encoded values.
 */
function inLinearLight(filter: (color: Color) => Color | undefined): (color: Color) => Color {
  return (color) => {
    const { r, g, b } = toLinear(color);
    const seen = toRgb(filter({ mode: 'rgb', r, g, b }));
    if (!seen) throw new Error('no colour came of it');
    return toRgb({ mode: 'lrgb', r: unit(seen.r), g: unit(seen.g), b: unit(seen.b) });
  };
}

const SEEN: Readonly<Record<string, (color: Color) => Color>> = {
  'full colour': (color) => color,
  protanopia: inLinearLight(filterDeficiencyProt(1)),
  deuteranopia: inLinearLight(filterDeficiencyDeuter(1)),
  tritanopia: inLinearLight(filterDeficiencyTrit(1)),
  grey: inLinearLight(filterGrayscale(1)),
};

/** Fills of the four grades: an open ring, a disc, a cut disc, a square. */
const FILLS = ['paper', 'pulse', 'weak', 'gone'] as const satisfies readonly Token[];

/**
 * Least CIEDE2000 difference of any two fills, as laid down with the palette, to whole units. Shape and numeral carry the rest, as
 * in grey on dark ground.
 */
const FLOORS: Readonly<Record<string, Readonly<Record<Scheme, number>>>> = {
  'full colour': { light: 31, dark: 32 },
  protanopia: { light: 22, dark: 16 },
  deuteranopia: { light: 18, dark: 17 },
  tritanopia: { light: 20, dark: 27 },
  grey: { light: 15, dark: 6 },
};

describe('the fills of any two grades', () => {
  const difference = differenceCiede2000();
  for (const [seen, filter] of Object.entries(SEEN)) {
    for (const scheme of SCHEMES) {
      it(`stay apart in ${seen}, ${scheme}`, () => {
        const colors = FILLS.map((token) => filter(parse(PALETTE[token][scheme]) as Color));
        const apart = colors.flatMap((a, i) => colors.slice(i + 1).map((b) => difference(a, b)));
        expect(Math.round(Math.min(...apart))).toBeGreaterThanOrEqual(FLOORS[seen]?.[scheme] ?? Infinity);
      });
    }
  }
});

describe('what is drawn on a plate', () => {
  /** The colour by which each part stands out from the skin: its line, where it has one, else its fill. */
  const parts = (table: PaintTable, which: RegExp): [string, Token][] =>
    Object.entries(table)
      .filter(([selector]) => which.test(selector))
      .map(([selector, { stroke, fill }]) => [
        selector,
        (stroke && stroke !== 'none' ? stroke : fill) as Token,
      ]);
  const PARTS = [
    ...parts(PLATE_PAINT, /^\.p-(near|deep|behind|behind-hollow|thinning|hollow)$/),
    ...parts(DIGIT_PAINT, /^\.t-.*\.(line|dash|fill)$/),
  ];

  it('is every depth of artery and every state of a digit', () => {
    expect(PARTS.length).toBe(6 + DIGIT_KINDS.length);
  });

  for (const [seen, filter] of Object.entries(SEEN))
    it.each(SCHEMES)(`stands out from the skin 3 to 1 in ${seen}, %s`, (scheme) => {
      const as = (token: Token): Color => filter(parse(PALETTE[token][scheme]) as Color);
      const faint = PARTS.filter(([, token]) => wcagContrast(as(token), as('body')) < 3);
      expect(faint).toEqual([]);
    });

  it.each(Object.entries(SEEN))(
    'tells what a glyph of a digit holds by lightness, too, in %s',
    (_seen, filter) => {
      for (const scheme of SCHEMES) {
        const as = (token: Token): Color => filter(parse(PALETTE[token][scheme]) as Color);
        for (const kind of DIGIT_KINDS) {
          const paint = (part: string): Paint => (DIGIT_PAINT as PaintTable)[`.t-${kind} .${part}`] ?? {};
          const [shape, inner] = DIGIT_GLYPHS[kind];
          const ground = paint(shape.paint).fill as Token;
          if (inner) {
            const line = paint(inner.paint).stroke as Token;
            expect(wcagContrast(as(line), as(ground)), `${kind}, ${scheme}`).toBeGreaterThanOrEqual(3);
          }
        }
      }
    },
  );
});

describe('red', () => {
  it('is for danger: no other token comes near it', () => {
    const difference = differenceCiede2000();
    for (const scheme of SCHEMES) {
      for (const token of ['pulse', 'weak', 'weak-edge', 'gone', 'mute', 'focus', 'ink'] as const) {
        expect(
          difference(PALETTE.danger[scheme], PALETTE[token][scheme]),
          `${token} ${scheme}`,
        ).toBeGreaterThan(20);
      }
    }
  });
});

describe('forced colours', () => {
  it('know a system colour for every token', () => {
    expect(Object.keys(FORCED).sort()).toEqual(Object.keys(PALETTE).sort());
    for (const color of Object.values(FORCED))
      expect(color).toMatch(/^(Canvas|CanvasText|GrayText|Highlight)$/);
  });
});
