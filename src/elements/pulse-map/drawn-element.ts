import { type LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { View } from '../../drawing/index.js';
import type { Examination } from '../../examination/index.js';
import { readByRule } from '../../localisation/index.js';
import { PrintController } from '../common/printing.js';
import { isEmptyRecord, RecordElement } from '../common/record-element.js';
import { afterPaint, TrailingController } from '../common/trailing.js';
import { drawPNG, drawSVG, inRange, type PictureOptions, type PNGOptions } from './export.js';
import type { FigureView } from './figure.js';
import { PAGE, renderSheet, SETTINGS } from './sheet.js';

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
  /** Fetches the element of the red flags, which brings the staging rules with it; the define module says from where. */
  static loadFlags: () => Promise<unknown> = () => Promise.resolve();

  /** The part of the body shown; `auto` shows the whole where it fits, else arms or legs in turn. */
  @property({ reflect: true }) view: View | 'auto' = 'auto';
  /** Leaves out the panel that says where the block is, for pages that show `<pulse-reading>` themselves. */
  @property({ type: Boolean, attribute: 'no-reading' }) noReading = false;
  /** Leaves out the red flags, for pages that show `<limb-flags>` themselves. */
  @property({ type: Boolean, attribute: 'no-flags' }) noFlags = false;

  readonly #reading = new TrailingController(this, () => this.examination);
  readonly #print = new PrintController(this);
  /** How tightly the sheet is set. */
  #setting = 0;

  /**
   * The figure as it stands now as an SVG document of its own, which needs no style sheet, font or address outside it: body,
   * arteries, findings, marks, names, likely blocks, and a legend of the scale.
   * @throws RangeError for a width that is none; Error while the element is not in a page
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
    if (!this.#print.printing) {
      this.#setting = 0;
      return nothing;
    }
    const { examination, words } = this;
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

  /** Red flags are fetched after the first paint, or before it where there may be some to show, so that nothing moves then. */
  protected override scheduleUpdate(): void | Promise<void> {
    if (this.hasUpdated || !this.#lacksFlags || isEmptyRecord(this.examination))
      return super.scheduleUpdate() as void;
    return this.#loadFlags().then(() => super.scheduleUpdate() as void);
  }

  /** Settles when they are there, and when they cannot be had: then the next update tries again. */
  async #loadFlags(): Promise<void> {
    await (this.constructor as typeof DrawnElement).loadFlags().catch(() => undefined);
  }

  get #lacksFlags(): boolean {
    return !this.noFlags && !customElements.get('limb-flags');
  }

  /** When the present state is rendered, whatever is still to follow it. */
  protected rendered(): Promise<boolean> {
    return super.getUpdateComplete();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const done = await super.getUpdateComplete();
    if (!this.#reading.settled) return done;
    await this.#reading.settled;
    return super.getUpdateComplete();
  }

  protected override updated(changed: PropertyValues): void {
    super.updated(changed);
    if (this.#lacksFlags) void afterPaint().then(() => this.#loadFlags());
    if (this.#print.printing) void this.#fit();
  }

  /** Sets the sheet tighter while it is longer than a page. It takes no frame, so that it is done before the page is made. */
  async #fit(): Promise<void> {
    const sheet = this.renderRoot.querySelector('.sheet');
    const inner = sheet?.querySelectorAll<LitElement>('limb-flags, pulse-reading') ?? [];
    await Promise.all([...inner].map((element) => element.updateComplete));
    if (!sheet || sheet.scrollHeight <= PAGE.height || this.#setting === SETTINGS.length - 1) return;
    this.#setting++;
    this.requestUpdate();
  }

  #picture({ scheme = 'light', width }: PictureOptions): ReturnType<typeof drawSVG> {
    const { examination, words } = this;
    if (!this.isConnected)
      throw new Error('picture: found the element outside any page, expected it inside one');
    if (width !== undefined) inRange('width', width, 280, 4096);
    this.#reading.value = examination;
    const view = this.figureView({ width: width ?? Math.max(NAMED, this.figureView().layout.width) });
    const text = {
      title: this.labelText || words.map.name,
      sentences: words.rule.leads(readByRule(examination)),
      scale: examination.scale,
    };
    return drawSVG(this.renderRoot, { ...view, ...UNTOUCHED }, text, scheme);
  }
}
