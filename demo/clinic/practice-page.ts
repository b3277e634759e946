import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Lesson } from 'pulse-map/lesson';
import { examinationLanguage, followLanguage } from './language.js';
import { hashOf } from './routes.js';

/** The practice room: a hidden patient, met by its code, or the patients of the lessons. Fetched when it is first opened. */
export class PracticeRoom extends LitElement {
  /** Code of the patient, as it stands in the address. */
  @property() code = '';
  @property({ type: Boolean }) examiner = false;
  @state() private lessons: readonly Lesson[] | undefined;
  @state() private failed = false;

  constructor() {
    super();
    followLanguage(this);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#fetch();
  }

  protected override createRenderRoot(): this {
    return this;
  }

  async #fetch(): Promise<void> {
    try {
      const [{ SHIPPED_LESSON_IDS, shippedLesson }] = await Promise.all([
        import('pulse-map/lesson'),
        import('pulse-map/elements/pulse-practice/define'),
      ]);
      this.lessons = await Promise.all(SHIPPED_LESSON_IDS.map(shippedLesson));
    } catch {
      this.failed = true;
    }
  }

  protected override render(): TemplateResult {
    if (!this.lessons)
      return html`<main class="page narrow">
        <h1 tabindex="-1">Practice</h1>
        <p role="status">
          ${this.failed ? 'The patients could not be fetched. Load the page again.' : 'Loading…'}
        </p>
      </main>`;
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
        .lesson=${this.lessons[place - 1] ?? null}
        .place=${place || 1}
        ?examiner=${this.examiner}
        keep="alder-row"
        lang=${examinationLanguage()}
        @practice-change=${({ code }: { readonly code: string }) => this.#met(code)}
      ></pulse-practice>
      ${this.code ? nothing : this.#list(this.lessons)}
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
                <span class="second">${story[lang]}</span>
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
