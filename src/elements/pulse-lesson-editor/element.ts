import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { state } from 'lit/decorators.js';
import {
  agreementOf,
  type Lesson,
  type LessonTextRead,
  lineAt,
  parseLessonText,
  type PlacedFault,
  SHIPPED_LESSON_IDS,
  type ShippedLessonId,
  shippedLessonInput,
  stepsOf,
} from '../../lesson/index.js';
import { messagesFor } from '../../locale/index.js';
import type { LessonEditorWords } from '../../locale/lesson-editor.js';
import { LANGUAGES } from '../../locale/list.js';
import { type PartMessages, partMessagesFor } from '../../locale/parts.js';
import { adoptProperties } from '../common/adopt-properties.js';
import { handOver } from '../common/hand-over.js';
import { LANG, LanguageController } from '../common/language.js';
import { ownRoot } from '../common/own-root.js';
import { checked, property, TEXT } from '../common/property.js';
import { selectField } from '../common/select.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { begunLesson, isSaid, withStep, written } from './drafting.js';
import { keepText, keptText } from './draft.js';
import { LessonEditEvent } from './events.js';
import { changed, historyOf, redone, type TextHistory, undone } from './history.js';
import { editorStyles } from './styles.js';

/** What lessons can be begun with. */
type Start = 'new' | ShippedLessonId;

let editors = 0;

/**
 * Writes a lesson and shows it: its JSON text beside a preview that follows as soon as the text is a lesson. What is wrong is told with
 * path, what was found and what was expected, and leads to its place. Opening a file or beginning anew can be undone like any other change,
 * so that nothing typed is lost; with `keep` the text also outlives the page.
 *
 * Keys in the text: Control or Command with Z undoes, with Shift and Z or with Y does it again.
 *
 * @tag pulse-lesson-editor
 * @fires {LessonEditEvent} lesson-edit - The text has changed.
 * @csspart text - The field of the text.
 */
export class PulseLessonEditor extends LitElement {
  static override styles = [tokenStyles, controlStyles, editorStyles];

  /** A key under which the text is kept on this machine, so that it is there after a reload; without it the text is not kept. */
  @property() keep: string | undefined = undefined;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';

  @state() private history: TextHistory = historyOf('');
  @state() private shown: Lesson | undefined;
  @state() private step: string | undefined;
  @state() private trouble: 'notKept' | 'notRead' | undefined;
  readonly #language = new LanguageController(this);
  /** The preview goes with no other window. */
  readonly #channel = `editor ${++editors} ${Math.random()}`;
  #read: { readonly text: string; readonly read: LessonTextRead } | undefined;

  /** The text of the lesson. Setting another one can be undone. */
  @checked(TEXT)
  get value(): string {
    return this.history.text;
  }

  set value(text: string | null | undefined) {
    this.#put(changed(this.history, text ?? ''));
  }

  /** What the text says; missing while it is no lesson. */
  get lesson(): Lesson | undefined {
    const { reading } = this;
    return reading.ok ? reading.lesson : undefined;
  }

  override connectedCallback(): void {
    adoptProperties(this);
    super.connectedCallback();
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override willUpdate(changedProperties: PropertyValues): void {
    if (!changedProperties.has('keep')) return;
    const kept = keptText(this.keep);
    if (kept !== undefined && kept !== this.value) this.#put(changed(this.history, kept));
  }

  private get reading(): LessonTextRead {
    const { text } = this.history;
    if (this.#read?.text !== text) this.#read = { text, read: parseLessonText(text) };
    return this.#read.read;
  }

  get #field(): HTMLTextAreaElement {
    return this.renderRoot.querySelector('textarea')!;
  }

  #put(history: TextHistory): void {
    if (history.text === this.history.text) return;
    this.history = history;
    const { lesson } = this;
    this.shown = lesson ?? (history.text.trim() ? this.shown : undefined);
    this.trouble = keepText(this.keep, history.text) ? undefined : 'notKept';
    this.dispatchEvent(new LessonEditEvent(history.text, lesson));
  }

  async #start(start: Start, words: LessonEditorWords): Promise<void> {
    try {
      const text =
        start === 'new' ? begunLesson(words, this.#base) : written(await shippedLessonInput(start));
      this.#put(changed(this.history, text));
    } catch {
      this.trouble = 'notRead';
    }
  }

  /** The language of texts that are begun here. */
  get #base(): (typeof LANGUAGES)[number]['tag'] {
    const base = this.#language.tag.toLowerCase().split('-')[0];
    return LANGUAGES.find(({ tag }) => tag === base)?.tag ?? 'en';
  }

  async #open(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    input.value = '';
    if (!file) return;
    try {
      this.#put(changed(this.history, await file.text()));
    } catch {
      this.trouble = 'notRead';
    }
  }

  #save(): void {
    handOver(`${this.lesson?.id ?? 'lesson'}.json`, this.value, 'application/json');
  }

  /** Leads to a place in the text. */
  #show(offset: number): void {
    const field = this.#field;
    const end = field.value.indexOf('\n', offset);
    field.setSelectionRange(offset, end < 0 ? field.value.length : end);
    const share = offset / Math.max(1, field.value.length);
    field.scrollTop = share * field.scrollHeight - field.clientHeight / 2;
    field.focus();
  }

  #addTo(step: string, { blank }: LessonEditorWords): void {
    this.#put(changed(this.history, withStep(this.value, step, blank)));
    void this.updateComplete.then(() => {
      const at = this.value.indexOf(JSON.stringify(step));
      this.#show(Math.max(at, this.value.indexOf(`"${blank}"`, at)));
    });
  }

  #travel(way: 'undo' | 'redo'): void {
    this.#put(way === 'undo' ? undone(this.history) : redone(this.history));
  }

  readonly #beforeInput = (event: InputEvent): void => {
    const way = ({ historyUndo: 'undo', historyRedo: 'redo' } as const)[event.inputType];
    if (!way) return;
    event.preventDefault();
    this.#travel(way);
  };

  /** The browser's own undo knows nothing of an opened file. */
  readonly #keydown = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key !== 'z' && key !== 'y') return;
    event.preventDefault();
    this.#travel(key === 'y' || event.shiftKey ? 'redo' : 'undo');
  };

  /** Letters of a word make one step; a space, a line, a cut or a paste begins the next. */
  readonly #input = (event: InputEvent): void => {
    const { inputType, data } = event;
    const kind = /^(insertText|insertCompositionText|deleteContent\w+)$/.test(inputType)
      ? inputType
      : undefined;
    const { value } = event.target as HTMLTextAreaElement;
    this.#put(changed(this.history, value, data && /\s/.test(data) ? `${inputType} space` : kind));
  };

  protected override render(): TemplateResult {
    const { tag } = this.#language;
    const parts = partMessagesFor(tag);
    const words = parts.lessonEditor;
    const { before, after, text } = this.history;
    return html`<div class="editor" role="group" aria-label=${words.title}>
      <div class="tools">
        ${selectField<Start>({
          label: words.startFrom,
          classes: ['', 'field'],
          empty: words.choose,
          options: [['new', words.empty], ...SHIPPED_LESSON_IDS.map((id) => [id, id] as const)],
          value: undefined,
          disabled: false,
          set: (start) => start && void this.#start(start, words),
        })}
        <label class="button file"
          >${words.open}<input
            type="file"
            accept=".json,application/json"
            aria-label=${words.open}
            @change=${(event: Event) => void this.#open(event.target as HTMLInputElement)}
        /></label>
        <button type="button" class="button" data-do="save" ?disabled=${!text} @click=${() => this.#save()}>
          ${words.save}
        </button>
        <button
          type="button"
          class="button"
          data-do="undo"
          ?disabled=${!before.length}
          @click=${() => this.#travel('undo')}
        >
          ${words.undo}
        </button>
        <button
          type="button"
          class="button"
          data-do="redo"
          ?disabled=${!after.length}
          @click=${() => this.#travel('redo')}
        >
          ${words.redo}
        </button>
      </div>
      <p class="hint" id="hint">${words.hint}</p>
      ${this.trouble ? html`<p role="alert">${words[this.trouble]}</p>` : nothing}
      <div class="rooms">${this.#writing(words)} ${this.#showing(words, parts)}</div>
    </div>`;
  }

  #writing(words: LessonEditorWords): TemplateResult {
    const { text } = this.history;
    const { reading } = this;
    const wrong = text.trim() !== '' && !reading.ok;
    return html`<div class="writing">
      <label for="text">${words.text}</label>
      <textarea
        id="text"
        class="field"
        part="text"
        spellcheck="false"
        autocapitalize="off"
        autocomplete="off"
        aria-describedby="hint told"
        aria-invalid=${wrong ? 'true' : nothing}
        .value=${live(text)}
        @beforeinput=${this.#beforeInput}
        @input=${this.#input}
        @keydown=${this.#keydown}
      ></textarea>
      <p id="told" role="status">
        ${reading.ok ? words.ready : wrong ? words.mend(reading.faults.length + reading.more) : nothing}
      </p>
      ${
        wrong
          ? html`<ol class="faults">
                ${reading.faults.map((one) => html`<li>${this.#fault(one, words)}</li>`)}
              </ol>
              ${reading.more ? html`<p class="hint">${words.more(reading.more)}</p>` : nothing}`
          : nothing
      }
    </div>`;
  }

  #fault({ fault, offset }: PlacedFault, words: LessonEditorWords): TemplateResult {
    const { line, column } = lineAt(this.value, offset);
    return html`<button type="button" @click=${() => this.#show(offset)}>
      <b>${words.at(line, column)}</b>${messagesFor(this.#language.tag).examination.fault(fault)}
    </button>`;
  }

  #showing(words: LessonEditorWords, parts: PartMessages): TemplateResult {
    const lesson = this.shown;
    if (!lesson)
      return html`<div class="showing">
        <h2>${words.preview}</h2>
        <p>${words.nothing}</p>
      </div>`;
    const here = this.lesson;
    const step = stepsOf(lesson).find(({ id }) => id === this.step);
    return html`<div class="showing">
      <h2>${words.preview}</h2>
      ${here ? nothing : html`<p class="hint">${words.stale}</p>`}
      <pulse-lesson
        .lesson=${lesson}
        channel=${this.#channel}
        lang=${this.#language.tag}
        @show-change=${(event: Event) => (this.step = (event.target as HTMLElementTagNameMap['pulse-lesson']).step)}
      ></pulse-lesson>
      ${
        here && step && !isSaid(here, step.id)
          ? html`<p>
              <button type="button" class="button" data-do="add" @click=${() => this.#addTo(step.id, words)}>
                ${words.addTo(parts.lesson.act(step.act))}
              </button>
            </p>`
          : nothing
      }
      ${this.#agreement(lesson, words, parts)}
    </div>`;
  }

  /** Whether the reading of all findings comes to the answer that the lesson teaches. */
  #agreement(lesson: Lesson, words: LessonEditorWords, { lesson: said }: PartMessages): TemplateResult {
    const limbs = agreementOf(lesson).filter(({ told, concluded }) => told.length || concluded);
    const unsaid = limbs.some(({ agrees }) => !agrees) && !lesson.answer.differs;
    return html`<div class="reading">
      ${limbs.map(
        ({ limb, agrees }) =>
          html`<p class=${agrees ? '' : 'differs'}>${agrees ? said.agrees(limb) : said.differs(limb)}</p>`,
      )}
      ${unsaid ? html`<p>${words.unsaid}</p>` : nothing}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-lesson-editor': PulseLessonEditor;
  }
}
