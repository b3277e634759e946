import { html, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { Lesson } from 'pulse-map/lesson';
import { examinationLanguage } from './language.js';
import { LessonRoom } from './lesson-room.js';
import { hashOf } from './routes.js';

/** The practice room: a hidden patient, met by its code, or the patients of the lessons. Fetched when it is first opened. */
export class PracticeRoom extends LessonRoom {
  /** Code of the patient, as it stands in the address. */
  @property() code = '';
  @property({ type: Boolean }) examiner = false;
  protected readonly heading = 'Practice';
  protected readonly notFetched = 'The patients could not be fetched. Load the page again.';

  protected defineElement(): Promise<unknown> {
    return import('pulse-map/elements/pulse-practice/define');
  }

  protected page(lessons: readonly Lesson[]): TemplateResult {
    const place = Number(/^lesson-([0-9]+)$/.exec(this.code)?.[1] ?? 0);
    return html`<main class="page practice">
      <h1 tabindex="-1">Practice</h1>
      <p>
        Examine a hidden, invented patient, name what is wrong, and see what you missed. Results stay in this
        browser. Share a patient by its number.
      </p>
      ${this.code ? this.#links() : nothing}
      <pulse-practice
        .code=${place ? '' : this.code}
        .lesson=${lessons[place - 1] ?? null}
        .place=${place || 1}
        ?examiner=${this.examiner}
        keep="alder-row"
        lang=${examinationLanguage()}
        @practice-change=${({ code }: { readonly code: string }) => this.#met(code)}
      ></pulse-practice>
      ${this.code ? nothing : this.#list(lessons)}
    </main>`;
  }

  #links(): TemplateResult {
    const { code, examiner } = this;
    return html`<p class="actions">
      <a href=${hashOf({ page: 'practice' })}>Choose another patient</a>
      ${
        examiner
          ? html`<a href=${hashOf({ page: 'practice', code })}>Back to the patient</a>`
          : html`<a href=${hashOf({ page: 'practice', code, examiner: true })} target="_blank"
              >Examiner’s sheet (tells the truth)</a
            >`
      }
    </p>`;
  }

  /** The patients of the lessons by their stories alone: a title could give one away. */
  #list(lessons: readonly Lesson[]): TemplateResult {
    const lang = examinationLanguage();
    return html`<h2>Patients of the lessons</h2>
      <ul class="rows" lang=${lang}>
        ${lessons.map(
          ({ story }, i) =>
            html`<li>
              <a class="row" href=${hashOf({ page: 'practice', code: `lesson-${i + 1}` })}>
                <span class="link">${story[lang]}</span>
              </a>
            </li>`,
        )}
      </ul>`;
  }

  /** The address names the patient, so that it can be shared and comes back after a reload. */
  #met(code: string): void {
    if (code === this.code) return;
    this.code = code;
    history.replaceState(null, '', hashOf({ page: 'practice', code }));
  }
}

if (!customElements.get('practice-room')) customElements.define('practice-room', PracticeRoom);
