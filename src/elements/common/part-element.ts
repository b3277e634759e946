import { state } from 'lit/decorators.js';
import { html, type TemplateResult } from 'lit';
import type * as z from 'zod/mini';
import {
  copyJson,
  fieldAt,
  type Fault,
  type Json,
  parseWith,
  patchAt,
  refused,
  show,
} from '../../examination/index.js';
import { messagesFor, type Messages } from '../../locale/index.js';
import { partMessagesFor, type PartMessages } from '../../locale/parts.js';
import { FormControl } from './form-control.js';
import { memoizeLast } from './memoize-last.js';
import { checked, OBJECT } from './property.js';
import {
  faultsIn,
  type Held,
  hold,
  isLost,
  readable,
  type Reader,
  reread,
  sameHeld,
  textOf,
} from './record-value.js';
import type { Refusal, Typing } from './typing.js';
import { readUnfinished, type Unfinished, UnfinishedChangeEvent } from './unfinished.js';
import { UnreadNotice } from './unread-notice.js';

/** A field being typed in: what stands in it, what the part held before, and why the text cannot be taken. */
interface Visit<T> {
  readonly field: string;
  readonly text: string;
  readonly before: T | undefined;
  readonly refusal: Refusal | undefined;
}

/** What a part holds and hands out; `undefined` for nothing. */
function frozen<T extends object>(value: T): T | undefined {
  return Object.keys(value).length ? (copyJson(value) as Json & T) : undefined;
}

/**
 * A form control whose value is one plain part of the record, with the habits of an `<input>`. What it shows is up to the
 * subclass. What is typed is in the value at every key, told by `input`; `change` follows when the field is left. Text that cannot be taken
 * stands in `unfinished`, told by `unfinished-change`.
 *
 * A value that cannot be read seals the control as it does a `RecordElement`: nothing but one sentence is shown, entry is
 * locked, and `value` and the form keep what was given.
 *
 * @fires input - A person changed something.
 * @fires change - A person changed something.
 * @fires {UnfinishedChangeEvent} unfinished-change - Text that no field can take yet was typed, mended or taken away.
 */
export abstract class PartElement<T extends object> extends FormControl {
  @state() protected refusals: ReadonlyMap<string, Refusal> = new Map();
  @state() private visit: Visit<T> | undefined;
  #held: Held<T | undefined> = readable(undefined);
  readonly #unread = new UnreadNotice(this, {
    editable: () => super.editable,
    start: () => this.#startNew(),
    retry: () => undefined,
  });

  /** The shape of the value. */
  protected abstract get schema(): z.ZodMiniType<T>;

  /**
   * The part of the record as plain data, deeply frozen; `undefined` when nothing is recorded. Also takes JSON text, or null for
   * nothing. What could not be read is given back as it came; `sealed` tells.
   */
  get value(): T | undefined {
    return this.#held.state === 'readable' ? this.#held.value : (this.#held.given.input as T);
  }

  set value(value: T | string | null | undefined) {
    this.dirty = true;
    this.take(value);
  }

  /**
   * The value without the words that this version does not know, which are carried beside it. It can be shown and read; an edit
   * of `value` keeps them.
   */
  get recorded(): T | undefined {
    return this.#split(this.#held).recorded;
  }

  /**
   * What was typed and could not be taken, so that it stands in the form and not in `value`; `undefined` where nothing does. A page that
   * keeps drafts stores it (`unfinished-change`) and sets it again after the value: each text then stands in its field as it was.
   */
  @checked(OBJECT)
  get unfinished(): Unfinished | undefined {
    const { visit } = this;
    const all = new Map(this.refusals);
    if (visit?.refusal) all.set(visit.field, visit.refusal);
    return all.size ? Object.fromEntries(all) : undefined;
  }

  set unfinished(unfinished: Unfinished | null | undefined) {
    this.visit = undefined;
    this.refusals = readUnfinished(unfinished);
    this.#told = JSON.stringify(this.unfinished);
    this.#sync();
  }

  /** Whether the value could not be read: it is kept and submitted as it came, and nothing can be entered. */
  get sealed(): boolean {
    return this.#held.state !== 'readable';
  }

  get faults(): readonly Fault[] {
    return faultsIn(this.#held);
  }

  /** Nothing may be changed either while the value could not be read. */
  protected override get editable(): boolean {
    return super.editable && !this.sealed;
  }

  /** What is shown in place of everything else while the value could not be read. */
  protected get unreadNotice(): TemplateResult | undefined {
    return this.#unread.template(this.#held, this.mapWords.form);
  }

  override formResetCallback(): void {
    super.formResetCallback();
    this.unfinished = undefined;
  }

  /** Moves the focus to the first control inside. */
  override focus(options?: FocusOptions): void {
    const all = this.renderRoot?.querySelectorAll<HTMLElement>(
      '[tabindex="0"]:enabled, input:enabled, select:enabled, summary, .unread button',
    );
    [...(all ?? [])].find((control) => control.checkVisibility())?.focus(options);
  }

  /** The words of the parts, in the language in force. */
  protected get words(): PartMessages {
    return partMessagesFor(this.language.tag, this.language.register);
  }

  /** The words shared with the map. */
  protected get mapWords(): Messages {
    return messagesFor(this.language.tag, this.language.register);
  }

  /** Drops what no longer belongs after an edit, such as the place of an ulcer that is not there. */
  protected tidied(next: T | undefined): T | undefined {
    return next;
  }

  /** A person's edit of one field; tells the page by `input` and `change`. */
  protected edit(path: readonly string[], field: unknown): boolean {
    return this.sealed ? false : this.replace(patchAt(this.value, path, field));
  }

  /**
   * A person's edit of the whole part.
   * @returns false when it may not be taken
   */
  protected replace(edited: T | undefined): boolean {
    if (!this.editable) return false;
    const next = this.tidied(edited);
    if (JSON.stringify(next) === JSON.stringify(this.value)) {
      this.requestUpdate();
      return true;
    }
    if (this.#touchesUnknown(next) || !parseWith(this.schema, next ?? {}).ok) {
      this.requestUpdate();
      return false;
    }
    this.#put(next, this.#typing ? ['input'] : ['input', 'change']);
    return true;
  }

  /** Remembers what was typed in a field and could not be taken, or forgets it. */
  protected refuse(field: string, refusal?: Refusal): void {
    const next = new Map(this.refusals);
    if (refusal) next.set(field, refusal);
    else next.delete(field);
    // An answer given another way replaces what is half typed in, whose field may leave without being left.
    if (!refusal && !this.#typing && this.visit?.field === field) this.visit = undefined;
    this.refusals = next;
    this.#sync();
  }

  /** Whether what stands at a path is recorded in a way this version does not know. It stays as it is. */
  protected unknownAt(path: readonly string[]): boolean {
    const { carried } = this.#split(this.#held);
    return carried.some((one) => path.every((key, i) => one.path[i] === undefined || one.path[i] === key));
  }

  /**
   * A control, or in its place that this version does not know what is recorded there.
   * @param shown whether its label is not visible elsewhere
   */
  protected known<C>(
    path: readonly string[],
    label: string,
    control: () => C,
    shown = false,
  ): C | TemplateResult {
    return this.unknownAt(path) ? this.unknownNote(label, shown) : control();
  }

  /** Says that what is recorded under a label is not known to this version. */
  protected unknownNote(label: string, shown = false): TemplateResult {
    return html`<span class="hint unknown"
      ><span class=${shown ? '' : 'hidden-visually'}>${label}: </span
      >${this.mapWords.examination.unknownHere}</span
    >`;
  }

  readonly #split = memoizeLast((held: Held<T | undefined>) => {
    if (held.state !== 'readable' || !held.value) return { recorded: undefined, carried: [] };
    const parsed = parseWith(this.schema, held.value);
    return parsed.ok
      ? { recorded: held.value && parsed.carried.length ? parsed.value : held.value, carried: parsed.carried }
      : { recorded: held.value, carried: [] };
  });

  /** Whether an edit would change something this version does not know; a list is kept or changed as a whole. */
  #touchesUnknown(next: T | undefined): boolean {
    return this.#split(this.#held).carried.some(({ path }) => {
      const list = path.findIndex((key) => typeof key === 'number');
      const at = (list < 0 ? path : path.slice(0, list)) as readonly string[];
      return JSON.stringify(fieldAt(next, at)) !== JSON.stringify(fieldAt(this.value, at));
    });
  }

  #typing = false;

  /** The value before the field that is being typed in was entered: what half a number meant must leave no trace. */
  protected get beforeTyping(): T | undefined {
    return this.visit ? this.visit.before : this.value;
  }

  /** What the fields for text and numbers tell of what a person types in them. */
  protected readonly typing: Typing = {
    text: (field) => (this.visit?.field === field ? this.visit.text : this.refusals.get(field)?.typed),
    type: (field, text, take, complain) => {
      if (!this.editable) return;
      if (this.visit?.field !== field) this.typing.leave();
      const before = this.visit ? this.visit.before : this.value;
      this.#typing = true;
      this.refuse(field);
      const taken = take !== undefined && take() !== false;
      this.#typing = false;
      this.visit = {
        field,
        text,
        before,
        refusal: taken ? undefined : { typed: text, sentence: complain?.() ?? '' },
      };
      // A text that is no value must not leave half a number behind: what stood there before the visit stands again.
      if (!taken) this.#put(before, ['input']);
      this.#sync();
      this.#tellUnfinished();
    },
    leave: (field) => {
      const { visit } = this;
      if (!visit || (field !== undefined && visit.field !== field)) return;
      this.visit = undefined;
      if (visit.refusal) this.refuse(visit.field, visit.refusal);
      this.#tellUnfinished();
      if (JSON.stringify(visit.before) === JSON.stringify(this.value)) return;
      this.dispatchEvent(new Event('change', { bubbles: true }));
    },
  };

  #told: string | undefined;

  #tellUnfinished(): void {
    const now = JSON.stringify(this.unfinished);
    if (now === this.#told) return;
    this.#told = now;
    this.dispatchEvent(new UnfinishedChangeEvent());
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#sync();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.typing.leave();
  }

  /** Reads the value once more, where its shape has become another. */
  protected reread(): void {
    const text = textOf(this.#held, (value) => (value ? JSON.stringify(value) : ''));
    if (text) this.#hold(reread({ state: 'waiting', given: { input: this.value, text } }, this.#reader));
  }

  readonly #reader: Reader<T | undefined> = (text) => {
    let input: unknown;
    try {
      input = JSON.parse(text);
    } catch {
      return refused({
        code: 'unreadable',
        path: [],
        found: show(text),
        expected: { code: 'type', type: 'json-text' },
      });
    }
    const parsed = parseWith(this.schema, input);
    return parsed.ok ? { ok: true, value: frozen(input as T) } : parsed;
  };

  protected override take(value: unknown): void {
    const next = hold<T | undefined>(value, undefined, this.#reader);
    // The very same value changes nothing, and must not take away what was typed and refused.
    if (sameHeld(next, this.#held)) return;
    this.#hold(next);
    this.taken();
  }

  #hold(next: Held<T | undefined>): void {
    this.refusals = new Map();
    this.visit = undefined;
    this.#set(next);
  }

  #startNew(): void {
    this.dirty = true;
    this.#put(undefined, ['input', 'change']);
    void this.updateComplete.then(() => this.focus());
  }

  /** Puts another value in place by a person's act. */
  #put(value: T | undefined, tells: readonly ('input' | 'change')[]): void {
    const next = readable(value && frozen(value));
    if (sameHeld(next, this.#held)) return;
    this.dirty = true;
    this.#set(next);
    if (tells.includes('input')) this.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    if (tells.includes('change')) this.dispatchEvent(new Event('change', { bubbles: true }));
  }

  #set(held: Held<T | undefined>): void {
    const old = this.value;
    this.#held = held;
    this.#sync();
    this.requestUpdate('value', old);
  }

  /** Listeners may read the form synchronously, so value and validity are set before any event. */
  #sync(): void {
    const text = textOf(this.#held, (value) => (value ? JSON.stringify(value) : ''));
    this.internals.setFormValue(text, text);
    this.checkEntry();
  }

  protected override get empty(): boolean {
    return this.#held.state === 'readable' && this.#held.value === undefined;
  }

  protected override checkEntry(): void {
    const refusal = this.visit?.refusal ?? [...this.refusals.values()][0];
    const message = isLost(this.#held) ? this.mapWords.form.lost : refusal?.sentence;
    const anchor = this.renderRoot?.querySelector<HTMLElement>('input, button, select') ?? undefined;
    this.validate(message ? { badInput: true } : {}, message, anchor);
  }
}
