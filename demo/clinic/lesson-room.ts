import { html, LitElement, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { Lesson } from 'pulse-map/lesson';
import { followLanguage } from './language.js';

/** A page on the lessons that ship, which are fetched with its element when it is first opened. */
export abstract class LessonRoom extends LitElement {
  @state() protected lessons: readonly Lesson[] | undefined;
  @state() private failed = false;

  constructor() {
    super();
    followLanguage(this);
  }

  protected abstract readonly heading: string;
  /** What is said when they cannot be fetched. */
  protected abstract readonly notFetched: string;
  protected abstract defineElement(): Promise<unknown>;
  protected abstract page(lessons: readonly Lesson[]): TemplateResult;

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
        this.defineElement(),
      ]);
      this.lessons = await Promise.all(SHIPPED_LESSON_IDS.map(shippedLesson));
    } catch {
      this.failed = true;
    }
  }

  protected override render(): TemplateResult {
    if (this.lessons) return this.page(this.lessons);
    return html`<main class="page narrow">
      <h1 tabindex="-1">${this.heading}</h1>
      <p role="status">${this.failed ? this.notFetched : 'Loading…'}</p>
    </main>`;
  }
}
