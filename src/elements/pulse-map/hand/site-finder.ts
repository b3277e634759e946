import { type PlaceKey, placeKey } from '../../../anatomy/index.js';
import {
  type Affine,
  affineThrough,
  inverse,
  type Layout,
  nearestSite,
  type Point,
  TARGET_RADIUS,
  threeApart,
  type ThreePoints,
  transform,
} from '../../../drawing/index.js';

/** A point in px of the drawing, whatever the page does to its size. */
export interface DrawingPoint {
  readonly x: number;
  readonly y: number;
}

/** Up to this many px apart two positions on the screen count as one. */
const SAME_SPOT = 2;

/** Sites whose place is known both in the drawing and on the screen. */
interface Anchors {
  readonly layout: Layout;
  readonly inDrawing: ThreePoints;
  readonly elements: readonly [Element, Element, Element];
}

function middleOf(element: Element): Point {
  const { left, top, width, height } = element.getBoundingClientRect();
  return [left + width / 2, top + height / 2];
}

/** Finds the site that a point or an event means. */
export class SiteFinder {
  /** What is drawn now. */
  layout: Layout | undefined;
  #anchors: Anchors | undefined;

  constructor(private readonly host: { readonly renderRoot: ParentNode }) {}

  /** The drawing, once rendered. */
  get surface(): SVGSVGElement | null {
    return this.host.renderRoot.querySelector<SVGSVGElement>('.figure');
  }

  /** A point of the window as a point of the drawing. */
  point({ clientX, clientY }: { clientX: number; clientY: number }): DrawingPoint {
    const toScreen = this.#toScreen();
    if (!toScreen) return { x: Number.NaN, y: Number.NaN };
    const [x, y] = transform(inverse(toScreen), [clientX, clientY]);
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
      if (!(node instanceof Element)) return undefined;
      const key = node.getAttribute('data-place');
      if (key) return key as PlaceKey;
      if (node.classList.contains('figure')) return undefined;
    }
    return undefined;
  }

  /** The site that an event is about: what the browser hit comes first, and the nearest one only where it hit none. */
  under(event: MouseEvent): PlaceKey | undefined {
    return this.of(event) ?? this.at(this.point(event));
  }

  /** The site that a press anywhere in the window falls on. */
  pressed(event: MouseEvent): PlaceKey | undefined {
    const { surface } = this;
    return surface && event.composedPath().includes(surface) ? this.under(event) : undefined;
  }

  /**
   * From drawing to screen. WebKit's getScreenCTM leaves out the rotation of an ancestor, so it is checked against the position
   * of three sites on the screen; where it is wrong, the matrix is computed from these.
   */
  #toScreen(): Affine | undefined {
    const given = this.surface?.getScreenCTM() ?? undefined;
    const anchors = this.#anchorsNow();
    if (!anchors) return given;
    const onScreen = anchors.elements.map(middleOf) as unknown as ThreePoints;
    const agrees = (matrix: Affine): boolean =>
      anchors.inDrawing.every((point, i) => {
        const [x, y] = transform(matrix, point);
        const [seenX, seenY] = onScreen[i] as Point;
        return Math.hypot(x - seenX, y - seenY) < SAME_SPOT;
      });
    return given && agrees(given) ? given : (affineThrough(anchors.inDrawing, onScreen) ?? given);
  }

  #anchorsNow(): Anchors | undefined {
    const { layout } = this;
    if (!layout) return undefined;
    const known = this.#anchors;
    if (known?.layout === layout && known.elements.every((element) => element.isConnected)) return known;
    const sites = threeApart(layout.sites, ({ x, y }) => [x, y]);
    const elements = sites?.flatMap(
      ({ place }) => this.surface?.querySelector(`[data-anchor="${placeKey(place)}"]`) ?? [],
    );
    if (elements?.length !== 3) return undefined;
    const inDrawing = sites?.map(({ x, y }): Point => [x, y]) as unknown as ThreePoints;
    this.#anchors = { layout, inDrawing, elements: elements as unknown as Anchors['elements'] };
    return this.#anchors;
  }
}
