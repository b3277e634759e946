import {
  type LitElement,
  nothing,
  type ReactiveController,
  type SVGTemplateResult,
  type TemplateResult,
} from 'lit';
import type { Layout } from '../../drawing/index.js';
import { fold } from '../common/fold.js';
import { afterPaint } from '../common/trailing.js';
import type { FigureSkin } from './figure.js';
import type { SkinHost, SkinTools } from './marks-tools.js';
import type { Hand } from './pointer.js';
import type { LegendItem } from './picture-legend.js';
import type { Recorder, RecorderHost } from './recorder.js';

/**
 * Marks on the skin. What draws and lists them comes in a chunk of its own: right after the first paint, or before it where
 * there are marks to be shown, so that nothing moves.
 */
export class SkinController implements ReactiveController, FigureSkin {
  #tools: SkinTools | undefined;
  #loading: Promise<void> | undefined;

  constructor(
    private readonly element: LitElement,
    private readonly record: RecorderHost,
    private readonly recorder: Recorder,
    private readonly host: SkinHost,
  ) {
    element.addController(this);
  }

  hostUpdated(): void {
    if (!this.#loading) void afterPaint().then(() => this.load());
  }

  /** Whether the figure can be painted with what the record holds. */
  get ready(): boolean {
    return this.#tools !== undefined || !this.record.store().examination.marks?.length;
  }

  /** Fetches the tools once; settles when they are there, and when they cannot be had. */
  load(): Promise<void> {
    this.#loading ??= import('./marks-tools.js').then(
      ({ SkinTools }) => {
        this.#tools = new SkinTools(this.element, this.record, this.recorder, this.host);
        this.element.requestUpdate();
      },
      () => undefined,
    );
    return this.#loading;
  }

  get on(): boolean {
    return this.#tools?.on ?? false;
  }

  get hand(): Hand | undefined {
    return this.#tools?.on ? this.#tools.hand : undefined;
  }

  toggle(): void {
    void this.load().then(() => {
      if (this.#tools) return this.#tools.toggle();
      // What failed may work the next time.
      this.#loading = undefined;
      this.record.said({ what: this.record.words().marks.failed });
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
