import { html, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Lesson } from 'pulse-map/lesson';
import { examinationLanguage } from './language.js';
import { LessonRoom } from './lesson-room.js';
import {
  isOwnLesson,
  keepRecordLesson,
  leftOut,
  notRead,
  OWN_LESSONS,
  type OwnLesson,
  ownLesson,
} from './own-lessons.js';
import { hashOf } from './routes.js';

/** The teaching room: the lessons that ship, one of them on the screen, or its presenter's window. Fetched when it is first opened. */
export class LectureRoom extends LessonRoom {
  @property() lessonId = '';
  @property({ type: Boolean }) presenter = false;
  @property({ type: Boolean }) handOut = false;
  @state() private fault = '';
  @state() private own: Partial<Record<OwnLesson, Lesson>> | undefined;
  protected readonly heading = 'Lecture';
  protected readonly notFetched = 'The lessons could not be fetched. Load the page again.';

  protected defineElement(): Promise<unknown> {
    return import('pulse-map/elements/pulse-lesson/define');
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void Promise.all(OWN_LESSONS.map(async (which) => [which, await ownLesson(which)] as const)).then(
      (found) => (this.own = Object.fromEntries(found.filter(([, lesson]) => lesson))),
      () => (this.own = {}),
    );
  }

  protected page(lessons: readonly Lesson[]): TemplateResult {
    const { lessonId, own } = this;
    if (isOwnLesson(lessonId) && !own) return html`<main class="page" aria-busy="true"></main>`;
    const lesson = isOwnLesson(lessonId) ? own?.[lessonId] : lessons.find(({ id }) => id === lessonId);
    return lesson ? this.#room(lesson) : this.#list(lessons);
  }

  async #openRecord(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    input.value = '';
    if (!file) return;
    this.fault = '';
    try {
      const wrong = await keepRecordLesson(await file.text());
      if (wrong === undefined) {
        this.own = { ...this.own, record: await ownLesson('record') };
        location.hash = hashOf({ page: 'lecture', lessonId: 'record' });
      } else this.fault = `${file.name} holds no record of an examination. ${wrong}`;
    } catch {
      this.fault = 'The file could not be read.';
    }
  }

  #own(): TemplateResult | typeof nothing {
    const written = this.own?.written;
    return html`<p class="actions">
        <a class="button" href=${hashOf({ page: 'lecture-editor' })}>
          ${written ? 'Go on writing your lesson' : 'Write a lesson'}
        </a>
        ${
          written
            ? html`<a class="button" href=${hashOf({ page: 'lecture', lessonId: 'written' })}
                >Show your lesson: ${Object.values(written.title)[0]}</a
              >`
            : nothing
        }
      </p>
      <p class="file-choice">
        <label for="record-file"
          >Show a record without name, dates and notes (its JSON or a FHIR bundle)</label
        >
        <input
          id="record-file"
          type="file"
          accept=".json,application/json,application/fhir+json"
          @change=${(event: Event) => void this.#openRecord(event.target as HTMLInputElement)}
        />
      </p>
      ${this.fault ? html`<p role="alert">${this.fault}</p>` : nothing}`;
  }

  #list(lessons: readonly Lesson[]): TemplateResult {
    const lang = examinationLanguage();
    return html`<main class="page lessons">
      <h1 tabindex="-1">Lecture</h1>
      <p>
        Lessons for a projector: an invented patient is examined step by step, and each finding is shown when
        you reveal it.
      </p>
      ${this.lessonId ? html`<p>There is no lesson “${this.lessonId}”.</p>` : nothing} ${this.#own()}
      <ul class="rows" lang=${lang}>
        ${lessons.map(
          ({ id, title, story }) =>
            html`<li>
              <a class="row" href=${hashOf({ page: 'lecture', lessonId: id })}>
                <span class="name">${title[lang]}</span>
                <span class="second">${story[lang]}</span>
              </a>
            </li>`,
        )}
      </ul>
    </main>`;
  }

  #ways(lessonId: string): TemplateResult {
    if (this.handOut)
      return html`<a href=${hashOf({ page: 'lecture', lessonId })}>Back to the slides</a>
        <button type="button" class="button" @click=${() => print()}>Print two pages</button>`;
    return html`<a href=${hashOf({ page: 'lecture', lessonId, presenter: true })} target="_blank"
        >Open the presenter’s window</a
      >
      <a href=${hashOf({ page: 'lecture', lessonId, handOut: true })}>Hand-out to print</a>`;
  }

  #aboutRecord(): TemplateResult {
    const lines = notRead();
    return html`<p class="hint">Left out: ${leftOut() || 'nothing'}.</p>
      ${
        lines.length
          ? html`<details class="not-read">
              <summary>Not read from the file: ${lines.length}</summary>
              <ul lang=${examinationLanguage()}>
                ${lines.map((line) => html`<li>${line}</li>`)}
              </ul>
            </details>`
          : nothing
      }`;
  }

  #room(lesson: Lesson): TemplateResult {
    const lang = examinationLanguage();
    const id = this.lessonId;
    return html`<main class="page lecture">
      <h1 tabindex="-1">${lesson.title[lang] ?? Object.values(lesson.title)[0]}</h1>
      <p class="actions">
        <a href=${hashOf({ page: 'lecture' })}>All lessons</a>
        ${this.presenter ? nothing : this.#ways(id)}
      </p>
      ${id === 'record' && !this.presenter && !this.handOut ? this.#aboutRecord() : nothing}
      <pulse-lesson
        .lesson=${lesson}
        ?presenter=${this.presenter}
        ?hand-out=${this.handOut}
        keep="lecture"
        lang=${lang}
      ></pulse-lesson>
    </main>`;
  }
}

if (!customElements.get('lecture-room')) customElements.define('lecture-room', LectureRoom);
