import { platePlaceShape, type PlatePlace, regionShape, type SkinPlace } from '../../../anatomy/index.js';
import { isDrawnIn, isPlateView, type Point, showsMark, type View } from '../../../drawing/index.js';
import {
  addMark,
  changeMark,
  type Examination,
  type Mark,
  MARK_FORMS,
  type MarkKind,
  markRegions,
  MOST_MARKS,
  moveMark,
  removeMarks,
  skinMarks,
} from '../../../examination/index.js';
import type { Chooser } from '../chooser/chooser.js';
import type { Hand, Tool } from '../hand/press.js';
import type { Session } from '../session.js';
import { cropOf } from './layer.js';

/** How far an arrow key moves a mark, in figure units, and on a plate in its own; with Shift, less. */
const NUDGE = { figure: 8, plate: 16 } as const;
const FINE_NUDGE = { figure: 1, plate: 2 } as const;
const ARROWS: Record<string, Point> = {
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

const CHOSEN_KIND = '.kinds [aria-pressed=true]';

/** State and edits of the marks on the skin: the kind to draw, the selected mark, and every change to the record. */
export class SkinEditor {
  kind: MarkKind = 'ulcer';
  eraser = false;
  selected: string | undefined;
  /** Content of the selected mark's note field while it is being edited. */
  typed: string | undefined;
  /** Marks touched by the eraser, removed when it is lifted. */
  erasing: ReadonlySet<string> = new Set();
  /** Selector of the element to focus after the next render. */
  #focus: string | undefined;
  readonly #pen: Tool;

  constructor(
    private readonly session: Session,
    private readonly hand: Hand,
    private readonly chooser: Chooser,
    /** Makes the tool that draws for this editor. */
    makePen: (editor: SkinEditor) => Tool,
  ) {
    this.#pen = makePen(this);
  }

  get on(): boolean {
    return this.session.now.mode === 'skin';
  }

  get marks(): readonly Mark[] {
    return skinMarks(this.session.examination);
  }

  mark(id: string | undefined): Mark | undefined {
    return this.marks.find((mark) => mark.id === id);
  }

  /** Starts drawing on the skin; puts down the brush and closes the chooser. */
  start(): void {
    if (this.on || !this.session.editable) return;
    this.chooser.close(false);
    this.hand.hold(this.#pen);
    this.eraser = false;
    this.session.change({ mode: 'skin', brush: undefined });
  }

  /** Stops drawing. A stroke in progress is not recorded. */
  leave(): void {
    if (!this.on) return;
    const inside = this.find('.palette:focus-within, .skin:focus, .surface:focus');
    if (inside)
      this.#focus = this.selected ? `[data-row="${CSS.escape(this.selected)}"] button` : '[data-tool=draw]';
    this.selected = undefined;
    this.putDown();
  }

  putDown(): void {
    this.hand.hold(undefined);
    this.session.change({ mode: 'sites' });
  }

  /** Lets go of the mark that is selected, and of what was typed about it. */
  forget(): void {
    this.typed = undefined;
    this.selected = undefined;
    this.changed();
  }

  takeFocus(): void {
    const selector = this.#focus;
    this.#focus = undefined;
    if (selector) this.find(selector)?.focus();
  }

  find(selector: string): HTMLElement | null {
    return this.session.element.renderRoot.querySelector(selector);
  }

  changed(): void {
    this.session.element.requestUpdate();
  }

  /** @returns whether the selection changed */
  select(id: string | undefined): boolean {
    if (this.selected === id) return false;
    this.selected = id;
    this.eraser = false;
    this.changed();
    return true;
  }

  /** Chooses the kind to draw with, or changes that of the selected mark. */
  choose(kind: MarkKind): void {
    const mark = this.mark(this.selected);
    if (mark) return this.#change(mark.id, changeMark(this.session.examination, mark.id, { kind }));
    this.kind = kind;
    this.eraser = false;
    this.changed();
  }

  toggleEraser(): void {
    this.eraser = !this.eraser;
    this.changed();
  }

  /** Records the content of the selected mark's note field. */
  note(text: string): void {
    const mark = this.mark(this.selected);
    this.typed = text;
    if (mark)
      this.session.edit(changeMark(this.session.examination, mark.id, { note: text.trim() }), mark.id);
  }

  /** The note field was left: ends the undo step and reports it. */
  noteDone(): void {
    const mark = this.mark(this.selected);
    this.typed = undefined;
    if (mark && this.session.store.settle()) this.#sayChanged(mark);
  }

  /** Brings a mark into view and selects it. */
  edit(id: string): void {
    const mark = this.mark(id);
    if (!mark) return;
    this.start();
    this.#bring(mark);
    this.select(id);
    this.#focus = CHOSEN_KIND;
  }

  /** Reports that a stroke was too small to count. */
  tooSmall(): void {
    this.#say(this.session.allWords.marks.tooSmall);
  }

  /** Shows the drawing on which a mark was made, or another that shows it. */
  #bring(mark: Mark): void {
    const { session } = this;
    if (mark.on) {
      if (!isDrawnIn(session.view, mark))
        session.show(mark.on.plate, `[data-row="${CSS.escape(mark.id)}"] button`, true);
      return;
    }
    if (!showsMark(session.view, mark)) session.back(false);
    session.change({ crop: cropOf(mark) });
  }

  /** @param view in whose units the points are */
  add(kind: MarkKind, points: readonly Point[], view: View): void {
    const { marks: words } = this.session.allWords;
    const made = isPlateView(view)
      ? { points: [], on: { plate: view, points: points.map(([x, y]) => [x, y] as const) } }
      : { points: points.map(([x, y]) => [x, y] as const) };
    if (!markRegions({ kind, ...made }).length) return this.#say(words.offSkin);
    if (!this.session.edit(addMark(this.session.examination, { kind, ...made })))
      return this.#say(words.full(MOST_MARKS));
    this.session.say(words.recorded(kind, markRegions(this.marks.at(-1) as Mark)));
  }

  /** Adds a mark that covers a region of the figure or an area of a plate. */
  addAt(kind: MarkKind, place: SkinPlace | PlatePlace | undefined): void {
    const form = MARK_FORMS[kind];
    if (place && 'view' in place) this.add(kind, platePlaceShape(place, form), place.view);
    else if (place) this.add(kind, regionShape(place, form), 'whole');
    else this.#say(this.session.allWords.marks.choosePlace);
  }

  /** Deletes a mark from its button, and moves the focus to what is left. */
  delete(id: string): void {
    const { marks } = this;
    const next = marks[marks.findIndex((mark) => mark.id === id) + 1] ?? marks.at(-2);
    if (this.find('.palette:focus-within')) this.#focus = CHOSEN_KIND;
    else if (this.find('.marks li:focus-within'))
      this.#focus = next ? `[data-row="${CSS.escape(next.id)}"] button:last-of-type` : '.marks summary';
    this.remove([id]);
  }

  remove(ids: readonly string[]): void {
    const [first] = ids.flatMap((id) => this.mark(id) ?? []);
    if (!first || !this.session.edit(removeMarks(this.session.examination, ...ids))) return;
    if (this.selected && ids.includes(this.selected)) this.selected = undefined;
    this.#say(this.session.allWords.marks.removed(first.kind, markRegions(first), ids.length));
  }

  /** Handles the keys that change a mark on the figure: arrows move it, Delete removes it. */
  key(mark: Mark, { key, shiftKey }: KeyboardEvent): boolean {
    const arrow = ARROWS[key];
    if (arrow) {
      const { examination, view } = this.session;
      // Up on a sole is not up on the figure: a mark is moved on the drawing on which it was made.
      if (!isDrawnIn(view, mark)) {
        this.#bring(mark);
        return true;
      }
      const by = (shiftKey ? FINE_NUDGE : NUDGE)[mark.on ? 'plate' : 'figure'];
      this.#change(mark.id, moveMark(examination, mark.id, arrow[0] * by, arrow[1] * by));
    } else if (key === 'Delete' || key === 'Backspace') {
      this.#focus = CHOSEN_KIND;
      this.remove([mark.id]);
    } else return false;
    return true;
  }

  #say(what: string): void {
    this.session.say({ what });
  }

  #change(id: string, next: Examination): void {
    if (!this.session.edit(next)) return;
    const mark = this.mark(id);
    if (mark) this.#sayChanged(mark);
  }

  #sayChanged(mark: Mark): void {
    this.session.say(this.session.allWords.marks.changed(mark.kind, markRegions(mark), mark.note));
  }
}
