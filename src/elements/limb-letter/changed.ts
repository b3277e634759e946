import { html, nothing, type TemplateResult } from 'lit';
import type { LetterWords } from '../../locale/letter.js';
import type { Behind } from './behind.js';

interface Acts {
  readonly renew: () => void;
  readonly keep: () => void;
  readonly add: (sentence: string) => void;
  readonly takeOut: (sentence: string) => void;
}

/** What the record says otherwise than the person's text, sentence by sentence with its act; nothing where it says the same. */
export function renderChanged(
  behind: Behind | undefined,
  words: LetterWords['element'],
  { renew, keep, add, takeOut }: Acts,
): TemplateResult {
  const rows = (title: string, sentences: readonly string[], act: string, take: Acts['add']) =>
    sentences.length
      ? html`<p class="what">${title}</p>
          <ul role="list">
            ${sentences.map(
              (sentence) =>
                html`<li>
                  <span>${sentence}</span>
                  <button
                    type="button"
                    class="button"
                    aria-label="${act}: ${sentence}"
                    @click=${() => take(sentence)}
                  >
                    ${act}
                  </button>
                </li>`,
            )}
          </ul>`
      : nothing;
  return html`<div role="status">
    ${
      behind
        ? html`<div class="changed" part="changed">
            <p>${words.changed}</p>
            ${rows(words.missing, behind.missing, words.add, add)}
            ${rows(words.outdated, behind.outdated, words.takeOut, takeOut)}
            <div class="acts">
              <button type="button" class="button renew" @click=${renew}>${words.takeNew}</button>
              <button type="button" class="button keep" @click=${keep}>${words.keep}</button>
            </div>
          </div>`
        : nothing
    }
  </div>`;
}
