import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { erases, PenWatch, samplesOf } from './pen.js';
import type { DrawingPoint, SiteFinder } from './site-finder.js';

/** A pointer that is down on the figure. */
export interface Press {
  readonly id: number;
  /** `mouse`, `pen` or `touch`. */
  readonly type: string;
  /** Pressed with the eraser end or the barrel button of a pen, or with a tool that erases. */
  readonly erase: boolean;
  /** Its path in px of the drawing, without repeated points. */
  readonly points: readonly DrawingPoint[];
  /** Whether it moved further than a tap may. */
  readonly moved: boolean;
}

/** Decides what a press does. The hand holds one tool at a time. */
export interface Tool {
  /** Whether a moving touch draws, so that it must not scroll the page. */
  readonly draws: boolean;
  /** Whether every press erases, as the turned pen does. */
  readonly erases: boolean;
  /** How far a press of a pointer type may move and still be a tap, in px. */
  slop(type: string): number;
  /** The pointer moves over the figure while nothing is pressed; `undefined` when it leaves. */
  hover(event: PointerEvent | undefined): void;
  begin(press: Press, event: PointerEvent): void;
  /** Whether a stroke captures its pointer. */
  captures(): boolean;
  /** The press moved from one point to the next. */
  reach(point: DrawingPoint, from: DrawingPoint): void;
  /** All points of a move event have been reached: time to show the stroke. */
  show(press: Press): void;
  tap(press: Press): void;
  stroke(press: Press): void;
  erase(press: Press): void;
  /** The press is over; removes what was shown only while it lasted. */
  end(): void;
  /** A click without a pointer, as from assistive technology. */
  activate(event: MouseEvent): void;
}

interface OpenPress extends Press {
  readonly points: DrawingPoint[];
  moved: boolean;
  /** A second finger is down, so the page may be scrolled or zoomed: the press can still be a tap, but not a stroke. */
  joined: boolean;
}

/** A click this soon after a press belongs to it, whatever its `detail`, in ms. */
const SAME_PRESS_MS = 500;

/**
 * Turns pointer events on the figure into presses of a tool. The target is where the press began, never the click's target,
 * because engines disagree on that after capture; a cancelled press does nothing.
 */
export class Hand implements ReactiveController {
  #press: OpenPress | undefined;
  #held: Tool | undefined;
  #handled = -Infinity;
  readonly #pen = new PenWatch();

  /**
   * @param bare the tool while no other is held
   */
  constructor(
    host: ReactiveControllerHost,
    private readonly finder: SiteFinder,
    private readonly bare: Tool,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  get #tool(): Tool {
    return this.#held ?? this.bare;
  }

  /** Takes up a tool, or puts it down. Cancels the press in progress. */
  hold(tool: Tool | undefined): void {
    this.stop();
    this.#held = tool;
  }

  /**
   * Cancels the press in progress.
   * @returns whether there was one
   */
  stop(): boolean {
    const press = this.#press;
    if (!press) return false;
    this.#release(press);
    this.#tool.end();
    return true;
  }

  readonly down = (event: PointerEvent): void => {
    this.#pen.note(event);
    if (this.#press && !this.#yields(this.#press, event)) return;
    const byPen = erases(event);
    if (this.#pen.isPalm(event) || (event.button !== 0 && !byPen)) return;
    const { pointerId: id, pointerType: type } = event;
    const start = this.finder.point(event);
    this.#press = {
      id,
      type,
      erase: byPen || this.#tool.erases,
      points: [start],
      moved: false,
      joined: false,
    };
    this.#tool.begin(this.#press, event);
  };

  readonly move = (event: PointerEvent): void => {
    this.#pen.note(event);
    const press = this.#press;
    if (!press) {
      if (event.pointerType !== 'touch') this.#tool.hover(event);
    } else if (event.pointerId === press.id) {
      for (const sample of samplesOf(event)) this.#extend(press, sample, event);
      if (press.moved && press === this.#press) this.#tool.show(press);
    }
  };

  readonly up = (event: PointerEvent): void => {
    const press = this.#press;
    if (press?.id !== event.pointerId) return;
    this.#extend(press, event, event);
    if (press !== this.#press) return;
    this.#release(press);
    this.#handled = event.timeStamp;
    if (press.erase) this.#tool.erase(press);
    else if (press.moved) this.#tool.stroke(press);
    else this.#tool.tap(press);
    this.#tool.end();
  };

  readonly cancel = (event: PointerEvent): void => {
    if (this.#press?.id !== event.pointerId) return;
    // A touch is implicitly captured by its target, and loses that capture when the figure captures it.
    if (event.type === 'lostpointercapture' && this.#captures(this.#press)) return;
    this.stop();
  };

  readonly leave = (event: PointerEvent): void => {
    if (!this.#press) this.#tool.hover(undefined);
    // Its end would not be seen, and a press that never ends would block the next one.
    else if (this.#press.id === event.pointerId && !this.#captures(this.#press)) this.stop();
  };

  /** Clicks that no pointer made come from assistive technology. */
  readonly click = (event: MouseEvent): void => {
    if (event.detail === 0 && event.timeStamp - this.#handled >= SAME_PRESS_MS) this.#tool.activate(event);
  };

  /** Suppresses the context menu of a pen's barrel button, which erases, and of a long touch. */
  readonly menu = (event: MouseEvent): void => {
    if ((event as PointerEvent).pointerType === 'pen' || this.#press || this.#held) event.preventDefault();
  };

  /** Keeps quick pencil contacts from starting handwriting input or scrolling, only during a stroke or near a pen. */
  readonly touchMove = (event: Event): void => {
    const press = this.#press;
    if (press && !press.joined && event.cancelable && (this.#tool.draws || this.#pen.near(event)))
      event.preventDefault();
  };

  /** Whether a press gives way to a second contact: two fingers scroll or zoom, and a palm may touch before its pen. */
  #yields(press: OpenPress, { pointerType }: PointerEvent): boolean {
    if (press.type !== 'touch' || pointerType === 'mouse') return false;
    if (pointerType === 'pen' || press.moved) this.stop();
    else press.joined = true;
    return pointerType === 'pen';
  }

  #captures({ id }: Press): boolean {
    return this.finder.surface?.hasPointerCapture(id) ?? false;
  }

  #release(press: Press): void {
    this.#press = undefined;
    if (this.#captures(press)) this.finder.surface?.releasePointerCapture(press.id);
  }

  #extend(press: OpenPress, sample: PointerEvent, { isTrusted }: Event): void {
    if (press !== this.#press) return;
    const point = this.finder.point(sample);
    const { points } = press;
    const [start, last] = [points[0], points.at(-1)] as [DrawingPoint, DrawingPoint];
    if (point.x === last.x && point.y === last.y) return;
    if (!press.moved) {
      if (Math.hypot(point.x - start.x, point.y - start.y) < this.#tool.slop(press.type)) return;
      if (press.joined) {
        this.stop();
        return;
      }
      press.moved = true;
      // Only a stroke captures, so that taps stay what the page around expects.
      if (isTrusted && this.#tool.captures()) this.finder.surface?.setPointerCapture(press.id);
    }
    points.push(point);
    this.#tool.reach(point, last);
  }
}
