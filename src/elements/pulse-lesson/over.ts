import { html, nothing, type ReactiveControllerHost, svg, type TemplateResult } from 'lit';

type Point = readonly [x: number, y: number];

/** Radius of the spotlight, as a share of the slide's width. */
const LIGHT = 0.11;
/** The slide as the overlay measures it. */
const BOX = { width: 1920, height: 1080 } as const;
/** Least distance between two points of a stroke, in slide units. */
const FINE = 3;

/** What lies over a slide in this window alone: a spotlight under the pointer, and ink that is wiped. */
export class Over {
  light = false;
  ink = false;
  strokes: readonly (readonly Point[])[] = [];
  #at: Point | undefined;
  #drawing = false;

  constructor(private readonly host: ReactiveControllerHost) {}

  toggle(what: 'light' | 'ink'): void {
    this[what] = !this[what];
    this.host.requestUpdate();
  }

  wipe(): void {
    if (!this.strokes.length) return;
    this.strokes = [];
    this.host.requestUpdate();
  }

  /** Puts everything away. @returns whether there was anything */
  clear(): boolean {
    const any = this.light || this.ink || this.strokes.length > 0;
    this.light = this.ink = false;
    this.wipe();
    this.host.requestUpdate();
    return any;
  }

  #pointOf(event: PointerEvent): Point {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    return [
      ((event.clientX - box.left) / box.width) * BOX.width,
      ((event.clientY - box.top) / box.height) * BOX.height,
    ];
  }

  /** A pen writes whenever it touches; a mouse or finger where ink was chosen. @returns whether the press draws */
  readonly down = (event: PointerEvent): boolean => {
    if (!this.ink && event.pointerType !== 'pen') return false;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.#drawing = true;
    this.strokes = [...this.strokes, [this.#pointOf(event)]];
    this.host.requestUpdate();
    return true;
  };

  readonly move = (event: PointerEvent): void => {
    const point = this.#pointOf(event);
    if (this.light) {
      this.#at = point;
      this.host.requestUpdate();
    }
    const stroke = this.strokes.at(-1);
    const last = stroke?.at(-1);
    if (!this.#drawing || !stroke || !last) return;
    if (Math.hypot(point[0] - last[0], point[1] - last[1]) < FINE) return;
    this.strokes = [...this.strokes.slice(0, -1), [...stroke, point]];
    this.host.requestUpdate();
  };

  readonly up = (): void => {
    this.#drawing = false;
  };

  render(): TemplateResult | typeof nothing {
    if (!this.light && !this.strokes.length) return nothing;
    const [x, y] = this.#at ?? [BOX.width / 2, BOX.height / 2];
    const r = LIGHT * BOX.width;
    const hole = `M0 0H${BOX.width}V${BOX.height}H0ZM${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
    return html`<svg class="over" viewBox="0 0 1920 1080" preserveAspectRatio="none" aria-hidden="true">
      ${this.light ? svg`<path class="dark" d=${hole}></path>` : nothing}
      ${this.strokes.map((stroke) => svg`<path class="stroke" d=${`M${stroke.map((point) => point.map((n) => n.toFixed(1)).join(' ')).join('L')}${stroke.length === 1 ? 'h.1' : ''}`}></path>`)}
    </svg>`;
  }
}
