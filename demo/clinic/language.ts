import { html, LitElement, type TemplateResult } from 'lit';
import { LANGUAGES, type LanguageTag } from 'pulse-map/core';
import { fetchWords, languageOf } from './languages.js';

const KEPT = 'alder-row-clinic-language';
/** Tells the page that another language was chosen. */
export const LANGUAGE_CHANGE = 'clinic-language-change';

/** The language chosen for the examination, kept in this browser; the clinic's own pages are English. */
export function examinationLanguage(): LanguageTag {
  const tag = languageOf(localStorage.getItem(KEPT));
  fetchWords(tag);
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
          ({ tag, name }) =>
            html`<option value=${tag} lang=${tag} ?selected=${tag === chosen}>${name}</option>`,
        )}
      </select>
    </label>`;
  }

  readonly #handleChange = (event: Event): void => {
    localStorage.setItem(KEPT, languageOf((event.target as HTMLSelectElement).value));
    dispatchEvent(new Event(LANGUAGE_CHANGE));
  };
}

if (!customElements.get('language-choice')) customElements.define('language-choice', LanguageChoice);
