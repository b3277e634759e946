import { type LitElement, nothing, type ReactiveController, type TemplateResult } from 'lit';
import { PrintController } from '../../common/printing.js';
import { later } from '../fetched.js';
import type { Frame } from '../figure/figure-view.js';
import type { SheetView } from './sheet.js';

/** Renders the sheet while the map is printed, with the loosest setting that fits one page. */
export class SheetController implements ReactiveController {
  readonly #print: PrintController;
  /** Index into SETTINGS. */
  #setting = 0;

  constructor(private readonly host: LitElement) {
    this.#print = new PrintController(host);
    host.addController(this);
  }

  /**
   * The sheet; nothing while the page is not being printed.
   * @param view its content, for the frame of the figure
   */
  template(view: (frame: Frame) => Omit<SheetView, 'setting'>): TemplateResult | typeof nothing {
    if (!this.#print.printing || !later.part) {
      this.#setting = 0;
      return nothing;
    }
    const { SETTINGS, renderSheet } = later.part;
    const { name: setting, ...frame } = SETTINGS[this.#setting] as (typeof SETTINGS)[number];
    return renderSheet({ ...view(frame), setting });
  }

  hostUpdated(): void {
    if (this.#print.printing) void this.#fit();
  }

  /** Takes the next tighter setting while the sheet is longer than a page. Needs no frame, so that it is done before printing starts. */
  async #fit(): Promise<void> {
    const sheet = this.host.renderRoot.querySelector('.sheet');
    const inner = sheet?.querySelectorAll<LitElement>('limb-flags, pulse-reading') ?? [];
    await Promise.all([...inner].map((element) => element.updateComplete));
    if (!sheet || !later.part) return;
    const { PAGE, SETTINGS } = later.part;
    if (sheet.scrollHeight <= PAGE.height || this.#setting === SETTINGS.length - 1) return;
    this.#setting++;
    this.host.requestUpdate();
  }
}
