import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Examination, TeamCall } from '../../examination/index.js';
import type { FlagWords } from '../../locale/flags.js';
import { changeCall, type Contact, recordCall, type RedFlag } from '../../triage/index.js';
import { clock } from '../common/clock.js';
import { onThisClock, withOffset } from '../common/fields.js';

/** A call was noted, changed or taken back. */
export class CallChangeEvent extends Event {
  constructor(
    /** The record with it. */
    readonly examination: Examination,
  ) {
    super('call-change', { bubbles: true });
  }
}

declare global {
  interface GlobalEventHandlersEventMap {
    'call-change': CallChangeEvent;
  }
}

/** What the calls of a flag need of the element around them. */
export interface CallsView {
  readonly examination: Examination;
  readonly words: FlagWords;
  /** Hands on the record with another call; nothing can be noted without it. */
  readonly note: ((next: Examination) => void) | undefined;
}

const DAY = 86_400_000;

/** A call in words: the time alone while it is of the last day, else with its date. */
export function saidCall(call: TeamCall, { called }: FlagWords): string {
  const gone = clock.now() - Date.parse(call.at);
  return called(call, gone >= 0 && gone < DAY ? 'time' : 'date');
}

/** The calls of a flag, each with its time to correct and a way back, and the button that notes one now. */
export function renderCalls(
  flag: RedFlag,
  contact: Contact | undefined,
  { examination, words, note }: CallsView,
): TemplateResult | typeof nothing {
  const calls = flag.calls ?? [];
  if (!calls.length && !note) return nothing;
  const now = (): string => withOffset(onThisClock(new Date(clock.now()).toISOString()));
  return html`${
    calls.length
      ? html`<ul class="calls">
          ${calls.map(
            (call) =>
              html`<li>
                <span>${saidCall(call, words)}</span>
                ${note ? changes(call, examination, words, note) : nothing}
              </li>`,
          )}
        </ul>`
      : nothing
  }
  ${
    note
      ? html`<button
          type="button"
          class="button note-call"
          aria-label=${`${words.bar.noteCall}: ${words.heading(flag)}`}
          @click=${() => note(recordCall(examination, flag, now(), contact?.name))}
        >
          ${words.bar.noteCall}
        </button>`
      : nothing
  }`;
}

function changes(
  call: TeamCall,
  examination: Examination,
  words: FlagWords,
  note: (next: Examination) => void,
): TemplateResult {
  const said = saidCall(call, words);
  return html`<input
      class="field"
      type="datetime-local"
      aria-label=${`${words.bar.callTime}: ${said}`}
      .value=${live(onThisClock(call.at))}
      @change=${({ target }: Event) => {
        const { value } = target as HTMLInputElement;
        if (value) note(changeCall(examination, call, withOffset(value.slice(0, 16))));
      }}
    />
    <button
      type="button"
      class="button"
      aria-label=${`${words.bar.removeCall}: ${said}`}
      @click=${() => note(changeCall(examination, call, undefined))}
    >
      ${words.bar.removeCall}
    </button>`;
}
