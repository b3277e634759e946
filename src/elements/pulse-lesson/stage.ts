import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { type Lesson, type LessonStep, recordOf, type StepId, stepsOf } from '../../lesson/index.js';
import { clock } from '../common/clock.js';
import { Keep } from './keep.js';
import { Link, type Told } from './link.js';
import { Marks } from './marks.js';
import { Over } from './over.js';
import { act, OPENING, pictureOf, readShow, refitted, type Show, type ShowAct } from './show.js';

/** What a stage asks of its element. */
export interface StageOf extends ReactiveControllerHost {
  readonly lesson: Lesson | null;
  readonly channel: string;
  readonly keep: string | undefined;
}

/** What is shown of a lesson: changed by acts of this window, in step with the other windows, and found again after a reload. */
export class Stage implements ReactiveController {
  show: Show = OPENING;
  steps: readonly LessonStep[] = [];
  readonly marks = new Marks((marked) => this.do({ marked }));
  /** What lies over the picture. */
  readonly over: Over;
  readonly #keep: Keep;
  #link: Link | undefined;
  #linked = '';
  #began = false;

  /** @param changed called after what is shown has changed */
  constructor(
    private readonly host: StageOf,
    private readonly changed: (before: Show) => void,
  ) {
    this.#keep = new Keep(() =>
      host.keep && host.lesson ? `pulse-lesson:${host.keep}:${host.lesson.id}` : undefined,
    );
    this.over = new Over(host, (over) => this.#link?.say({ on: pictureOf(this.show), over }));
    host.addController(this);
  }

  /** The step on the screen; none on the title. */
  get step(): LessonStep | undefined {
    return this.steps[this.show.at - 1];
  }

  hostConnected(): void {
    if (this.#linked) this.#join();
  }

  hostDisconnected(): void {
    this.#link?.close();
    this.#link = undefined;
  }

  /** A lesson that is being written stays where it is; another one begins, or goes on where the tab left it. */
  setLesson(before: Lesson | null | undefined): void {
    const { lesson } = this.host;
    const ids = this.#ids;
    this.steps = lesson ? stepsOf(lesson) : [];
    if (before && before.id === lesson?.id) {
      this.show = refitted(this.show, ids, this.#ids);
      return;
    }
    this.show = (this.#began ? undefined : this.#keep.read(this.#ids)) ?? OPENING;
    if (lesson) {
      this.#began = true;
      this.marks.begin(this.show.marked, recordOf(lesson, []).scale);
    }
    this.#linked = '';
  }

  /** Joins the windows of the lesson and channel, where it has not. */
  join(): void {
    if (this.host.lesson && this.#name !== this.#linked) this.#join();
  }

  do(what: ShowAct): void {
    const next = act(this.show, what, this.#ids, clock.now());
    if (next === this.show) return;
    this.#take(next);
    this.#link?.say({ show: next });
  }

  get #name(): string {
    return `${this.host.channel} ${this.host.lesson?.id}`;
  }

  get #ids(): readonly StepId[] {
    return this.steps.map(({ id }) => id);
  }

  #join(): void {
    this.#linked = this.#name;
    this.#link?.close();
    this.#link = new Link(
      this.#linked,
      (heard) => this.#hear(heard),
      () => ({ show: this.show, on: pictureOf(this.show), lies: this.over.state }),
    );
  }

  #hear({ show: shown, on, over, lies }: Told): void {
    const show = readShow(shown, this.#ids);
    if (show && show.turn > this.show.turn) this.#take(show);
    // What a hand did on a picture that stands here no more means nothing here.
    if (on !== pictureOf(this.show)) return;
    if (lies !== undefined) this.over.catchUp(lies);
    if (over !== undefined) this.over.hear(over);
  }

  #take(show: Show): void {
    const before = this.show;
    this.show = show;
    if (pictureOf(before) !== pictureOf(show)) this.over.leave();
    this.marks.take(show.marked);
    this.#keep.write(show);
    this.changed(before);
    this.host.requestUpdate();
  }
}
