import { type Layout, markAt, markPointsIn, type Point, strokePoints } from '../../../drawing/index.js';
import { type Mark, MARK_FORMS } from '../../../examination/index.js';
import type { Press, Tool } from '../hand/press.js';
import type { DrawingPoint, SiteFinder } from '../hand/site-finder.js';
import type { SkinEditor } from './editor.js';

/** How far a tap may move, in px; a finger is less steady than a pen. */
const SLOP: Record<string, number> = { touch: 8 };
const FINE_SLOP = 3;
/** How far from a mark a tap may be, in px. */
const REACH: Record<string, number> = { touch: 22 };
const FINE_REACH = 12;
/** How far an eraser reaches, in px. */
const ERASER = 8;

/** Draws marks on the skin: a stroke is recorded when it is lifted; a cancelled one leaves nothing. */
export class SkinPen implements Tool {
  readonly draws = true;
  #ink = '';
  #inked = 0;
  #erasing = false;

  constructor(
    private readonly editor: SkinEditor,
    private readonly finder: SiteFinder,
  ) {}

  get erases(): boolean {
    return this.editor.eraser;
  }

  slop(type: string): number {
    return SLOP[type] ?? FINE_SLOP;
  }

  hover(): void {
    // Hovering has no preview here.
  }

  begin({ points, erase }: Press): void {
    // Keys are handled here while drawing; a touch would not move the focus by itself.
    this.finder.surface?.parentElement?.focus({ preventScroll: true });
    const [start] = points;
    this.#erasing = erase;
    if (erase && start) this.#eraseTo(start, start);
  }

  captures(): boolean {
    return true;
  }

  reach(point: DrawingPoint, from: DrawingPoint): void {
    if (this.#erasing) this.#eraseTo(point, from);
  }

  /** Writes to the DOM directly, so that a move does not render the whole figure. */
  show({ points, erase }: Press): void {
    if (erase) return;
    const path = this.#inkPath;
    if (!this.#inked) path?.classList.toggle('area', MARK_FORMS[this.editor.kind] === 'area');
    for (; this.#inked < points.length; this.#inked++) {
      const { x, y } = points[this.#inked] as DrawingPoint;
      this.#ink += `${this.#ink ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`;
    }
    path?.setAttribute('d', this.#ink);
  }

  tap({ points, type }: Press): void {
    this.editor.select(this.#hit(points[0] as DrawingPoint, REACH[type] ?? FINE_REACH)?.id);
  }

  stroke({ points }: Press): void {
    const { editor } = this;
    editor.select(undefined);
    const kept = strokePoints(
      points.map((point) => this.#onSkin(point)),
      MARK_FORMS[editor.kind],
      1 / this.#layout.scale,
    );
    if (kept) editor.add(editor.kind, kept, this.#layout.view);
    else editor.tooSmall();
  }

  erase(): void {
    this.editor.remove([...this.editor.erasing]);
  }

  end(): void {
    this.#ink = '';
    this.#inked = 0;
    this.#erasing = false;
    this.#inkPath?.removeAttribute('d');
    if (!this.editor.erasing.size) return;
    this.editor.erasing = new Set();
    this.editor.changed();
  }

  activate(event: MouseEvent): void {
    const id = markOf(event);
    if (id) this.editor.edit(id);
  }

  get #layout(): Layout {
    return this.finder.layout as Layout;
  }

  get #inkPath(): Element | null | undefined {
    return this.finder.surface?.querySelector('.ink');
  }

  /** A point of the drawing in units of the figure or plate. */
  #onSkin({ x, y }: DrawingPoint): Point {
    const { offsetX, offsetY, scale } = this.#layout;
    return [(x - offsetX) / scale, (y - offsetY) / scale];
  }

  #hit(point: DrawingPoint, reach: number): Mark | undefined {
    const { view, scale } = this.#layout;
    const shown = this.editor.marks.flatMap((mark) => {
      const points = markPointsIn(view, mark);
      return points ? [{ ...mark, points }] : [];
    });
    return markAt(shown, this.#onSkin(point), reach / scale);
  }

  #eraseTo(to: DrawingPoint, from: DrawingPoint): void {
    const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / ERASER) || 1;
    for (let i = 1; i <= steps; i++) {
      const part = i / steps;
      const hit = this.#hit(
        { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part },
        ERASER,
      );
      if (!hit || this.editor.erasing.has(hit.id)) continue;
      this.editor.erasing = new Set([...this.editor.erasing, hit.id]);
      this.editor.changed();
    }
  }
}

/** The id of the mark that an event on the figure is about. */
export function markOf(event: Event): string | undefined {
  return (event.target as Element).closest?.('[data-mark]')?.getAttribute('data-mark') ?? undefined;
}
