// Writes path data as the texts that `src/drawing/healthy.ts` reads.
import { DIGITS, type Segment, SEGMENTS } from '../../src/drawing/healthy.js';

/** One segment of a contour. */
export interface Cut {
  readonly kind: Segment;
  /** Steps from where it begins: controls and end of a curve, else the end. */
  readonly steps: readonly number[];
}

/** A closed line of whole steps. */
export interface Contour {
  readonly x: number;
  readonly y: number;
  readonly cuts: readonly Cut[];
}

/** A whole number: sign in its lowest bit, then one digit of the first kind after as many of the other as it takes. */
function digits(number: number): string {
  const value = number < 0 ? -2 * number - 1 : 2 * number;
  let text = String.fromCharCode(DIGITS.last + (value % DIGITS.lasts));
  for (let left = Math.floor(value / DIGITS.lasts); left > 0; left = Math.floor(left / DIGITS.befores))
    text = String.fromCharCode(DIGITS.before + (left % DIGITS.befores)) + text;
  return text;
}

/** The text of contours. */
export function written(contours: readonly Contour[]): string {
  const numbers: number[] = [];
  let before = { x: 0, y: 0 };
  for (const contour of contours) {
    numbers.push(contour.x - before.x, contour.y - before.y, contour.cuts.length);
    before = contour;
    let [onX, onY] = [0, 0];
    for (const { kind, steps } of contour.cuts) {
      numbers.push(SEGMENTS.indexOf(kind));
      if (kind === 'c') {
        const [x1, y1, x2, y2, dx, dy] = steps as [number, number, number, number, number, number];
        numbers.push(x1 - onX, y1 - onY, x2 - 2 * x1, y2 - 2 * y1, dx - x1 - x2, dy - y1 - y2);
        [onX, onY] = [dx - x2, dy - y2];
      } else {
        numbers.push(...steps);
        [onX, onY] = [-onX, -onY];
      }
    }
  }
  return numbers.map(digits).join('');
}
