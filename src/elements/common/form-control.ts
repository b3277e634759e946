import { LitElement, type PropertyValues } from 'lit';
import { state } from 'lit/decorators.js';
import type { Fault } from '../../examination/index.js';
import { adoptProperties } from './adopt-properties.js';
import { FormNotes } from './form-notes.js';
import { LANG, LanguageController } from './language.js';
import { ownRoot } from './own-root.js';
import { checked, property, RECORD } from './property.js';
import { textGiven } from './record-value.js';

/** An event as a listener on the element itself receives it. */
export type From<E extends Event, T> = E & { readonly target: T; readonly currentTarget: T };

/** Words for `:state(…)` in a host's style sheet. */
type StateName = 'invalid' | 'user-invalid' | 'readonly' | 'empty' | 'drawing';

/* eslint-disable @typescript-eslint/no-unsafe-declaration-merging, @typescript-eslint/no-unused-vars -- types alone: whose event it is */
export interface FormControl<Told extends Event = Event> {
  addEventListener<K extends keyof HTMLElementEventMap>(
    type: K,
    listener: (
      this: this,
      event: K extends 'input' | 'change' ? From<Told, this> : HTMLElementEventMap[K],
    ) => unknown,
    options?: boolean | AddEventListenerOptions,
  ): void;
  addEventListener(
    type: string,
    listener: EventListenerOrEventListenerObject,
    options?: boolean | AddEventListenerOptions,
  ): void;
}

/**
 * Base of every form control: what it shares with an `<input>` (name, states, form, validity, reset). Subclasses define the value and
 * how it is parsed. `Told` is what `input` and `change` are.
 *
 * @slot hint - A sentence of the page on what to enter, above the control.
 * @slot error - A sentence of the page on what is wrong, such as a server's answer; it stands in place of the control's own.
 * @csspart notes - Hint and error.
 * @cssState invalid - The form would refuse the value.
 * @cssState user-invalid - It has refused it, and says so in the control.
 * @cssState readonly - The value is shown and cannot be changed.
 * @cssState empty - Nothing is recorded.
 */
export abstract class FormControl<Told extends Event = Event> extends LitElement {
  static readonly formAssociated = true;

  /** Name under which the form submits the value. */
  @property({ reflect: true, useDefault: true }) name = '';
  /** Nothing can be changed and nothing is submitted. */
  @property({ type: Boolean, reflect: true }) disabled = false;
  /** Nothing can be changed; the value is submitted. */
  @property({ type: Boolean, reflect: true, attribute: 'readonly' }) readOnly = false;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';

  @state() protected formDisabled = false;

  protected readonly internals = this.attachInternals();
  /** Made with the shadow tree, which a server has none of. */
  #notes: FormNotes | undefined;
  #custom = '';
  /** Whether a form, or code, has asked for the value and was refused since it was valid last. */
  #refused = false;
  /** Whether hand or code gave another value since the last reset: the `value` attribute then says only what a reset returns to. */
  protected dirty = false;
  protected readonly language = new LanguageController(this);

  constructor() {
    super();
    this.addEventListener('invalid', () => {
      this.#refused = true;
      this.#showValidity();
    });
  }

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, 'value'];
  }

  /** What is wrong with the value written last, for developers; empty when it was read. */
  abstract get faults(): readonly Fault[];

  /** The value that reset returns to: the `value` attribute. */
  @checked(RECORD)
  get defaultValue(): string {
    return this.getAttribute('value') ?? '';
  }

  set defaultValue(value: string) {
    this.setAttribute('value', textGiven(value) ?? '');
  }

  get form(): HTMLFormElement | null {
    return this.internals.form;
  }
  get labels(): NodeList {
    return this.internals.labels;
  }
  get validity(): ValidityState {
    return this.internals.validity;
  }
  get validationMessage(): string {
    return this.internals.validationMessage;
  }
  get willValidate(): boolean {
    return this.internals.willValidate;
  }
  get type(): string {
    return this.localName;
  }
  checkValidity(): boolean {
    return this.internals.checkValidity();
  }
  reportValidity(): boolean {
    return this.internals.reportValidity();
  }

  /**
   * Makes the control invalid with a sentence of the page's own, such as a server's or a study's; an empty one takes it back.
   */
  setCustomValidity(message: string): void {
    this.#custom = message;
    this.checkEntry();
  }

  /** Takes a value from code, and what is no value as one that cannot be read; the very same one changes nothing. */
  protected abstract take(value: unknown): void;

  /** Called when another value was taken from code, so that nothing of the one before stays on the screen; and by a reset. */
  protected taken(): void {
    // A subclass may have nothing to forget.
  }

  override attributeChangedCallback(name: string, old: string | null, now: string | null): void {
    super.attributeChangedCallback(name, old, now);
    if (name === 'value' && !this.dirty) this.take(now);
  }

  override connectedCallback(): void {
    adoptProperties(this);
    super.connectedCallback();
  }

  formResetCallback(): void {
    this.dirty = false;
    this.take(this.defaultValue);
    // What was begun and is in no value yet goes with a reset that leaves the value as it is, too.
    if (this.hasUpdated) this.taken();
  }

  formStateRestoreCallback(saved: string | File | FormData | null): void {
    if (saved === null || saved instanceof File) return;
    this.dirty = true;
    this.take(typeof saved === 'string' ? saved : String(saved.get(this.name) ?? ''));
  }

  formDisabledCallback(disabled: boolean): void {
    // The attribute is never written here, or a fieldset enabled again would leave the control disabled.
    this.formDisabled = disabled;
    // Reflecting the attribute calls this amid an update, in which a change would be lost.
    if (this.isUpdatePending) void this.updateComplete.then(() => this.requestUpdate());
  }

  /** Whether a person may change the value. */
  protected get editable(): boolean {
    return !this.disabled && !this.formDisabled && !this.readOnly;
  }

  /** Works out anew what the form would refuse, and hands it to `validate`. */
  protected abstract checkEntry(): void;

  /** Whether nothing is recorded. */
  protected abstract get empty(): boolean;

  /**
   * Tells the form what is wrong with the value; nothing where there are no flags.
   * @param anchor what the form focuses
   */
  protected validate(flags: ValidityStateFlags = {}, message = '', anchor?: HTMLElement): void {
    const all = this.#custom ? { ...flags, customError: true } : flags;
    if (Object.keys(all).length) this.internals.setValidity(all, this.#custom || message, anchor);
    else this.internals.setValidity({});
    if (this.internals.validity.valid) this.#refused = false;
    this.#showValidity();
  }

  /** Sets a word that a style sheet of the page can ask for. */
  protected setState(name: StateName, on: boolean): void {
    // A browser may know no such words, or only dashed ones: it then shows the control without them.
    try {
      this.internals.states[on ? 'add' : 'delete'](name);
    } catch {
      return;
    }
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const root = ownRoot(this, super.createRenderRoot());
    this.#notes ??= new FormNotes();
    root.prepend(this.#notes.element);
    this.#showValidity();
    return root;
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    this.setState('readonly', this.readOnly);
  }

  #showValidity(): void {
    const { valid } = this.internals.validity;
    this.setState('invalid', !valid);
    this.setState('user-invalid', this.#refused);
    this.setState('empty', this.empty);
    this.internals.ariaInvalid = this.#refused ? 'true' : null;
    if (this.#notes) this.#notes.message = this.#refused ? this.validationMessage : '';
  }
}
