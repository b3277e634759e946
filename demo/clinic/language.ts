import { html, LitElement, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { LANGUAGES, type LanguageTag } from 'pulse-map/core';
import type { Register } from 'pulse-map/core/tables';
import { fetchWords, languageOf } from './languages.js';
import { remember, remembered } from './small-store.js';

const KEPT = 'alder-row-clinic-language';
const KEPT_REGISTER = 'alder-row-clinic-register';
/** Tells the page that another language or other words were chosen. */
const LANGUAGE_CHANGE = 'clinic-language-change';

/** Renders the host anew, or does what is given, when another language or other words are chosen. */
export function followLanguage(host: ReactiveControllerHost, then = () => host.requestUpdate()): void {
  host.addController({
    hostConnected: () => addEventListener(LANGUAGE_CHANGE, then),
    hostDisconnected: () => removeEventListener(LANGUAGE_CHANGE, then),
  });
}

/** The language chosen for the examination, kept in this browser; the clinic's own pages are English. */
export function examinationLanguage(): LanguageTag {
  const tag = languageOf(remembered(KEPT));
  void fetchWords(tag);
  return tag;
}

/** Whom the examination's words address, kept in this browser. */
export const examinationRegister = (): Register =>
  remembered(KEPT_REGISTER) === 'plain' ? 'plain' : 'trade';

/** The choice in the clinic's header. */
export class LanguageChoice extends LitElement {
  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): TemplateResult {
    const chosen = examinationLanguage();
    return html`<label class="language"
        >Language of the examination
        <select @change=${this.#handleChange}>
          ${LANGUAGES.map(
            ({ tag, name }) =>
              html`<option value=${tag} lang=${tag} ?selected=${tag === chosen}>${name}</option>`,
          )}
        </select>
      </label>
      <label class="language"
        >Words
        <select @change=${this.#handleRegister}>
          <option value="trade" ?selected=${examinationRegister() === 'trade'}>for clinicians</option>
          <option value="plain" ?selected=${examinationRegister() === 'plain'}>plain, for patients</option>
        </select>
      </label>`;
  }

  readonly #handleRegister = (event: Event): void => {
    remember(KEPT_REGISTER, (event.target as HTMLSelectElement).value);
    dispatchEvent(new Event(LANGUAGE_CHANGE));
  };

  readonly #handleChange = (event: Event): void => {
    remember(KEPT, languageOf((event.target as HTMLSelectElement).value));
    dispatchEvent(new Event(LANGUAGE_CHANGE));
  };
}

if (!customElements.get('language-choice')) customElements.define('language-choice', LanguageChoice);
