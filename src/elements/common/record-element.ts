import type { PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import {
  emptyExamination,
  type Examination,
  isEmptyRecord,
  parseExamination,
  parseExaminationText,
  type Parsed,
  show,
} from '../../examination/index.js';
import { messagesFor, type Messages } from '../../locale/index.js';
import { FormControl } from './form-control.js';
import { RecordStore } from './record-store.js';
import { RovingToolbar } from './roving-toolbar.js';

/**
 * A form control whose value is an examination as JSON, with the habits of an `<input>`. What it shows is up to the
 * subclass; this class owns value, validity, reset, restore, undo.
 *
 * Writing a value that cannot be read keeps what was there, lists what is wrong in `faults` and makes the control invalid
 * (`badInput`) until a readable value comes.
 */
export abstract class RecordElement extends FormControl {
  /** At least one finding must be recorded before the form can be submitted. */
  @property({ type: Boolean, reflect: true }) required = false;
  /** Accessible name where no `<label>` gives one. */
  @property() label = '';
  @state() protected labelText = '';

  #store = new RecordStore(emptyExamination());
  #dirty = false;
  #anchored: HTMLElement | undefined;
  readonly #onRecord = (event: Event): void =>
    this.#recordChanged((event as { user?: boolean }).user ?? false);

  constructor() {
    super();
    this.#store.addEventListener('record-change', this.#onRecord);
    new RovingToolbar(this);
    this.#adopt();
  }

  /** The record with its undo. Elements given the same store edit the same record. */
  get store(): RecordStore {
    return this.#store;
  }

  set store(store: RecordStore) {
    if (store === this.#store) return;
    this.#store.removeEventListener('record-change', this.#onRecord);
    this.#store = store;
    store.addEventListener('record-change', this.#onRecord);
    this.#recordChanged(false);
  }

  /** The record as data. Setting it checks it and starts a new history. */
  get examination(): Examination {
    return this.#store.examination;
  }

  set examination(examination: Examination | null | undefined) {
    this.value = examination;
  }

  /** The record as JSON text, empty when nothing is recorded. Takes text, a record, or null for none; see the class. */
  get value(): string {
    const { examination } = this.#store;
    return isEmptyRecord(examination) ? '' : JSON.stringify(examination);
  }

  set value(value: string | Examination | null | undefined) {
    this.#dirty = true;
    this.#take(value);
  }

  override attributeChangedCallback(name: string, old: string | null, now: string | null): void {
    super.attributeChangedCallback(name, old, now);
    if (name === 'value' && !this.#dirty) this.#take(now);
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const root = super.createRenderRoot();
    // Fields within would let their own input events out, which are none of the control's.
    root.addEventListener('input', stopPropagation);
    // What a server put there in the meantime goes.
    root.replaceChildren(this.#anchor());
    this.renderOptions.renderBefore = null;
    return root;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#syncForm();
  }

  override formDisabledCallback(disabled: boolean): void {
    super.formDisabledCallback(disabled);
    this.#syncForm();
    // Reflecting the attribute calls this amid an update, in which a change would be lost.
    if (this.isUpdatePending) void this.updateComplete.then(() => this.requestUpdate());
  }

  formResetCallback(): void {
    this.#dirty = false;
    this.#take(this.defaultValue);
  }

  formStateRestoreCallback(saved: string | File | FormData | null): void {
    if (typeof saved === 'string') this.value = saved;
    else if (saved instanceof FormData) this.value = String(saved.get(this.name) ?? '');
  }

  /** Takes one step back. */
  undo(): void {
    if (this.editable) this.#store.undo();
  }

  /** Takes one undone step again. */
  redo(): void {
    if (this.editable) this.#store.redo();
  }

  /** Disabled by itself or by a fieldset: it takes no focus either. */
  protected get barred(): boolean {
    return this.disabled || this.formDisabled;
  }

  /** The words of the language in force. */
  protected get words(): Messages {
    return messagesFor(this.language.tag);
  }

  /** Moves the focus into the control. */
  override focus(options?: FocusOptions): void {
    const first = this.renderRoot?.querySelector<HTMLElement>(
      'button:enabled, select:enabled, input:enabled',
    );
    if (!this.barred) first?.focus(options);
  }

  /** Makes a person's edit one step of the history; tells the page by `input` and `change`. */
  protected edit(next: Examination): boolean {
    return this.editable && this.#store.commit(next);
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const labels = [...(this.internals.labels ?? [])].map((node) => node.textContent?.trim() ?? '');
    this.labelText = labels.filter(Boolean).join(', ') || this.label || this.getAttribute('aria-label') || '';
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    this.#syncForm();
  }

  /**
   * What the form focuses when it finds the control invalid. It must be an HTML element, and be there before the first render;
   * it hands the focus on.
   */
  #anchor(): HTMLElement {
    const anchor = document.createElement('span');
    anchor.tabIndex = -1;
    anchor.style.cssText =
      'position:absolute;inline-size:100%;block-size:1px;outline:none;pointer-events:none';
    anchor.addEventListener('focus', () => {
      if (this.hasUpdated) this.focus();
      else void this.updateComplete.then(() => this.focus());
    });
    this.#anchored = anchor;
    return anchor;
  }

  /** What was set before the element was known lies on it as plain properties, which would hide the real ones. */
  #adopt(): void {
    for (const name of ['store', 'examination', 'value', 'defaultValue'] as const) {
      if (!Object.hasOwn(this, name)) continue;
      const given = Object.getOwnPropertyDescriptor(this, name)?.value as never;
      Reflect.deleteProperty(this, name);
      this[name] = given;
    }
  }

  #take(value: string | Examination | null | undefined): void {
    const parsed = this.#read(value);
    if (!parsed.ok) {
      this.faults = parsed.faults;
      this.#syncForm();
      return;
    }
    this.faults = [];
    if (JSON.stringify(parsed.value) === JSON.stringify(this.#store.examination)) this.#syncForm();
    else this.#store.restart(parsed.value);
  }

  #read(value: unknown): Parsed<Examination> {
    if (value === null || value === undefined || value === '') {
      return { ok: true, value: emptyExamination(this.#store.examination.scale) };
    }
    if (typeof value === 'string') return parseExaminationText(value);
    if (typeof value === 'object') return parseExamination(value);
    return {
      ok: false,
      faults: [{ code: 'wrong-type', path: [], found: show(value), expected: ['object', 'JSON'] }],
    };
  }

  #recordChanged(user: boolean): void {
    if (user) {
      this.#dirty = true;
      this.faults = [];
    }
    this.#syncForm();
    this.requestUpdate('examination');
    if (!user) return;
    this.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    this.dispatchEvent(new Event('change', { bubbles: true }));
  }

  /** Listeners read the form at once, so value and validity are pushed before any event. */
  #syncForm(): void {
    const { value } = this;
    this.internals.setFormValue(value, value);
    const { form: words } = this.words;
    const anchor = this.#anchored;
    const [fault] = this.faults;
    if (fault) {
      this.internals.setValidity({ badInput: true }, this.words.examination.fault(fault), anchor);
    } else if (this.required && !value) {
      this.internals.setValidity({ valueMissing: true }, words.required, anchor);
    } else {
      this.internals.setValidity({});
    }
  }
}

function stopPropagation(event: Event): void {
  event.stopPropagation();
}
