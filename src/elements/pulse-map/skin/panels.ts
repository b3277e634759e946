import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import {
  type PlatePlace,
  platePlaces,
  SKIN_PLACES,
  SKIN_REGIONS,
  type SkinPlace,
} from '../../../anatomy/index.js';
import { type Mark, MARK_FORMS, MARK_KINDS, type MarkKind, markRegions } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import type { SkinEditor } from './editor.js';
import { isPlateView, markName, type View } from '../../../drawing/index.js';
import { skinIcon, type SkinView } from './layer.js';

export interface PaletteView extends SkinView {
  /** What is shown, whose places are offered first. */
  readonly view: View;
  readonly kind: MarkKind;
  readonly eraser: boolean;
  /** Content of the note field while it is being edited. */
  readonly typed: string | undefined;
}

function isArea(kind: MarkKind): boolean {
  return MARK_FORMS[kind] === 'area';
}

/** The kinds to draw with, or the properties of the selected mark. */
export function renderPalette(view: PaletteView, editor: SkinEditor): TemplateResult {
  const { words, eraser } = view;
  const { marks } = words;
  const chosen = view.marks.find(({ id }) => id === view.selected);
  const kind = chosen?.kind ?? view.kind;
  return html`<div class="palette" role="group" part="palette" aria-label=${words.map.draw}>
    <div class="kinds" role="toolbar" aria-label=${marks.kind}>
      ${MARK_KINDS.map(
        (option) =>
          html`<button
            type="button"
            class="button"
            aria-label=${marks.kindWord(option)}
            aria-pressed=${option === kind && (chosen !== undefined || !eraser) ? 'true' : 'false'}
            ?disabled=${chosen !== undefined && isArea(option) !== isArea(chosen.kind)}
            @click=${() => editor.choose(option)}
          >
            ${skinIcon(option, `kind-${option}`)}<span>${marks.kindShort(option)}</span>
          </button>`,
      )}
    </div>
    ${
      chosen
        ? html`<div class="act">
            <b>${markName({ ...chosen, note: undefined }, words)}</b>
            <label
              >${marks.note}
              <input
                class="field"
                .value=${live(view.typed ?? chosen.note ?? '')}
                maxlength="2000"
                @input=${(event: Event) => editor.note((event.target as HTMLInputElement).value)}
                @change=${() => editor.noteDone()}
                @blur=${() => editor.noteDone()}
            /></label>
            <button type="button" class="button" @click=${() => editor.delete(chosen.id)}>
              ${marks.remove}
            </button>
            ${doneButton(words, editor)}
          </div>`
        : html`<div class="act">
            <span class="hint">${eraser ? marks.howErase : marks.how}</span>
            <button
              type="button"
              class="button"
              aria-pressed=${eraser ? 'true' : 'false'}
              @click=${() => editor.toggleEraser()}
            >
              ${marks.eraser}
            </button>
            ${doneButton(words, editor)}
          </div>`
    }
  </div>`;
}

function doneButton({ marks }: Messages, editor: SkinEditor): TemplateResult {
  return html`<button type="button" class="button" @click=${() => editor.leave()}>${marks.done}</button>`;
}

function groupOf({ region, side }: SkinPlace): keyof Messages['marks']['groups'] {
  const { of } = SKIN_REGIONS[region];
  return of === 'trunk' || side === 'midline' ? 'trunk' : `${side} ${of}`;
}

/** The areas of a plate with their names, each name once: an area that two drawings show stands on the second. */
function areasOf(view: View, { marks }: Messages): readonly (readonly [string, PlatePlace])[] {
  if (!isPlateView(view)) return [];
  return [...new Map(platePlaces(view).map((place) => [marks.placeWord(place.name), place]))];
}

function addByPlace({ view, words }: PaletteView, editor: SkinEditor): TemplateResult {
  const { marks } = words;
  const areas = areasOf(view, words);
  const places = [...areas.map(([, place]) => place), ...SKIN_PLACES];
  const add = (event: Event): void => {
    const [kind, place] = [
      ...((event.target as Element).closest('.fields')?.querySelectorAll('select') ?? []),
    ];
    if (kind && place) editor.addAt(kind.value as MarkKind, places[Number(place.value || Number.NaN)]);
  };
  return html`<div class="fields">
    <label
      >${marks.kind}
      <select class="field">
        ${MARK_KINDS.map((kind) => html`<option value=${kind}>${marks.kindWord(kind)}</option>`)}
      </select></label
    >
    <label
      >${marks.place}
      <select class="field">
        <option value="">${marks.choosePlace}</option>
        ${
          areas.length
            ? html`<optgroup label=${words.map.views[view]}>
                ${areas.map(([name], i) => html`<option value=${i}>${name}</option>`)}
              </optgroup>`
            : nothing
        }
        ${Object.entries(marks.groups).map(
          ([group, name]) =>
            html`<optgroup label=${name}>
              ${SKIN_PLACES.map((place, i) =>
                groupOf(place) === group
                  ? html`<option value=${areas.length + i}>${marks.placeWord(place)}</option>`
                  : nothing,
              )}
            </optgroup>`,
        )}
      </select></label
    >
    <button type="button" class="button" @click=${add}>${marks.add}</button>
  </div>`;
}

/** Every mark in words with its buttons, and a form to add one without drawing. */
export function renderSkinList(view: PaletteView, editable: boolean, editor: SkinEditor): TemplateResult {
  const { words, marks: all } = view;
  const { marks } = words;
  return html`<ul>
      ${repeat(
        all,
        ({ id }) => id,
        (mark: Mark, i) => {
          const name = markName({ ...mark, note: undefined }, words);
          return html`<li data-row=${mark.id} class=${mark.id === view.selected ? 'selected' : ''}>
            ${skinIcon(mark.kind, `row-${i}`)}
            <span>
              <b>${marks.whereWord(markRegions(mark))}</b> ${marks.kinds[mark.kind]}
              ${mark.note ? html`<small>${mark.note}</small>` : nothing}
            </span>
            ${
              editable
                ? html`<button
                      type="button"
                      class="button"
                      aria-label=${`${marks.edit}: ${name}`}
                      @click=${() => editor.edit(mark.id)}
                    >
                      ${marks.edit}
                    </button>
                    <button
                      type="button"
                      class="button"
                      aria-label=${`${marks.remove}: ${name}`}
                      @click=${() => editor.delete(mark.id)}
                    >
                      ${marks.remove}
                    </button>`
                : nothing
            }
          </li>`;
        },
      )}
    </ul>
    ${
      editable
        ? html`<p class="hint">${marks.orPlace}</p>
            ${addByPlace(view, editor)}`
        : nothing
    } `;
}
