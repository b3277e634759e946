import type { PropertyValues, TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { type Place, PULSE_SITE_IDS, type PulseSiteId } from '../../anatomy/index.js';
import {
  emptyExamination,
  type Examination,
  type Fault,
  isEmptyRecord,
  show,
  unstatedPlaces,
} from '../../examination/index.js';
import { shownMessagesFor, type ShownMessages } from '../../locale/shown.js';
import { FormControl } from './form-control.js';
import type { Later } from './later.js';
import { memoizeLast } from './memoize-last.js';
import { property } from './property.js';
import { faultsIn, hold, isLost, type RecordReader, sameHeld } from './record-value.js';
import { RecordEvent } from './record-event.js';
import { type RecordChangeEvent, RecordStore } from './record-store.js';
import { RovingToolbar } from './roving-toolbar.js';
import { warnOfAttribute } from './unknown-attribute.js';
import { UnreadNotice } from './unread-notice.js';

/**
 * What a record control holds: `empty` and `readable` records can be edited; a `waiting` one is read as soon as the code for it
 * is there; a `sealed` one cannot be read.
 */
export type RecordState = 'empty' | 'readable' | 'waiting' | 'sealed';

/**
 * A form control whose value is an examination as JSON, with the habits of an `<input>`. What it shows is up to the
 * subclass; this class owns value, validity, reset, restore, undo.
 *
 * A value that cannot be read (made by a later version, not a record, no JSON) seals the control: it shows nothing but one
 * sentence, takes no entry, lists what is wrong in `faults`, and `value` and the form keep the very text that was given. It is
 * valid, so that a form can be saved without touching it. A person may start a new record in its place. Only a value that has
 * no JSON text at all (an object that holds itself, say) makes the control invalid (`badInput`), since nothing of it can be kept.
 *
 * @fires {RecordEvent} input - A person changed the record, or a letter of it; `differences` says what.
 * @fires {RecordEvent} change - A person changed the record by one act; `differences` says what.
 * @fires {ReadingChangeEvent} reading-change - What is shown of where the arteries are occluded has changed; `event.sentences` are its headlines.
 */
export abstract class RecordElement extends FormControl<RecordEvent> {
  /** At least one finding must be recorded before the form can be submitted. */
  @property({ type: Boolean, reflect: true }) required = false;
  /**
   * Pulse sites that must be stated (felt, not felt, or not examined and why) before the form can be submitted: ids set apart by
   * blanks, each for both sides.
   */
  @property() require = '';
  /** Accessible name where no `<label>` gives one. */
  @property() label = '';
  @state() protected labelText = '';

  readonly #own = new RecordStore(emptyExamination());
  #store = this.#own;
  #anchored: HTMLElement | undefined;
  readonly #unread = new UnreadNotice(this, {
    editable: () => super.editable,
    start: () => {
      this.#store.startNew();
      void this.updateComplete.then(() => this.focus());
    },
    retry: () => this.#await(),
  });
  readonly #onRecord = (event: Event): void => this.#recordChanged(event as RecordChangeEvent);
  /** The record as the last event of each type left it. */
  #told: Record<'input' | 'change', Examination> = { input: BLANK, change: BLANK };

  constructor() {
    super();
    this.#store.addEventListener('record-change', this.#onRecord);
    new RovingToolbar(this);
  }

  /** The record with its undo. Elements given the same store edit the same record; given none, one of its own. */
  get store(): RecordStore {
    return this.#store;
  }

  set store(given: RecordStore | null | undefined) {
    const store = given ?? this.#own;
    if (store === this.#store) return;
    if (!(store instanceof RecordStore))
      throw new TypeError(`store: found ${show(store)}, expected the store of a record element`);
    this.#store.removeEventListener('record-change', this.#onRecord);
    this.#store = store;
    store.addEventListener('record-change', this.#onRecord);
    this.#await();
    this.#recordChanged();
  }

  /** What the control holds. */
  get recordState(): RecordState {
    const { held, examination } = this.#store;
    return held.state === 'readable' && isEmptyRecord(examination) ? 'empty' : held.state;
  }

  /** What is wrong with a value that cannot be read, for developers; empty when it was read. */
  get faults(): readonly Fault[] {
    return faultsIn(this.#store.held);
  }

  /**
   * The record as data, empty unless `recordState` is `readable`. Setting it checks it and starts a new history.
   */
  get examination(): Examination {
    return this.#store.examination;
  }

  set examination(examination: Examination | null | undefined) {
    this.value = examination;
  }

  /**
   * The record as JSON text, empty when nothing is recorded; the very text that was given while it is not read. Takes text, a
   * record, or null for none.
   */
  get value(): string {
    return this.#store.text;
  }

  set value(value: string | Examination | null | undefined) {
    this.dirty = true;
    this.take(value);
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const root = super.createRenderRoot();
    // Fields within would let their own input events out, which are none of the control's.
    root.addEventListener('input', stopPropagation);
    root.prepend(this.#anchor());
    return root;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#syncForm();
  }

  override formDisabledCallback(disabled: boolean): void {
    super.formDisabledCallback(disabled);
    this.#syncForm();
  }

  /** What reads a record; without its `part` a value waits. */
  protected abstract get reader(): Later<RecordReader>;

  /** Nothing may be changed either while what was given is not read. */
  protected override get editable(): boolean {
    return super.editable && this.#store.held.state === 'readable';
  }

  /** What is shown in place of everything else while what was given is not read. */
  protected get unreadNotice(): TemplateResult | undefined {
    return this.#unread.template(this.#store.held, this.words.form);
  }

  /** Whether the record is this element's own, and not that of one around it. */
  protected get ownsRecord(): boolean {
    return this.#store === this.#own;
  }

  /** The places that `require` asks for and nothing is stated of yet. */
  get missing(): readonly Place<PulseSiteId>[] {
    const sites = this.#required(this.require);
    return sites.length ? unstatedPlaces(this.examination).filter(({ site }) => sites.includes(site)) : [];
  }

  readonly #required = memoizeLast((require: string): readonly PulseSiteId[] => {
    const ids = require.split(/\s+/).filter(Boolean);
    const known = ids.filter((id): id is PulseSiteId => (PULSE_SITE_IDS as readonly string[]).includes(id));
    if (known.length < ids.length)
      warnOfAttribute(this, 'require', PULSE_SITE_IDS, 'only the sites among them are asked for');
    return known;
  });

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
  protected get words(): ShownMessages {
    return shownMessagesFor(this.language.tag, this.language.register);
  }

  /** Moves the focus into the control. */
  override focus(options?: FocusOptions): void {
    const first = this.renderRoot?.querySelector<HTMLElement>(
      'button:enabled, select:enabled, input:enabled, [tabindex="0"]',
    );
    if (!this.barred) first?.focus(options);
  }

  /**
   * Makes a person's edit one step of the history; tells the page by `input` and `change`.
   * @param field the field being typed in: `change` then follows once the store is told to settle
   */
  protected edit(next: Examination, field?: unknown): boolean {
    return this.editable && this.#store.commit(next, field);
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

  protected override take(value: unknown): void {
    const { examination } = this.#store;
    const next = hold(value, emptyExamination(examination.scale), this.reader.part?.parseExaminationText);
    // The very same value changes nothing, and loses no undo.
    if (sameHeld(next, this.#store.held)) this.#syncForm();
    else this.#store.take(next);
    this.#await();
  }

  /** Fetches what reads the value, where it waits for that. */
  #await(): void {
    const { reader } = this;
    const read = (): void => {
      if (reader.part) this.#store.read(reader.part.parseExaminationText);
    };
    if (this.#store.held.state !== 'waiting') return;
    this.#unread.failed = false;
    read();
    void reader.load().then(() => {
      read();
      this.#unread.failed = this.#store.held.state === 'waiting';
      if (this.#unread.failed) this.requestUpdate();
    });
  }

  #recordChanged(event?: RecordChangeEvent): void {
    const { examination } = this;
    const tells = event?.tells ?? [];
    if (tells.length) this.dirty = true;
    else {
      this.#told = { input: examination, change: examination };
      // A value set before the element was known comes while its class is still being made.
      if (this.hasUpdated) this.taken();
    }
    this.#syncForm();
    this.requestUpdate('examination');
    for (const type of tells) {
      const before = this.#told[type];
      this.#told[type] = examination;
      this.dispatchEvent(new RecordEvent(type, event?.act ?? 'edit', before, examination));
    }
  }

  /** Listeners may read the form synchronously, so value and validity are set before any event. */
  #syncForm(): void {
    const { value } = this;
    this.internals.setFormValue(value, value);
    this.internals.ariaRequired = this.required || this.require ? 'true' : null;
    this.checkEntry();
  }

  protected override get empty(): boolean {
    return this.value === '';
  }

  protected override checkEntry(): void {
    const { form, anatomy } = this.words;
    const anchor = this.#anchored;
    if (isLost(this.#store.held)) this.validate({ badInput: true }, form.lost, anchor);
    else if (this.required && this.empty) this.validate({ valueMissing: true }, form.required, anchor);
    else if (this.#store.held.state === 'readable' && this.missing.length)
      this.validate({ valueMissing: true }, form.toState(this.missing.map(anatomy.place)), anchor);
    else this.validate();
  }
}

const BLANK = emptyExamination();

function stopPropagation(event: Event): void {
  event.stopPropagation();
}
