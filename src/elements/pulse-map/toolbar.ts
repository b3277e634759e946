import { html, nothing, type TemplateResult } from 'lit';
import { SCALES, SCALE_IDS, type ScaleId, type ScaleStep } from '../../examination/index.js';
import { GLYPH_SIZE, type View, VIEWS } from '../../drawing/index.js';
import type { Messages } from '../../locale/index.js';
import { glyphIcon, shownForStep } from '../common/glyph.js';
import { ICONS } from '../common/icons.js';
import { renderSelect } from '../common/select.js';
import type { Part } from './crops.js';

/** What a carried pen leaves on a site: a grade, or that it could not be examined is left to the chooser. */
export type Carried = ScaleStep | undefined;

export interface ToolbarView {
  readonly scale: ScaleId;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly editable: boolean;
  readonly carried: Carried;
  /** Whether the hand draws on the skin. */
  readonly drawing: boolean;
  readonly unstated: number;
  readonly total: number;
  readonly display: 'figure' | 'table';
  /** The parts to choose from while not all of the figure fits; none where all does. */
  readonly parts: readonly Part[];
  readonly part: Part;
  readonly help: boolean;
  readonly more: boolean;
  readonly narrow: boolean;
  /** Whether everything fits in one row. */
  readonly wide: boolean;
  readonly view: View | 'auto';
  readonly words: Messages;
}

export interface ToolbarActs {
  undo(): void;
  redo(): void;
  carry(step: Carried): void;
  draw(): void;
  restNormal(): void;
  scale(scale: ScaleId): void;
  display(display: 'figure' | 'table'): void;
  part(part: Part): void;
  view(view: View | 'auto'): void;
  help(): void;
  more(): void;
}

function normalButton({ unstated, total, editable, words }: ToolbarView, acts: ToolbarActs): TemplateResult {
  const text =
    unstated === 0
      ? words.map.allRecorded(total)
      : unstated === total
        ? words.map.allNormal(total)
        : words.map.otherNormal(unstated);
  const texts = [words.map.allRecorded(total), words.map.allNormal(total), words.map.otherNormal(total - 1)];
  // As wide as its longest text, so that no other text makes the row wrap and moves the figure under the hand.
  const longest = texts.reduce((a, b) => (a.length < b.length ? b : a));
  return html`<button
    type="button"
    class="button steady"
    data-longest=${longest}
    ?disabled=${!editable || unstated === 0}
    @click=${acts.restNormal}
  >
    ${text}
  </button>`;
}

function drawButton({ drawing, editable, words }: ToolbarView, acts: ToolbarActs): TemplateResult {
  return html`<button
    type="button"
    class="button"
    data-tool="draw"
    aria-label=${words.marks.tool}
    aria-pressed=${drawing ? 'true' : 'false'}
    ?disabled=${!editable}
    @click=${acts.draw}
  >
    ${ICONS.pencil}<span>${words.marks.toolShort}<span class="caption"> ${words.marks.toolRest}</span></span>
  </button>`;
}

function carry({ scale, carried, editable, words }: ToolbarView, acts: ToolbarActs): TemplateResult {
  return html`<span class="group" role="group" aria-label=${words.map.carry}>
    ${SCALES[scale].steps.map(
      (step) =>
        html`<button
          type="button"
          class="button icon bare"
          aria-label=${words.map.carryStep(words.examination.step(step))}
          aria-pressed=${step === carried ? 'true' : 'false'}
          ?disabled=${!editable}
          @click=${() => acts.carry(step === carried ? undefined : step)}
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

function scaleChoice({ words, scale, editable }: ToolbarView, acts: ToolbarActs): TemplateResult {
  return renderSelect<ScaleId>({
    label: words.map.scale,
    classes: ['scale', 'button'],
    options: SCALE_IDS.map((id) => [id, words.examination.scales[id]] as const),
    chosen: scale,
    disabled: !editable,
    pick: acts.scale,
  });
}

function viewChoice({ words, view, display }: ToolbarView, acts: ToolbarActs): TemplateResult {
  return renderSelect<View | 'auto'>({
    label: words.map.viewLabel,
    classes: ['scale', 'button'],
    options: (['auto', ...VIEWS] as const).map((option) => [option, words.map.views[option]] as const),
    chosen: view,
    disabled: display === 'table',
    pick: acts.view,
  });
}

function displayChoice({ words, display }: ToolbarView, acts: ToolbarActs): TemplateResult {
  return segments(
    words.map.shown,
    [
      ['figure', words.map.figureView],
      ['table', words.map.tableView],
    ] as const,
    display,
    acts.display,
  );
}

function helpButton({ words, help }: ToolbarView, acts: ToolbarActs): TemplateResult {
  return html`<button
    type="button"
    class="button icon"
    aria-label=${words.map.help}
    aria-expanded=${help ? 'true' : 'false'}
    @click=${acts.help}
  >
    <b>?</b>
  </button>`;
}

function moreButton({ words, more }: ToolbarView, acts: ToolbarActs): TemplateResult {
  return html`<button
    type="button"
    class="button icon"
    aria-label=${words.map.more}
    aria-expanded=${more ? 'true' : 'false'}
    @click=${acts.more}
  >
    ${ICONS.more}
  </button>`;
}

/** The row above the figure. Narrow, what does not fit waits behind one button. */
export function renderToolbar(view: ToolbarView, acts: ToolbarActs): TemplateResult {
  const { words, narrow, carried, part } = view;
  return html`<div class="toolbar" part="toolbar" role="toolbar" aria-label=${words.map.toolbar}>
      <button
        type="button"
        class="button icon"
        aria-label=${words.map.undo}
        ?disabled=${!view.editable || !view.canUndo}
        @click=${acts.undo}
      >
        ${ICONS.undo}
      </button>
      <button
        type="button"
        class="button icon"
        aria-label=${words.map.redo}
        ?disabled=${!view.editable || !view.canRedo}
        @click=${acts.redo}
      >
        ${ICONS.redo}
      </button>
      ${narrow ? nothing : html`<span class="hint caption" aria-hidden="true">${words.map.carry}</span>${carry(view, acts)}`}
      ${normalButton(view, acts)} ${drawButton(view, acts)}
      <span class="space"></span>
      ${
        view.parts.length
          ? segments(
              words.map.shown,
              view.parts.map((option) => [option, words.map.views[option]] as const),
              part,
              acts.part,
            )
          : nothing
      }
      ${narrow ? nothing : displayChoice(view, acts)}
      ${view.wide ? html`${scaleChoice(view, acts)}${viewChoice(view, acts)}` : nothing}
      ${narrow ? nothing : helpButton(view, acts)} ${view.wide ? nothing : moreButton(view, acts)}
    </div>
    ${
      view.more && !view.wide
        ? html`<div class="toolbar more">
            ${narrow ? html`${carry(view, acts)}${displayChoice(view, acts)}` : nothing}
            ${scaleChoice(view, acts)}${viewChoice(view, acts)}${narrow ? helpButton(view, acts) : nothing}
          </div>`
        : nothing
    }
    ${
      carried
        ? html`<div class="carrying">
            ${glyphIcon(shownForStep(carried), GLYPH_SIZE.legend)}
            <span><b>${words.map.carrying(words.examination.step(carried))}</b> ${words.map.carryHow}</span>
            <button type="button" class="button" @click=${() => acts.carry(undefined)}>
              ${words.map.putDown}
            </button>
          </div>`
        : nothing
    }`;
}
