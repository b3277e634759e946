import {
  type LitElement,
  nothing,
  svg,
  type ReactiveController,
  type SVGTemplateResult,
  type TemplateResult,
} from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { DirectiveResult } from 'lit/directive.js';
import type { SkinPlace } from '../../../anatomy/index.js';
import { regionShape } from '../../../anatomy/index.js';
import { type Layout, markAt, type Point, strokePoints } from '../../../drawing/index.js';
import {
  addMark,
  changeMark,
  type Examination,
  type Mark,
  MARK_FORMS,
  MARK_KINDS,
  type MarkKind,
  markRegions,
  MOST_MARKS,
  moveMark,
  removeMarks,
  skinMarks,
} from '../../../examination/index.js';
import { keyAct } from '../hand/keys.js';
import { type PaletteView, renderPalette, renderSkinList, type SkinActs } from './panels.js';
import { SkinPointer } from './pointer.js';
import { halfOf, skinIcon, skinLayer } from './layer.js';
import type { LegendItem } from '../figure/render.js';
import type { Recorder, RecorderHost } from '../recorder.js';
import type { Half } from '../crops.js';
import type { DrawingPoint } from '../hand/site-finder.js';

export interface SkinHost {
  surface(): SVGSVGElement | null;
  /** The figure as it is laid out now. */
  layout(): Layout;
  point(event: MouseEvent): DrawingPoint;
  /** Drawing begins: whatever else the hand holds is put down. */
  begin(): void;
  /** Brings a half of the body into view. */
  show(half: Half): void;
}

/** How far an eraser reaches, in px. */
const ERASER = 8;
/** How far an arrow key moves a mark, in figure units; with Shift, less. */
const NUDGE = 8;
const FINE_NUDGE = 1;
const ARROWS: Record<string, Point> = {
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

/** Marks on the skin: drawing, selecting, erasing, and the words for it. */
export class SkinTools implements ReactiveController {
  /** Whether the hand draws on the skin. */
  on = false;
  readonly hand: SkinPointer;
  #kind: MarkKind = 'ulcer';
  #eraser = false;
  /** What stands in the field of the selected mark's note while it is typed in. */
  #typed: string | undefined;
  #selected: string | undefined;
  #erasing: ReadonlySet<string> = new Set();
  #ink = '';
  #inked = 0;
  #focus: string | undefined;

  constructor(
    private readonly element: LitElement,
    private readonly record: RecorderHost,
    private readonly recorder: Recorder,
    private readonly host: SkinHost,
  ) {
    element.addController(this);
    this.hand = new SkinPointer(element, {
      surface: () => host.surface(),
      point: (event) => host.point(event),
      erasing: () => this.#eraser,
      draw: (points) => this.#draw(points),
      stroke: (points) => this.#stroke(points),
      tap: (point, reach) => this.#tap(point, reach),
      erase: (from, to) => this.#erase(from, to),
      erased: () => this.#remove([...this.#erasing]),
      ended: () => this.#ended(),
      press: (event) => {
        const id = idOf(event);
        if (id) this.#acts.edit(id);
      },
    });
  }

  hostConnected(): void {
    this.element.renderRoot.addEventListener('keydown', this.#keydown);
  }

  hostDisconnected(): void {
    this.element.renderRoot.removeEventListener('keydown', this.#keydown);
    this.on = false;
  }

  hostUpdated(): void {
    const selector = this.#focus;
    this.#focus = undefined;
    if (selector) this.#find(selector)?.focus();
  }

  toggle(): void {
    if (this.on) this.leave();
    else if (this.record.editable()) {
      this.host.begin();
      this.on = true;
      this.#eraser = false;
      this.#changed();
    }
  }

  /** Puts the pen down. What is under way is not recorded. */
  leave(): void {
    if (!this.on) return;
    const inside = this.#find('.palette:focus-within, .skin:focus, .stage:focus');
    if (inside)
      this.#focus = this.#selected ? `[data-row="${CSS.escape(this.#selected)}"] button` : '[data-tool=draw]';
    this.hand.stop();
    this.on = false;
    this.#selected = undefined;
    this.#changed();
  }

  /** The marks on the figure; a hover elsewhere leaves them alone. */
  layer(layout: Layout): SVGTemplateResult {
    const view = this.#view;
    return svg`${guard([layout, ...this.#state(view)], () => skinLayer(view, layout, this.#markKeydown))}`;
  }

  palette(): TemplateResult | typeof nothing {
    return this.on ? renderPalette(this.#view, this.#acts) : nothing;
  }

  /** What the kinds of mark in the record look like, for the legend of a picture. */
  legend(): readonly LegendItem[] {
    const kinds = new Set(this.#marks.map(({ kind }) => kind));
    const { marks } = this.record.words();
    return MARK_KINDS.filter((kind) => kinds.has(kind)).map((kind) => ({
      sign: svg`<g transform="scale(.8)">${skinIcon(kind, `legend-${kind}`)}</g>`,
      text: marks.kindWord(kind),
    }));
  }

  list(): DirectiveResult {
    const [view, editable] = [this.#view, this.record.editable()];
    return guard([editable, ...this.#state(view)], () => renderSkinList(view, editable, this.#acts));
  }

  #state({ marks, on, selected, erasing, words }: PaletteView): readonly unknown[] {
    return [marks, on, selected, erasing, words];
  }

  /** Keys while drawing, wherever the focus is within the element. */
  readonly #keydown = (event: Event): void => {
    if (!this.on) return;
    const act = keyAct(event as KeyboardEvent);
    if (act?.kind === 'escape') {
      if (!this.hand.stop() && !this.#select(undefined)) this.leave();
    } else if (act?.kind === 'undo' && !isTyping(event)) this.recorder.undo();
    else if (act?.kind === 'redo' && !isTyping(event)) this.recorder.redo();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  get #examination(): Examination {
    return this.record.store().examination;
  }

  get #marks(): readonly Mark[] {
    return skinMarks(this.#examination);
  }

  get #view(): PaletteView {
    return {
      marks: this.#marks,
      on: this.on,
      selected: this.#selected,
      erasing: this.#erasing,
      words: this.record.words(),
      kind: this.#kind,
      eraser: this.#eraser,
      typed: this.#typed,
    };
  }

  readonly #acts: SkinActs = {
    kind: (kind) => {
      const mark = this.#mark(this.#selected);
      if (mark) this.#change(mark.id, changeMark(this.#examination, mark.id, { kind }));
      else {
        this.#kind = kind;
        this.#eraser = false;
        this.#changed();
      }
    },
    eraser: () => {
      this.#eraser = !this.#eraser;
      this.#changed();
    },
    note: (text) => {
      const mark = this.#mark(this.#selected);
      this.#typed = text;
      if (mark) this.record.commit(changeMark(this.#examination, mark.id, { note: text.trim() }), mark.id);
    },
    noteDone: () => {
      const mark = this.#mark(this.#selected);
      this.#typed = undefined;
      if (mark && this.record.store().settle()) this.#sayChanged(mark);
    },
    remove: (id) => {
      const marks = this.#marks;
      const next = marks[marks.findIndex((mark) => mark.id === id) + 1] ?? marks.at(-2);
      // The focus goes where the deleted one's button was, or to what is left.
      if (this.#find('.palette:focus-within')) this.#focus = '.kinds [aria-pressed=true]';
      else if (this.#find('.marks li:focus-within'))
        this.#focus = next ? `[data-row="${CSS.escape(next.id)}"] button:last-of-type` : '.marks summary';
      this.#remove([id]);
    },
    edit: (id) => {
      const mark = this.#mark(id);
      if (!mark) return;
      if (!this.on) this.toggle();
      this.host.show(halfOf(mark));
      this.#select(id);
      this.#focus = '.kinds [aria-pressed=true]';
    },
    add: (kind, place) => this.#addAt(kind, place),
    leave: () => this.leave(),
  };

  #mark(id: string | undefined): Mark | undefined {
    return this.#marks.find((mark) => mark.id === id);
  }

  #changed(): void {
    this.element.requestUpdate();
  }

  #find(selector: string): HTMLElement | null {
    return this.element.renderRoot.querySelector(selector);
  }

  get #inkPath(): Element | null | undefined {
    return this.host.surface()?.querySelector('.ink');
  }

  /** @returns whether the selection changed */
  #select(id: string | undefined): boolean {
    if (this.#selected === id) return false;
    this.#selected = id;
    this.#eraser = false;
    this.#changed();
    return true;
  }

  #change(id: string, next: Examination): void {
    if (!this.record.commit(next)) return;
    const mark = this.#mark(id);
    if (mark) this.#sayChanged(mark);
  }

  #sayChanged({ kind, note, ...mark }: Mark): void {
    this.record.said(this.record.words().marks.changed(kind, markRegions({ kind, ...mark }), note));
  }

  #add(kind: MarkKind, points: readonly Point[]): void {
    const { marks: words } = this.record.words();
    const before = this.#examination;
    if (!markRegions({ kind, points: points.map(([x, y]) => [x, y]) }).length)
      return this.#say(words.offSkin);
    if (!this.record.commit(addMark(before, { kind, points }))) return this.#say(words.full(MOST_MARKS));
    const mark = this.#marks.at(-1) as Mark;
    this.record.said(words.recorded(kind, markRegions(mark)));
  }

  #say(what: string): void {
    this.record.said({ what });
  }

  #addAt(kind: MarkKind, place: SkinPlace | undefined): void {
    if (place) this.#add(kind, regionShape(place, MARK_FORMS[kind]));
    else this.#say(this.record.words().marks.choosePlace);
  }

  #remove(ids: readonly string[]): void {
    const [first] = ids.flatMap((id) => this.#mark(id) ?? []);
    if (!first || !this.record.commit(removeMarks(this.#examination, ...ids))) return;
    if (this.#selected && ids.includes(this.#selected)) this.#selected = undefined;
    this.#say(this.record.words().marks.removed(first.kind, markRegions(first), ids.length));
  }

  /** A point of the drawing in units of the figure. */
  #onFigure({ x, y }: DrawingPoint): Point {
    const { offsetX, offsetY, scale } = this.host.layout();
    return [(x - offsetX) / scale, (y - offsetY) / scale];
  }

  #hit(point: DrawingPoint, reach: number): Mark | undefined {
    return markAt(this.#marks, this.#onFigure(point), reach / this.host.layout().scale);
  }

  /** Shown at once and past the renderer, which has better things to do than to redraw the figure at every move. */
  #draw(points: readonly DrawingPoint[]): void {
    const path = this.#inkPath;
    if (!this.#inked) path?.classList.toggle('area', MARK_FORMS[this.#kind] === 'area');
    for (; this.#inked < points.length; this.#inked++) {
      const { x, y } = points[this.#inked] as DrawingPoint;
      this.#ink += `${this.#ink ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`;
    }
    path?.setAttribute('d', this.#ink);
  }

  #stroke(points: readonly DrawingPoint[]): void {
    this.#select(undefined);
    const { scale } = this.host.layout();
    const kept = strokePoints(
      points.map((point) => this.#onFigure(point)),
      MARK_FORMS[this.#kind],
      1 / scale,
    );
    if (kept) this.#add(this.#kind, kept);
    else this.#say(this.record.words().marks.tooSmall);
  }

  #tap(point: DrawingPoint, reach: number): void {
    this.#select(this.#hit(point, reach)?.id);
  }

  #erase(from: DrawingPoint, to: DrawingPoint): void {
    const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / ERASER) || 1;
    for (let i = 1; i <= steps; i++) {
      const part = i / steps;
      const hit = this.#hit(
        { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part },
        ERASER,
      );
      if (!hit || this.#erasing.has(hit.id)) continue;
      this.#erasing = new Set([...this.#erasing, hit.id]);
      this.#changed();
    }
  }

  #ended(): void {
    this.#ink = '';
    this.#inked = 0;
    this.#inkPath?.removeAttribute('d');
    if (!this.#erasing.size) return;
    this.#erasing = new Set();
    this.#changed();
  }

  /** Keys on a mark of the drawing. */
  readonly #markKeydown = (event: KeyboardEvent): void => {
    const mark = this.#mark(idOf(event));
    if (!mark || event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (arrow) {
      const by = event.shiftKey ? FINE_NUDGE : NUDGE;
      this.#change(mark.id, moveMark(this.#examination, mark.id, arrow[0] * by, arrow[1] * by));
    } else if (event.key === 'Enter' || event.key === ' ') this.#acts.edit(mark.id);
    else if (event.key === 'Delete' || event.key === 'Backspace') {
      this.#focus = '.kinds [aria-pressed=true]';
      this.#remove([mark.id]);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };
}

function isTyping(event: Event): boolean {
  const [from] = event.composedPath();
  return from instanceof HTMLInputElement || from instanceof HTMLTextAreaElement;
}

/** The mark that an event on the drawing is about. */
function idOf(event: Event): string | undefined {
  return (event.target as Element).closest?.('[data-mark]')?.getAttribute('data-mark') ?? undefined;
}
