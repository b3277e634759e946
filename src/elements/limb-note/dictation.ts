import {
  html,
  nothing,
  type ReactiveController,
  type ReactiveControllerHost,
  type TemplateResult,
} from 'lit';
import type { NoteWords } from '../../locale/note.js';
import { deviceRecognition, heard, type Recognition, type SpeechResultEvent } from './speech.js';

/** What the controller asks of its host. */
interface Hears {
  lang(): string;
  heard(words: string): void;
}

/** A microphone button, where the browser recognises speech on the device itself; elsewhere nothing. */
export class Dictation implements ReactiveController {
  #make: (() => Recognition) | undefined;
  #of: string | undefined;
  #running: Recognition | undefined;
  #failed = false;

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly hears: Hears,
  ) {
    host.addController(this);
  }

  hostUpdated(): void {
    const lang = this.hears.lang();
    if (lang === this.#of) return;
    this.#of = lang;
    this.#running?.stop();
    void deviceRecognition(lang).then((make) => {
      if (this.#of !== lang || make === this.#make) return;
      this.#make = make;
      this.host.requestUpdate();
    });
  }

  hostDisconnected(): void {
    this.#running?.stop();
    this.#running = undefined;
  }

  button(words: NoteWords): TemplateResult | typeof nothing {
    if (!this.#make) return nothing;
    const on = this.#running !== undefined;
    return html`<span class="dictate">
      <button
        type="button"
        class="button"
        aria-pressed=${on}
        @click=${() => (on ? this.#running?.stop() : this.#start())}
      >
        ${on ? words.stopDictating : words.dictate}
      </button>
      <span class="hint" role="status">${this.#failed ? words.dictationFailed : words.onDevice}</span>
    </span>`;
  }

  #start(): void {
    const recognition = this.#make!();
    const over = (failed: boolean): void => {
      if (this.#running !== recognition) return;
      this.#running = undefined;
      this.#failed = failed;
      this.host.requestUpdate();
    };
    recognition.addEventListener('result', (event) => {
      const words = heard(event as SpeechResultEvent);
      if (words && this.#running === recognition) this.hears.heard(words);
    });
    recognition.addEventListener('error', () => over(true));
    recognition.addEventListener('end', () => over(false));
    // What was said last comes after it was told to stop, so that it runs on until it ends.
    this.#running = recognition;
    this.#failed = false;
    try {
      recognition.start();
    } catch {
      over(true);
    }
    this.host.requestUpdate();
  }
}
