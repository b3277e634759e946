import { html, nothing, type TemplateResult } from 'lit';
import { SCALES, SCALE_IDS, type ScaleId, type ScaleStep, setScale } from '../../examination/index.js';
import { GLYPH_SIZE, type View, VIEWS } from '../../drawing/index.js';
import type { ShownMessages } from '../../locale/shown.js';
import { glyphIcon } from '../common/glyph.js';
import { shownForStep } from '../../drawing/shown.js';
import { ICONS } from '../common/icons.js';
import { selectField } from '../common/select.js';
import type { Chooser } from './chooser/chooser.js';
import { type Crop, cropsAt, narrowCrop } from './crops.js';
import { showNormals, unstatedHere } from './normals.js';
import type { Recorder } from './recorder.js';
import type { Session } from './session.js';
import type { SkinController } from './skin/controller.js';

interface ToolbarView {
  readonly scale: ScaleId;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly editable: boolean;
  readonly brush: ScaleStep | undefined;
  /** Whether the skin is being drawn on. */
  readonly drawing: boolean;
  /** Whether something shown is not stated. */
  readonly unstated: boolean;
  /** Whether the list of what can be stated as normal is open. */
  readonly normals: boolean;
  readonly display: 'figure' | 'table';
  /** The crops to choose from; empty where the whole figure fits. */
  readonly crops: readonly Crop[];
  readonly crop: Crop;
  readonly help: boolean;
  readonly more: boolean;
  readonly narrow: boolean;
  /** Whether everything fits in one row. */
  readonly wide: boolean;
  readonly view: View | 'auto';
  readonly words: ShownMessages;
}

/** The row of tools above the figure. */
export class Toolbar {
  constructor(
    private readonly session: Session,
    private readonly recorder: Recorder,
    private readonly chooser: Chooser,
    private readonly skin: SkinController,
  ) {}

  template(): TemplateResult {
    const { session } = this;
    const { examination, store, editable, narrow, wide, width, words, now } = session;
    const { display } = session.element;
    const view = session.chosenView;
    const { scale } = examination;
    return renderToolbar(
      {
        scale,
        canUndo: store.canUndo,
        canRedo: store.canRedo,
        editable,
        brush: now.brush,
        drawing: this.skin.on,
        unstated: unstatedHere(session).length > 0,
        normals: now.normals,
        display: display === 'table' ? 'table' : 'figure',
        crops: view === 'auto' && narrow && display !== 'table' ? cropsAt(width) : [],
        crop: session.crop,
        help: now.help,
        more: now.more,
        narrow,
        wide,
        view,
        words,
      },
      this,
    );
  }

  undo(): void {
    this.recorder.undo();
  }

  redo(): void {
    this.recorder.redo();
  }

  /** Takes up a grade as a brush, or puts it down. */
  brush(step: ScaleStep | undefined): void {
    this.skin.leave();
    this.session.change({ brush: step });
    this.chooser.close(false);
  }

  /** Draws on the skin of the figure or plate. */
  draw(): void {
    this.session.element.display = 'figure';
    this.skin.toggle();
  }

  normals(): void {
    showNormals(this.session, !this.session.now.normals);
  }

  scale(scale: ScaleId): void {
    this.session.change({ brush: undefined });
    this.session.edit(setScale(this.session.examination, scale));
  }

  display(display: 'figure' | 'table'): void {
    this.chooser.close(false);
    this.session.element.display = display;
  }

  view(view: View | 'auto'): void {
    this.chooser.close(false);
    this.session.show(view, '.view-choice', true);
  }

  crop(crop: Crop): void {
    this.chooser.close(false);
    this.session.change({ crop: narrowCrop(crop) });
  }

  help(): void {
    this.session.change({ help: !this.session.now.help });
  }

  more(): void {
    this.session.change({ more: !this.session.now.more });
  }
}

function normalButton({ unstated, normals, editable, words }: ToolbarView, acts: Toolbar): TemplateResult {
  return html`<button
    type="button"
    class="button"
    data-tool="normals"
    aria-expanded=${normals && unstated ? 'true' : 'false'}
    ?disabled=${!editable || !unstated}
    @click=${() => acts.normals()}
  >
    ${words.map.markNormal}
  </button>`;
}

function drawButton({ drawing, editable, words }: ToolbarView, acts: Toolbar): TemplateResult {
  return html`<button
    type="button"
    class="button"
    data-tool="draw"
    aria-label=${words.map.draw}
    aria-pressed=${drawing ? 'true' : 'false'}
    ?disabled=${!editable}
    @click=${() => acts.draw()}
  >
    ${ICONS.pencil}<span>${words.map.drawShort}<span class="caption"> ${words.map.drawRest}</span></span>
  </button>`;
}

function brushes({ scale, brush, editable, words }: ToolbarView, acts: Toolbar): TemplateResult {
  return html`<span class="group" role="group" aria-label=${words.map.carry}>
    ${SCALES[scale].steps.map(
      (step) =>
        html`<button
          type="button"
          class="button icon bare"
          aria-label=${words.map.carryStep(words.examination.step(step))}
          aria-pressed=${step === brush ? 'true' : 'false'}
          ?disabled=${!editable}
          @click=${() => acts.brush(step === brush ? undefined : step)}
        >
          ${glyphIcon(shownForStep(step), GLYPH_SIZE.map)}
        </button>`,
    )}
  </span>`;
}

function segments<T extends string>(
  label: string,
  options: readonly (readonly [T, string])[],
  chosen: T,
  pick: (option: T) => void,
): TemplateResult {
  return html`<span class="group" role="group" aria-label=${label}>
    ${options.map(
      ([option, text]) =>
        html`<button
          type="button"
          class="button bare"
          aria-pressed=${option === chosen ? 'true' : 'false'}
          @click=${() => pick(option)}
        >
          ${text}
        </button>`,
    )}
  </span>`;
}

function scaleChoice({ words, scale, editable }: ToolbarView, acts: Toolbar): TemplateResult {
  return selectField<ScaleId>({
    label: words.map.scale,
    classes: ['scale', 'button'],
    options: SCALE_IDS.map((id) => [id, words.examination.scales[id]] as const),
    value: scale,
    disabled: !editable,
    set: (picked) => picked && acts.scale(picked),
  });
}

function viewChoice({ words, view, display }: ToolbarView, acts: Toolbar): TemplateResult {
  return selectField<View | 'auto'>({
    label: words.map.viewLabel,
    classes: ['scale', 'button view-choice'],
    options: (['auto', ...VIEWS] as const).map((option) => [option, words.map.views[option]] as const),
    value: view,
    disabled: display === 'table',
    set: (picked) => picked && acts.view(picked),
  });
}

function displayChoice({ words, display }: ToolbarView, acts: Toolbar): TemplateResult {
  return segments(
    words.map.shown,
    [
      ['figure', words.map.figureView],
      ['table', words.map.tableView],
    ] as const,
    display,
    (option) => acts.display(option),
  );
}

function helpButton({ words, help }: ToolbarView, acts: Toolbar): TemplateResult {
  return html`<button
    type="button"
    class="button icon"
    aria-label=${words.map.help}
    aria-expanded=${help ? 'true' : 'false'}
    @click=${() => acts.help()}
  >
    <b>?</b>
  </button>`;
}

function moreButton({ words, more }: ToolbarView, acts: Toolbar): TemplateResult {
  return html`<button
    type="button"
    class="button icon"
    aria-label=${words.map.more}
    aria-expanded=${more ? 'true' : 'false'}
    @click=${() => acts.more()}
  >
    ${ICONS.more}
  </button>`;
}

/** On a narrow screen, tools that do not fit are behind one button. */
function renderToolbar(view: ToolbarView, acts: Toolbar): TemplateResult {
  const { words, narrow, brush, crop } = view;
  return html`<div class="toolbar" part="toolbar" role="toolbar" aria-label=${words.map.toolbar}>
      <button
        type="button"
        class="button icon"
        aria-label=${words.map.undo}
        ?disabled=${!view.editable || !view.canUndo}
        @click=${() => acts.undo()}
      >
        ${ICONS.undo}
      </button>
      <button
        type="button"
        class="button icon"
        aria-label=${words.map.redo}
        ?disabled=${!view.editable || !view.canRedo}
        @click=${() => acts.redo()}
      >
        ${ICONS.redo}
      </button>
      ${narrow ? nothing : html`<span class="hint caption" aria-hidden="true">${words.map.carry}</span>${brushes(view, acts)}`}
      ${normalButton(view, acts)} ${drawButton(view, acts)}
      <span class="space"></span>
      ${
        view.crops.length
          ? segments(
              words.map.shown,
              view.crops.map((option) => [option, words.map.views[option]] as const),
              crop,
              (option) => acts.crop(option),
            )
          : nothing
      }
      ${narrow ? nothing : displayChoice(view, acts)}
      ${view.wide ? html`${scaleChoice(view, acts)}${viewChoice(view, acts)}` : nothing}
      <slot name="tools"></slot>
      ${narrow ? nothing : helpButton(view, acts)} ${view.wide ? nothing : moreButton(view, acts)}
    </div>
    ${
      view.more && !view.wide
        ? html`<div class="toolbar more">
            ${narrow ? html`${brushes(view, acts)}${displayChoice(view, acts)}` : nothing}
            ${scaleChoice(view, acts)}${viewChoice(view, acts)}${narrow ? helpButton(view, acts) : nothing}
          </div>`
        : nothing
    }
    ${
      brush
        ? html`<div class="brush-row">
            ${glyphIcon(shownForStep(brush), GLYPH_SIZE.legend)}
            <span><b>${words.map.carrying(words.examination.step(brush))}</b> ${words.map.carryHow}</span>
            <button type="button" class="button" @click=${() => acts.brush(undefined)}>
              ${words.map.putDown}
            </button>
          </div>`
        : nothing
    }`;
}
