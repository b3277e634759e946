import { type Examination, type History, record, redo, startHistory, undo } from '../../examination/index.js';

/**
 * One record with one undo, shared by the elements that edit it. Fires `record-change` after every change; `event.user`
 * tells whether a person's act caused it.
 */
export class RecordStore extends EventTarget {
  #history: History<Examination>;

  constructor(examination: Examination) {
    super();
    this.#history = startHistory(examination);
  }

  get examination(): Examination {
    return this.#history.present;
  }

  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }

  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }

  /** Makes an edit one step of the history; the very same record makes none. */
  commit(next: Examination): boolean {
    return this.#move(record(this.#history, next));
  }

  undo(): boolean {
    return this.#move(undo(this.#history));
  }

  redo(): boolean {
    return this.#move(redo(this.#history));
  }

  /** Starts anew from a record that did not come from a person's act; there is nothing to undo then. */
  restart(examination: Examination): void {
    this.#history = startHistory(examination);
    this.dispatchEvent(new RecordChangeEvent(false));
  }

  #move(next: History<Examination>): boolean {
    if (next === this.#history) return false;
    this.#history = next;
    this.dispatchEvent(new RecordChangeEvent(true));
    return true;
  }
}

/** Tells that the record in a {@link RecordStore} changed. */
export class RecordChangeEvent extends Event {
  constructor(readonly user: boolean) {
    super('record-change');
  }
}
