import { nothing, svg, type ReactiveController, type SVGTemplateResult, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { DirectiveResult } from 'lit/directive.js';
import type { Layout } from '../../../drawing/index.js';
import type { MarkKind } from '../../../examination/index.js';
import type { Chooser } from '../chooser/chooser.js';
import { keyAct } from '../hand/keys.js';
import type { Hand } from '../hand/press.js';
import type { SiteFinder } from '../hand/site-finder.js';
import type { Recorder } from '../recorder.js';
import type { Session } from '../session.js';
import { SkinEditor } from './editor.js';
import { skinLayer } from './layer.js';
import { type PaletteView, renderPalette, renderSkinList } from './panels.js';
import { markOf, SkinPen } from './pen.js';

/** Renders marks, palette and list, and handles keys while drawing. */
export class SkinTools implements ReactiveController {
  readonly editor: SkinEditor;

  constructor(
    private readonly session: Session,
    private readonly recorder: Recorder,
    private readonly hand: Hand,
    chooser: Chooser,
    finder: SiteFinder,
  ) {
    this.editor = new SkinEditor(session, hand, chooser, (editor) => new SkinPen(editor, finder));
    session.element.addController(this);
  }

  hostConnected(): void {
    this.session.element.renderRoot.addEventListener('keydown', this.#keydown);
  }

  hostDisconnected(): void {
    this.session.element.renderRoot.removeEventListener('keydown', this.#keydown);
    this.editor.putDown();
  }

  hostUpdated(): void {
    this.editor.takeFocus();
  }

  /** The marks on the figure, rendered again only when they change. */
  layer(layout: Layout): SVGTemplateResult {
    const view = this.#view;
    return svg`${guard([...frameOf(layout), ...this.#state(view)], () => skinLayer(view, layout, this.#markKeydown))}`;
  }

  palette(): TemplateResult | typeof nothing {
    return this.editor.on ? renderPalette(this.#view, this.editor) : nothing;
  }

  /** The kinds of mark in the record. */
  kinds(): ReadonlySet<MarkKind> {
    return new Set(this.editor.marks.map(({ kind }) => kind));
  }

  list(): DirectiveResult {
    const { editable } = this.session;
    const view = this.#view;
    return guard([editable, view.view, ...this.#state(view)], () =>
      renderSkinList(view, editable, this.editor),
    );
  }

  get #view(): PaletteView {
    const { marks, on, selected, erasing, kind, eraser, typed } = this.editor;
    return {
      view: this.session.view,
      marks,
      on,
      selected,
      erasing,
      kind,
      eraser,
      typed,
      words: this.session.allWords,
    };
  }

  #state({ marks, on, selected, erasing, words }: PaletteView): readonly unknown[] {
    return [marks, on, selected, erasing, words];
  }

  /** Keys while drawing, wherever the focus is within the element. */
  readonly #keydown = (event: Event): void => {
    const { editor, recorder } = this;
    if (!editor.on) return;
    const act = keyAct(event as KeyboardEvent);
    if (act?.kind === 'escape') {
      if (!this.hand.stop() && !editor.select(undefined)) editor.leave();
    } else if (act?.kind === 'undo' && !isTyping(event)) recorder.undo();
    else if (act?.kind === 'redo' && !isTyping(event)) recorder.redo();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  /** Keys on a mark of the figure. */
  readonly #markKeydown = (event: KeyboardEvent): void => {
    const { editor } = this;
    const mark = editor.mark(markOf(event));
    if (!mark || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Enter' || event.key === ' ') editor.edit(mark.id);
    else if (!editor.key(mark, event)) return;
    event.preventDefault();
    event.stopPropagation();
  };
}

function isTyping(event: Event): boolean {
  const [from] = event.composedPath();
  return from instanceof HTMLInputElement || from instanceof HTMLTextAreaElement;
}

/** Where a layout puts the skin. What was found at the sites is part of a layout, too, and moves no mark. */
function frameOf({ view, plate, width, height, scale, offsetX, offsetY }: Layout): readonly unknown[] {
  return [view, plate, width, height, scale, offsetX, offsetY];
}
