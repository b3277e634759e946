import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { LONGEST_SECONDS } from '../../examination/index.js';
import { partMessagesFor, type PartMessages } from '../../locale/parts.js';
import { numberField } from '../common/fields.js';
import { LANG, LanguageController } from '../common/language.js';
import { property } from '../common/property.js';
import type { Refusal, Typing } from '../common/typing.js';
import { partStyles } from '../common/part-styles.js';
import { ownRoot } from '../common/own-root.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { clockText, WatchController } from './watch-controller.js';

/**
 * A stopwatch, or with `countdown` a timer, for hands that are busy: one large button, one key, or a pedal. It keeps true time while the
 * page sleeps, and with `keep` runs on over a reload.
 *
 * @tag limb-stopwatch
 * @attr keep - A key under which the running watch is kept while the tab lives.
 * @fires input - A person started, stopped, or corrected the watch, or took a lap.
 * @fires change - The watch was stopped or corrected, or its countdown ran out.
 * @csspart time - The time shown.
 * @csspart button - The button that starts and stops.
 */
export class LimbStopwatch extends LitElement {
  static override styles = [
    tokenStyles,
    controlStyles,
    partStyles,
    css`
      :host {
        text-align: center;
      }
      .time {
        font-size: calc(76 * var(--_text));
        line-height: calc(84 * var(--_text));
        font-weight: 600;
        letter-spacing: -0.03em;
      }
      .time small {
        font-size: calc(34 * var(--_text));
        color: var(--_ink-2);
      }
      .main {
        inline-size: 100%;
        min-block-size: 64px;
        margin-block: 10px 8px;
        font-size: calc(18 * var(--_text));
      }
      .row {
        display: flex;
        flex-wrap: wrap;
        justify-content: center;
        align-items: end;
        gap: 8px;
        margin-block-start: 8px;
      }
      .laps {
        margin-block-start: 8px;
        text-align: start;
      }
      .laps li {
        display: flex;
        gap: 12px;
        min-block-size: 32px;
        align-items: center;
        border-block-start: 1px solid var(--_line);
      }
      @container (max-width: 299px) {
        .time {
          font-size: calc(56 * var(--_text));
          line-height: calc(64 * var(--_text));
        }
      }
    `,
  ];

  /** What is timed, beside the button's word. */
  @property() label = '';
  /** Word on the button while it stands, instead of "Start". */
  @property({ attribute: 'start-label' }) startLabel = '';
  /** Word on the button while it runs, instead of "Stop". */
  @property({ attribute: 'stop-label' }) stopLabel = '';
  /** Seconds to count down from; without it the watch counts up. */
  @property({ type: Number }) countdown: number | undefined = undefined;
  /** Key under which the watch is kept over a reload. */
  @property() keep: string | undefined = undefined;
  /** A key that starts and stops from anywhere in the page, as a foot pedal sends it (`PageDown`, `b`); not while text is typed. */
  @property() pedal: string | undefined = undefined;
  /** Hides laps and the correction by hand. */
  @property({ type: Boolean, reflect: true }) plain = false;
  /** Nothing can be changed. */
  @property({ type: Boolean, reflect: true }) disabled = false;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';

  @state() private refusal: Refusal | undefined;
  @state() private entry: { readonly text: string; readonly leave: () => void } | undefined;
  @state() private correcting = false;

  readonly #language = new LanguageController(this);
  readonly #watch = new WatchController(this, { over: () => this.#tell(true) });
  /** A running watch is corrected once, when the number is complete. */
  readonly #typing: Typing = {
    text: () => this.entry?.text ?? this.refusal?.typed,
    type: (_, text, take, complain) => {
      this.refusal = undefined;
      const refuse = (): void => void (this.refusal = { typed: text, sentence: complain?.() ?? '' });
      this.entry = { text, leave: take ?? refuse };
    },
    leave: () => {
      const { entry } = this;
      this.entry = undefined;
      entry?.leave();
    },
  };
  readonly #onPedal = (event: KeyboardEvent): void => {
    const [from] = event.composedPath() as HTMLElement[];
    const typing = from?.matches?.('input, textarea, select, [contenteditable]') ?? false;
    if (event.key !== this.pedal || event.repeat || typing || this.disabled) return;
    event.preventDefault();
    this.toggle();
  };

  /** Time run so far, in seconds to one decimal. */
  get seconds(): number {
    return this.#watch.seconds;
  }

  /** The laps taken, in seconds from the start. */
  get laps(): readonly number[] {
    return this.#watch.watch.laps.map(({ at }) => Math.round(at / 100) / 10);
  }

  get running(): boolean {
    return this.#watch.running;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.#onPedal);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('keydown', this.#onPedal);
  }

  /** Starts or stops, like a press of the button. */
  toggle(): void {
    if (this.disabled) return;
    this.#watch.toggle();
    this.#tell(!this.running);
  }

  /** Resets to zero. */
  reset(): void {
    this.#watch.reset();
    this.#tell(true);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('countdown')) {
      this.#watch.reset(this.countdown === undefined ? undefined : this.countdown * 1000);
    }
    if (changed.has('keep')) this.#watch.key = this.keep && `limb-stopwatch:${this.keep}`;
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override render(): TemplateResult {
    const { bedside: words } = this.#words;
    const { running } = this.#watch;
    const shown = this.#watch.remaining ?? this.#watch.elapsed;
    const [whole, tenth] = clockText(shown, true).split('.');
    const { point } = this.#words.whole;
    return html`
      <p class="time" part="time" role="timer" aria-label=${this.label || words.timer}>
        ${whole}<small>${point}${tenth}</small>
      </p>
      ${this.label ? html`<p class="hint">${this.label}</p>` : nothing}
      <button
        type="button"
        part="button"
        class="button solid main"
        ?disabled=${this.disabled}
        @click=${() => this.toggle()}
      >
        ${running ? this.stopLabel || words.stop : this.startLabel || words.start}
      </button>
      ${this.plain ? nothing : this.#more()}
    `;
  }

  #more(): TemplateResult {
    const { bedside: words } = this.#words;
    const { running, watch } = this.#watch;
    return html`<div class="row">
        <button
          type="button"
          class="button"
          ?disabled=${!running || this.disabled}
          @click=${() => this.#lap()}
        >
          ${words.lap}
        </button>
        <button
          type="button"
          class="button"
          aria-expanded=${this.correcting}
          ?disabled=${this.disabled}
          @click=${() => (this.correcting = !this.correcting)}
        >
          ${words.correct}
        </button>
        <button
          type="button"
          class="button"
          ?disabled=${running || this.disabled}
          @click=${() => this.reset()}
        >
          ${words.reset}
        </button>
      </div>
      ${
        this.correcting
          ? html`<div class="row">
              ${numberField({
                id: 'time',
                label: words.time,
                unit: 's',
                value: this.seconds,
                shown: this.#words.whole.number,
                max: LONGEST_SECONDS,
                disabled: this.disabled,
                refusal: this.refusal,
                complain: (typed) => words.refusedTime(typed, LONGEST_SECONDS, 's'),
                typing: this.#typing,
                set: (value) => this.#correct(value ?? 0),
              })}
            </div>`
          : nothing
      }
      ${
        watch.laps.length
          ? html`<ol class="laps" aria-label=${words.laps}>
              ${watch.laps.map(({ at }, i) => html`<li><b>${i + 1}</b> ${clockText(at, true).replace('.', this.#words.whole.point)}</li>`)}
            </ol>`
          : nothing
      }`;
  }

  get #words(): PartMessages {
    return partMessagesFor(this.#language.tag, this.#language.register);
  }

  #lap(): void {
    this.#watch.lap();
    this.#tell(false);
  }

  #correct(seconds: number): void {
    this.#watch.correct(seconds);
    this.correcting = false;
    this.#tell(true);
  }

  #tell(settled: boolean): void {
    this.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    if (settled) this.dispatchEvent(new Event('change', { bubbles: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-stopwatch': LimbStopwatch;
  }
}
