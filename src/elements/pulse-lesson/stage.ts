import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { type Lesson, type LessonStep, recordOf, type StepId, stepsOf } from '../../lesson/index.js';
import { clock } from '../common/clock.js';
import { Keep } from './keep.js';
import { Link } from './link.js';
import { Marks } from './marks.js';
import { act, OPENING, readShow, refitted, type Show, type ShowAct } from './show.js';

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
    this.#link?.say(next);
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
      () => this.show,
    );
  }

  #hear(heard: unknown): void {
    const show = readShow(heard, this.#ids);
    if (show && show.turn > this.show.turn) this.#take(show);
  }

  #take(show: Show): void {
    const before = this.show;
    this.show = show;
    this.marks.take(show.marked);
    this.#keep.write(show);
    this.changed(before);
    this.host.requestUpdate();
  }
}
