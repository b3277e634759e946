import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { type Place, placeKey, PLACES } from '../../anatomy/index.js';
import {
  SHIPPED_LESSON_IDS,
  type Lesson,
  type LessonStep,
  shippedLesson,
  type ShippedLessonId,
  stepsOf,
} from '../../lesson/index.js';
import { messagesFor } from '../../locale/index.js';
import { partMessagesFor } from '../../locale/parts.js';
import { clock } from '../common/clock.js';
import { glyphStyles } from '../common/glyph.js';
import { LANG, LanguageController } from '../common/language.js';
import { addStyles } from '../common/more-styles.js';
import { ownRoot } from '../common/own-root.js';
import { LESSON } from '../common/lesson-property.js';
import { property } from '../common/property.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { fetchPlate, plateFor, plateKit } from '../pulse-map/plate/fetched.js';
import { Awake } from './awake.js';
import { renderControls } from './controls.js';
import { Ear, nextHeard } from './ear.js';
import { closeStyles, fitSlides } from './fit.js';
import { fitHandOut, pulseSteps, renderHandOut } from './hand-out.js';
import { handOutStyles } from './hand-out-styles.js';
import { Keep } from './keep.js';
import { Hand } from './hand.js';
import { type KeyAct, keyAct } from './keys.js';
import { Link } from './link.js';
import { Over } from './over.js';
import { renderPresenter } from './presenter.js';
import type { Speech } from './said.js';
import { act, OPENING, readShow, refitted, type Show, type ShowAct } from './show.js';
import { plateViewOf } from './site-picture.js';
import { renderOverview, renderSlide, type SlideView } from './slides.js';
import { slideStyles } from './slide-styles.js';
import { lessonStyles } from './styles.js';
import { Wave } from './wave.js';
import { renderWave } from './wave-slide.js';
import { waveStyles } from './wave-styles.js';

/** Every place that can be pressed, by its key. */
const PULSE_AND_LISTENING: ReadonlyMap<string, Place> = new Map(
  PLACES.map((place) => [placeKey(place), place]),
);

/** How often the presenter's clocks are drawn, in ms. */
const TICK = 1000;

/** Fires when another slide is shown, or a finding was revealed or hidden. */
export class ShowChangeEvent extends Event {
  static readonly type = 'show-change';
  /** @param step id of the step on the screen; missing on the title */
  constructor(
    readonly step: string | undefined,
    readonly revealed: readonly string[],
  ) {
    super(ShowChangeEvent.type);
  }
}

/**
 * A lesson for a projector: the whole sequence of the examination of one patient, step by step, each with the site enlarged, how it is
 * done and what it means. What the step finds is hidden until it is revealed; record and reading build up as findings come. A second one
 * with `presenter`, in another window, shows clocks, notes and the next step, and both go together.
 *
 * Keys: arrows, Page Up and Page Down step (a step first reveals its finding), B or period blackens the screen, O shows the sequence,
 * Home and End lead to its ends, P shows the pulse wave, H lets a site be heard, R reveals, S is the spotlight, I draws, W wipes, F or F5 fills the screen, Escape leads back.
 *
 * @tag pulse-lesson
 * @fires {ShowChangeEvent} show-change - Another slide is shown, or a finding was revealed or hidden.
 * @csspart slide - The slide.
 * @csspart controls - The buttons below it.
 */
export class PulseLesson extends LitElement {
  static override styles = [
    tokenStyles,
    controlStyles,
    glyphStyles,
    slideStyles,
    closeStyles,
    waveStyles,
    lessonStyles,
    handOutStyles,
  ];

  /** The lesson, as `parseLesson` or `shippedLesson` hands it out. */
  @property({ attribute: false, shape: LESSON }) lesson: Lesson | null = null;
  /** Id of a lesson that ships, which is fetched where no lesson was given. */
  @property() shipped = '';
  /** Shows the presenter's window instead of the slide. */
  @property({ type: Boolean, reflect: true }) presenter = false;
  /** Shows the hand-out in place of the slide: two pages of A4 to print, which tell nothing of what the patient has. */
  @property({ type: Boolean, reflect: true, attribute: 'hand-out' }) handOut = false;
  /** A key under which the place in the lesson is kept while the tab lives, so that a reload goes on there. */
  @property() keep: string | undefined = undefined;
  /** Windows of the same lesson with the same channel go together; empty: all of this origin. */
  @property() channel = '';
  /** Language of the words, a BCP 47 tag; without it the nearest `lang` in the page counts. */
  @property(LANG) override lang = '';

  @state() private show: Show = OPENING;
  @state() private wanted = '';
  @state() private failed = false;
  readonly #language = new LanguageController(this);
  readonly #over = new Over(this);
  readonly #awake = new Awake();
  readonly #keep = new Keep(() =>
    this.keep && this.lesson ? `pulse-lesson:${this.keep}:${this.lesson.id}` : undefined,
  );
  readonly #wave = new Wave(this);
  readonly #ear = new Ear(this);
  readonly #hand = new Hand(this.#over, {
    hear: (spot) => {
      if (this.lesson?.patient) this.#listen(PULSE_AND_LISTENING.get(spot));
      return this.lesson?.patient !== undefined;
    },
    steps: () => !this.show.overview,
    step: (way) => this.#do(way),
  });
  #steps: readonly LessonStep[] = [];
  #link: Link | undefined;
  #linked = '';
  #timer: ReturnType<typeof setInterval> | undefined;

  /** Id of the step on the screen; missing on the title. */
  get step(): string | undefined {
    return this.#steps[this.show.at - 1]?.id;
  }

  /** Ids of the steps whose finding was revealed. */
  get revealed(): readonly string[] {
    return this.show.revealed;
  }

  /** Goes to a step by its id; to the title without one. */
  goTo(step?: string): void {
    const at = step === undefined ? 0 : this.#steps.findIndex(({ id }) => id === step) + 1;
    if (step === undefined || at > 0) this.#do({ to: at });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('keydown', this.#keydown);
    document.addEventListener('visibilitychange', this.#seen);
    document.addEventListener('fullscreenchange', this.#filled);
    if (this.#linked) this.#join();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('keydown', this.#keydown);
    document.removeEventListener('visibilitychange', this.#seen);
    document.removeEventListener('fullscreenchange', this.#filled);
    clearInterval(this.#timer);
    this.#timer = undefined;
    this.#link?.close();
    this.#link = undefined;
    void this.#awake.set(false);
    this.#wave.stop();
    this.#ear.close();
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('shipped') && this.shipped && !this.lesson) void this.#fetch(this.shipped);
    if (changed.has('lesson')) {
      const before = changed.get('lesson') as Lesson | null | undefined;
      const ids = this.#ids;
      this.#steps = this.lesson ? stepsOf(this.lesson) : [];
      // A lesson that is being written stays where it is; another one begins, or goes on where the tab left it.
      const goesOn = before && before.id === this.lesson?.id;
      this.show = goesOn
        ? refitted(this.show, ids, this.#ids)
        : ((this.hasUpdated && before ? undefined : this.#keep.read(this.#ids)) ?? OPENING);
      if (!goesOn) this.#linked = '';
    }
    if (this.lesson && `${this.channel} ${this.lesson.id}` !== this.#linked) this.#join();
    clearInterval(this.#timer);
    this.#timer =
      this.presenter && this.isConnected ? setInterval(() => this.requestUpdate(), TICK) : undefined;
  }

  protected override updated(): void {
    if (plateKit.part) addStyles(this.renderRoot, [plateKit.part.plateStyles]);
    fitSlides(this.renderRoot);
    fitHandOut(this.renderRoot);
    this.#wave.show(this.renderRoot.querySelector('canvas'));
    if (!this.lesson) return;
    // The plate on the screen, and that of the step after it, which is shown beside the notes and soon here.
    const shown = this.handOut
      ? pulseSteps(this.#steps)
      : [this.#steps[this.show.at - 1], this.#steps[this.show.at]];
    for (const step of shown) {
      const view = step?.act.kind === 'pulse' ? plateViewOf(step.act.place) : undefined;
      if (view && !plateFor(view)) void fetchPlate(view).then(() => plateFor(view) && this.requestUpdate());
    }
  }

  async #fetch(id: string): Promise<void> {
    try {
      if (!SHIPPED_LESSON_IDS.includes(id as ShippedLessonId)) throw new RangeError(`no lesson "${id}"`);
      const lesson = await shippedLesson(id as ShippedLessonId);
      if (this.shipped === id) this.lesson = lesson;
    } catch {
      this.failed = true;
    }
  }

  #join(): void {
    if (!this.lesson) return;
    this.#linked = `${this.channel} ${this.lesson.id}`;
    this.#link?.close();
    this.#link = new Link(
      this.#linked,
      (heard) => this.#hear(heard),
      () => this.show,
    );
  }

  #hear(heard: unknown): void {
    const show = readShow(heard, this.#ids);
    if (show && show.turn > this.show.turn) this.#take(show);
  }

  get #ids(): readonly string[] {
    return this.#steps.map(({ id }) => id);
  }

  #take(show: Show): void {
    const before = this.show;
    this.show = show;
    if (before.overview !== show.overview) this.wanted = '';
    if (before.at !== show.at) {
      this.#over.wipe();
      this.#ear.quiet();
    }
    this.#keep.write(show);
    if (before.at !== show.at || before.revealed !== show.revealed)
      this.dispatchEvent(new ShowChangeEvent(this.step, show.revealed));
  }

  #do(what: ShowAct): void {
    const next = act(this.show, what, this.#ids, clock.now());
    if (next === this.show) return;
    this.#take(next);
    this.#link?.say(next);
  }

  #act(what: KeyAct): void {
    switch (what) {
      case 'spotlight':
        return this.#over.toggle('light');
      case 'ink':
        return this.#over.toggle('ink');
      case 'wipe':
        return this.#over.wipe();
      case 'full':
        return void this.#fill();
      case 'hear':
        return this.#listen(nextHeard(this.#steps[this.show.at - 1]?.act, this.#ear.now)?.place);
      case 'escape':
        return this.#over.clear() ? undefined : this.#do('escape');
      default:
        return this.#do(what);
    }
  }

  /** Lets a place be heard: with the stethoscope where the step listens, else with the Doppler probe. Silence without one. */
  #listen(place: Place | undefined): void {
    const { lesson } = this;
    if (!lesson?.patient) return;
    if (!place) return this.#ear.quiet();
    const listens = !this.show.wave && this.#steps[this.show.at - 1]?.act.kind === 'listen';
    const patient = this.show.wave ? this.#wave.patientFor(lesson, this.show.revealed) : lesson.patient;
    this.#ear.hear(patient, place, listens ? 'bruit' : 'doppler');
  }

  async #fill(): Promise<void> {
    try {
      if (document.fullscreenElement) await document.exitFullscreen();
      else await this.requestFullscreen();
    } catch {
      // Refused by browser or page: the slide stays as large as its place.
    }
  }

  readonly #filled = (): void => {
    void this.#awake.set(this.matches(':fullscreen'));
    this.requestUpdate();
  };

  readonly #seen = (): void => {
    this.#awake.again();
    this.#wave.show(this.renderRoot.querySelector('canvas'));
  };

  /** Keys count when they come from here, or from nowhere in particular: a remote types into the page. */
  readonly #keydown = (event: KeyboardEvent): void => {
    const path = event.composedPath();
    const nowhere = path[0] === document.body || path[0] === document.documentElement;
    if (!this.lesson || this.handOut || !(path.includes(this) || nowhere || this.matches(':fullscreen')))
      return;
    const what = keyAct(event);
    if (what === undefined) return;
    event.preventDefault();
    this.#act(what);
  };

  protected override render(): TemplateResult | typeof nothing {
    const { tag } = this.#language;
    // A lesson teaches the trade: it has no plain words.
    const speech: Speech = { messages: messagesFor(tag), parts: partMessagesFor(tag), tag };
    const words = speech.parts.lesson;
    if (!this.lesson)
      return html`<p role="status" class="wait">
        ${this.failed ? words.failed : this.shipped ? words.loading : nothing}
      </p>`;
    const view: SlideView = { lesson: this.lesson, steps: this.#steps, show: this.show, speech };
    if (this.handOut) return renderHandOut(view);
    if (this.presenter) return renderPresenter(view, this.#controls(speech));
    const { light, ink } = this.#over;
    return html`<div class="frame">
        <section
          class="slide ${light ? 'lit' : ''} ${ink ? 'inking' : ''}"
          part="slide"
          aria-label=${words.slides}
          aria-live="polite"
          tabindex="0"
          @pointerdown=${this.#hand.down}
          @pointermove=${this.#over.move}
          @pointerup=${this.#hand.up}
          @pointercancel=${this.#hand.cancel}
        >
          ${this.#slide(view)} ${this.#sounding(speech)} ${this.show.black ? nothing : this.#over.render()}
        </section>
      </div>
      ${this.#controls(speech)}`;
  }

  #slide(view: SlideView): TemplateResult {
    const { black, overview, wave } = this.show;
    if (black)
      return html`<div class="black"><p class="hidden-visually">${view.speech.parts.lesson.black}</p></div>`;
    if (overview) return this.#overview(view);
    if (!wave) return renderSlide(view);
    const hear = (place: Place): void => this.#listen(place);
    return renderWave({ ...view, wave: this.#wave, heard: this.#ear.now, hear });
  }

  /** Says what sounds, for those who do not hear it. */
  #sounding({ parts: { lesson: words } }: Speech): TemplateResult {
    const { now } = this.#ear;
    return html`<p class="sounding" role="status">
      ${now && !this.show.black ? html`<span>${words.sound.playing}: ${words.sound[now.by](now.place)}</span>` : nothing}
    </p>`;
  }

  #overview(view: SlideView): TemplateResult {
    return renderOverview(
      view,
      this.wanted,
      (at) => this.#do({ to: at }),
      (text) => (this.wanted = text),
    );
  }

  #controls(speech: Speech): TemplateResult {
    const step = this.#steps[this.show.at - 1];
    return renderControls({
      words: speech.parts.lesson,
      show: this.show,
      open: step !== undefined && this.show.revealed.includes(step.id),
      presenter: this.presenter,
      over: this.#over,
      heard: this.#ear.now,
      next: this.lesson?.patient && !this.show.wave ? nextHeard(step?.act, undefined) : undefined,
      act: (what) => this.#act(what),
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-lesson': PulseLesson;
  }
}
