import type { Examination } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import type { Layout } from '../layout.js';
import type { Paint } from '../paint.js';
import {
  DIGIT_GLYPHS,
  DIGIT_PAINT,
  type DigitKind,
  digitsSaid,
  type DigitView,
  digitViews,
  isAnySeen,
} from '../plates/digits.js';
import { type Ink, painted } from './ink.js';
import { pathOf, tag, tenth, xmlText } from './xml.js';

const TABLE: Readonly<Record<string, Paint>> = DIGIT_PAINT;

/** The parts of the glyph of a digit in its 24-unit box. */
export function digitGlyphText(kind: DigitKind, ink: Ink, halo: boolean): string {
  const paint = (part: string): Paint[] => [DIGIT_PAINT['.tip path'], TABLE[`.t-${kind} .${part}`] ?? {}];
  const [shape, second] = DIGIT_GLYPHS[kind];
  return [
    halo ? pathOf(shape.d, painted(ink, [DIGIT_PAINT['.tip path'], DIGIT_PAINT['.tip .halo']])) : '',
    pathOf(shape.d, painted(ink, paint(shape.paint))),
    second ? pathOf(second.d, painted(ink, paint(second.paint))) : '',
  ].join('');
}

/** Fingers or toes of a picture, where any of them was looked at. */
export interface StillDigits {
  readonly views: readonly DigitView[];
  /** What is recorded of them, in words. */
  readonly said: string;
}

/** Fingers or toes that a picture shows; nothing where none was looked at, or on a view without them. */
export function stillDigits(
  { digits }: Layout,
  examination: Examination,
  words: Messages,
  earlier?: Examination,
): StillDigits | undefined {
  if (!digits) return undefined;
  const views = digitViews(examination, digits.limb, words, earlier);
  return isAnySeen(views) ? { views, said: digitsSaid(views, digits.limb, words) } : undefined;
}

/**
 * Each of them in its place, named.
 * @param all those not looked at, too
 */
export function digitsText(
  { digits }: Layout,
  { views }: Pick<StillDigits, 'views'>,
  ink: Ink,
  all: boolean,
): string {
  if (!digits) return '';
  const scale = digits.glyphScale.toFixed(3);
  return digits.spots
    .map(({ digit, x, y }) => {
      const view = views.find((one) => one.digit === digit);
      if (!view || (!all && view.kind === 'not-examined')) return '';
      const transform = `translate(${tenth(x)} ${tenth(y)}) scale(${scale}) translate(-12 -12)`;
      return tag(
        'g',
        { transform },
        `<title>${xmlText(view.name)}</title>${digitGlyphText(view.kind, ink, true)}`,
      );
    })
    .join('');
}
