import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { isListeningSite, isPulseSite, mayExpand, type Place } from '../../../anatomy/index.js';
import {
  type BruitFinding,
  BRUITS,
  DOPPLER_SIGNALS,
  LONGEST_TEXT,
  type PulseFinding,
  SITE_REASONS,
  SCALES,
  type ScaleId,
  stepOf,
} from '../../../examination/index.js';
import { GLYPH_SIZE } from '../../../drawing/index.js';
import type { Messages } from '../../../locale/index.js';
import { glyphIcon, markIcon } from '../../common/glyph.js';
import { shownForStep } from '../../../drawing/shown.js';
import { ICONS } from '../../common/icons.js';
import { styled } from '../../common/styled.js';
import type { ChooserActs } from './acts.js';
import type { Unfolded } from './chooser.js';

export interface ChooserView {
  readonly place: Place;
  readonly pulse: PulseFinding | undefined;
  readonly bruit: BruitFinding | undefined;
  /** Recorded by a later version in a way this one does not know: locked. */
  readonly unknown: boolean;
  /** Content of the note field while it is being edited. */
  readonly typed: string | undefined;
  readonly scale: ScaleId;
  readonly unfolded: Unfolded;
  readonly pinned: boolean;
  readonly next: Place | undefined;
  readonly words: Messages;
  readonly sheet: boolean;
}

function radios<T extends string>(
  label: string,
  options: readonly T[],
  name: (option: T) => string,
  chosen: T | undefined,
  pick: (option: T) => void,
  columns: number,
): TemplateResult {
  return html`<div class="options" role="radiogroup" aria-label=${label} ${styled({ '--columns': columns })}>
    ${options.map(
      (option, i) =>
        html`<button
          type="button"
          class="button"
          role="radio"
          aria-checked=${option === chosen ? 'true' : 'false'}
          tabindex=${(chosen === undefined ? i === 0 : option === chosen) ? 0 : -1}
          @click=${() => pick(option)}
        >
          ${name(option)}
        </button>`,
    )}
  </div>`;
}

function grades({ pulse, scale, words }: ChooserView, acts: ChooserActs): TemplateResult {
  const chosen = stepOf(pulse, scale);
  const { steps } = SCALES[scale];
  return html`<div
    class="grades ${steps.length > 4 ? 'five' : ''}"
    role="radiogroup"
    aria-label=${words.map.pulseOn(scale)}
    ${styled({ '--columns': steps.length })}
  >
    ${steps.map(
      (step, i) =>
        html`<button
          type="button"
          class="button"
          role="radio"
          aria-label=${words.examination.step(step)}
          aria-checked=${step === chosen ? 'true' : 'false'}
          tabindex=${(chosen ? step === chosen : i === 0) ? 0 : -1}
          @click=${() => acts.grade(step)}
        >
          ${glyphIcon(shownForStep(step), GLYPH_SIZE.chooser)}
          <span>${words.map.gradeWord(step)}</span>
        </button>`,
    )}
  </div>`;
}

function toggles({ place, pulse, bruit, unfolded, words }: ChooserView, acts: ChooserActs): TemplateResult {
  const heard = bruit?.bruit && bruit.bruit !== 'none' ? bruit.bruit : undefined;
  const toggle = (field: 'thrill' | 'expansile'): TemplateResult =>
    html`<button
      type="button"
      class="button"
      aria-pressed=${pulse?.[field] ? 'true' : 'false'}
      @click=${() => acts.toggle(field)}
    >
      ${markIcon(field, 18)}${words.map[field]}
    </button>`;
  return html`<div class="toggles">
    ${
      isListeningSite(place.site) && isPulseSite(place.site)
        ? html`<button
            type="button"
            class="button"
            aria-pressed=${heard ? 'true' : 'false'}
            aria-expanded=${unfolded === 'bruit' ? 'true' : 'false'}
            @click=${() => acts.unfold(unfolded === 'bruit' ? 'none' : 'bruit')}
          >
            ${markIcon('systolic', 18)}${words.map.bruit}
          </button>`
        : nothing
    }
    ${isPulseSite(place.site) ? toggle('thrill') : nothing}
    ${mayExpand(place.site) || pulse?.expansile ? toggle('expansile') : nothing}
  </div>`;
}

function fold(
  { unfolded }: ChooserView,
  part: Unfolded,
  icon: unknown,
  text: string,
  said: string | undefined,
  acts: ChooserActs,
): TemplateResult {
  const open = unfolded === part;
  return html`<button
    type="button"
    class="fold"
    aria-expanded=${open ? 'true' : 'false'}
    @click=${() => acts.unfold(open ? 'none' : part)}
  >
    ${icon}<span>${text}${said ? html`<b>: ${said}</b>` : nothing}</span>${open ? ICONS.up : ICONS.down}
  </button>`;
}

/** Everything that can be recorded at the site. */
function findings(view: ChooserView, acts: ChooserActs): TemplateResult {
  const { place, pulse, bruit, unfolded, words } = view;
  const felt = isPulseSite(place.site);
  const heard = isListeningSite(place.site);
  const could = felt ? pulse?.couldNotExamine : bruit?.couldNotExamine;
  const note = felt ? pulse?.note : bruit?.note;
  return html`${felt ? grades(view, acts) : nothing} ${toggles(view, acts)}
    ${
      heard && (unfolded === 'bruit' || !felt)
        ? radios(
            words.map.bruit,
            BRUITS,
            (b) => words.map.bruitOptions[b],
            bruit?.bruit,
            (bruit) => acts.bruit(bruit),
            3,
          )
        : nothing
    }
    <div class="folds">
      ${fold(
        view,
        'reasons',
        glyphIcon({ kind: 'could-not', numeral: null, marks: [] }, 20),
        words.map.couldNotExamine,
        could && words.examination.reasons[could],
        acts,
      )}
      ${
        unfolded === 'reasons'
          ? radios(
              words.map.couldNotExamine,
              SITE_REASONS,
              (reason) => words.map.reasonWord(reason),
              could,
              (reason) => acts.reason(reason),
              2,
            )
          : nothing
      }
      ${
        felt
          ? html`${fold(
              view,
              'doppler',
              ICONS.doppler,
              words.map.doppler,
              pulse?.doppler && words.examination.dopplers[pulse.doppler],
              acts,
            )}
            ${
              unfolded === 'doppler'
                ? radios(
                    words.map.doppler,
                    DOPPLER_SIGNALS,
                    (signal) => words.map.dopplerWord(signal),
                    pulse?.doppler,
                    (signal) => acts.doppler(signal),
                    2,
                  )
                : nothing
            }`
          : nothing
      }
      ${
        unfolded === 'note'
          ? html`<label class="note"
              >${words.map.note}
              <textarea
                class="field"
                rows="2"
                maxlength=${LONGEST_TEXT}
                .value=${live(view.typed ?? note ?? '')}
                @input=${(event: Event) => acts.note((event.target as HTMLTextAreaElement).value)}
                @change=${() => acts.noteDone()}
                @blur=${() => acts.noteDone()}
              ></textarea>
            </label>`
          : fold(view, 'note', ICONS.pencil, note ? words.map.note : words.map.addNote, note, acts)
      }
    </div>`;
}

/** The panel beside an open site. */
export function renderChooser(view: ChooserView, acts: ChooserActs): TemplateResult {
  const { place, pulse, bruit, words, pinned, next, unknown } = view;
  const title = words.map.siteTitle(place);
  const anything = !unknown && (pulse !== undefined || bruit !== undefined);
  return html`<div
    class="chooser ${view.sheet ? 'at-foot' : ''}"
    part="chooser"
    popover="manual"
    role="dialog"
    aria-label=${title}
  >
    <header>
      <h2>${title}</h2>
      <button
        type="button"
        class="button icon bare"
        aria-label=${words.map.pin}
        aria-pressed=${pinned ? 'true' : 'false'}
        @click=${() => acts.pin()}
      >
        ${ICONS.pin}
      </button>
      <button
        type="button"
        class="button icon bare"
        aria-label=${words.map.close}
        @click=${() => acts.close(true)}
      >
        ${ICONS.close}
      </button>
    </header>
    <p class="how">${words.anatomy.technique[place.site]}</p>
    ${unknown ? html`<p class="how">${words.map.siteLabel(place, words.examination.unknownHere)}</p>` : findings(view, acts)}
    <footer>
      <button type="button" class="button bare" ?disabled=${!anything} @click=${() => acts.clear()}>
        ${words.map.clear}
      </button>
      ${
        place.side === 'midline' || unknown
          ? nothing
          : html`<button type="button" class="button bare" @click=${() => acts.sameAsOther()}>
              ${words.map.sameAsOther(place.side)}
            </button>`
      }
      ${
        next
          ? html`<button type="button" class="button bare" @click=${() => acts.next()}>
              ${words.map.next(next)}${ICONS.next}
            </button>`
          : nothing
      }
    </footer>
  </div>`;
}
