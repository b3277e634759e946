import type { Examination } from '../../examination/index.js';
import { readByRule } from '../../localisation/index.js';
import { RecordElement } from '../shared/record-element.js';
import { TrailingController } from '../shared/trailing.js';
import { drawPNG, drawSVG, inRange, type PictureOptions, type PNGOptions } from './export.js';
import type { FigureView } from './figure.js';

/** Least width of a picture for which nobody asked another, in px: enough for the full names of all sites. */
const NAMED = 760;

/** The map as far as it is a picture: when its reading is made, and what is taken away of it. */
export abstract class DrawnElement extends RecordElement {
  readonly #reading = new TrailingController(this, () => this.examination);

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

  /** What the figure shows, laid out in a width; without one in that of the element. */
  protected abstract figureView(width?: number): FigureView;

  /** The record whose reading is shown: after an edit the mark under the hand comes first, and the reading a frame later. */
  protected get read(): Examination {
    return this.#reading.value;
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

  #picture({ scheme = 'light', width }: PictureOptions): ReturnType<typeof drawSVG> {
    const { examination, words } = this;
    if (!this.isConnected)
      throw new Error('picture: found the element outside any page, expected it inside one');
    if (width !== undefined) inRange('width', width, 280, 4096);
    this.#reading.value = examination;
    const view = this.figureView(width ?? Math.max(NAMED, this.figureView().layout.width));
    const untouched = { open: undefined, preview: undefined, dragged: [] };
    const text = {
      title: this.labelText || words.map.name,
      sentences: words.rule.leads(readByRule(examination)),
      scale: examination.scale,
    };
    return drawSVG(this.renderRoot, { ...view, ...untouched }, text, scheme);
  }
}
