import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import {
  isPulseSite,
  type Place,
  placeFromKey,
  type PlaceKey,
  placeKey,
  PULSE_PLACES,
  siteDefinition,
} from '../../anatomy/index.js';
import {
  type DrawnFlow,
  drawnFlow,
  layOut,
  type LesionMark,
  placesIn,
  ruleMarks,
  travel,
  type View,
} from '../../drawing/index.js';
import { bruitAt, pulseAt, type ScaleStep, setFields, unstatedPlaces } from '../../examination/index.js';
import { readByRule } from '../../localisation/index.js';
import type { OpenPlaceEvent } from '../pulse-reading/events.js';
import { glyphStyles } from '../shared/glyph.js';
import { RecordElement } from '../shared/record-element.js';
import { controlStyles, tokenStyles } from '../shared/tokens.js';
import { renderAlso } from './also.js';
import { renderChooser } from './chooser.js';
import { ChooserController } from './chooser-controller.js';
import { chooserStyles } from './chooser-styles.js';
import { type FigureView, renderFigure } from './figure.js';
import { figureStyles } from './figure-styles.js';
import { keyAct } from './keys.js';
import { renderHelp, renderLegend, renderRefused, renderStatus } from './panels.js';
import { DrawingPointer } from './pointer.js';
import { Recorder, type Said } from './recorder.js';
import { SiteFinder } from './site-finder.js';
import { siteView } from './site-view.js';
import { mapStyles } from './styles.js';
import { renderToolbar, type ToolbarActs } from './toolbar.js';

/** Below this width of the element only arms or legs are shown at a time and the chooser is a sheet, in px. */
const NARROW = 640;
/** From this width on the reading stands beside the figure, in a column of this width, in px. */
const BESIDE = 1180;
const READING_WIDTH = 389;
/** Greatest height of the figure in px: high enough for a target of 44 px at every site. */
const TALLEST = 860;
/** Width assumed until the element has one. */
const UNMEASURED = 820;

/**
 * A map of the arteries of all four limbs on which one click, touch, pen or key records a pulse or a bruit; it shows where
 * the block is and why. A form control: it submits the record as JSON under its `name`.
 *
 * @tag pulse-map
 * @attr value - The record as JSON; what a form reset returns to.
 * @fires input - A person changed the record.
 * @fires change - A person changed the record.
 * @csspart figure - The drawing.
 * @csspart site - A site on the drawing.
 * @csspart toolbar - The row of tools.
 * @csspart chooser - The panel beside an open site.
 * @csspart status - The strip that says what was recorded last.
 * @csspart reading - The panel that says where the block is.
 * @cssprop --pulse-map-paper - Ground of the map.
 * @cssprop --pulse-map-ink - Text and marks.
 * @cssprop --pulse-map-body - Fill of the body.
 * @cssprop --pulse-map-vessel - Arteries near the skin.
 * @cssprop --pulse-map-pulse - Normal pulses.
 * @cssprop --pulse-map-weak - Reduced pulses.
 * @cssprop --pulse-map-gone - Absent pulses and blocks.
 * @cssprop --pulse-map-danger - Red flags, and nothing else.
 * @cssprop --pulse-map-focus - Focus and the open site.
 * @cssprop --pulse-map-font - Typeface.
 */
export class PulseMap extends RecordElement {
  static override styles = [tokenStyles, controlStyles, glyphStyles, mapStyles, figureStyles, chooserStyles];

  /** The part of the body shown; `auto` shows the whole where it fits, else arms or legs in turn. */
  @property({ reflect: true }) view: View | 'auto' = 'auto';
  /** Leaves out the panel that says where the block is, for pages that show `<pulse-reading>` themselves. */
  @property({ type: Boolean, attribute: 'no-reading' }) noReading = false;

  @state() private width = 0;
  @state() private half: 'arms' | 'legs' = 'legs';
  @state() private active: PlaceKey = 'right femoral';
  @state() private preview: PlaceKey | undefined;
  @state() private carried: ScaleStep | undefined;
  @state() private painting: readonly PlaceKey[] = [];
  @state() private help = false;
  @state() private more = false;
  @state() private said: Said | undefined;

  @query('.figure') private figure!: SVGSVGElement | null;
  @query('.site[tabindex="0"]') private activeSite!: HTMLElement | null;

  #resize: ResizeObserver | undefined;
  readonly #sites = new SiteFinder(() => this.figure);
  readonly #recorder = new Recorder({
    store: () => this.store,
    words: () => this.words,
    editable: () => this.editable,
    commit: (next) => this.edit(next),
    said: (said) => (this.said = said),
  });
  readonly #chooser = new ChooserController(
    {
      element: this,
      examination: () => this.examination,
      sheet: () => this.#narrow,
      onSite: (event) => this.#sites.under(event) !== undefined,
      next: (place) => travel(place, 'next', placesIn(this.#view)),
      focusSite: (key) => this.#focusSite(key),
    },
    this.#recorder,
  );
  readonly #pointer = new DrawingPointer(this, {
    surface: () => this.figure,
    sites: this.#sites,
    carrying: () => this.carried !== undefined && this.editable,
    tap: (key) => this.#tap(key),
    erase: (keys) => {
      if (this.editable) this.#recorder.clear(...keys.flatMap((key) => placeFromKey(key) ?? []));
    },
    stroke: (keys) => {
      const places = keys.flatMap((key) => placeFromKey(key) ?? []);
      if (this.carried && this.editable) this.#recorder.stroke(places, this.carried);
    },
    preview: (key) => (this.preview = this.editable ? key : undefined),
    strokePreview: (keys) => (this.painting = keys),
  });

  override connectedCallback(): void {
    super.connectedCallback();
    // Measured before the first paint, so that nothing moves afterwards.
    this.width = this.clientWidth || UNMEASURED;
    this.#resize ??= new ResizeObserver(([entry]) => {
      const width = Math.round(entry?.contentRect.width ?? 0);
      if (width > 0) this.width = width;
    });
    this.#resize.observe(this);
    this.addEventListener('click', this.#hostClick);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#resize?.disconnect();
  }

  /** Moves the focus to the active site. */
  override focus(options?: FocusOptions): void {
    this.activeSite?.focus(options);
  }

  /**
   * Opens a site's chooser, as a tap on it would.
   * @throws RangeError for a site that does not exist
   */
  openPlace(place: Place | PlaceKey): void {
    const key = typeof place === 'string' ? place : placeKey(place);
    const found = placeFromKey(key);
    if (!found) throw new RangeError(`no such site: "${key}"`);
    if (!placesIn(this.#view).includes(found) && this.view === 'auto') {
      const { region } = siteDefinition(found.site);
      this.half = region === 'head' || region === 'arm' ? 'arms' : 'legs';
    }
    this.#openAt(key, true);
  }

  protected override get validityAnchor(): HTMLElement | undefined {
    return this.activeSite ?? undefined;
  }

  get #narrow(): boolean {
    return this.width < NARROW;
  }

  get #beside(): boolean {
    return this.width >= BESIDE && !this.noReading;
  }

  get #view(): View {
    if (this.view !== 'auto') return this.view;
    return this.#narrow ? this.half : 'whole';
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const shown = placesIn(this.#view);
    const active = placeFromKey(this.active);
    if (!active || !shown.includes(active)) this.active = placeKey(shown[0] as Place);
    if (!this.editable) this.#chooser.close(false);
  }

  protected override render(): TemplateResult {
    const { examination, words } = this;
    const marks = ruleMarks(readByRule(examination));
    const view = this.#figureView(marks, drawnFlow(examination, marks));
    this.#sites.layout = view.layout;
    const unstated = unstatedPlaces(examination).length;
    const total = PULSE_PLACES.length;
    return html`${renderRefused(this.faults, words)}
      ${renderToolbar(
        {
          scale: examination.scale,
          canUndo: this.store.canUndo,
          canRedo: this.store.canRedo,
          editable: this.editable,
          carried: this.carried,
          unstated,
          total,
          display: 'figure',
          part: this.view === 'auto' && this.#narrow ? this.half : undefined,
          help: this.help,
          more: this.more,
          narrow: this.#narrow,
          words,
        },
        this.#toolbarActs,
      )}
      ${this.help ? renderHelp(words) : nothing}
      <div
        class="main ${this.#beside ? 'beside' : ''}"
        role="group"
        aria-label=${this.labelText || words.map.name}
        @open-place=${this.#openFromReading}
      >
        <div>
          <div
            class="stage ${this.carried ? 'drawing' : ''}"
            @pointerdown=${this.#pointer.down}
            @pointermove=${this.#pointer.move}
            @pointerup=${this.#pointer.up}
            @pointercancel=${this.#pointer.cancel}
            @lostpointercapture=${this.#pointer.cancel}
            @pointerleave=${this.#pointer.leave}
            @click=${this.#pointer.click}
            @contextmenu=${this.#pointer.menu}
            @dragstart=${preventDefault}
            @touchmove=${{ handleEvent: this.#pointer.touchMove, passive: false }}
            @keydown=${this.#keydown}
            @focusin=${this.#focusin}
          >
            ${renderFigure(view)}
          </div>
          ${view.layout.naming === 'codes' ? renderLegend(view.layout, words) : nothing}
          ${renderStatus(this.said, total - unstated, total, examination.scale, words)}
          ${renderAlso(examination, this.editable, words, (fields) => this.edit(setFields(examination, fields)))}
        </div>
        ${
          this.noReading
            ? nothing
            : html`<div class="reading" part="reading">
                <pulse-reading .examination=${examination} lang=${this.lang || nothing}></pulse-reading>
              </div>`
        }
      </div>
      ${this.#chooserTemplate()}`;
  }

  #figureView(marks: readonly LesionMark[], flow: readonly DrawnFlow[]): FigureView {
    const { words, examination } = this;
    const view = this.#view;
    const places = placesIn(view);
    const painting = this.carried && { keys: this.painting, step: this.carried };
    const sites = new Map(
      places.map((place) => [placeKey(place), siteView(place, examination, words, painting)] as const),
    );
    const width = this.#beside ? this.width - READING_WIDTH : this.width;
    const layout = layOut(view, width, TALLEST, (place) => ({
      name: words.map.siteShort(place.site),
      code: words.anatomy.codes[place.site],
      finding: sites.get(placeKey(place))?.finding ?? '',
    }));
    const ofArms = view.includes('arm') || view.includes('hand');
    return {
      layout,
      flow,
      marks: marks.filter(({ limb }) => view === 'whole' || limb.endsWith('leg') !== ofArms),
      sites,
      active: this.active,
      open: this.#chooser.open,
      preview: this.preview,
      editable: this.editable,
      words,
    };
  }

  #chooserTemplate(): TemplateResult | typeof nothing {
    const { place, unfolded, pinned } = this.#chooser;
    if (!place) return nothing;
    return html`<div @keydown=${this.#chooser.keydown}>
      ${renderChooser(
        {
          place,
          pulse: pulseAt(this.examination, place),
          bruit: bruitAt(this.examination, place),
          scale: this.examination.scale,
          unfolded,
          pinned,
          next: travel(place, 'next', placesIn(this.#view)),
          words: this.words,
          sheet: this.#narrow,
        },
        this.#chooser.acts(place),
      )}
    </div>`;
  }

  readonly #toolbarActs: ToolbarActs = {
    undo: () => this.#recorder.undo(),
    redo: () => this.#recorder.redo(),
    carry: (step) => {
      this.carried = step;
      this.#chooser.close(false);
    },
    restNormal: () => this.#recorder.restNormal(),
    scale: (scale) => {
      this.carried = undefined;
      this.edit(setFields(this.examination, { scale }));
    },
    display: () => undefined,
    part: (half) => {
      this.#chooser.close(false);
      this.half = half;
    },
    help: () => (this.help = !this.help),
    more: () => (this.more = !this.more),
  };

  #tap(key: PlaceKey): void {
    const place = placeFromKey(key);
    if (!place || !this.editable) return;
    this.active = key;
    if (this.carried && isPulseSite(place.site)) this.#recorder.grade(place, this.carried);
    else if (this.#chooser.open === key) this.#chooser.close(true);
    else this.#openAt(key, false);
  }

  #openAt(key: PlaceKey, focusInside: boolean): void {
    if (!this.editable) return;
    this.active = key;
    this.#chooser.openAt(key, focusInside);
  }

  #focusSite(key: PlaceKey): void {
    this.active = key;
    void this.updateComplete.then(() => this.activeSite?.focus());
  }

  readonly #openFromReading = (event: OpenPlaceEvent): void => {
    event.stopPropagation();
    this.openPlace(event.place);
  };

  readonly #keydown = (event: KeyboardEvent): void => {
    const key = this.#sites.of(event);
    const place = key && placeFromKey(key);
    const act = place && keyAct(event);
    if (!place || !act) return;
    event.preventDefault();
    event.stopPropagation();
    if (act.kind === 'travel') {
      const to = travel(place, act.direction, placesIn(this.#view));
      if (to) this.#focusSite(placeKey(to));
    } else if (act.kind === 'help') {
      this.help = !this.help;
    } else if (act.kind === 'escape') {
      this.help = false;
      this.carried = undefined;
      this.#chooser.close(false);
    } else if (this.editable) {
      this.#chooser.recordByKey(place, act);
    }
  };

  readonly #focusin = (event: FocusEvent): void => {
    const key = this.#sites.of(event);
    if (key) this.active = key;
  };

  /** A click on the control's label comes as a click on the control itself: it moves the focus and changes nothing. */
  readonly #hostClick = (event: Event): void => {
    if (event.composedPath()[0] === this) this.focus();
  };
}

function preventDefault(event: Event): void {
  event.preventDefault();
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-map': PulseMap;
  }
}
