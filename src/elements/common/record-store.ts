import {
  emptyExamination,
  type Examination,
  formatExamination,
  type History,
  isEmptyRecord,
  record,
  redo,
  startHistory,
  undo,
} from '../../examination/index.js';
import { alreadyRead } from './given-record.js';
import type { RecordAct } from './record-event.js';
import { type Held, readable, type Reader, reread, sameHeld, textOf } from './record-value.js';

/** A field that a person is typing in: all its edits are one step. */
interface Visit {
  readonly field: unknown;
  readonly before: History<Held<Examination>>;
}

const BLANK = emptyExamination();

/**
 * One record with one undo, shared by the elements that edit it. Fires {@link RecordChangeEvent} after every change.
 *
 * What was given and cannot be read (yet) is kept as it came: `examination` is then empty, `text` is what was given, and no
 * edit is taken.
 */
export class RecordStore extends EventTarget {
  #history: History<Held<Examination>>;
  #visit: Visit | undefined;

  constructor(examination: Examination) {
    super();
    this.#history = startHistory(readable(examination));
  }

  get held(): Held<Examination> {
    return this.#history.present;
  }

  /** The record; an empty one while what was given is not read. */
  get examination(): Examination {
    const { held } = this;
    return alreadyRead(held.state === 'readable' ? held.value : BLANK);
  }

  /** The text that a form submits. */
  get text(): string {
    return textOf(this.held, (value) => (isEmptyRecord(value) ? '' : formatExamination(value)));
  }

  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }

  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }

  /**
   * Makes an edit one step of the history; the very same record makes none.
   * @param field the field being typed in: edits of the same one are one step until `settle` or another edit
   * @returns whether anything changed
   */
  commit(next: Examination, field?: unknown): boolean {
    if (this.held.state !== 'readable') return false;
    if (field === undefined || (this.#visit && this.#visit.field !== field)) this.settle();
    if (next === this.examination) return false;
    if (field === undefined) return this.#move(record(this.#history, readable(next)), ['input', 'change']);
    this.#visit ??= { field, before: this.#history };
    const { before } = this.#visit;
    const typed = readable(next);
    // Typed back to what stood there before: nothing happened.
    return this.#move(sameHeld(typed, before.present) ? before : record(before, typed), ['input']);
  }

  /**
   * The person has left the field they typed in.
   * @returns whether anything in it has changed since they came
   */
  settle(): boolean {
    const before = this.#visit?.before;
    this.#visit = undefined;
    if (!before || before === this.#history) return false;
    this.dispatchEvent(new RecordChangeEvent(['change']));
    return true;
  }

  undo(): boolean {
    this.settle();
    return this.#move(undo(this.#history), ['input', 'change'], 'undo');
  }

  redo(): boolean {
    this.settle();
    return this.#move(redo(this.#history), ['input', 'change'], 'redo');
  }

  /** Begins an empty record in place of a sealed one, as one step that can be undone. */
  startNew(): boolean {
    if (this.held.state !== 'sealed') return false;
    return this.#move(record(this.#history, readable(emptyExamination())), ['input', 'change'], 'new-record');
  }

  /** Starts anew from what did not come from a person's act; there is nothing to undo then. */
  take(held: Held<Examination>): void {
    this.#visit = undefined;
    this.#history = startHistory(held);
    this.dispatchEvent(new RecordChangeEvent([]));
  }

  /** The same with a record. */
  restart(examination: Examination): void {
    this.take(readable(examination));
  }

  /** Reads what waits. */
  read(reader: Reader<Examination>): void {
    if (this.held.state === 'waiting') this.take(reread(this.held, reader));
  }

  #move(next: History<Held<Examination>>, tells: readonly Told[], act: RecordAct = 'edit'): boolean {
    if (next === this.#history) return false;
    this.#history = next;
    this.dispatchEvent(new RecordChangeEvent(tells, act));
    return true;
  }
}

type Told = 'input' | 'change';

/** Tells that the record in a {@link RecordStore} changed. */
export class RecordChangeEvent extends Event {
  /** @param tells which events a form control passes on: none for a change by code, `input` alone while a person types */
  constructor(
    readonly tells: readonly Told[],
    readonly act: RecordAct = 'edit',
  ) {
    super('record-change');
  }

  /** Whether a person's act caused it. */
  get user(): boolean {
    return this.tells.length > 0;
  }
}
