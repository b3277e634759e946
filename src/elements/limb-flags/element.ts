import { LitElement, type PropertyValues, html, nothing, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { emptyExamination, type Examination, parseExaminationText } from '../../examination/index.js';
import { type FlagWords, flagWordsFor } from '../../locale/flags.js';
import {
  flagChange,
  type FlagSettings,
  type Pathway,
  type Question,
  triage,
  type Triage,
  uncheckedWords,
  withPathway,
} from '../../triage/index.js';
import { clock } from '../common/clock.js';
import { GivenRecord } from '../common/given-record.js';
import { LANG, LanguageController } from '../common/language.js';
import { Later } from '../common/later.js';
import { OBJECT, property, RECORD } from '../common/property.js';
import { sourcesStyles } from '../common/sources-mark.js';
import { ownRoot } from '../common/own-root.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { onsetQuestions, renderBar } from './bar.js';
import { CallChangeEvent } from './calls.js';
import { HoldStill } from './hold-still.js';
import { QuestionOpenEvent } from './question-open.js';
import { pathwayOf } from '../common/pathway.js';
import { flagStyles } from './styles.js';
import { TypedNumber } from './typed-number.js';

/** There from the start: a flag must not wait for what reads the record. */
const READER = Later.ready({ parseExaminationText });
const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
/** A visit further back than this is read, not examined: its hours no longer run. */
const RUNS_FOR = 14 * 24 * HOUR;
const NOTHING_READ: Triage = { urgency: 'none', flags: [], questions: [], limbs: [] };

/**
 * The red flags of a record in one line that opens: the worst flag with its reasons, the time since the onset, how many there
 * are, and a link that calls where the pathway of the page says whom. Opened, it says of every flag what to do, by when, what
 * raised it and what to ask next. Before there is a flag, the question when a limb's trouble began stands in it. It shows
 * nothing while nothing is to say, cannot be dismissed, and speaks a short sentence when a flag is raised, worsened or withdrawn.
 * A number that is being typed in counts once it has stood for a second; all else counts at once.
 * Of a record that cannot be read, and of words of a later version in one, it says that they were not checked.
 *
 * @tag limb-flags
 * @fires {QuestionOpenEvent} question-open - A person wants to answer a question; only with `links`.
 * @fires {CallChangeEvent} call-change - A person noted, changed or took back that a team was called; only with `notes`.
 * @csspart banner - The bar and what it opens.
 * @csspart flag - One flag.
 */
export class LimbFlags extends LitElement {
  static override styles = [tokenStyles, controlStyles, unreadStyles, flagStyles, sourcesStyles];

  /** The record the flags are read from. One that cannot be read, such as one of a later version, is said to be unchecked. */
  @property({ attribute: false, shape: RECORD }) examination: Examination = emptyExamination();
  /** Choices where sources disagree; they go before those of the pathway. */
  @property({ attribute: false, shape: OBJECT }) settings: FlagSettings = {};
  /**
   * The hospital's own pathway: whom each flag calls, with a telephone number or an `https:` page, and its limits. Parts that
   * cannot be used are left out with a warning. Without it a flag calls "by your local pathway".
   */
  @property({ attribute: false, shape: OBJECT }) pathway: Pathway | undefined = undefined;
  /** Whether everything is shown, not the line alone. */
  @property({ type: Boolean, reflect: true }) open = false;
  /** Shows everything and no controls, for paper. */
  @property({ type: Boolean, reflect: true }) flat = false;
  /** Counts the time since the onset on by the clock, while the patient is being examined. */
  @property({ type: Boolean }) running = false;
  /** Scrolls the page by the height of the bar when it comes or goes, so that what lies below stays under the hand. */
  @property({ type: Boolean }) steady = false;
  /** Makes each question a button that fires `question-open`, for a page that can lead to where it is answered. */
  @property({ type: Boolean }) links = false;
  /** Lets a person note that a team was called; `call-change` hands on the record with it. */
  @property({ type: Boolean }) notes = false;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';
  /** Whom the words address: `trade` for clinicians, `plain` for patients; empty, as the closest ancestor with one says, else `trade`. */
  @property(LANG) register: '' | 'trade' | 'plain' = '';
  @state() private spoken = '';
  readonly #given = new GivenRecord(READER);
  readonly #typed = new TypedNumber(this);
  #read: Triage = NOTHING_READ;
  /** What was read of a record when it was given, for the update that shows it. */
  #ahead: { readonly record: Examination | undefined; readonly read: Triage } | undefined;
  /** What is shown of the record, as text to compare. */
  #shown = '';
  /** Whether the update in progress may change the height of the bar, other than by opening it. */
  #moves = false;
  #next: ReturnType<typeof setTimeout> | undefined;
  readonly #language = new LanguageController(this);

  readonly #still = new HoldStill(this, () => this.steady && this.#moves);

  /** What is about to move the page is measured before elements around have changed it, or it would be laid out twice for one act. */
  override requestUpdate(...[name, ...rest]: Parameters<LitElement['requestUpdate']>): void {
    super.requestUpdate(name, ...rest);
    if (name !== 'examination' || !this.hasUpdated) return;
    this.#follow(rest[0]);
    if (!this.steady) return;
    const record = this.#record;
    const read = record ? this.#triage(record) : NOTHING_READ;
    this.#ahead = { record, read };
    if (this.#said(record, read) !== this.#shown) this.#still.note();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#next);
    this.#next = undefined;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) this.requestUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = this.#read.flags;
    const record = this.#record;
    const ahead = this.#ahead;
    this.#ahead = undefined;
    if (ahead && ahead.record === record && changed.size === 1) this.#read = ahead.read;
    else this.#read = record ? this.#triage(record) : NOTHING_READ;
    // Flags of the record before are not withdrawn by one that cannot be read.
    const change = record && flagChange(before, this.#read.flags);
    const { flags } = this.#read;
    const asked = onsetQuestions(this.#read);
    const shown = this.#said(record, this.#read);
    // Most acts record a pulse that raises no flag: measuring the page for them would lay it out before it is painted.
    const same = shown === this.#shown && changed.size === 1 && changed.has('examination');
    this.#moves = !same && !changed.has('open');
    this.#shown = shown;
    if (!record) this.spoken = '';
    const words = this.#words;
    if (change) this.spoken = words.bar.changed(change.code, words.heading(change.flag));
    // Says to the style sheet around that the bar takes room.
    this.toggleAttribute('raised', flags.length > 0 || asked.length > 0);
    this.toggleAttribute('unchecked', !record || uncheckedWords(record) > 0);
  }

  protected override updated(): void {
    clearTimeout(this.#next);
    this.#next = undefined;
    if (this.#counts && this.isConnected)
      this.#next = setTimeout(() => this.requestUpdate(), MINUTE - (clock.now() % MINUTE));
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override render(): TemplateResult {
    return html`<div class="hidden-visually" role="alert">${this.spoken}</div>
      ${this.#note()}
      ${renderBar({
        read: this.#read,
        pathway: pathwayOf(this.pathway),
        open: this.open,
        since: this.#since(),
        words: this.#words,
        toggle: () => {
          this.open = !this.open;
        },
        ask: this.links && !this.flat ? this.#ask : undefined,
        calls: {
          examination: this.#readable(this.examination) ?? this.examination,
          words: this.#words,
          note: this.notes && !this.flat ? this.#called : undefined,
        },
      })}`;
  }

  /** What is shown of a record, as text to compare. */
  #said(record: Examination | undefined, read: Triage): string {
    const all = this.open || this.flat ? read.questions : onsetQuestions(read);
    return JSON.stringify([read.flags, all, record ? uncheckedWords(record) : null]);
  }

  /** What was not checked: the whole record, or words of a later version in it. */
  #note(): TemplateResult | typeof nothing {
    const record = this.#record;
    const unchecked = record ? uncheckedWords(record) : 0;
    if (record && unchecked === 0) return nothing;
    const said = record ? this.#words.unchecked(unchecked) : this.#words.unread;
    return html`<div class="unread"><p role="status">${said}</p></div>`;
  }

  /** What it opened would lie over the place it leads to. */
  readonly #ask = (question: Question): void => {
    this.open = false;
    this.dispatchEvent(new QuestionOpenEvent(question));
  };

  readonly #called = (next: Examination): void => {
    this.dispatchEvent(new CallChangeEvent(next));
  };

  get #words(): FlagWords {
    return flagWordsFor(this.#language.tag, this.#language.register);
  }

  /** The record whose flags are shown; `undefined` while it cannot be read. */
  get #record(): Examination | undefined {
    return this.flat
      ? this.#readable(this.examination)
      : this.#readable(this.#typed.counting(this.examination));
  }

  #readable(given: unknown): Examination | undefined {
    const held = this.#given.held(given);
    return held.state === 'readable' ? held.value : undefined;
  }

  #follow(given: unknown): void {
    const [before, now] = [this.#readable(given), this.#readable(this.examination)];
    if (before && now) this.#typed.follow(before, now);
    else this.#typed.catchUp();
  }

  #triage(examination: Examination): Triage {
    const choices = withPathway(pathwayOf(this.pathway).settings, this.settings);
    const read = triage(examination, choices);
    const timed = read.limbs.some(({ facts }) => facts.history.onsetAt !== undefined);
    // While the patient is being examined, a clock time of the onset is counted from up to now.
    return this.running && timed && !examination.examinedAt
      ? triage({ ...examination, examinedAt: new Date(clock.now()).toISOString() }, choices)
      : read;
  }

  /** How long ago the patient was examined in ms; `undefined` where that is not known or long past. */
  get #sinceExamined(): number | undefined {
    if (!this.running) return undefined;
    const examinedAt = this.#record?.examinedAt;
    if (!examinedAt) return this.#read.limbs.some(({ facts }) => facts.history.onsetAt) ? 0 : undefined;
    const gone = clock.now() - Date.parse(examinedAt);
    return gone >= 0 && gone < RUNS_FOR ? gone : undefined;
  }

  /** Whether a time is shown that the clock counts on. */
  get #counts(): boolean {
    return this.#read.flags[0]?.sinceOnset !== undefined && this.#sinceExamined !== undefined;
  }

  #since(): string | undefined {
    const hours = this.#read.flags[0]?.sinceOnset;
    if (hours === undefined) return undefined;
    const gone = this.#sinceExamined;
    const minutes = Math.round((hours * HOUR + (gone ?? 0)) / MINUTE);
    const until = gone === undefined ? 'examination' : 'now';
    return this.#words.bar.elapsed(Math.floor(minutes / 60), minutes % 60, until);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'limb-flags': LimbFlags;
  }
}
