import { FIGURE_WIDTH, type Place, placeKey } from '../anatomy/index.js';
import type { ArteryPaths } from './arteries.js';
import type { DrawnFlow } from './flow.js';
import { ARTERIES, BODY, type Sides, SPOTS } from './healthy-data.js';
import type { Silhouette } from './silhouette.js';

/*
 * Body and healthy arteries, drawn beforehand: an empty map shows nothing else, and to draw them from courses and widths took a sixth of
 * the work of its first paint.
 *
 * A text is contours one after another, in tenths of a figure unit: where each begins, counted from the beginning of the one before it,
 * how many segments it has, and these. What lies on both sides is there once. Of every point is told how far it lies from where a smooth
 * line would lead, so that most numbers are small.
 */

/** Kinds of segment: a cubic, a line, a half circle. */
export const SEGMENTS = ['c', 'l', 'a'] as const;
export type Segment = (typeof SEGMENTS)[number];

/** The characters of a number's last digit and of those before it: the first of each, and how many there are. */
export const DIGITS = { last: 40, lasts: 52, before: 93, befores: 34 } as const;

/** Width of the figure in tenths: what a place and its mirror image come to. */
const ACROSS = 10 * FIGURE_WIDTH;
/** What stands before the end of a half circle; its radius is left to the renderer. */
const HALF_CIRCLE = '1 1 0 0 0';

/** A number behind another; a minus sign is separator enough. */
function then(number: number): string {
  return number < 0 ? `${number}` : ` ${number}`;
}

/** A cubic by its points, counted from where it begins. */
function cubic(x1: number, y1: number, x2: number, y2: number, x: number, y: number): string {
  return `c${x1}${then(y1)}${then(x2)}${then(y2)}${then(x)}${then(y)}`;
}

/** Path data of a text. */
export function pathOf(text: string, sides: Sides): string {
  let at = 0;
  const next = (): number => {
    let value = 0;
    let digit = text.charCodeAt(at++);
    for (; digit >= DIGITS.before; digit = text.charCodeAt(at++))
      value = value * DIGITS.befores + digit - DIGITS.before;
    value = value * DIGITS.lasts + digit - DIGITS.last;
    return value % 2 ? -(value + 1) / 2 : value / 2;
  };
  let path = '';
  let startX = 0;
  let startY = 0;
  while (at < text.length) {
    startX += next();
    startY += next();
    let x = startX;
    let y = startY;
    let ahead = '';
    let back = '';
    let onX = 0;
    let onY = 0;
    for (let left = next(); left > 0; left--) {
      const kind = SEGMENTS[next()] as Segment;
      let dx = next();
      let dy = next();
      if (kind === 'c') {
        const x1 = dx + onX;
        const y1 = dy + onY;
        const x2 = next() + 2 * x1;
        const y2 = next() + 2 * y1;
        dx = next() + x1 + x2;
        dy = next() + y1 + y2;
        onX = dx - x2;
        onY = dy - y2;
        ahead += cubic(x1, y1, x2, y2, dx, dy);
        back = cubic(onX, -onY, dx - x1, y1 - dy, dx, -dy) + back;
      } else {
        // Beyond a half circle an edge comes back the way it went.
        onX = -onX;
        onY = -onY;
        const end = kind === 'a' ? `${HALF_CIRCLE}${then(dx)}` : `${dx}`;
        ahead += kind + end + then(dy);
        back = kind + end + then(-dy) + back;
      }
      x += dx;
      y += dy;
    }
    path += `M${startX}${then(startY)}${ahead}`;
    if (sides === 'half') path += back;
    if (sides !== 'open') path += 'z';
    if (sides === 'both') path += `M${ACROSS - x}${then(y)}${back}z`;
  }
  return path;
}

/** What `read` makes with and without the arms, each read once. */
function once<T>(read: (arms: boolean) => T): (arms: boolean) => T {
  const known = new Map<boolean, T>();
  return (arms) => {
    const made = known.get(arms) ?? read(arms);
    known.set(arms, made);
    return made;
  };
}

/**
 * The arteries where flow is full in all of them.
 * @param arms whether the arteries of the arms are drawn
 */
export const healthyArteries = /* @__PURE__ */ once((arms): ArteryPaths => {
  const paths = { behind: '', deep: '', trunk: '', near: '', hollow: '', thinning: '' };
  for (const [tone, arm, sides, text] of ARTERIES) if (arms || !arm) paths[tone] += pathOf(text, sides);
  return paths;
});

/** Whether the healthy arteries are what a flow looks like. */
export function isHealthy(flow: readonly DrawnFlow[]): boolean {
  return flow.every((stretch) => stretch.flow === 'full' && !stretch.width);
}

/** The body with or without arms. */
export const silhouetteOf = /* @__PURE__ */ once((arms): Silhouette => ({
  body: pathOf(arms ? BODY.body : BODY.armless, 'half'),
  heart: pathOf(BODY.heart, 'alone'),
  kidneys: pathOf(BODY.kidney, 'both'),
  grooves: pathOf(BODY.grooves, 'open'),
}));

/** Where a place lies on the figure. */
export function positionOf(place: Place): { x: number; y: number } {
  const own = SPOTS[placeKey(place)];
  const [x, y] = own ?? (SPOTS[place.site] as readonly [number, number]);
  return { x: own || place.side !== 'right' ? x : FIGURE_WIDTH - x, y };
}
