import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { placeFromKey, type PlaceKey } from '../../anatomy/index.js';
import type { Examination } from '../../examination/index.js';
import { type Lesson, textIn } from '../../lesson/index.js';
import { messagesFor } from '../../locale/index.js';
import { LANGUAGES } from '../../locale/list.js';
import { partMessagesFor } from '../../locale/parts.js';
import {
  conclude,
  formatCode,
  type HiddenPatient,
  HIGHEST_NUMBER,
  lessonPatient,
  markRound,
  parseCode,
  perform,
  type PracticeActId,
  type PracticeAnswer,
  presentationOf,
  recordKnown,
  resultOf,
  resultsCSV,
  revealed,
  type Round,
  secondsAt,
  simulatedPatient,
  startRound,
} from '../../practice/index.js';
import { clock } from '../common/clock.js';
import { glyphStyles } from '../common/glyph.js';
import { handOver } from '../common/hand-over.js';
import { LANG, LanguageController } from '../common/language.js';
import { ownRoot } from '../common/own-root.js';
import { LESSON } from '../common/lesson-property.js';
import { property } from '../common/property.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { WidthController } from '../common/width-controller.js';
import { FigureViews } from '../pulse-map/figure/figure-view.js';
import { figureStyles } from '../pulse-map/figure/styles.js';
import { renderAnswering } from './answering.js';
import { PracticeChangeEvent } from './events.js';
import { actFor, foundList, renderExamining, type Tool } from './examining.js';
import {
  type CheckedPresentation,
  NO_VOTE,
  renderExaminer,
  renderPresentation,
  renderVote,
  type Vote,
} from './extras.js';
import { type MapView, mapKey, placeOf, renderTools } from './hand.js';
import { KeptResults } from './kept.js';
import { progressStyles, renderProgress } from './progress.js';
import { renderSetup, type Setup, setupOf } from './setup.js';
import { renderSheet, sheetStyles } from './sheet.js';
import { type Speech, timeSaid } from './said.js';
import { practiceStyles } from './styles.js';
import { renderSurface, surfaceOf } from './surface.js';

/** From this width of the element in px on, the side stands beside the map. */
const BESIDE = 760;
/** Share of the width that the map then has, and its padding in px. */
const MAP_SHARE = 0.52;
const MAP_PADDING = 24;
/** Below this width in px the arms or the legs are shown, not the whole. */
const WHOLE_FROM = 640;
/**
 * A hidden patient to practise on, invented and simulated. The map is what one examines with: a touch on a site feels, listens or sounds
 * with the tool in hand, and everything takes its time at the bedside. The learner names side, level, cause, stage, urgency and first
 * step, once; then the truth stands on the map, and a sheet says what was right, what was missed, and what each act told.
 *
 * Keys on the map: arrows travel, Enter or Space uses the tool in hand, F feels, L listens, D is the Doppler.
 *
 * @tag pulse-practice
 * @fires {PracticeChangeEvent} practice-change - A patient was chosen, something was examined, or the answer was given.
 * @csspart figure - The drawing.
 * @csspart sheet - The mark sheet.
 */
export class PulsePractice extends LitElement {
  static override styles = [
    tokenStyles,
    controlStyles,
    glyphStyles,
    figureStyles,
    practiceStyles,
    sheetStyles,
    progressStyles,
  ];

  /** Code of a simulated patient, such as `4817` or `hard-12`; without one the person chooses. */
  @property({ reflect: true, useDefault: true }) code = '';
  /** A lesson whose patient is hidden, in place of a simulated one. */
  @property({ attribute: false, shape: LESSON }) lesson: Lesson | null = null;
  /** Place of that lesson among those at hand, from 1; its patient is called by it. */
  @property({ type: Number }) place = 1;
  /** Shows the examiner's sheet, which tells the truth, in place of the patient. */
  @property({ type: Boolean, reflect: true }) examiner = false;
  /** A key under which results are kept on this machine; without it none are. */
  @property() keep: string | undefined = undefined;
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';

  @state() private round: Round | undefined;
  @state() private answer: PracticeAnswer = {};
  @state() private naming = false;
  @state() private tool: Tool = 'feel';
  @state() private view: MapView | undefined;
  @state() private active: PlaceKey = 'right femoral';
  @state() private open: PlaceKey | undefined;
  @state() private last: PracticeActId | undefined;
  @state() private setup: Setup = setupOf();
  @state() private vote: Vote = NO_VOTE;
  @state() private told = '';
  /** A presentation that was checked, with its text as it was then. */
  @state() private read: CheckedPresentation | undefined;
  readonly #kept = new KeptResults(this);
  readonly #language = new LanguageController(this);
  readonly #width = new WidthController(this, BESIDE);
  readonly #figures = new FigureViews();
  #patient: HiddenPatient | undefined;
  /** By what the patient was asked for. */
  #asked: readonly [code: string, lesson: Lesson | null, place: number] | undefined;
  #known: { readonly round: Round; readonly record: Examination } | undefined;
  #focus: 'heading' | 'site' | undefined;

  /** Whether the answer was given. */
  get answered(): boolean {
    return this.round?.answer !== undefined;
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('code') || changed.has('lesson') || changed.has('place')) this.#meet();
  }

  protected override updated(): void {
    const wanted = this.#focus;
    this.#focus = undefined;
    if (wanted === 'heading')
      this.renderRoot.querySelector<HTMLElement>('.side h3[tabindex], .setup h2')?.focus();
    if (wanted === 'site') this.renderRoot.querySelector<HTMLElement>('.site[tabindex="0"]')?.focus();
  }

  /** Meets the patient of the code or the lesson, once, and forgets the one before. */
  #meet(): void {
    const { lesson, place } = this;
    const asked = [this.code, lesson, place] as const;
    if (this.#asked?.every((one, i) => one === asked[i])) return;
    this.#asked = asked;
    const code = this.code ? parseCode(this.code) : undefined;
    this.#patient = this.lesson
      ? lessonPatient(this.lesson, this.place)
      : code && 'number' in code
        ? simulatedPatient(code)
        : undefined;
    this.#begin();
    if (code && 'number' in code) this.setup = setupOf(code);
  }

  #begin(): void {
    this.round = this.#patient && startRound(this.#patient);
    this.answer = {};
    this.naming = false;
    this.open = this.last = this.read = undefined;
    this.told = '';
    this.vote = NO_VOTE;
  }

  #tell(): void {
    if (this.#patient) this.dispatchEvent(new PracticeChangeEvent(this.#patient.code, this.answered));
  }

  #perform(id: PracticeActId, place?: PlaceKey): void {
    if (!this.round || this.answered) return;
    this.round = perform(this.round, id);
    this.last = id;
    const at = place ?? id.replace(/^\S+ /, '');
    this.open = placeFromKey(at) && (at as PlaceKey);
    this.#tell();
  }

  #touch(place: PlaceKey, tool = this.tool): void {
    const id = actFor(tool, place);
    if (id) this.#perform(id, place);
  }

  #show(): void {
    if (!this.round || !this.#patient) return;
    this.round = conclude(this.round, this.answer);
    this.naming = false;
    this.open = this.last = undefined;
    this.#kept.add(resultOf(this.#patient, this.round, new Date(clock.now()).toISOString()));
    this.#focus = 'heading';
    this.#tell();
  }

  #choose(setup: Setup): void {
    const { number, difficulty, level } = setup;
    const asked = parseCode(number);
    const typed = /^[0-9]+$/.test(number.trim());
    if (!asked || 'lesson' in asked) {
      this.setup = { ...setup, wrong: true };
      return;
    }
    this.lesson = null;
    const before = this.code;
    this.code = formatCode(typed ? { ...asked, difficulty, ...(level && { level }) } : asked);
    if (before === this.code) this.#begin();
    this.#meet();
    this.#focus = 'site';
    this.#tell();
  }

  readonly #next = (): void => {
    const now = parseCode(this.code);
    if (!now || 'lesson' in now) {
      this.lesson = null;
      this.code = '';
      this.#focus = 'heading';
      return;
    }
    this.code = formatCode({ ...now, number: (now.number % HIGHEST_NUMBER) + 1 });
    this.#meet();
    this.#focus = 'site';
    this.#tell();
  };

  readonly #click = (event: Event): void => {
    const place = placeOf(event, this);
    if (!place) return;
    this.active = place;
    this.#touch(place);
  };

  readonly #focusin = (event: FocusEvent): void => {
    const place = placeOf(event, this);
    if (place) this.active = place;
  };

  readonly #keydown = (event: KeyboardEvent): void => {
    const place = placeOf(event, this);
    const act = place && mapKey(event, place, [...this.#shown().sites.keys()]);
    if (!place || !act) return;
    event.preventDefault();
    event.stopPropagation();
    if (act.kind === 'use') this.#touch(place, act.tool);
    else if (act.kind === 'close') this.open = this.last = undefined;
    else if (act.to) {
      this.active = act.to;
      this.#focus = 'site';
    }
  };

  get #record(): Examination {
    const { round } = this;
    if (!this.#known || this.#known.round !== round)
      this.#known = { round: round!, record: recordKnown(this.#patient!, round!) };
    return this.#known.record;
  }

  #shown(): ReturnType<typeof surfaceOf> {
    const width = this.#width.width;
    const view = this.view ?? (width < WHOLE_FROM ? 'legs' : 'whole');
    const truth = this.answered ? revealed(this.#patient!, this.round!) : undefined;
    const room = (width >= BESIDE ? width * MAP_SHARE : width) - MAP_PADDING;
    const drawn = surfaceOf(this.#figures, {
      view,
      width: Math.round(room),
      record: truth?.record ?? this.#record,
      truth,
      active: this.active,
      open: this.open,
      words: messagesFor(this.#language.tag),
    });
    const [first] = drawn.sites.keys();
    return drawn.sites.has(this.active) || !first ? drawn : { ...drawn, active: first };
  }

  protected override render(): TemplateResult {
    const { tag } = this.#language;
    // Practice teaches the trade: it has no plain words.
    const speech: Speech = { messages: messagesFor(tag), parts: partMessagesFor(tag), tag };
    const patient = this.#patient;
    if (!patient || !this.round)
      return html`${renderSetup(
        this.setup,
        speech,
        (setup) => (this.setup = setup),
        (setup) => this.#choose(setup),
      )}
      ${this.#progress(speech)}`;
    if (this.examiner) return renderExaminer(patient, speech);
    return this.#room(patient, this.round, speech);
  }

  #room(patient: HiddenPatient, round: Round, speech: Speech): TemplateResult {
    const words = speech.parts.practice;
    const { brief, story } = patient;
    const drawn = this.#shown();
    return html`<div class="top">
        <h2>${words.patient(patient.code)}</h2>
        <span class="hint">${words.difficulties[patient.difficulty]}</span>
        <p class="clock hint">${words.bedside}<b>${timeSaid(secondsAt(round), speech)}</b></p>
      </div>
      <p class="story">
        ${brief ? words.brief(brief.age, brief.complaint, brief.side) : story ? textIn(story, speech.tag) : nothing}
      </p>
      <p class="hint">${words.invented}</p>
      <div class="room">
        <div class="map">
          ${renderTools(
            { tool: this.answered ? undefined : this.tool, view: drawn.layout.view },
            speech,
            (tool) => (this.tool = tool),
            (view) => (this.view = view),
          )}
          ${renderSurface(drawn, { click: this.#click, keydown: this.#keydown, focusin: this.#focusin })}
        </div>
        <div class="side">${this.#side(patient, round, speech)}</div>
      </div>`;
  }

  #side(patient: HiddenPatient, round: Round, speech: Speech): TemplateResult {
    if (this.answered) return this.#after(patient, round, speech);
    const vote = renderVote(this.vote, undefined, speech, (next) => (this.vote = next));
    if (this.naming)
      return html`${renderAnswering({
        patient,
        answer: this.answer,
        speech,
        change: (change) => (this.answer = change(this.answer)),
        back: () => (this.naming = false),
        show: () => this.#show(),
      })}
      ${foundList({ patient, round, speech })} ${vote}`;
    return html`${renderExamining({
      patient,
      round,
      open: this.open,
      last: this.last,
      speech,
      perform: (id) => this.#perform(id),
      close: () => {
        this.open = this.last = undefined;
        this.#focus = 'site';
      },
      name: () => {
        this.naming = true;
        this.#focus = 'heading';
      },
    })}
    ${vote}`;
  }

  #after(patient: HiddenPatient, round: Round, speech: Speech): TemplateResult {
    const words = speech.parts.practice;
    const sheet = markRound(patient, round);
    return html`${renderSheet(patient, round, secondsAt(round), speech)}
      <p class="row end">
        <button type="button" class="button" @click=${() => print()}>${words.print}</button>
        <button type="button" class="button" data-do="again" @click=${() => this.#begin()}>
          ${words.again}
        </button>
        <button type="button" class="button solid" data-do="next" @click=${this.#next}>${words.next}</button>
      </p>
      ${renderPresentation(this.told, this.read, speech, {
        type: (text) => (this.told = text),
        check: () => {
          const base = speech.tag.toLowerCase().split('-')[0];
          const language = LANGUAGES.find(({ tag }) => tag === base)?.tag ?? 'en';
          this.read = { of: this.told, ...presentationOf(patient, round, this.told, language) };
        },
      })}
      ${renderVote(this.vote, sheet, speech, (next) => (this.vote = next))} ${this.#progress(speech)}`;
  }

  #progress(speech: Speech): TemplateResult {
    const kept = this.#kept;
    return renderProgress(kept, this.keep !== undefined, speech, {
      download: () => handOver('practice.csv', resultsCSV(kept.results), 'text/csv'),
      forget: () => kept.forget(),
      restore: () => kept.restore(),
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-practice': PulsePractice;
  }
}
