// Boxes of what is drawn, in px of the window, and whether they touch.
import { seenBox } from '../../tools/real-input.js';

export interface NamedBox {
  readonly name: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where an element stands. Of words of SVG their letters, without the halo, which Firefox counts as part of them. */
function placeOf(element: Element): DOMRect {
  const onScreen = element instanceof SVGTextElement ? element.getScreenCTM() : null;
  if (!onScreen) return seenBox(element);
  const { x, y, width, height } = (element as SVGTextElement).getBBox();
  const corner = (right: number, below: number) =>
    new DOMPoint(x + right, y + below).matrixTransform(onScreen);
  return new DOMQuad(corner(0, 0), corner(width, 0), corner(width, height), corner(0, height)).getBounds();
}

export function boxOf(element: Element, name: string, inset = 0): NamedBox {
  const { left, top, right, bottom } = placeOf(element);
  return { name, left: left + inset, top: top + inset, right: right - inset, bottom: bottom - inset };
}

export function overlap(a: NamedBox, b: NamedBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function within(inner: NamedBox, outer: NamedBox): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.top >= outer.top &&
    inner.bottom <= outer.bottom
  );
}

/** Every pair of boxes that lie over each other, in words. */
export function overlaps(boxes: readonly NamedBox[], others: readonly NamedBox[] = []): string[] {
  const found: string[] = [];
  boxes.forEach((box, i) => {
    for (const other of [...boxes.slice(i + 1), ...others]) {
      if (overlap(box, other)) found.push(`${box.name} over ${other.name}`);
    }
  });
  return found;
}

/** Least distance between the middles of any two boxes. */
export function leastDistance(boxes: readonly NamedBox[]): { distance: number; between: string } {
  let least = { distance: Infinity, between: '' };
  boxes.forEach((a, i) => {
    for (const b of boxes.slice(i + 1)) {
      const distance = Math.hypot(
        (a.left + a.right - b.left - b.right) / 2,
        (a.top + a.bottom - b.top - b.bottom) / 2,
      );
      if (distance < least.distance) least = { distance, between: `${a.name} and ${b.name}` };
    }
  });
  return least;
}
