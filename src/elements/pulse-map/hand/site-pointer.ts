import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { oppositeSide, placeFromKey, type PlaceKey, placeKey } from '../../../anatomy/index.js';
import { erases, PenWatch, samplesOf } from './pen.js';
import type { DrawingPoint, SiteFinder } from './site-finder.js';

/** What the drawing offers to the hand. */
export interface PointerTarget {
  /** The surface that listens, once rendered. */
  surface(): SVGSVGElement | null;
  readonly sites: SiteFinder;
  /** Whether strokes across sites record at once. */
  carrying(): boolean;
  tap(place: PlaceKey, pointerType: string): void;
  /** The eraser went over these sites; it is one act. */
  erase(places: readonly PlaceKey[]): void;
  /** A stroke went over these sites; it is one act. */
  stroke(places: readonly PlaceKey[]): void;
  /** A press went from a site over to the same site of the other side. */
  mirror(to: PlaceKey): void;
  /** A drag that could mirror: the site it would record at, and the line from where it began. */
  drag(to: PlaceKey | undefined, line: readonly DrawingPoint[]): void;
  preview(place: PlaceKey | undefined): void;
  strokePreview(places: readonly PlaceKey[], points: readonly DrawingPoint[]): void;
}

/** What listens to the pointer on the drawing. */
export interface Hand {
  down(event: PointerEvent): void;
  move(event: PointerEvent): void;
  up(event: PointerEvent): void;
  cancel(event: PointerEvent): void;
  leave(event: PointerEvent): void;
  click(event: MouseEvent): void;
  menu(event: MouseEvent): void;
  touchMove(event: Event): void;
}

/** A press that moved less than this many px is a tap. */
const TAP_SLOP = 10;

interface Press {
  readonly id: number;
  readonly start: DrawingPoint;
  readonly place: PlaceKey | undefined;
  readonly erase: boolean;
  moved: boolean;
  /** The site under the pointer now. */
  over: PlaceKey | undefined;
  readonly sites: PlaceKey[];
  readonly points: DrawingPoint[];
}

/** The site that a drag which began on its twin of the other side is over. */
function mirrorOf({ place, over }: Press): PlaceKey | undefined {
  const from = place && placeFromKey(place);
  if (!from || from.side === 'midline') return undefined;
  const key = placeKey({ ...from, side: oppositeSide(from.side) });
  return over === key ? key : undefined;
}

/**
 * Turns pointer events on the drawing into acts. What is meant is decided from where the press began, never from the click's
 * target, since engines disagree on that after capture; a cancelled press does nothing.
 */
export class DrawingPointer implements ReactiveController, Hand {
  #press: Press | undefined;
  readonly #pen = new PenWatch();
  #handled = -Infinity;

  constructor(
    host: ReactiveControllerHost,
    private readonly target: PointerTarget,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#press = undefined;
  }

  readonly down = (event: PointerEvent): void => {
    this.#pen.note(event);
    if (this.#pen.isPalm(event) || this.#press) return;
    const erase = erases(event);
    if (event.button !== 0 && !erase) return;
    const start = this.target.sites.point(event);
    const place = this.target.sites.at(start) ?? this.target.sites.of(event);
    this.#press = {
      id: event.pointerId,
      start,
      place,
      erase,
      moved: false,
      over: place,
      sites: place ? [place] : [],
      points: [start],
    };
  };

  readonly move = (event: PointerEvent): void => {
    this.#pen.note(event);
    const press = this.#press;
    if (!press) {
      if (event.pointerType !== 'touch')
        this.target.preview(
          this.target.sites.at(this.target.sites.point(event)) ?? this.target.sites.of(event),
        );
      return;
    }
    if (event.pointerId !== press.id) return;
    for (const sample of samplesOf(event)) this.#extend(press, this.target.sites.point(sample), event);
    if (!press.moved) return;
    if (this.target.carrying()) this.target.strokePreview(press.sites, press.points);
    else if (press.place && !press.erase)
      this.target.drag(mirrorOf(press), [press.start, press.points.at(-1) ?? press.start]);
  };

  readonly up = (event: PointerEvent): void => {
    const press = this.#press;
    if (!press || event.pointerId !== press.id) return;
    this.#extend(press, this.target.sites.point(event), event);
    this.#end(event);
    this.#handled = event.timeStamp;
    if (press.erase) {
      this.target.erase(press.sites);
    } else if (press.moved) {
      const other = mirrorOf(press);
      if (this.target.carrying()) this.target.stroke(press.sites);
      else if (other) this.target.mirror(other);
    } else if (press.place) {
      this.target.tap(press.place, event.pointerType);
    }
  };

  readonly cancel = (event: PointerEvent): void => {
    if (this.#press?.id !== event.pointerId) return;
    // A touch is captured by what it began on; that capture is lost when the drawing takes it over.
    if (event.type === 'lostpointercapture' && this.#captured(event)) return;
    this.#end(event);
  };

  readonly leave = (event: PointerEvent): void => {
    if (!this.#press) this.target.preview(undefined);
    // Where it ends is not heard any more, and a press that never ends would swallow the next.
    else if (this.#press.id === event.pointerId && !this.#captured(event)) this.#end(event);
  };

  /** Clicks that no pointer made come from assistive technology: they act like a tap. */
  readonly click = (event: MouseEvent): void => {
    if (event.timeStamp - this.#handled < 500 || event.detail > 0) return;
    const place = this.target.sites.of(event);
    if (place) this.target.tap(place, '');
  };

  /** The barrel button of a pen clears; the menu it would open is in the way. */
  readonly menu = (event: MouseEvent): void => {
    if ((event as PointerEvent).pointerType === 'pen' || this.#press) event.preventDefault();
  };

  /** Keeps quick pencil contacts from being taken for handwriting or scrolling, only while a stroke or a pen is on. */
  readonly touchMove = (event: Event): void => {
    if (this.#press && (this.target.carrying() || this.#pen.near(event)) && event.cancelable) {
      event.preventDefault();
    }
  };

  #captured({ pointerId }: PointerEvent): boolean {
    return this.target.surface()?.hasPointerCapture(pointerId) ?? false;
  }

  #end(event: PointerEvent): void {
    this.#press = undefined;
    if (this.#captured(event)) this.target.surface()?.releasePointerCapture(event.pointerId);
    this.target.strokePreview([], []);
    this.target.drag(undefined, []);
  }

  #extend(press: Press, point: DrawingPoint, event: PointerEvent): void {
    if (!press.moved) {
      if (Math.hypot(point.x - press.start.x, point.y - press.start.y) < TAP_SLOP) return;
      press.moved = true;
      // Only a drag captures, so that taps stay what the page around expects.
      if ((this.target.carrying() || press.place) && event.isTrusted)
        this.target.surface()?.setPointerCapture(event.pointerId);
    }
    press.points.push(point);
    const site = this.target.sites.at(point);
    press.over = site;
    if (site && !press.sites.includes(site)) press.sites.push(site);
  }
}
