import type { Paint } from '../paint.js';
import { PALETTE, type Token } from '../palette.js';

/** With what a picture is painted. */
export interface Ink {
  /** Colour of a token. */
  readonly colour: (token: Token) => string;
  /** Factor of the lines. */
  readonly lines: number;
}

/** Surroundings that a picture is painted for: light, dark, or whatever the page has that it is placed into. */
export type Scheme = 'light' | 'dark' | 'page';

const USUAL = new Map<Scheme, Ink>();

/** The ink of a look; one and the same for the usual colours and lines, so that what is painted with it can be kept. */
export function inkOf(scheme: Scheme, colours?: Partial<Readonly<Record<Token, string>>>, lines = 1): Ink {
  if (colours || lines !== 1) return mixed(scheme, colours, lines);
  let ink = USUAL.get(scheme);
  if (!ink) USUAL.set(scheme, (ink = mixed(scheme)));
  return ink;
}

function mixed(scheme: Scheme, colours: Partial<Readonly<Record<Token, string>>> = {}, lines = 1): Ink {
  const usual = (token: Token): string => {
    const { light, dark } = PALETTE[token];
    return scheme === 'page' ? `light-dark(${light},${dark})` : PALETTE[token][scheme];
  };
  return { colour: (token) => colours[token] ?? usual(token), lines };
}

/** Presentation attributes of paints, the later before the earlier; what SVG takes for granted is left out. */
export type Painted = Readonly<Record<string, string | number | undefined>>;

/**
 * Paints as presentation attributes, which every program understands.
 * @param unit px in the units of the shape
 * @param lines factor of the lines; that of the ink unless told otherwise
 */
export function painted(ink: Ink, paints: readonly Paint[], unit = 1, lines = ink.lines): Painted {
  const paint: Paint = Object.assign({}, ...paints) as Paint;
  const { fill, stroke } = paint;
  const colour = (token: Token | 'none'): string => (token === 'none' ? token : ink.colour(token));
  const rim = stroke && stroke !== 'none';
  return {
    fill: fill && colour(fill),
    'fill-opacity': paint.fillOpacity,
    ...(rim && {
      stroke: colour(stroke),
      'stroke-width': Number(((paint.width ?? 1) * lines * unit).toFixed(2)),
      'stroke-opacity': paint.strokeOpacity,
      'stroke-dasharray': paint.dash,
      'stroke-dashoffset': paint.dashOffset,
      'stroke-linecap': paint.cap === 'butt' ? undefined : paint.cap,
      'stroke-linejoin': paint.join,
      'paint-order': paint.rimFirst && 'stroke',
    }),
    ...(paint.type && { 'font-weight': paint.type[0], 'font-size': paint.type[1] }),
  };
}

const KEPT = new WeakMap<Ink, Map<string, Painted>>();
/** Units of a shape are as many as there are widths of pictures. */
const MOST_KEPT = 500;

/** The same of one ink, worked out once. A name stands for one paint in one unit. */
export function keptPaint(ink: Ink, name: string, make: () => Painted): Painted {
  let known = KEPT.get(ink);
  if (!known) KEPT.set(ink, (known = new Map()));
  let found = known.get(name);
  if (!found) {
    if (known.size >= MOST_KEPT) known.clear();
    known.set(name, (found = make()));
  }
  return found;
}
