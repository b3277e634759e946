import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { examinationLanguage, followLanguage } from './language.js';
import { keepOwnLesson } from './own-lessons.js';
import { hashOf } from './routes.js';

/** Where a lesson of one's own is written; its element is fetched when the page is first opened. */
export class LessonWritingRoom extends LitElement {
  @state() private defined: boolean | 'failed' = false;
  @state() private ready = false;

  constructor() {
    super();
    followLanguage(this);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    import('pulse-map/elements/pulse-lesson-editor/define').then(
      () => (this.defined = true),
      () => (this.defined = 'failed'),
    );
  }

  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    return html`<main class="page lecture">
      <h1 tabindex="-1">Write a lesson</h1>
      <p class="actions">
        <a href=${hashOf({ page: 'lecture' })}>All lessons</a>
        ${
          this.ready
            ? html`<a href=${hashOf({ page: 'lecture', lessonId: 'written' })}>Show it on the projector</a>`
            : nothing
        }
      </p>
      ${
        this.defined === true
          ? html`<pulse-lesson-editor
              keep="alder-row"
              lang=${examinationLanguage()}
              @lesson-edit=${this.#edited}
            ></pulse-lesson-editor>`
          : html`<p role="status">
              ${this.defined ? 'The editor could not be fetched. Load the page again.' : 'Loading…'}
            </p>`
      }
    </main>`;
  }

  readonly #edited = ({ text, lesson }: HTMLElementEventMap['lesson-edit']): void => {
    this.ready = lesson !== undefined;
    if (lesson) keepOwnLesson('written', text);
  };
}

if (!customElements.get('lesson-writing-room'))
  customElements.define('lesson-writing-room', LessonWritingRoom);
