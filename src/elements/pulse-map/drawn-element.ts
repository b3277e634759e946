import { type LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { View } from '../../drawing/index.js';
import type { Examination } from '../../examination/index.js';
import { readByRule } from '../../localisation/index.js';
import { ruleLeads } from '../../statements/index.js';
import { type Later, LaterController } from '../common/later.js';
import { addStyles } from '../common/more-styles.js';
import { PrintController } from '../common/printing.js';
import { RecordElement, type RecordReader } from '../common/record-element.js';
import { TrailingController } from '../common/trailing.js';
import type { LimbFlags } from '../limb-flags/element.js';
import { reader } from '../pulse-reading/reader.js';
import { drawPNG, drawSVG, inRange, type PictureOptions, type PNGOptions } from './picture/export.js';
import { later } from './fetched.js';
import type { FigureView } from './figure/render.js';

/** A figure that no hand is on. */
const UNTOUCHED = { open: undefined, preview: undefined, dragged: [] } as const;
/** Least width of a picture for which nobody asked another, in px: enough for the full names of all sites. */
const NAMED = 760;

/** The room that a figure is laid out in, where it is not that of the element. */
export interface Frame {
  readonly width: number;
  /** Greatest height in px. */
  readonly height?: number;
  readonly view?: View;
}

/** The map as far as it is a picture: when its reading is made, and what is taken away of it. */
export abstract class DrawnElement extends RecordElement {
  /** Makes the element of the red flags known, which comes later; the define module says how. */
  static defineFlags: (element: typeof LimbFlags) => void = () => undefined;

  /** The part of the body shown; `auto` shows the whole where it fits, else arms or legs in turn. */
  @property({ reflect: true }) view: View | 'auto' = 'auto';
  /** Leaves out the panel that says where the block is, for pages that show `<pulse-reading>` themselves. */
  @property({ type: Boolean, attribute: 'no-reading' }) noReading = false;
  /** Leaves out the red flags, for pages that show `<limb-flags>` themselves. */
  @property({ type: Boolean, attribute: 'no-flags' }) noFlags = false;

  readonly #reading = new TrailingController(this, () => this.examination);
  readonly #print = new PrintController(this);
  readonly #later = new LaterController(
    this,
    later,
    () => this.showsLater,
    () => this.notFetched(),
  );
  /** How tightly the sheet is set. */
  #setting = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('click', this.#hostClick);
  }

  /**
   * The figure as it stands now as an SVG document of its own, which needs no style sheet, font or address outside it: body,
   * arteries, findings, marks, names, likely blocks, and a legend of the scale.
   * @throws RangeError for a width that is none; Error while the element is not in a page or its record is not read
   */
  toSVG(options: PictureOptions = {}): string {
    return this.#picture(options).text;
  }

  /**
   * The same as {@link toSVG} as an image.
   * @throws RangeError for a width or scale that is none; Error while the element is not in a page, or when the browser cannot draw it
   */
  async toPNG({ scale = 2, ...options }: PNGOptions = {}): Promise<Blob> {
    return drawPNG(this.#picture(options), inRange('scale', scale, Number.MIN_VALUE, 8));
  }

  /** What the figure shows, laid out for a frame; without one in the element's own room. */
  protected abstract figureView(frame?: Frame): FigureView;

  /** What goes on paper in place of all else; nothing while nobody prints. */
  protected get sheet(): TemplateResult | typeof nothing {
    if (!this.#print.printing || !later.part) {
      this.#setting = 0;
      return nothing;
    }
    const { examination, words } = this;
    const { SETTINGS, renderSheet } = later.part;
    this.#reading.value = examination;
    const { name: setting, ...frame } = SETTINGS[this.#setting] as (typeof SETTINGS)[number];
    const view = this.view === 'auto' ? 'whole' : this.view;
    return renderSheet({
      figure: { ...this.figureView({ ...frame, view }), ...UNTOUCHED },
      setting,
      examination,
      title: this.labelText || words.map.name,
      lang: this.lang,
      flags: !this.noFlags,
      reading: !this.noReading,
      words,
    });
  }

  /** The record whose reading is shown: after an edit the mark under the hand comes first, and the reading a frame later. */
  protected get read(): Examination {
    return this.#reading.value;
  }

  /** Whether there is something to show of what is fetched after the first paint. */
  protected get showsLater(): boolean {
    return this.recordState !== 'empty';
  }

  protected override get reader(): Later<RecordReader> {
    return later;
  }

  protected override taken(): void {
    // The reading of the record before must not stand beside the new one, not even for a frame.
    this.#reading.value = this.examination;
  }

  /** Called when it is to be shown and cannot be had. */
  protected abstract notFetched(): void;

  /** What has something to show comes before the first paint, so that nothing moves then; all else follows it. */
  protected override scheduleUpdate(): void | Promise<void> {
    const { missing } = this.#later;
    if (this.hasUpdated || !missing) return super.scheduleUpdate() as void;
    return missing.then(() => super.scheduleUpdate() as void);
  }

  /** When the present state is rendered, whatever is still to follow it. */
  protected rendered(): Promise<boolean> {
    return super.getUpdateComplete();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const done = await super.getUpdateComplete();
    const { missing } = this.#later;
    if (!missing && !this.#reading.settled) return done;
    await Promise.all([missing, this.#reading.settled]);
    if (missing) this.requestUpdate();
    return super.getUpdateComplete();
  }

  protected override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (!later.part) return;
    addStyles(this.renderRoot, later.part.laterStyles);
    reader.part ??= later.part.limbs;
    (this.constructor as typeof DrawnElement).defineFlags(later.part.LimbFlags);
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    if (this.#print.printing) void this.#fit();
  }

  /** Sets the sheet tighter while it is longer than a page. It takes no frame, so that it is done before the page is made. */
  async #fit(): Promise<void> {
    const sheet = this.renderRoot.querySelector('.sheet');
    const inner = sheet?.querySelectorAll<LitElement>('limb-flags, pulse-reading') ?? [];
    await Promise.all([...inner].map((element) => element.updateComplete));
    if (!sheet || !later.part) return;
    const { PAGE, SETTINGS } = later.part;
    if (sheet.scrollHeight <= PAGE.height || this.#setting === SETTINGS.length - 1) return;
    this.#setting++;
    this.requestUpdate();
  }

  #picture({ scheme = 'light', width }: PictureOptions): ReturnType<typeof drawSVG> {
    const { examination, words } = this;
    if (!this.isConnected)
      throw new Error('picture: found the element outside any page, expected it inside one');
    if (this.unreadNotice)
      throw new Error(`picture: found a ${this.recordState} record, expected one that has been read`);
    if (width !== undefined) inRange('width', width, 280, 4096);
    this.#reading.value = examination;
    const view = this.figureView({ width: width ?? Math.max(NAMED, this.figureView().layout.width) });
    const text = {
      title: this.labelText || words.map.name,
      sentences: ruleLeads(readByRule(examination)).map(words.rule.lead),
      scale: examination.scale,
    };
    return drawSVG(this.renderRoot, { ...view, ...UNTOUCHED }, text, scheme);
  }

  /** A click on the control's label comes as a click on the control itself: it moves the focus and changes nothing. */
  readonly #hostClick = (event: Event): void => {
    if (event.composedPath()[0] === this) this.focus();
  };
}
