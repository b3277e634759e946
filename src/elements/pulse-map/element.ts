import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { type Place, placeFromKey, type PlaceKey, placeKey, PULSE_PLACES } from '../../anatomy/index.js';
import { type View, VIEWS } from '../../drawing/index.js';
import type { StillPicture } from '../../drawing/still/index.js';
import { type Examination, unstatedPlaces } from '../../examination/index.js';
import type { ActKind } from '../../localisation/index.js';
import type { Messages } from '../../locale/index.js';
import type { Pathway } from '../../triage/index.js';
import { GivenRecord } from '../common/given-record.js';
import { glyphStyles } from '../common/glyph.js';
import { LabelClickController } from '../common/label-click.js';
import { type Later as Fetched, LaterController, updateAfter } from '../common/later.js';
import { addStyles } from '../common/more-styles.js';
import { OBJECT, property, RECORD, TEXTS } from '../common/property.js';
import { RecordElement } from '../common/record-element.js';
import type { RecordReader } from '../common/record-value.js';
import { controlStyles, tokenStyles } from '../common/tokens.js';
import { inParts } from '../common/trailing.js';
import { warnOfAttribute } from '../common/unknown-attribute.js';
import { unreadStyles } from '../common/unread-notice.js';
import type { OpenPlaceEvent, ReadingChangeEvent } from '../pulse-reading/events.js';
import { reader } from '../pulse-reading/reader.js';
import { Chooser } from './chooser/chooser.js';
import { ChooserController } from './chooser/controller.js';
import { aroundFigure, cropWith, flagsHeight, readingRoom } from './crops.js';
import { allWordsFor, drawing, later } from './fetched.js';
import { renderFolds } from './folds.js';
import { FigureViews, type Frame, untouched } from './figure/figure-view.js';
import type { FigureView } from './figure/render.js';
import { figureStyles } from './figure/styles.js';
import { renderSurface } from './figure/surface.js';
import { Hand } from './hand/press.js';
import { SiteFinder } from './hand/site-finder.js';
import { SiteKeys } from './hand/site-keys.js';
import { SiteTool } from './hand/site-tool.js';
import type * as Later from './later.js';
import type { PictureOptions, PNGOptions } from './picture/export.js';
import { PlateController } from './plate/controller.js';
import { SheetController } from './print/controller.js';
import { followed, RECORDED, renderReading } from './reading-panel.js';
import { Recorder } from './recorder.js';
import { Session } from './session.js';
import { SkinController } from './skin/controller.js';
import { renderStatus } from './status.js';
import { mapStyles } from './styles.js';
import { Toolbar } from './toolbar.js';

const DISPLAYS: readonly PulseMap['display'][] = ['figure', 'table'];

/**
 * A map of the arteries of all four limbs on which one click, touch, pen or key records a pulse or a bruit; it shows where
 * the block is and why. A form control: it submits the record as JSON under its `name`.
 *
 * It prints as one page of red flags, figure, table of findings and reading; `toSVG()` and `toPNG()` give the figure away as
 * a picture.
 *
 * @tag pulse-map
 * @attr value - The record as JSON; what a form reset returns to.
 * @slot tools - Buttons of the page, at the end of the row of tools.
 * @cssState drawing - A person draws on the skin of the figure.
 * @csspart figure - The drawing.
 * @csspart body - The body of the drawing.
 * @csspart artery - Its arteries, by depth.
 * @csspart labels - Names of the sites and what was found there; their font and colour are inherited.
 * @csspart leaders - The lines from names to sites.
 * @csspart letters - The letters of the sides.
 * @csspart blocks - Likely blocks and narrowings.
 * @csspart collaterals - Likely ways round a block.
 * @csspart site - A site on the drawing.
 * @csspart digit - A finger or toe on a plate.
 * @csspart toolbar - The row of tools.
 * @csspart chooser - The panel beside an open site.
 * @csspart palette - The kinds of mark to draw with.
 * @csspart mark - A mark on the skin of the drawing.
 * @csspart marks - The marks in words.
 * @csspart status - The strip that says what was recorded last.
 * @csspart table - The table of findings.
 * @csspart reading - The panel that says where the block is.
 */
export class PulseMap extends RecordElement {
  static override styles = [tokenStyles, controlStyles, unreadStyles, glyphStyles, mapStyles, figureStyles];
  /** Defines the elements of red flags and reading, which are fetched later; set by the define module. */
  static defineLater: (elements: Pick<typeof Later, 'LimbFlags' | 'PulseReading'>) => void = () => undefined;

  /** Whether the record is shown as figure or as table. */
  @property({ reflect: true, useDefault: true }) display: 'figure' | 'table' = 'figure';
  /**
   * An earlier record whose findings are shown beside each site, changes stressed. One that cannot be read, such as one of a later
   * version, is said to be so, and nothing is compared.
   */
  @property({ attribute: false, shape: RECORD }) compare: Examination | null = null;
  /** The part of the body shown; `auto` shows the whole where it fits, else arms or legs in turn. */
  @property({ reflect: true, useDefault: true }) view: View | 'auto' = 'auto';
  /** Leaves out the panel that says where the block is, for pages that show `<pulse-reading>` themselves. */
  @property({ type: Boolean, attribute: 'no-reading' }) noReading = false;
  /** Leaves out the red flags, for pages that show `<limb-flags>` themselves. */
  @property({ type: Boolean, attribute: 'no-flags' }) noFlags = false;
  /** The hospital's own pathway, as `<limb-flags>` takes it. */
  @property({ attribute: false, shape: OBJECT }) pathway: Pathway | undefined = undefined;

  readonly #session = new Session(this, {
    store: () => this.store,
    words: () => this.words,
    allWords: () => this.#allWords,
    editable: () => this.editable,
  });
  readonly #recorder = new Recorder(this.#session);
  readonly #finder = new SiteFinder(this);
  readonly #chooser = new Chooser(this.#session, this.#recorder);
  readonly #chooserPanel = new ChooserController(this.#session, this.#chooser, this.#finder);
  readonly #hand = new Hand(
    this,
    this.#finder,
    new SiteTool(this.#session, this.#recorder, this.#chooser, this.#finder),
  );
  readonly #skin = new SkinController(this.#session, this.#recorder, this.#hand, this.#chooser, this.#finder);
  readonly #keys = new SiteKeys(this.#session, this.#chooser, this.#skin, this.#finder);
  readonly #toolbar = new Toolbar(this.#session, this.#recorder, this.#chooser, this.#skin);
  readonly #plates = new PlateController(this.#session, this.#chooser, this.#recorder, () => this.#earlier);
  readonly #figures = new FigureViews((plate) => this.#session.bar + (plate ? flagsHeight(this) : 0));
  /**
   * Kinds of act that the form around can record too, for what to do next; what the map itself records where not given:
   * pulses, bruits, delays and the onset.
   */
  @property({ attribute: false, shape: TEXTS }) can: readonly ActKind[] | undefined = undefined;

  readonly #compared = new GivenRecord(later);
  readonly #sheet = new SheetController(this);
  readonly #reading = followed(this, () => this.#earlier);
  readonly #later = new LaterController(
    this,
    later,
    () => this.#showsLater,
    () => this.#notFetched(),
  );

  constructor() {
    super();
    new LabelClickController(this);
  }

  /** Moves the focus to the active site. */
  override focus(options?: FocusOptions): void {
    if (this.barred) return;
    // The figure is not rendered while the table is shown.
    const first = this.renderRoot.querySelector<HTMLElement>('.site[tabindex="0"]');
    (first ?? this.renderRoot.querySelector<HTMLElement>('.table select'))?.focus(options);
  }

  /**
   * Opens a site's chooser, as a tap on it would.
   * @throws RangeError for a site that does not exist
   */
  openPlace(place: Place | PlaceKey): void {
    const key = typeof place === 'string' ? place : placeKey(place);
    const found = placeFromKey(key);
    if (!found) throw new RangeError(`no such site: "${key}"`);
    if (!this.#session.shown.includes(found) && !this.#session.back())
      this.#session.change({ crop: cropWith(found) });
    this.#chooser.openAt(found, true);
  }

  /**
   * The figure as it stands now as an SVG document of its own, which needs no style sheet, font or address outside it: body,
   * arteries, findings, marks, names, likely blocks, and a legend of the scale.
   * @throws RangeError for a width that is none; Error while the element is not in a page, its record is not read, or it was painted only
   *   just now
   */
  toSVG(options: PictureOptions = {}): string {
    return this.#picture(options).text;
  }

  /**
   * The same as {@link toSVG} as an image.
   * @throws RangeError for a width or scale that is none; Error while the element is not in a page, or when the browser cannot draw it
   */
  async toPNG({ scale = 2, ...options }: PNGOptions = {}): Promise<Blob> {
    await later.load();
    return drawing().drawPNG(this.#picture(options), scale);
  }

  /**
   * Where the arteries are occluded, as the map's own panel shows it: data, and its headlines in words; nothing while nothing is
   * recorded, without the panel, or before the engine is there. `reading-change` tells of a new one.
   */
  get reading(): Pick<ReadingChangeEvent, 'reading' | 'sentences'> {
    const { reading, sentences = [] } = this.renderRoot?.querySelector('pulse-reading') ?? {};
    return { reading, sentences };
  }

  /** Whether something is shown that needs the later chunk. */
  get #showsLater(): boolean {
    return this.#asksForLater || this.recordState !== 'empty' || (this.compare !== null && !this.#earlier);
  }

  /** The earlier record, where it was read. */
  get #earlier(): Examination | undefined {
    const held = this.compare ? this.#compared.held(this.compare) : undefined;
    return held?.state === 'readable' ? held.value : undefined;
  }

  /** Every word of the map and its reading; nothing until they have been fetched. */
  get #allWords(): Messages | undefined {
    return allWordsFor(this.language.tag, this.language.register);
  }

  get #asksForLater(): boolean {
    const { help, normals, open } = this.#session.now;
    return help || normals || this.display === 'table' || open !== undefined;
  }

  #notFetched(): void {
    if (!this.#asksForLater) return;
    this.display = 'figure';
    this.#chooser.close(false);
    this.#session.change({ help: false, normals: false, said: { what: this.words.map.notFetched } });
  }

  protected override get reader(): Fetched<RecordReader> {
    return later;
  }

  protected override taken(): void {
    // The reading of the record before must not stand beside the new one, not even for a frame.
    this.#reading.catchUp();
    // Nor what was typed for that one, which the next key would record.
    this.#chooser.noteDone();
    this.#skin.forget();
    this.#session.change({ said: undefined });
  }

  /** What something shown waits for. */
  get #missing(): Promise<unknown> | undefined {
    return this.#later.missing ?? this.#plates.missing;
  }

  /** Waits for the later chunk before the first paint where it has something to show, so that nothing moves afterwards. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    return updateAfter(this, this.#missing, () => super.scheduleUpdate());
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const done = await super.getUpdateComplete();
    const missing = this.#missing;
    if (!missing && !this.#reading.settled) return done;
    await Promise.all([missing, this.#reading.settled]);
    if (missing) this.requestUpdate();
    return super.getUpdateComplete();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    const { shown, now, chosenView } = this.#session;
    if (changed.has('view') && this.view !== chosenView)
      warnOfAttribute(this, 'view', ['auto', ...VIEWS], 'shown as auto');
    if (changed.has('display') && !DISPLAYS.includes(this.display))
      warnOfAttribute(this, 'display', DISPLAYS, 'shown as figure');
    const active = placeFromKey(now.active);
    if (shown[0] && (!active || !shown.includes(active)))
      this.#session.change({ active: placeKey(shown[0]) });
    if (!this.editable) {
      this.#chooser.close(false);
      this.#skin.leave();
    }
    if (!later.part) return;
    addStyles(this.renderRoot, later.part.laterStyles);
    if (!reader.part) void inParts(later.part.warm(this.#chooserPanel));
    reader.part ??= later.part.limbs;
    (this.constructor as typeof PulseMap).defineLater(later.part);
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    this.setState('drawing', this.#skin.on);
  }

  protected override render(): TemplateResult {
    const { examination, words, unreadNotice } = this;
    if (unreadNotice) return unreadNotice;
    const { now } = this.#session;
    const view = this.#figureView();
    this.#finder.layout = view.layout;
    const total = PULSE_PLACES.length;
    const stated = total - unstatedPlaces(examination).length;
    return html`${this.#printed()}${this.noFlags ? nothing : html`<limb-flags steady .examination=${examination} .pathway=${this.pathway} .running=${this.editable} ?notes=${this.editable} @call-change=${({ examination: next }: { examination: Examination }) => this.#session.edit(next)} lang=${this.lang || nothing} register=${this.register || nothing}></limb-flags>`}
      ${this.#toolbar.template()} ${this.#skin.palette()}
      ${now.normals ? later.part?.renderNormals(this.#session, this.#recorder) : nothing}
      ${now.help ? later.part?.renderHelp(this.#session.allWords) : nothing}
      <div
        class="main ${this.#beside ? 'beside' : ''}"
        role="group"
        aria-label=${this.labelText || words.map.name}
        @open-place=${this.#openFromReading}
      >
        <div>
          ${this.display === 'table' ? this.#table() : this.#plates.around(view, renderSurface(view, now, this.#hand, this.#keys))}
          ${renderStatus(now.said, stated, total, examination.scale, words)}
          ${this.compare ? html`<p class="legend">${this.#earlier ? words.map.earlier(words.map.when(this.#earlier.examinedAt)) : words.map.earlierUnread}</p>` : nothing}
          ${later.part && this.ownsRecord ? later.part.unknownNote(examination, later.part.unknownFields, words) : nothing}
          ${this.#skin.list()} ${renderFolds(this.#session, this.#recorder)}
        </div>
        ${
          this.noReading
            ? nothing
            : renderReading(
                {
                  read: this.#reading.told,
                  earlier: this.#earlier,
                  can: this.editable ? (this.can ?? RECORDED) : [],
                  recorded: this.recordState !== 'empty',
                  lang: this.lang,
                  register: this.register,
                },
                words,
              )
        }
      </div>
      ${this.#chooserPanel.template()}`;
  }

  /** Whether the reading stands beside the figure. */
  get #beside(): boolean {
    return this.#session.wide && !this.noReading;
  }

  /** What the figure shows, laid out for a frame, by default for the element itself. */
  #figureView(frame?: Frame): FigureView {
    const { examination, words, editable, barred } = this;
    const { now, width, view } = this.#session;
    const { brush, painted } = now;
    return (frame ? new FigureViews() : this.#figures).view(
      {
        view: frame?.view ?? view,
        width: frame?.width ?? (this.#beside ? width - readingRoom(width) : width),
        height: frame?.height,
        around: aroundFigure(width),
        examination,
        read: this.#reading.drawn,
        earlier: this.#earlier,
        painting: brush && { keys: painted, step: brush },
        words,
        allWords: this.#allWords,
      },
      { ...now, editable, barred, skin: this.#skin, digits: this.#plates.digits, landmarks: later.part },
    );
  }

  /** The printed sheet; nothing while the page is not being printed. */
  #printed(): TemplateResult | typeof nothing {
    const { examination, words, lang, register } = this;
    const { chosenView } = this.#session;
    const view = chosenView === 'auto' ? 'whole' : chosenView;
    return this.#sheet.template((frame) => {
      this.#reading.catchUp();
      return {
        figure: untouched(this.#figureView({ ...frame, view })),
        examination,
        earlier: this.#earlier,
        title: this.labelText || words.map.name,
        lang,
        register,
        flags: !this.noFlags,
        pathway: this.pathway,
        reading: !this.noReading,
        words: this.#session.allWords,
      };
    });
  }

  #picture(options: PictureOptions): StillPicture {
    const refused =
      this.unreadNotice && `found a ${this.recordState} record, expected one that has been read`;
    if (refused) throw new Error(`picture: ${refused}`);
    const { examination, labelText } = this;
    const { view, width } = this.#session;
    const { drawStill } = drawing();
    const shown = { examination, earlier: this.#earlier, words: this.#session.allWords, labelText };
    return drawStill(this, options, { view, width, ...shown });
  }

  #table(): TemplateResult | undefined {
    const { examination, editable } = this;
    return later.part?.renderTable(
      { examination, earlier: this.#earlier, editable, words: this.#session.allWords },
      { recorder: this.#recorder, chooser: this.#chooser },
    );
  }

  readonly #openFromReading = (event: OpenPlaceEvent): void => {
    event.stopPropagation();
    this.openPlace(event.place);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'pulse-map': PulseMap;
  }
}
