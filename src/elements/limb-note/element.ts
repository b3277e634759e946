import { html, nothing, type TemplateResult } from 'lit';
import { query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Examination } from '../../examination/index.js';
import { LANGUAGES, type LanguageTag, messagesFor } from '../../locale/index.js';
import type { NoteWords } from '../../locale/note.js';
import { partMessagesFor } from '../../locale/parts.js';
import type { NoteAnswer, NoteReading } from '../../notes/index.js';
import type * as Notes from '../../notes/index.js';
import { Later } from '../common/later.js';
import { JoinedRecord } from '../common/joined-record.js';
import { checked, OBJECT, property, TEXT } from '../common/property.js';
import { RecordElement } from '../common/record-element.js';
import type { RecordReader } from '../common/record-value.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { UnfinishedChangeEvent, type Unfinished } from '../common/unfinished.js';
import { unreadStyles } from '../common/unread-notice.js';
import { reader } from '../pulse-reading/reader.js';
import { type Plan, planOf } from './plan.js';
import { Dictation } from './dictation.js';
import { renderAsked, renderNotUnderstood, renderSure } from './read-back.js';
import { noteStyles } from './styles.js';

/** The reader of notes with its lexicons, fetched when a person begins to write. */
const notes = new Later<typeof Notes>(() => import('../../notes/index.js'));

/** The field under which a page that keeps drafts finds the text. */
const FIELD = 'note';

/** What was recorded last, to be taken back in one act. */
interface Recorded {
  readonly count: number;
  readonly text: string;
  readonly record: Examination;
}

/** The language that a note is read in: that of the words, where notes in it can be read, else English. */
const readIn = (tag: string): LanguageTag =>
  LANGUAGES.find((language) => language.tag === tag.toLowerCase().split('-')[0])?.tag ?? 'en';

/**
 * A field in which a clinician types or dictates what was found at the pulses and heard over the arteries. What it understood is shown
 * finding by finding, each with its words; what is in doubt is asked; what replaces something recorded is ticked first. Nothing is
 * written before the person records it, and then it is one step to undo.
 *
 * It edits the record of another element, named by `for` or handed over as `store`; alone it holds a record of its own.
 *
 * @tag limb-note
 * @attr value - The record as JSON, where it holds its own; what a form reset returns to.
 * @fires {UnfinishedChangeEvent} unfinished-change - The text of the note has changed.
 * @csspart field - The field.
 * @csspart findings - What was understood.
 * @csspart question - One question.
 */
export class LimbNote extends RecordElement {
  static override styles = [tokenStyles, controlStyles, unreadStyles, noteStyles];

  /** Id of the element in the same tree whose record the note is written into, such as a `<pulse-map>`. */
  @property({ attribute: 'for' }) htmlFor = '';

  /** The text of the note, which is no part of the record. */
  @property({ attribute: false, shape: TEXT }) text = '';

  @state() private answers: ReadonlyMap<string, NoteAnswer> = new Map();
  @state() private replacing: ReadonlySet<string> = new Set();
  @state() private done: Recorded | undefined;
  /** The person wanted to record while a question was open. */
  @state() private hurried = false;
  @state() private takenBack = false;
  @query('textarea') private readonly field!: HTMLTextAreaElement | null;
  readonly #dictation = new Dictation(this, {
    lang: () => this.language.tag,
    heard: (words) => this.#write(`${this.text.trimEnd()}${this.text.trim() ? ' ' : ''}${words}`),
  });
  #read: { text: string; scale: string; tag: LanguageTag; reading: NoteReading } | undefined;

  constructor() {
    super();
    new JoinedRecord(this, () => this.htmlFor);
  }

  /** The text as what no field has taken yet, for a page that keeps drafts. */
  @checked(OBJECT)
  get unfinished(): Unfinished | undefined {
    return this.text ? { [FIELD]: { typed: this.text, sentence: this.noteWords.caution } } : undefined;
  }

  set unfinished(unfinished: Unfinished | null | undefined) {
    const typed: unknown = unfinished?.[FIELD]?.typed;
    this.text = typeof typed === 'string' ? typed : '';
  }

  override focus(options?: FocusOptions): void {
    if (!this.barred) this.field?.focus(options);
  }

  protected override get reader(): Later<RecordReader> {
    return reader;
  }

  protected get noteWords(): NoteWords {
    return partMessagesFor(this.language.tag, this.language.register).note;
  }

  protected override taken(): void {
    this.done = undefined;
    this.takenBack = false;
  }

  get #reading(): NoteReading | undefined {
    const { text } = this;
    if (!notes.part || !text.trim()) return undefined;
    const { scale } = this.examination;
    const tag = readIn(this.language.tag);
    if (this.#read?.text !== text || this.#read.scale !== scale || this.#read.tag !== tag)
      this.#read = { text, scale, tag, reading: notes.part.readNote(text, { scale, language: tag }) };
    return this.#read.reading;
  }

  get #plan(): Plan | undefined {
    const reading = this.#reading;
    return reading && planOf(notes.part!, this.examination, this.text, reading, this.answers, this.replacing);
  }

  protected override render(): TemplateResult | typeof nothing {
    const { unreadNotice, noteWords: words } = this;
    if (unreadNotice) return this.ownsRecord ? unreadNotice : nothing;
    if (!this.editable) return nothing;
    const reading = this.#reading;
    const plan = this.#plan;
    return html`<div role="group" aria-label=${this.labelText || words.title} @keydown=${this.#keydown}>
      <div class="line">
        <label for="note">${words.label}</label>
        ${this.#dictation.button(words)}
      </div>
      <div class="paper" part="field">
        <div class="marks" aria-hidden="true">${this.#marks(reading)}</div>
        <textarea
          id="note"
          rows="2"
          spellcheck="false"
          autocapitalize="off"
          aria-describedby="hint"
          .value=${live(this.text)}
          @focus=${() => void notes.load()}
          @input=${(event: InputEvent) => this.#write((event.target as HTMLTextAreaElement).value)}
          @change=${(event: Event) => event.stopPropagation()}
        ></textarea>
      </div>
      <p class="hint" id="hint">${words.hint}</p>
      ${this.text && !notes.part ? this.#notLoaded(words) : nothing}
      <p role="status" class="said">${this.#said(plan, reading, words)}</p>
      ${plan && reading ? this.#readBack(plan, reading, words) : nothing}
      <div class="acts">
        ${this.text ? this.#acts(plan, words) : nothing}
        ${
          this.done && this.done.record === this.examination
            ? html`<button type="button" class="button" id="undo" @click=${this.#takeBack}>
                ${words.undo(this.done.count)}
              </button>`
            : nothing
        }
      </div>
    </div>`;
  }

  #marks(reading: NoteReading | undefined): unknown {
    // A line that ends the text would have no height without a character after it.
    if (!reading) return `${this.text}\u200b`;
    const pieces = notes
      .part!.notePieces(this.text, reading)
      .map(({ text, kind, question }) =>
        kind === 'plain'
          ? text
          : html`<span class=${`is-${kind}`} data-question=${question ?? nothing}>${text}</span>`,
      );
    return html`${pieces}${'\u200b'}`;
  }

  #said(plan: Plan | undefined, reading: NoteReading | undefined, words: NoteWords): string {
    if (plan && reading) {
      const read = plan.sure.length + plan.asked.reduce((sum, { planned }) => sum + planned.length, 0);
      return words.summary(read, plan.open.length, reading.unread.length);
    }
    if (this.done && this.done.record === this.examination) return words.recorded(this.done.count);
    return this.takenBack ? words.takenBack : '';
  }

  #readBack(plan: Plan, reading: NoteReading, words: NoteWords): TemplateResult {
    const { text, examination } = this;
    const context = {
      text,
      examination,
      words,
      messages: messagesFor(this.language.tag, this.language.register),
      notes: notes.part!,
      replacing: this.replacing,
      replace: (key: string, on: boolean) => {
        const next = new Set(this.replacing);
        if (on) next.add(key);
        else next.delete(key);
        this.replacing = next;
      },
    };
    const questions = plan.asked.map((one) =>
      renderAsked(one, context, (answer) => {
        this.answers = new Map(this.answers).set(one.key, answer);
      }),
    );
    return html`<div class="back">
      <div>${renderSure(plan.sure, context)} ${renderNotUnderstood(reading.unread, context)}</div>
      ${questions.length ? html`<div class="questions">${questions}</div>` : nothing}
    </div>`;
  }

  #acts(plan: Plan | undefined, words: NoteWords): TemplateResult {
    const count = plan?.writes.length ?? 0;
    return html`${
        this.hurried && plan?.open.length
          ? html`<p role="alert" class="refusal">${words.open(plan.open)}</p>`
          : nothing
      }
      <p class="hint">${words.caution}</p>
      <button
        type="button"
        class="button solid"
        ?disabled=${!count && !plan?.open.length}
        @click=${() => void this.#record()}
      >
        ${count ? words.record(count) : words.nothingToRecord}
      </button>
      <button type="button" class="button" @click=${() => this.#clear()}>${words.clear}</button>`;
  }

  #notLoaded(words: NoteWords): TemplateResult | typeof nothing {
    if (!this.#failed) {
      void notes.load().then(() => {
        this.#failed = !notes.part;
        this.requestUpdate();
      });
      return nothing;
    }
    return html`<p role="alert" class="refusal">
      ${words.notLoaded}
      <button type="button" class="button" @click=${() => this.#retry()}>${words.tryAgain}</button>
    </p>`;
  }

  #failed = false;
  #retry(): void {
    this.#failed = false;
    this.requestUpdate();
  }

  #write(text: string): void {
    this.text = text;
    this.hurried = false;
    this.takenBack = false;
    this.dispatchEvent(new UnfinishedChangeEvent());
  }

  #clear(): void {
    this.#write('');
    this.answers = new Map();
    this.replacing = new Set();
    this.focus();
  }

  async #record(): Promise<void> {
    const plan = this.#plan;
    if (!plan) return;
    if (plan.open.length) {
      this.hurried = true;
      await this.updateComplete;
      this.renderRoot.querySelector<HTMLElement>(`#question-${plan.open[0]} input`)?.focus();
      return;
    }
    const { text } = this;
    const count = plan.writes.length;
    if (!count || !this.edit(notes.part!.writeNote(this.examination, plan.writes))) return;
    const inField = (this.renderRoot as ShadowRoot).activeElement === this.field;
    this.#write('');
    this.answers = new Map();
    this.replacing = new Set();
    this.done = { count, text, record: this.examination };
    await this.updateComplete;
    if (!inField) this.renderRoot.querySelector<HTMLElement>('#undo')?.focus();
  }

  readonly #takeBack = async (): Promise<void> => {
    const { done } = this;
    if (!done) return;
    this.undo();
    // What was typed meanwhile stays after the note that comes back.
    this.#write([done.text, this.text].filter(Boolean).join('\n'));
    this.done = undefined;
    this.takenBack = true;
    await this.updateComplete;
    this.focus();
  };

  readonly #keydown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      void this.#record();
    }
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-note': LimbNote;
  }
}
