import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import { type Place, placeKey, PLACES } from '../../anatomy/index.js';
import { SHIPPED_LESSON_IDS, type Lesson, shippedLesson, type ShippedLessonId } from '../../lesson/index.js';
import { messagesFor } from '../../locale/index.js';
import { partMessagesFor } from '../../locale/parts.js';
import { glyphStyles } from '../common/glyph.js';
import { LANG, LanguageController } from '../common/language.js';
import { addStyles } from '../common/more-styles.js';
import { ownRoot } from '../common/own-root.js';
import { LESSON } from '../common/lesson-property.js';
import { property } from '../common/property.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { fetchPlate, plateFor, plateKit } from '../pulse-map/plate/fetched.js';
import { renderControls } from './controls.js';
import { Ear, nextHeard } from './ear.js';
import { closeStyles, fitSlides } from './fit.js';
import { FullScreen } from './full-screen.js';
import { fitHandOut, pulseSteps, renderHandOut } from './hand-out.js';
import { handOutStyles } from './hand-out-styles.js';
import { Hand } from './hand.js';
import { type KeyAct, keyAct } from './keys.js';
import { renderMark } from './mark-slide.js';
import { renderPresenter } from './presenter.js';
import type { Speech } from './said.js';
import type { Show } from './show.js';
import { plateViewOf } from './site-picture.js';
import { renderOverview, renderSlide, type SlideView } from './slides.js';
import { slideStyles } from './slide-styles.js';
import { Stage } from './stage.js';
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
 * Home and End lead to its ends, P shows the pulse wave, M lets the room mark on a map, H lets a site be heard, R reveals, S is the spotlight, I draws, W wipes, F or F5 fills the screen, Escape leads back.
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

  /** Fetches and defines the map on which the room marks; set by the define module. */
  static defineMap: () => Promise<unknown> = () => Promise.reject(new Error('no map'));

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

  @state() private wanted = '';
  @state() private failed = false;
  @state() private map: 'none' | 'fetched' | 'there' | 'failed' = 'none';
  readonly #language = new LanguageController(this);
  readonly #stage = new Stage(this, (before) => this.#changed(before));
  readonly #full = new FullScreen(this);
  readonly #over = this.#stage.over;
  readonly #wave = new Wave(this);
  readonly #ear = new Ear(this);
  readonly #hand = new Hand(this.#over, {
    hear: (spot) => {
      const can = !this.presenter && this.lesson?.patient !== undefined;
      if (can) this.#listen(PULSE_AND_LISTENING.get(spot));
      return can;
    },
    steps: () => !this.presenter && !this.#show.overview && !this.#show.marking,
    step: (way) => this.#stage.do(way),
  });
  /** A person of this window has asked for the map: it takes the focus once it is there. */
  #enters = false;
  /** The lesson that was fetched, not given by the page. */
  #fetched: Lesson | null = null;
  #timer: ReturnType<typeof setInterval> | undefined;

  /** Id of the step on the screen; missing on the title. */
  get step(): string | undefined {
    return this.#stage.step?.id;
  }

  /** Ids of the steps whose finding was revealed. */
  get revealed(): readonly string[] {
    return this.#show.revealed;
  }

  /** Goes to a step by its id; to the title without one. */
  goTo(step?: string): void {
    const at = step === undefined ? 0 : this.#stage.steps.findIndex(({ id }) => id === step) + 1;
    if (step === undefined || at > 0) this.#stage.do({ to: at });
  }

  get #show(): Show {
    return this.#stage.show;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('keydown', this.#keydown);
    document.addEventListener('visibilitychange', this.#seen);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('keydown', this.#keydown);
    document.removeEventListener('visibilitychange', this.#seen);
    clearInterval(this.#timer);
    this.#timer = undefined;
    this.#wave.stop();
    this.#ear.close();
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return ownRoot(this, super.createRenderRoot());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('shipped')) {
      this.failed = false;
      if (this.shipped && (!this.lesson || this.lesson === this.#fetched)) void this.#fetch(this.shipped);
    }
    if (changed.has('lesson')) this.#stage.setLesson(changed.get('lesson') as Lesson | null | undefined);
    this.#stage.join();
    if (this.#show.marking) void this.#fetchMap();
    clearInterval(this.#timer);
    this.#timer =
      this.presenter && this.isConnected ? setInterval(() => this.requestUpdate(), TICK) : undefined;
  }

  protected override updated(): void {
    if (plateKit.part) addStyles(this.renderRoot, [plateKit.part.plateStyles]);
    fitSlides(this.renderRoot);
    fitHandOut(this.renderRoot);
    this.#wave.show(this.renderRoot.querySelector('canvas'));
    if (this.#enters && this.map === 'there') this.#enter();
    if (!this.lesson) return;
    // The plate on the screen, and that of the step after it, which is shown beside the notes and soon here.
    const { steps, show } = this.#stage;
    const shown = this.handOut ? pulseSteps(steps) : [steps[show.at - 1], steps[show.at]];
    for (const step of shown) {
      const view = step?.act.kind === 'pulse' ? plateViewOf(step.act.place) : undefined;
      if (view && !plateFor(view)) void fetchPlate(view).then(() => plateFor(view) && this.requestUpdate());
    }
  }

  async #fetch(id: string): Promise<void> {
    try {
      if (!SHIPPED_LESSON_IDS.includes(id as ShippedLessonId)) throw new RangeError(`no lesson "${id}"`);
      const lesson = await shippedLesson(id as ShippedLessonId);
      if (this.shipped === id) this.lesson = this.#fetched = lesson;
    } catch {
      if (this.shipped !== id) return;
      if (this.lesson === this.#fetched) this.lesson = null;
      this.failed = true;
    }
  }

  /** A map that could not be had is asked for again when the room next wants to mark. */
  async #fetchMap(): Promise<void> {
    if (this.map !== 'none') return;
    this.map = 'fetched';
    try {
      await (this.constructor as typeof PulseLesson).defineMap();
      this.map = 'there';
    } catch {
      this.map = 'failed';
    }
  }

  #enter(): void {
    const map = this.renderRoot.querySelector('pulse-map');
    this.#enters = false;
    if (this.presenter) return;
    // The map is as high as the window: what stands above it on the page makes room.
    void map?.updateComplete.then(() => {
      map.focus({ preventScroll: true });
      this.renderRoot.querySelector('.slide')?.scrollIntoView({ block: 'start' });
    });
  }

  #changed(before: Show): void {
    const show = this.#show;
    if (before.overview !== show.overview) this.wanted = '';
    if (before.marking && !show.marking && this.map === 'failed') this.map = 'none';
    if (before.at !== show.at) this.#ear.quiet();
    if (before.at !== show.at || before.revealed !== show.revealed)
      this.dispatchEvent(new ShowChangeEvent(this.step, show.revealed));
  }

  #act(what: KeyAct): void {
    switch (what) {
      case 'spotlight':
        return this.#over.toggle('light');
      case 'ink':
        return this.#over.toggle('ink');
      case 'wipe':
        if (this.#show.marking) return this.#stage.marks.wipe();
        return this.#over.wipe();
      case 'full':
        return void this.#full.toggle();
      case 'hear':
        return this.#listen(nextHeard(this.#stage.step?.act, this.#ear.now)?.place);
      case 'escape':
        return this.#over.clear() ? undefined : this.#stage.do('escape');
      case 'mark':
        this.#enters = !this.#show.marking;
        return this.#stage.do(what);
      default:
        return this.#stage.do(what);
    }
  }

  /** Lets a place be heard: as chosen beside the wave, with the stethoscope where the step listens, else with the Doppler probe. */
  #listen(place: Place | undefined): void {
    const { lesson } = this;
    if (!lesson?.patient) return;
    if (!place) return this.#ear.quiet();
    const { wave, revealed } = this.#show;
    const listens = this.#stage.step?.act.kind === 'listen';
    const patient = wave ? this.#wave.patientFor(lesson, revealed) : lesson.patient;
    this.#ear.hear(patient, place, wave ? this.#wave.by : listens ? 'bruit' : 'doppler');
  }

  readonly #seen = (): void => {
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
    const { steps, show } = this.#stage;
    const view: SlideView = { lesson: this.lesson, steps, show, speech };
    if (this.handOut) return renderHandOut(view);
    if (this.presenter) {
      const shown = show.marking ? this.#marking(view) : renderSlide(view);
      // Wave and overview are told by name here, so nothing can be pointed at on them.
      const over = show.black || show.wave || show.overview ? nothing : this.#over.render();
      return renderPresenter(
        view,
        html`${shown} ${over}`,
        this.#hand,
        this.#slideClass,
        this.#controls(speech),
      );
    }
    return html`<div class="frame">
        <section
          class=${this.#slideClass}
          part="slide"
          aria-label=${words.slides}
          aria-live=${show.marking ? 'off' : 'polite'}
          tabindex="0"
          @pointerdown=${this.#hand.down}
          @pointermove=${this.#hand.move}
          @pointerup=${this.#hand.up}
          @pointercancel=${this.#hand.cancel}
        >
          ${this.#slide(view)} ${this.#sounding(speech)} ${show.black ? nothing : this.#over.render()}
        </section>
      </div>
      ${this.#controls(speech)}`;
  }

  get #slideClass(): string {
    const { light, ink } = this.#over;
    return `slide ${light ? 'lit' : ''} ${ink ? 'inking' : ''} ${this.#show.marking ? 'mapped' : ''}`;
  }

  #slide(view: SlideView): TemplateResult {
    const { black, overview, wave, marking } = this.#show;
    if (black)
      return html`<div class="black"><p class="hidden-visually">${view.speech.parts.lesson.black}</p></div>`;
    if (overview) return this.#overview(view);
    if (marking) return this.#marking(view);
    if (!wave) return renderSlide(view);
    const hear = (place: Place): void => this.#listen(place);
    return renderWave({ ...view, wave: this.#wave, heard: this.#ear.now, hear });
  }

  #marking(view: SlideView): TemplateResult {
    const map = this.map === 'none' ? 'fetched' : this.map;
    const leave = (way: 'next' | 'back'): void => this.#stage.do(way);
    return renderMark({ ...view, store: this.#stage.marks.store, mirror: this.presenter, map, leave });
  }

  /** Says what sounds, for those who do not hear it. */
  #sounding({ parts: { lesson: words } }: Speech): TemplateResult {
    const { now } = this.#ear;
    return html`<p class="sounding" role="status">
      ${now && !this.#show.black ? html`<span>${words.sound.playing}: ${words.sound[now.by](now.place)}</span>` : nothing}
    </p>`;
  }

  #overview(view: SlideView): TemplateResult {
    return renderOverview(
      view,
      this.wanted,
      (at) => this.#stage.do({ to: at }),
      (text) => (this.wanted = text),
    );
  }

  #controls(speech: Speech): TemplateResult {
    const { step } = this.#stage;
    return renderControls({
      words: speech.parts.lesson,
      show: this.#show,
      open: step !== undefined && this.#show.revealed.includes(step.id),
      presenter: this.presenter,
      over: this.#over,
      full: this.#full,
      heard: this.#ear.now,
      next: this.lesson?.patient && !this.#show.wave ? nextHeard(step?.act, undefined) : undefined,
      act: (what) => this.#act(what),
    });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-lesson': PulseLesson;
  }
}
