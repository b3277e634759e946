import { type PlaceKey, placeKey } from '../../../anatomy/index.js';
import { type Layout, nearestSite, TARGET_RADIUS } from '../../../drawing/index.js';

/** A point in px of the drawing, whatever the page does to its size. */
export interface DrawingPoint {
  readonly x: number;
  readonly y: number;
}

/** Finds the site that a point or an event means. */
export class SiteFinder {
  /** What is drawn now. */
  layout: Layout | undefined;

  constructor(private readonly figure: () => SVGSVGElement | null) {}

  /** A point of the window as a point of the drawing. */
  point({ clientX, clientY }: { clientX: number; clientY: number }): DrawingPoint {
    const matrix = this.figure()?.getScreenCTM();
    if (!matrix) return { x: Number.NaN, y: Number.NaN };
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
    return { x, y };
  }

  /** The nearest site within reach of a finger. */
  at({ x, y }: DrawingPoint): PlaceKey | undefined {
    const near = this.layout && nearestSite(this.layout, x, y, TARGET_RADIUS * this.layout.glyphScale);
    return near && placeKey(near.place);
  }

  /** The site whose label or button an event's target is part of. */
  of(event: Event): PlaceKey | undefined {
    for (const node of event.composedPath()) {
      if (node === this.figure()) return undefined;
      const key = node instanceof Element ? node.getAttribute('data-place') : null;
      if (key) return key as PlaceKey;
    }
    return undefined;
  }

  /** The site that a press anywhere in the window falls on. */
  under(event: PointerEvent): PlaceKey | undefined {
    const figure = this.figure();
    if (!figure || !event.composedPath().includes(figure)) return undefined;
    return this.at(this.point(event)) ?? this.of(event);
  }
}
