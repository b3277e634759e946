import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { erases, PenWatch, samplesOf } from '../hand/pen.js';
import type { Hand } from '../hand/site-pointer.js';
import type { DrawingPoint } from '../hand/site-finder.js';

/** What the skin offers to the hand that draws on it. */
export interface SkinTarget {
  /** The surface that listens, once rendered. */
  surface(): SVGSVGElement | null;
  point(event: MouseEvent): DrawingPoint;
  /** Whether every stroke erases, as the turned pen does. */
  erasing(): boolean;
  /** A stroke goes on; its points so far. */
  draw(points: readonly DrawingPoint[]): void;
  /** A stroke is complete. */
  stroke(points: readonly DrawingPoint[]): void;
  tap(point: DrawingPoint, reach: number): void;
  /** The eraser goes from one point to the next. */
  erase(from: DrawingPoint, to: DrawingPoint): void;
  /** The eraser was lifted. */
  erased(): void;
  /** Nothing is under way any more; what was not recorded is to vanish. */
  ended(): void;
  /** Assistive technology pressed something on the drawing. */
  press(event: Event): void;
}

interface Press {
  readonly id: number;
  readonly type: string;
  readonly erase: boolean;
  readonly points: DrawingPoint[];
  moved: boolean;
}

/** A finger trembles more than a pen: up to here a press is a tap, in px. */
const SLOP: Record<string, number> = { touch: 8 };
const FINE_SLOP = 3;
/** How far from a mark a tap may be, in px. */
const REACH: Record<string, number> = { touch: 22 };
const FINE_REACH = 12;

/** The hand that draws marks: every stroke is recorded when it is lifted, and a cancelled one leaves nothing. */
export class SkinPointer implements ReactiveController, Hand {
  #press: Press | undefined;
  readonly #pen = new PenWatch();

  constructor(
    host: ReactiveControllerHost,
    private readonly target: SkinTarget,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  /** Gives up what is under way. */
  stop(): boolean {
    const press = this.#press;
    if (!press) return false;
    this.#press = undefined;
    const surface = this.target.surface();
    if (surface?.hasPointerCapture(press.id)) surface.releasePointerCapture(press.id);
    this.target.ended();
    return true;
  }

  readonly down = (event: PointerEvent): void => {
    this.#pen.note(event);
    if (this.#press) {
      // Two fingers are for the page, and the palm may have touched before the pen.
      const { type } = this.#press;
      if (type === 'touch' && event.pointerType !== 'mouse') this.stop();
      if (type !== 'touch' || event.pointerType !== 'pen') return;
    }
    const erase = erases(event);
    if (this.#pen.isPalm(event) || (event.button !== 0 && !erase)) return;
    const start = this.target.point(event);
    const { pointerId: id, pointerType: type } = event;
    this.#press = { id, type, erase: erase || this.target.erasing(), points: [start], moved: false };
    // So that keys are heard here while the hand draws; a press of a finger would not move the focus by itself.
    this.target.surface()?.parentElement?.focus({ preventScroll: true });
    if (this.#press.erase) this.target.erase(start, start);
  };

  readonly move = (event: PointerEvent): void => {
    this.#pen.note(event);
    const press = this.#press;
    if (press?.id !== event.pointerId) return;
    for (const sample of samplesOf(event)) this.#extend(press, sample, event);
    if (press.moved && !press.erase) this.target.draw(press.points);
  };

  readonly up = (event: PointerEvent): void => {
    const press = this.#press;
    if (press?.id !== event.pointerId) return;
    this.#extend(press, event, event);
    const { points, type, moved, erase } = press;
    if (erase) this.target.erased();
    else if (moved) this.target.stroke(points);
    else this.target.tap(points[0] as DrawingPoint, REACH[type] ?? FINE_REACH);
    this.stop();
  };

  readonly cancel = (event: PointerEvent): void => {
    // A touch is captured by what it began on; that capture is lost when the drawing takes it over.
    if (this.#press?.id !== event.pointerId || (event.type === 'lostpointercapture' && this.#captured()))
      return;
    this.stop();
  };

  readonly leave = (event: PointerEvent): void => {
    // Where it ends is not heard any more, and a press that never ends would swallow the next.
    if (this.#press?.id === event.pointerId && !this.#captured()) this.stop();
  };

  readonly click = (event: MouseEvent): void => {
    if (event.detail === 0) this.target.press(event);
  };

  readonly menu = (event: Event): void => {
    event.preventDefault();
  };

  readonly touchMove = (event: Event): void => {
    if (this.#press && event.cancelable) event.preventDefault();
  };

  #captured(): boolean {
    return this.#press !== undefined && (this.target.surface()?.hasPointerCapture(this.#press.id) ?? false);
  }

  #extend(press: Press, sample: PointerEvent, { isTrusted }: Event): void {
    const { points, type, erase } = press;
    const point = this.target.point(sample);
    const [start, last] = [points[0], points.at(-1)] as [DrawingPoint, DrawingPoint];
    if (point.x === last.x && point.y === last.y) return;
    if (!press.moved) {
      if (Math.hypot(point.x - start.x, point.y - start.y) < (SLOP[type] ?? FINE_SLOP)) return;
      press.moved = true;
      if (isTrusted) this.target.surface()?.setPointerCapture(press.id);
    }
    points.push(point);
    if (erase) this.target.erase(last, point);
  }
}
