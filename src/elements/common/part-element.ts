import { state } from 'lit/decorators.js';
import type * as z from 'zod/mini';
import { parseWith, patchAt, show } from '../../examination/index.js';
import { messagesFor, type Messages } from '../../locale/index.js';
import { partMessagesFor, type PartMessages } from '../../locale/parts.js';
import { FormControl } from './form-control.js';

/** Something typed that could not be taken: what it was, and the sentence that says why. */
export interface Refusal {
  readonly typed: string;
  readonly sentence: string;
}

/**
 * A form control whose value is one plain part of the record, with the habits of an `<input>`. What it shows is up to the
 * subclass. A value that cannot be read is listed in `faults`; what was there before stays.
 */
export abstract class PartElement<T extends object> extends FormControl {
  @state() protected refusals: ReadonlyMap<string, Refusal> = new Map();
  #value: T | undefined;
  #dirty = false;

  /** The shape of the value. */
  protected abstract get schema(): z.ZodMiniType<T>;

  /** The part of the record as plain data, `undefined` when nothing is recorded. Also takes JSON text, or null for nothing. */
  get value(): T | undefined {
    return this.#value;
  }

  set value(value: T | string | null | undefined) {
    this.#dirty = true;
    this.#take(value);
  }

  override attributeChangedCallback(name: string, old: string | null, now: string | null): void {
    super.attributeChangedCallback(name, old, now);
    if (name === 'value' && !this.#dirty) this.#take(now);
  }

  formResetCallback(): void {
    this.#dirty = false;
    this.#take(this.defaultValue);
  }

  formStateRestoreCallback(saved: string | File | FormData | null): void {
    if (typeof saved === 'string') this.value = saved;
  }

  /** Moves the focus to the first control inside. */
  override focus(options?: FocusOptions): void {
    const all = this.renderRoot?.querySelectorAll<HTMLElement>(
      '[tabindex="0"]:enabled, input:enabled, select:enabled, summary',
    );
    [...(all ?? [])].find((control) => control.checkVisibility())?.focus(options);
  }

  /** The words of the parts, in the language in force. */
  protected get words(): PartMessages {
    return partMessagesFor(this.language.tag);
  }

  /** The words shared with the map. */
  protected get mapWords(): Messages {
    return messagesFor(this.language.tag);
  }

  /** Drops what no longer belongs after an edit, such as the place of an ulcer that is not there. */
  protected tidied(next: T | undefined): T | undefined {
    return next;
  }

  /** A person's edit of one field; tells the page by `input` and `change`. */
  protected edit(path: readonly string[], field: unknown): void {
    this.replace(patchAt(this.#value, path, field));
  }

  /** A person's edit of the whole part. What the schema refuses is not taken. */
  protected replace(edited: T | undefined): void {
    if (!this.editable) return;
    const next = this.tidied(edited);
    if (JSON.stringify(next) === JSON.stringify(this.#value)) {
      this.requestUpdate();
      return;
    }
    const parsed = parseWith(this.schema, next ?? {});
    if (!parsed.ok) {
      this.faults = parsed.faults;
      return;
    }
    this.#dirty = true;
    this.faults = [];
    this.#set(next);
    this.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    this.dispatchEvent(new Event('change', { bubbles: true }));
  }

  /** Remembers what was typed in a field and could not be taken, or forgets it. */
  protected refuse(field: string, refusal?: Refusal): void {
    const next = new Map(this.refusals);
    if (refusal) next.set(field, refusal);
    else next.delete(field);
    this.refusals = next;
    this.#sync();
  }

  /** What was set before the element was known lies on it as a plain property, which would hide the real one. */
  override connectedCallback(): void {
    super.connectedCallback();
    if (!Object.hasOwn(this, 'value')) return;
    const given = Object.getOwnPropertyDescriptor(this, 'value')?.value as T | undefined;
    Reflect.deleteProperty(this, 'value');
    this.value = given;
  }

  #take(value: unknown): void {
    let input: unknown = value === null || value === '' ? undefined : value;
    if (typeof input === 'string') {
      try {
        input = JSON.parse(input);
      } catch {
        this.faults = [{ code: 'unreadable', path: [], found: show(value), expected: ['JSON'] }];
        this.#sync();
        return;
      }
    }
    // The very same value changes nothing, and must not take away what was typed and refused.
    if (!this.faults.length && JSON.stringify(input) === JSON.stringify(this.#value)) return;
    this.refusals = new Map();
    const parsed = input === undefined ? undefined : parseWith(this.schema, input);
    if (parsed && !parsed.ok) {
      this.faults = parsed.faults;
      this.#sync();
      return;
    }
    this.faults = [];
    this.#set(input as T | undefined);
  }

  #set(value: T | undefined): void {
    const old = this.#value;
    this.#value = value && Object.keys(value).length ? value : undefined;
    this.#sync();
    this.requestUpdate('value', old);
  }

  /** Listeners read the form at once, so value and validity are pushed before any event. */
  #sync(): void {
    const text = this.#value ? JSON.stringify(this.#value) : '';
    this.internals.setFormValue(text, text);
    const [fault] = this.faults;
    const [refusal] = this.refusals.values();
    const message = fault ? this.mapWords.examination.fault(fault) : refusal?.sentence;
    const anchor = this.renderRoot?.querySelector<HTMLElement>('input, button, select') ?? undefined;
    if (message) this.internals.setValidity({ badInput: true }, message, anchor);
    else this.internals.setValidity({});
  }
}
