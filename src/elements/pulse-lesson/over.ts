import { html, nothing, type ReactiveControllerHost, svg, type TemplateResult } from 'lit';
import {
  BARE,
  type OverAct,
  overAfter,
  type OverState,
  type Point,
  readOver,
  readOverAct,
} from './over-state.js';

/** Radius of the spotlight, as a share of the slide's width. */
const LIGHT = 0.11;
/** The slide as the overlay measures it. */
const BOX = { width: 1920, height: 1080 } as const;
/** Least distance between two points of a stroke, in slide units. */
const FINE = 3;
/** How far the shape of a slide may be from 16 to 9 and still show the same at the same place. */
const NEAR = 0.02;

/** Tells the strokes of this window from those of another. */
const OURS = Math.random().toString(36).slice(2);
let drawn = 0;

const share = (n: number, from: number, size: number): number => Math.min(1, Math.max(0, (n - from) / size));
const inBox = ([x, y]: Point): Point => [x * BOX.width, y * BOX.height];
const apart = (a: Point, b: Point): number => {
  const [[ax, ay], [bx, by]] = [inBox(a), inBox(b)];
  return Math.hypot(ax - bx, ay - by);
};

/** What lies over a slide: a spotlight under the pointer, and ink that is wiped. The other windows show the same. */
export class Over {
  /** Whether a press draws; each window has a pen of its own. */
  ink = false;
  #state: OverState = BARE;
  /** The line that the hand of this window draws, and whether the other windows see it. */
  #drawing: { readonly id: string; readonly told: boolean } | undefined;

  /** @param tell what a hand of this window did, for the others */
  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly tell: (act: OverAct) => void,
  ) {}

  get light(): boolean {
    return this.#state.light;
  }

  get state(): OverState {
    return this.#state;
  }

  toggle(what: 'light' | 'ink'): void {
    if (what === 'light') return this.#do({ kind: 'light', on: !this.light });
    this.ink = !this.ink;
    this.host.requestUpdate();
  }

  wipe(): void {
    this.#do({ kind: 'wipe' });
  }

  /** Another picture stands below: ink of the one before would mean nothing. Each window sees that for itself. */
  leave(): void {
    this.#take(overAfter(this.#state, { kind: 'wipe' }));
  }

  /** Puts everything away. @returns whether there was anything */
  clear(): boolean {
    const any = this.light || this.ink || this.#state.strokes.length > 0;
    this.ink = false;
    this.#do({ kind: 'light', on: false });
    this.wipe();
    this.host.requestUpdate();
    return any;
  }

  /** What the hand of another window did. */
  hear(heard: unknown): void {
    const act = readOverAct(heard);
    if (act) this.#take(overAfter(this.#state, act));
  }

  /** What lies over the slide of another window, for one that came later and has nothing there. */
  catchUp(heard: unknown): void {
    const state = this.light || this.#state.strokes.length ? undefined : readOver(heard);
    if (state) this.#take(state);
  }

  #do(act: OverAct, told = true): void {
    const before = this.#state;
    this.#take(overAfter(before, act));
    if (told && before !== this.#state) this.tell(act);
  }

  #take(state: OverState): void {
    if (state === this.#state) return;
    this.#state = state;
    this.host.requestUpdate();
  }

  /** A pen writes whenever it touches; a mouse or finger where ink was chosen. @returns whether the press draws */
  readonly down = (event: PointerEvent): boolean => {
    if (!this.ink && event.pointerType !== 'pen') return false;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    const { to, shaped } = pointOf(event);
    this.#drawing = { id: `${OURS} ${drawn++}`, told: shaped };
    this.#do({ kind: 'begin', id: this.#drawing.id, to }, shaped);
    return true;
  };

  readonly move = (event: PointerEvent): void => {
    if (!this.light && !this.#drawing) return;
    const { to, shaped } = pointOf(event);
    if (this.light) this.#do({ kind: 'at', to }, shaped);
    if (!this.#drawing) return;
    const { id, told } = this.#drawing;
    const last = this.#state.strokes.find((stroke) => stroke.id === id)?.points.at(-1);
    if (last && apart(last, to) >= FINE) this.#do({ kind: 'draw', id, to }, told);
  };

  readonly up = (): void => {
    this.#drawing = undefined;
  };

  render(): TemplateResult | typeof nothing {
    const { light, at = [0.5, 0.5], strokes } = this.#state;
    if (!light && !strokes.length) return nothing;
    const [x, y] = inBox(at);
    const r = LIGHT * BOX.width;
    const hole = `M0 0H${BOX.width}V${BOX.height}H0ZM${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
    return html`<svg class="over" viewBox="0 0 1920 1080" preserveAspectRatio="none" aria-hidden="true">
      ${light ? svg`<path class="dark" d=${hole}></path>` : nothing}
      ${strokes.map(({ points }) => svg`<path class="stroke" d=${lineOf(points)}></path>`)}
    </svg>`;
  }
}

/** Where on the slide a hand is. A slide that flows as a page on a narrow screen is not `shaped`: its places are no other slide's. */
function pointOf(event: PointerEvent): { readonly to: Point; readonly shaped: boolean } {
  const { left, top, width, height } = (event.currentTarget as Element).getBoundingClientRect();
  return {
    to: [share(event.clientX, left, width), share(event.clientY, top, height)],
    shaped: Math.abs((width * BOX.height) / (height * BOX.width) - 1) < NEAR,
  };
}

function lineOf(points: readonly Point[]): string {
  const line = points.map((point) =>
    inBox(point)
      .map((n) => n.toFixed(1))
      .join(' '),
  );
  return `M${line.join('L')}${points.length === 1 ? 'h.1' : ''}`;
}
