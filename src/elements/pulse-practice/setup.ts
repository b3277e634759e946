import { html, nothing, type TemplateResult } from 'lit';
import {
  DIFFICULTIES,
  type Difficulty,
  HIGHEST_NUMBER,
  levelsFor,
  type PatientRequest,
  type PracticeLevel,
} from '../../practice/index.js';
import { selectField } from '../common/select.js';
import type { Speech } from './said.js';

/** Which patient is being chosen. */
export interface Setup {
  readonly number: string;
  readonly difficulty: Difficulty;
  readonly level?: PracticeLevel;
  /** The number names no patient. */
  readonly wrong?: true;
}

export function setupOf(request?: PatientRequest): Setup {
  if (!request) return { number: '', difficulty: 'clear' };
  const { number, difficulty, level } = request;
  return { number: String(number), difficulty, ...(level && { level }) };
}

/** Nobody is to know beforehand whom one gets. */
const anyNumber = (): string => String(1 + Math.floor(Math.random() * HIGHEST_NUMBER));

/** The form in which a patient is chosen: by number or code, or any. */
export function renderSetup(
  setup: Setup,
  speech: Speech,
  change: (setup: Setup) => void,
  begin: (setup: Setup) => void,
): TemplateResult {
  const { messages, parts } = speech;
  const words = parts.practice;
  const { wrong: _wrong, level, ...rest } = setup;
  const levels = levelsFor(setup.difficulty);
  const withLevel = (next: Difficulty): Setup => ({
    ...rest,
    difficulty: next,
    ...(level && levelsFor(next).includes(level) && { level }),
  });
  return html`<form
    class="setup"
    @submit=${(event: Event) => {
      event.preventDefault();
      begin({ ...rest, ...(level && { level }), number: setup.number.trim() || anyNumber() });
    }}
  >
    <h2 tabindex="-1">${words.choose}</h2>
    <p class="hint">${words.invented}</p>
    ${selectField<Difficulty>({
      label: words.difficulty,
      classes: ['', 'field'],
      options: DIFFICULTIES.map((one) => [one, words.difficulties[one]]),
      value: setup.difficulty,
      disabled: false,
      set: (next) => next && change(withLevel(next)),
    })}
    ${selectField<PracticeLevel>({
      label: words.level,
      classes: ['', 'field'],
      empty: words.anyLevel,
      options: levels.map((one) => [one, messages.anatomy.levels[one]]),
      value: level,
      disabled: false,
      set: (next) => change({ ...rest, ...(next && { level: next }) }),
    })}
    <label
      ><span class="hint">${words.number}</span>
      <input
        class="field"
        name="number"
        autocomplete="off"
        aria-invalid=${setup.wrong ? 'true' : nothing}
        .value=${setup.number}
        @input=${(event: Event) =>
          change({ ...rest, ...(level && { level }), number: (event.target as HTMLInputElement).value })}
      />
    </label>
    ${setup.wrong ? html`<p role="alert">${words.unknownNumber}</p>` : nothing}
    <p class="row">
      <button class="button solid">${words.begin}</button>
      <button
        type="button"
        class="button"
        data-do="any"
        @click=${() =>
          begin({
            ...rest,
            ...(level && { level }),
            number: anyNumber(),
          })}
      >
        ${words.another}
      </button>
    </p>
  </form>`;
}
