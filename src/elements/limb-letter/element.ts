import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import {
  emptyExamination,
  type Examination,
  type Fault,
  isEmptyRecord,
  parseExaminationText,
} from '../../examination/index.js';
import {
  escapedHtml,
  sitesTable,
  type Summary,
  summaryHtml,
  summaryOf,
  summaryText,
} from '../../interchange/letter/index.js';
import { LETTER_LENGTHS, type LetterLength } from '../../letter/index.js';
import { messagesFor } from '../../locale/index.js';
import { partMessagesFor, type PartMessages } from '../../locale/parts.js';
import type { Pathway } from '../../triage/index.js';
import { FormControl } from '../common/form-control.js';
import { GivenRecord } from '../common/given-record.js';
import { Later } from '../common/later.js';
import { pathwayOf } from '../common/pathway.js';
import { OBJECT, property, RECORD } from '../common/property.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { withoutSentence, withSentence } from './behind.js';
import { caretUnder } from './caret.js';
import { renderChanged } from './changed.js';
import { copyBoth } from './clipboard.js';
import { Edits, type LetterEdits, readEdits } from './edits.js';
import { LetterChangeEvent } from './events.js';
import { findingsOf, sentenceAt, sentencesOf } from './sources.js';
import { letterStyles } from './styles.js';

export { LetterChangeEvent } from './events.js';
export type { LetterEdit, LetterEdits } from './edits.js';

/** What a record says: as a summary, as text, and its sentences. */
interface Composed {
  readonly summary: Summary;
  readonly text: string;
  readonly sentences: readonly string[];
}

const READER = Later.ready({ parseExaminationText });

/**
 * A record in words that a person can change and take along: a line, a summary, a letter or a handover. What the person wrote is kept
 * when the record changes; each sentence that is new or no longer so is told, and taken when the person says so. Beside the text
 * stands what the sentence at the caret, or under the pointer, comes from. The form submits the text as it stands, under `name`.
 *
 * @tag limb-letter
 * @fires {Event} input - A person changed the text, the length, or took the new text.
 * @fires {Event} change - A person has finished such a change.
 * @fires {LetterChangeEvent} letter-change - What the person wrote is otherwise; it carries all of it, to be kept by the page.
 * @csspart text - The text.
 * @csspart from - What the sentence at the caret comes from.
 * @csspart changed - Said when the record has changed under a text of one's own.
 */
export class LimbLetter extends FormControl {
  static override styles = [tokenStyles, controlStyles, letterStyles];

  /** The record that is put into words. One that cannot be read, such as one of a later version, is not interpreted. */
  @property({ attribute: false, shape: RECORD }) examination: Examination = emptyExamination();
  /** The record of the visit before, which conclusion and indices take into account. */
  @property({ attribute: false, shape: RECORD }) earlier: Examination | null = null;
  /** The hospital's own pathway, of which the limits count here. */
  @property({ attribute: false, shape: OBJECT }) pathway: Pathway | undefined = undefined;
  /** The patient as the page names him; the record itself names nobody. */
  @property() subject = '';
  /** How much is said: `line`, `short`, `letter` or `handover`. */
  @property() length: LetterLength = 'short';

  /** What a person wrote, as `letter-change` told it: the texts of one's own stand here again after a reload. */
  @property({ attribute: false, shape: OBJECT })
  get edits(): LetterEdits {
    return this.#edits.all;
  }

  set edits(edits: LetterEdits | null | undefined) {
    if (edits === this.#edits.all) return;
    this.#edits.all = readEdits(edits);
    this.#told = this.#edits.all;
  }

  @state() private caret: number | undefined;
  /** Where the pointer is in the text. */
  @state() private hovered: number | undefined;
  @state() private said = '';
  @query('textarea') private readonly field!: HTMLTextAreaElement | null;
  readonly #given = new GivenRecord(READER);
  readonly #before = new GivenRecord(READER);
  readonly #edits = new Edits();
  #composed: (Composed & { readonly of: readonly unknown[] }) | undefined;

  /** The text as it stands, the person's changes with it; empty while nothing is recorded. */
  get value(): string {
    const { record } = this;
    return record && !isEmptyRecord(record) ? this.#text(record) : '';
  }

  override get faults(): readonly Fault[] {
    return [];
  }

  override focus(options?: FocusOptions): void {
    this.field?.focus(options);
  }

  protected override take(): void {
    // The text follows from the record.
  }

  override formResetCallback(): void {
    this.#edits.all = {};
    this.requestUpdate();
  }

  protected override checkEntry(): void {
    this.validate();
  }

  protected override get empty(): boolean {
    return this.value === '';
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    // What was said of one text must not stand beside another.
    if (this.said && this.#saidOf !== this.value) this.said = '';
  }

  #say(said: string, of = this.value): void {
    this.said = said;
    this.#saidOf = of;
  }
  #saidOf = '';

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    this.internals.setFormValue(this.value || null);
    this.setState('empty', this.empty);
  }

  private get record(): Examination | undefined {
    const held = this.#given.held(this.examination);
    return held.state === 'readable' ? held.value : undefined;
  }

  private get words(): PartMessages {
    return partMessagesFor(this.language.tag, this.language.register);
  }

  /** The length in use; one that is none is the summary. */
  get #length(): LetterLength {
    return LETTER_LENGTHS.includes(this.length) ? this.length : 'short';
  }

  #summary(record: Examination): Composed {
    const { tag, register } = this.language;
    const before = this.earlier ? this.#before.held(this.earlier) : undefined;
    const earlier = before?.state === 'readable' ? before.value : undefined;
    // The words, too: those of a language may be fetched after it was asked for.
    const of = [record, earlier, this.pathway, this.subject, this.#length, tag, register, this.words];
    if (!this.#composed || of.some((one, i) => one !== this.#composed?.of[i])) {
      const summary = summaryOf(record, {
        length: this.#length,
        language: tag,
        register,
        earlier,
        subject: this.subject || undefined,
        settings: pathwayOf(this.pathway).settings,
      });
      this.#composed = { of, summary, text: summaryText(summary), sentences: sentencesOf(summary) };
    }
    return this.#composed;
  }

  #text(record: Examination): string {
    return this.#edits.text(this.#length, this.#summary(record).text);
  }

  protected override render(): TemplateResult {
    const { record, words } = this;
    const { form } = messagesFor(this.language.tag, this.language.register);
    if (!record) return html`<p role="status">${form.sealed}</p>`;
    if (isEmptyRecord(record)) return html`<p class="hint">${words.whole.nothing}</p>`;
    const { letter } = words;
    const own = letter.element;
    const composed = this.#summary(record);
    const barred = this.disabled || this.formDisabled;
    return html`<div class="bar">
        <fieldset ?disabled=${barred}>
          <legend>${own.length}</legend>
          ${LETTER_LENGTHS.map(
            (length) =>
              html`<button
                type="button"
                class="button"
                aria-pressed=${length === this.#length}
                @click=${() => this.#choose(length)}
              >
                ${letter.lengths[length]}
              </button>`,
          )}
        </fieldset>
        <button
          type="button"
          class="button solid copy"
          ?disabled=${barred}
          @click=${() => void this.#copy(record)}
        >
          ${own.copy}
        </button>
        <button
          type="button"
          class="button table"
          ?disabled=${barred}
          @click=${() => void this.#copyTable(record)}
        >
          ${own.copyTable}
        </button>
        ${
          this.editable && this.#edits.isEdited(this.#length)
            ? html`<button type="button" class="button renew" @click=${this.#renew}>${own.renew}</button>`
            : nothing
        }
      </div>
      ${this.#changed(composed)}
      <label>
        <span class="hint">${own.text}</span>
        <textarea
          part="text"
          lang=${composed.summary.language}
          ?readonly=${!this.editable}
          ?disabled=${barred}
          .value=${live(this.#text(record))}
          @input=${(event: InputEvent) => this.#write(event, composed)}
          @change=${() => this.#tell('change')}
          @keyup=${this.#move}
          @click=${this.#move}
          @focus=${this.#move}
          @blur=${this.#leave}
          @pointermove=${this.#hover}
          @pointerleave=${() => (this.hovered = undefined)}
        ></textarea>
      </label>
      ${this.#from(record, composed.summary)}
      <p class="hint" role="status">${this.said}</p>`;
  }

  /** Said where the record has changed since the person wrote. */
  #changed(composed: Composed): TemplateResult {
    const { sentences } = composed;
    const behind = this.editable ? this.#edits.behind(this.#length, sentences) : undefined;
    return renderChanged(behind, this.words.letter.element, {
      renew: this.#renew,
      keep: () => this.#keep(sentences),
      add: (sentence) => this.#alter(composed, 'added', (text) => withSentence(text, sentence, sentences)),
      takeOut: (sentence) => this.#alter(composed, 'takenOut', (text) => withoutSentence(text, sentence)),
    });
  }

  /** Puts one sentence in or out; once nothing more is behind, the person is done with the change. */
  #alter(
    { text, sentences }: Composed,
    said: 'added' | 'takenOut',
    change: (text: string) => { readonly text: string; readonly at: number },
  ): void {
    const next = change(this.#edits.text(this.#length, text));
    this.#edits.write(this.#length, next.text, text, sentences);
    const behind = this.#edits.behind(this.#length, sentences);
    if (behind && !behind.missing.length && !behind.outdated.length)
      this.#edits.keep(this.#length, sentences);
    this.#say(this.words.letter.element[said]);
    this.#tell('input', 'change');
    void this.updateComplete.then(() => {
      this.field?.focus();
      this.field?.setSelectionRange(next.at, next.at);
      this.#move();
    });
  }

  #from(record: Examination, summary: Summary): TemplateResult {
    const { letter, report } = this.words;
    const place = this.hovered ?? this.caret;
    const sentence = place === undefined ? undefined : sentenceAt(summary, this.#text(record), place);
    const findings = sentence ? findingsOf(record, sentence, report) : [];
    const own = letter.element;
    return html`<div class="from" part="from" aria-live=${this.hovered === undefined ? 'polite' : 'off'}>
      ${
        place === undefined
          ? html`<p>${own.how}</p>`
          : findings.length
            ? html`<p>${own.from}</p>
                <ul>
                  ${findings.map((finding) => html`<li>${finding}</li>`)}
                </ul>`
            : html`<p>${sentence ? own.fromNone : own.ownWords}</p>`
      }
    </div>`;
  }

  #choose(length: LetterLength): void {
    if (length === this.#length) return;
    this.length = length;
    this.caret = undefined;
    this.#tell('input', 'change');
  }

  #write(event: InputEvent, { text, sentences }: Composed): void {
    const field = event.currentTarget as HTMLTextAreaElement;
    this.#edits.write(this.#length, field.value, text, sentences);
    this.said = '';
    this.caret = field.selectionStart;
    this.#tell('input');
  }

  readonly #renew = (): void => {
    this.#edits.renew(this.#length);
    this.#say(this.words.letter.element.renewed);
    this.#tell('input', 'change');
    this.field?.focus();
  };

  #keep(sentences: readonly string[]): void {
    this.#edits.keep(this.#length, sentences);
    this.#say(this.words.letter.element.kept);
    this.#tell();
    this.field?.focus();
  }

  /** Hands the form the text before listeners ask for it. */
  #tell(...events: readonly ('input' | 'change')[]): void {
    this.requestUpdate();
    this.internals.setFormValue(this.value || null);
    for (const type of events)
      this.dispatchEvent(new Event(type, { bubbles: true, composed: type === 'input' }));
    if (this.#edits.all !== this.#told) this.dispatchEvent(new LetterChangeEvent(this.#edits.all));
    this.#told = this.#edits.all;
  }
  #told: LetterEdits = {};

  readonly #move = (): void => {
    this.caret = this.field?.selectionStart;
  };

  readonly #hover = ({ clientX, clientY, pointerType, currentTarget }: PointerEvent): void => {
    if (pointerType === 'touch') return;
    this.hovered = caretUnder(currentTarget as HTMLTextAreaElement, clientX, clientY);
  };

  readonly #leave = (): void => {
    this.caret = undefined;
  };

  async #copy(record: Examination): Promise<void> {
    const text = this.#text(record);
    const { summary } = this.#summary(record);
    const edited = this.#edits.isEdited(this.#length);
    const asHtml = edited
      ? `<div lang="${escapedHtml(summary.language)}">${text
          .split('\n\n')
          .map((paragraph) => `<p>${escapedHtml(paragraph).replace(/\n/g, '<br>')}</p>`)
          .join('\n')}</div>`
      : summaryHtml(summary);
    const done = await copyBoth(text, asHtml);
    const own = this.words.letter.element;
    this.#say(done ? own.copied : own.notCopied, text);
    if (!done) this.field?.select();
  }

  async #copyTable(record: Examination): Promise<void> {
    const { tag: language, register } = this.language;
    const table = (format: 'text' | 'html'): string => sitesTable(record, { format, language, register });
    const own = this.words.letter.element;
    const { value } = this;
    this.#say((await copyBoth(table('text'), table('html'))) ? own.tableCopied : own.notCopied, value);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-letter': LimbLetter;
  }
}
