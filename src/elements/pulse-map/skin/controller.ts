import { type LitElement, nothing, type SVGTemplateResult, type TemplateResult } from 'lit';
import type { Layout } from '../../../drawing/index.js';
import { fold } from '../../common/fold.js';
import { later } from '../fetched.js';
import type { SkinHost, SkinTools } from './tools.js';
import type { Hand } from '../hand/site-pointer.js';
import type { FigureSkin, LegendItem } from '../figure/render.js';
import type { Recorder, RecorderHost } from '../recorder.js';

/** Marks on the skin, as far as what draws and lists them has been fetched. */
export class SkinController implements FigureSkin {
  #made: SkinTools | undefined;

  constructor(
    private readonly element: LitElement,
    private readonly record: RecorderHost,
    private readonly recorder: Recorder,
    private readonly host: SkinHost,
  ) {}

  get #tools(): SkinTools | undefined {
    if (!this.#made && later.part && this.element.isConnected)
      this.#made = new later.part.SkinTools(this.element, this.record, this.recorder, this.host);
    return this.#made;
  }

  get on(): boolean {
    return this.#tools?.on ?? false;
  }

  get hand(): Hand | undefined {
    return this.#tools?.on ? this.#tools.hand : undefined;
  }

  toggle(): void {
    void later.load().then(() => {
      if (this.#tools) this.#tools.toggle();
      else this.record.said({ what: this.record.words().map.notFetched });
    });
  }

  leave(): void {
    this.#tools?.leave();
  }

  layer(layout: Layout): SVGTemplateResult | typeof nothing {
    return this.#tools?.layer(layout) ?? nothing;
  }

  legend(): readonly LegendItem[] {
    return this.#tools?.legend() ?? [];
  }

  palette(): TemplateResult | typeof nothing {
    return this.#tools?.palette() ?? nothing;
  }

  /** The list in words, opened where there is something in it and never closed under a person's hand. */
  list(): TemplateResult {
    const open = this.on || this.record.store().examination.marks !== undefined;
    return fold(this.record.words().marks.title, open, () => this.#tools?.list() ?? nothing, 'marks');
  }
}
