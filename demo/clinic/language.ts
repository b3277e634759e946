import { html, LitElement, type TemplateResult } from 'lit';

/** Languages the examination speaks; the clinic's own pages are English. */
const LANGUAGES = [
  ['en', 'English'],
  ['de', 'Deutsch'],
] as const;
type Tag = (typeof LANGUAGES)[number][0];

const KEPT = 'alder-row-clinic-language';
/** Tells the page that another language was chosen. */
export const LANGUAGE_CHANGE = 'clinic-language-change';

const known = (tag: string | null): Tag => LANGUAGES.find(([one]) => one === tag)?.[0] ?? 'en';

/** The language chosen for the examination, kept in this browser. */
export function examinationLanguage(): Tag {
  const tag = known(localStorage.getItem(KEPT));
  // Words load on demand; elements re-render when they arrive.
  if (tag === 'de') void import('pulse-map/locale/de');
  return tag;
}

/** The choice in the clinic's header. */
export class LanguageChoice extends LitElement {
  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    const chosen = examinationLanguage();
    return html`<label class="language"
      >Examination in
      <select @change=${this.#handleChange}>
        ${LANGUAGES.map(
          ([tag, name]) =>
            html`<option value=${tag} lang=${tag} ?selected=${tag === chosen}>${name}</option>`,
        )}
      </select>
    </label>`;
  }

  readonly #handleChange = (event: Event): void => {
    localStorage.setItem(KEPT, known((event.target as HTMLSelectElement).value));
    dispatchEvent(new Event(LANGUAGE_CHANGE));
  };
}

if (!customElements.get('language-choice')) customElements.define('language-choice', LanguageChoice);
