import { nothing, type SVGTemplateResult, type TemplateResult } from 'lit';
import type { Layout } from '../../../drawing/index.js';
import type { MarkKind } from '../../../examination/index.js';
import { fold } from '../../common/fold.js';
import type { Chooser } from '../chooser/chooser.js';
import { later } from '../fetched.js';
import type { FigureSkin } from '../figure/render.js';
import type { Hand } from '../hand/press.js';
import type { SiteFinder } from '../hand/site-finder.js';
import type { Recorder } from '../recorder.js';
import type { Session } from '../session.js';
import type { SkinTools } from './tools.js';

/** Marks on the skin, once the code that draws and lists them has been fetched. */
export class SkinController implements FigureSkin {
  #made: SkinTools | undefined;

  constructor(
    private readonly session: Session,
    private readonly recorder: Recorder,
    private readonly hand: Hand,
    private readonly chooser: Chooser,
    private readonly finder: SiteFinder,
  ) {}

  get #tools(): SkinTools | undefined {
    const { session, recorder, hand, chooser, finder } = this;
    if (!this.#made && later.part && session.element.isConnected)
      this.#made = new later.part.SkinTools(session, recorder, hand, chooser, finder);
    return this.#made;
  }

  get on(): boolean {
    return this.session.now.mode === 'skin';
  }

  toggle(): void {
    void later.load().then(() => {
      const editor = this.#tools?.editor;
      if (!editor) this.session.say({ what: this.session.words.map.notFetched });
      else if (editor.on) editor.leave();
      else editor.start();
    });
  }

  leave(): void {
    this.#tools?.editor.leave();
  }

  /** Another record is there: what was selected and typed was of the one before. */
  forget(): void {
    this.#tools?.editor.forget();
  }

  layer(layout: Layout): SVGTemplateResult | typeof nothing {
    return this.#tools?.layer(layout) ?? nothing;
  }

  kinds(): ReadonlySet<MarkKind> {
    return this.#tools?.kinds() ?? new Set();
  }

  palette(): TemplateResult | typeof nothing {
    return this.#tools?.palette() ?? nothing;
  }

  /** The list in words; opens when it has entries, and never closes by itself. */
  list(): TemplateResult {
    const open = this.on || this.session.examination.marks !== undefined;
    return fold(this.session.words.map.marks, open, () => this.#tools?.list() ?? nothing, {
      part: 'marks',
    });
  }
}
