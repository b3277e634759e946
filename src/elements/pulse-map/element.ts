import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import {
  isPulseSite,
  type Place,
  placeFromKey,
  type PlaceKey,
  placeKey,
  PULSE_PLACES,
} from '../../anatomy/index.js';
import { type Layout, placesIn, travel, type View } from '../../drawing/index.js';
import { type Examination, type ScaleStep, setFields, unstatedPlaces } from '../../examination/index.js';
import type { OpenPlaceEvent } from '../pulse-reading/events.js';
import { glyphStyles } from '../common/glyph.js';
import { WidthController } from '../common/width-controller.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { unreadStyles } from '../common/unread-notice.js';
import { renderAlso, renderLimbActs } from './onset-and-delays.js';
import { ChooserController } from './chooser/controller.js';
import { DrawnElement, type Frame } from './drawn-element.js';
import { later } from './fetched.js';
import type { FigureView } from './figure/render.js';
import { figureStyles } from './figure/styles.js';
import { renderStatus } from './status.js';
import {
  aroundFigure,
  type Half,
  halfIn,
  halfWith,
  NARROW,
  partsAt,
  partShown,
  readingRoom,
} from './crops.js';
import { DrawingPointer } from './hand/site-pointer.js';
import { Recorder, type RecorderHost, type Said } from './recorder.js';
import { type DrawingPoint, SiteFinder } from './hand/site-finder.js';
import { siteKeydown } from './hand/site-keys.js';
import { SkinController } from './skin/controller.js';
import { renderStage, Stage } from './figure/figure-view.js';
import { mapStyles } from './styles.js';
import { tableActs } from './table/acts.js';
import { renderToolbar, type ToolbarActs } from './toolbar.js';

/** Width assumed until the element has one. */
const UNMEASURED = 820;

/**
 * A map of the arteries of all four limbs on which one click, touch, pen or key records a pulse or a bruit; it shows where
 * the block is and why. A form control: it submits the record as JSON under its `name`.
 *
 * It prints as one page of red flags, figure, table of findings and reading; `toSVG()` and `toPNG()` give the figure away as
 * a picture.
 *
 * @tag pulse-map
 * @attr value - The record as JSON; what a form reset returns to.
 * @fires input - A person changed the record.
 * @fires change - A person changed the record.
 * @csspart figure - The drawing.
 * @csspart body - The body of the drawing.
 * @csspart artery - Its arteries, by depth.
 * @csspart labels - Names of the sites and what was found there; their font and colour are inherited.
 * @csspart leaders - The lines from names to sites.
 * @csspart letters - The letters of the sides.
 * @csspart blocks - Likely blocks and narrowings.
 * @csspart collaterals - Likely ways round a block.
 * @csspart site - A site on the drawing.
 * @csspart toolbar - The row of tools.
 * @csspart chooser - The panel beside an open site.
 * @csspart palette - The kinds of mark to draw with.
 * @csspart mark - A mark on the skin of the drawing.
 * @csspart marks - The marks in words.
 * @csspart status - The strip that says what was recorded last.
 * @csspart table - The table of findings.
 * @csspart reading - The panel that says where the block is.
 */
export class PulseMap extends DrawnElement {
  static override styles = [tokenStyles, controlStyles, unreadStyles, glyphStyles, mapStyles, figureStyles];

  /** Whether the record is shown as figure or as table. */
  @property({ reflect: true }) display: 'figure' | 'table' = 'figure';
  /** An earlier record whose findings are shown beside each site, changes stressed. */
  @property({ attribute: false }) compare: Examination | null = null;

  @state() private half: Half = 'legs';
  @state() private active: PlaceKey = 'right femoral';
  @state() private preview: PlaceKey | undefined;
  @state() private carried: ScaleStep | undefined;
  @state() private painting: readonly PlaceKey[] = [];
  @state() private dragged: readonly DrawingPoint[] = [];
  @state() private help = false;
  @state() private more = false;
  @state() private said: Said | undefined;

  @query('.figure') private figure!: SVGSVGElement | null;
  @query('.site[tabindex="0"]') private activeSite!: HTMLElement | null;

  readonly #measure = new WidthController(this, UNMEASURED);
  readonly #stage = new Stage();
  readonly #sites = new SiteFinder(() => this.figure);
  readonly #recording: RecorderHost = {
    store: () => this.store,
    words: () => this.words,
    editable: () => this.editable,
    commit: (next, field) => this.edit(next, field),
    said: (said) => (this.said = said),
  };
  readonly #recorder = new Recorder(this.#recording);
  readonly #chooser = new ChooserController(
    {
      element: this,
      examination: () => this.examination,
      words: () => this.words,
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
    mirror: (to) => {
      const place = placeFromKey(to);
      if (place && this.editable) this.#recorder.sameAsOther(place);
    },
    drag: (key, line) => {
      this.preview = key;
      this.dragged = line;
    },
    preview: (key) => (this.preview = this.editable ? key : undefined),
    strokePreview: (keys) => (this.painting = keys),
  });

  readonly #skin = new SkinController(this, this.#recording, this.#recorder, {
    surface: () => this.figure,
    layout: () => this.#sites.layout as Layout,
    point: (event) => this.#sites.point(event),
    begin: () => {
      this.carried = undefined;
      this.#chooser.close(false);
    },
    show: (half) => (this.half = half),
  });

  /** Moves the focus to the active site. */
  override focus(options?: FocusOptions): void {
    if (this.barred) return;
    // Nothing of the figure is there while the table is shown.
    (this.activeSite ?? this.renderRoot.querySelector<HTMLElement>('.table select'))?.focus(options);
  }

  /**
   * Opens a site's chooser, as a tap on it would.
   * @throws RangeError for a site that does not exist
   */
  openPlace(place: Place | PlaceKey): void {
    const key = typeof place === 'string' ? place : placeKey(place);
    const found = placeFromKey(key);
    if (!found) throw new RangeError(`no such site: "${key}"`);
    if (!placesIn(this.#view).includes(found)) this.half = halfWith(found);
    this.#openAt(key, true);
  }

  get #width(): number {
    return this.#measure.width;
  }

  get #narrow(): boolean {
    return this.#width < NARROW;
  }

  get #beside(): boolean {
    return readingRoom(this.#width) > 0 && !this.noReading;
  }

  get #view(): View {
    if (this.view !== 'auto') return this.view;
    return this.#narrow ? partShown(this.half, this.#width) : 'whole';
  }

  protected override get showsLater(): boolean {
    return super.showsLater || this.#asksForLater;
  }

  get #asksForLater(): boolean {
    return this.help || this.display === 'table' || this.#chooser.open !== undefined;
  }

  protected override notFetched(): void {
    if (!this.#asksForLater) return;
    this.help = false;
    this.display = 'figure';
    this.#chooser.close(false);
    this.said = { what: this.words.map.notFetched };
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const shown = placesIn(this.#view);
    const active = placeFromKey(this.active);
    if (!active || !shown.includes(active)) this.active = placeKey(shown[0] as Place);
    if (!this.editable) {
      this.#chooser.close(false);
      this.#skin.leave();
    }
  }

  protected override taken(): void {
    super.taken();
    this.said = undefined;
  }

  protected override render(): TemplateResult {
    const { examination, words, unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const view = this.figureView();
    this.#sites.layout = view.layout;
    const unstated = unstatedPlaces(examination).length;
    const total = PULSE_PLACES.length;
    return html`${this.sheet}${this.noFlags ? nothing : html`<limb-flags .examination=${examination} lang=${this.lang || nothing}></limb-flags>`}
      ${renderToolbar(
        {
          scale: examination.scale,
          canUndo: this.store.canUndo,
          canRedo: this.store.canRedo,
          editable: this.editable,
          carried: this.carried,
          drawing: this.#skin.on,
          unstated,
          total,
          display: this.display,
          parts:
            this.view === 'auto' && this.#narrow && this.display === 'figure' ? partsAt(this.#width) : [],
          part: partShown(this.half, this.#width),
          help: this.help,
          more: this.more,
          narrow: this.#narrow,
          wide: readingRoom(this.#width) > 0,
          view: this.view,
          words,
        },
        this.#toolbarActs,
      )}
      ${this.#skin.palette()} ${this.help ? later.part?.renderHelp(words) : nothing}
      <div
        class="main ${this.#beside ? 'beside' : ''}"
        role="group"
        aria-label=${this.labelText || words.map.name}
        @open-place=${this.#openFromReading}
      >
        <div>
          ${this.display === 'table' ? this.#table() : renderStage(view, this.#skin.on ? 'skinning' : this.carried ? 'drawing' : '', this.#skin.hand ?? this.#pointer, this.#keydown, this.#focusin)}
          ${renderStatus(this.said, total - unstated, total, examination.scale, words)}
          ${this.compare ? html`<p class="legend">${words.map.earlier(words.map.when(this.compare.examinedAt))}</p>` : nothing}
          ${this.#skin.list()}
          ${renderAlso(examination, this.editable, words, (fields) => this.edit(setFields(examination, fields)))}
          ${renderLimbActs(this.editable, words, {
            fill: (limb) => this.#recorder.fillLimb(limb),
            clear: (limb) => this.#recorder.clearLimb(limb),
          })}
        </div>
        ${
          this.noReading
            ? nothing
            : html`<div class="reading" part="reading">
                <pulse-reading .examination=${this.read} lang=${this.lang || nothing}></pulse-reading>
              </div>`
        }
      </div>
      ${this.#chooser.template()}`;
  }

  protected override figureView(frame?: Frame): FigureView {
    const { examination, words, carried, painting, active, preview, dragged, editable, barred } = this;
    const own = this.#beside ? this.#width - readingRoom(this.#width) : this.#width;
    return (frame ? new Stage() : this.#stage).view(
      {
        view: frame?.view ?? this.#view,
        width: frame?.width ?? own,
        height: frame?.height,
        around: aroundFigure(this.#width),
        examination,
        read: this.read,
        earlier: this.compare ?? undefined,
        painting: carried && { keys: painting, step: carried },
        words,
      },
      { active, open: this.#chooser.open, preview, dragged, editable, barred, skin: this.#skin },
    );
  }

  #table(): TemplateResult | undefined {
    return later.part?.renderTable(
      {
        examination: this.examination,
        earlier: this.compare ?? undefined,
        editable: this.editable,
        words: this.words,
      },
      tableActs(this.#recorder, (key) => this.#openAt(key, true)),
    );
  }

  readonly #toolbarActs: ToolbarActs = {
    undo: () => this.#recorder.undo(),
    redo: () => this.#recorder.redo(),
    carry: (step) => {
      this.#skin.leave();
      this.carried = step;
      this.#chooser.close(false);
    },
    draw: () => {
      this.display = 'figure';
      this.#skin.toggle();
    },
    restNormal: () => this.#recorder.restNormal(),
    scale: (scale) => {
      this.carried = undefined;
      this.edit(setFields(this.examination, { scale }));
    },
    display: (display) => {
      this.#chooser.close(false);
      this.display = display;
    },
    view: (view) => (this.view = view),
    part: (half) => {
      this.#chooser.close(false);
      this.half = halfIn(half);
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
    // In the table its button stands for the site.
    const button = `.table [data-anchor="${key}"]`;
    void this.rendered().then(() =>
      (this.activeSite ?? this.renderRoot.querySelector<HTMLElement>(button))?.focus(),
    );
  }

  readonly #openFromReading = (event: OpenPlaceEvent): void => {
    event.stopPropagation();
    this.openPlace(event.place);
  };

  readonly #keydown = siteKeydown({
    sites: this.#sites,
    editable: () => this.editable,
    shown: () => placesIn(this.#view),
    focusSite: (key) => this.#focusSite(key),
    help: () => (this.help = !this.help),
    escape: () => {
      this.help = false;
      this.carried = undefined;
      this.#skin.leave();
      this.#chooser.close(false);
    },
    record: (place, act) => this.#chooser.recordByKey(place, act),
  });

  readonly #focusin = (event: FocusEvent): void => {
    const key = this.#sites.of(event);
    if (key) this.active = key;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-map': PulseMap;
  }
}
