import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { emptyExamination, type Examination } from '../../examination/index.js';
import { type FlagWords, flagWordsFor } from '../../locale/flags.js';
import { type FlagSettings, type RedFlag, redFlags } from '../../triage/index.js';
import { ICONS } from '../common/icons.js';
import { LANG, LanguageController } from '../common/language.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';

const keyOf = ({ code, limb }: RedFlag): string => `${code} ${limb?.side ?? ''} ${limb?.kind ?? ''}`;

/**
 * The red flags of a record, the most urgent first: what may be in danger, what raised it, what is still missing, and that
 * local pathways decide. It shows nothing while there is none; it can be folded to one line but not dismissed. A flag that appears is
 * spoken at once.
 *
 * @tag limb-flags
 * @csspart banner - The whole banner.
 * @csspart flag - One flag.
 */
export class LimbFlags extends LitElement {
  static override styles = [
    tokenStyles,
    controlStyles,
    css`
      :host {
        display: block;
        container-type: inline-size;
      }
      :host([hidden]) {
        display: none;
      }
      .banner {
        display: flex;
        align-items: start;
        gap: 12px;
        padding: 12px 16px;
        border-inline-start: 6px solid var(--_danger);
        border-radius: var(--_radius);
        background: var(--_danger-soft);
      }
      .banner > svg {
        margin-block-start: 2px;
        color: var(--_danger);
      }
      .said {
        flex: 1;
        min-inline-size: 0;
      }
      .flag + .flag {
        margin-block-start: 12px;
        padding-block-start: 12px;
        border-block-start: 1px solid var(--_danger);
      }
      .heading {
        display: block;
        font-size: 18px;
        line-height: 24px;
        font-weight: 700;
        color: var(--_danger);
        text-wrap: balance;
      }
      .flag.later .heading {
        font-size: 16px;
        line-height: 22px;
      }
      .act {
        font-weight: 600;
      }
      .when {
        margin-inline-end: 6px;
        padding-inline: 6px;
        border: 1px solid var(--_danger);
        border-radius: 4px;
        font-size: 13px;
        line-height: 18px;
        font-weight: 600;
        color: var(--_danger);
        white-space: nowrap;
      }
      .caution {
        margin-block-start: 10px;
        font-size: 13px;
        line-height: 18px;
        color: var(--_ink-2);
      }
      .fold {
        border-color: var(--_danger);
      }
      .folded .heading {
        font-size: 16px;
      }
      @media print {
        .fold {
          display: none;
        }
        .said {
          columns: 2 280px;
          column-gap: 24px;
        }
        .flag {
          break-inside: avoid;
        }
      }
      @container (max-width: 479px) {
        .banner {
          flex-wrap: wrap;
        }
        .said {
          flex-basis: 70%;
        }
        .fold {
          inline-size: 100%;
        }
      }
    `,
  ];

  /** The record the flags are read from. */
  @property({ attribute: false }) examination: Examination = emptyExamination();
  /** Choices where sources disagree. */
  @property({ attribute: false }) settings: FlagSettings = {};
  /** Shown as one line with the most urgent flag. */
  @property({ type: Boolean, reflect: true }) folded = false;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';

  @state() private flags: readonly RedFlag[] = [];
  @state() private spoken = '';
  readonly #language = new LanguageController(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('examination') && !changed.has('settings') && this.hasUpdated) return;
    const before = new Set(this.flags.map(keyOf));
    this.flags = redFlags(this.examination, this.settings);
    const fresh = this.flags.filter((flag) => !before.has(keyOf(flag)));
    const words = this.#words;
    if (fresh.length) {
      // A new urgent flag reopens the banner, so that it is not hidden by an earlier fold.
      if (fresh.some(({ urgency }) => urgency === 'now')) this.folded = false;
      this.spoken = fresh.map((flag) => `${words.heading(flag)}. ${words.action(flag)}`).join(' ');
    } else if (!this.flags.length) this.spoken = '';
  }

  get #words(): FlagWords {
    return flagWordsFor(this.#language.tag);
  }

  protected override render(): TemplateResult {
    const words = this.#words;
    return html`<div class="hidden-visually" role="alert">${this.spoken}</div>
      ${
        this.flags.length
          ? html`<section
              part="banner"
              class="banner ${this.folded ? 'folded' : ''}"
              aria-label=${words.title}
            >
              ${ICONS.alarm}
              <div class="said">${this.folded ? this.#line() : this.#all()}</div>
              <button
                type="button"
                class="button fold"
                aria-expanded=${!this.folded}
                @click=${() => (this.folded = !this.folded)}
              >
                ${this.folded ? words.unfold : words.fold}
              </button>
            </section>`
          : nothing
      }`;
  }

  #line(): TemplateResult {
    const words = this.#words;
    const [first, ...others] = this.flags as [RedFlag, ...RedFlag[]];
    return html`<p>
      <b class="heading">${words.heading(first)}</b>
      <span class="act">${words.action(first)}</span>
      ${others.length ? words.more(others.length) : nothing}
    </p>`;
  }

  #all(): TemplateResult {
    const words = this.#words;
    return html`${this.flags.map(
        (flag, i) =>
          html`<div part="flag" class="flag ${i ? 'later' : ''}">
            <b class="heading">${words.heading(flag)}</b>
            <p><span class="when">${words.when(flag)}</span> ${words.because(flag)}</p>
            <p class="act">
              ${words.action(flag)} ${flag.flowWithin ? words.hours(flag.flowWithin) : nothing}
            </p>
            ${
              flag.class
                ? html`<p>
                    ${words.classOpen(flag.class)}
                    ${flag.sinceOnset === undefined ? nothing : words.since(flag.sinceOnset)}
                  </p>`
                : nothing
            }
            ${flag.ask.length ? html`<p>${words.ask(flag.ask)}</p>` : nothing}
          </div>`,
      )}
      <p class="caution">${words.caution}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-flags': LimbFlags;
  }
}
