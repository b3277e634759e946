import { html, nothing, type TemplateResult } from 'lit';
import { placeKey } from '../../anatomy/index.js';
import {
  collateralsOf,
  drawnFlow,
  layOut,
  type LesionMark,
  marksOf,
  placesIn,
  type View,
} from '../../drawing/index.js';
import type { Examination } from '../../examination/index.js';
import { readExamination } from '../../localisation/index.js';
import type { Messages } from '../../locale/index.js';
import { type FigureView, renderFigure } from './figure.js';
import { renderLegend } from './panels.js';
import type { Hand } from './pointer.js';
import { type Painting, siteView } from './site-view.js';

/** Least greatest height of the figure in px: high enough for a target of 44 px at every site. */
const TALL = 860;
/** What else of the element wants to be seen on the same screen, in px. */
const AROUND = 130;

/** Greatest height of the figure: a tall screen, a wall say, is used. */
function tallest(): number {
  return Math.max(TALL, window.innerHeight - AROUND);
}

/** What decides how the figure looks, beside what the hand is doing on it just now. */
export interface StageView {
  readonly view: View;
  /** Room for the figure in px. */
  readonly width: number;
  readonly examination: Examination;
  readonly earlier: Examination | undefined;
  readonly painting: Painting | undefined;
  readonly words: Messages;
}

type HandState = Pick<FigureView, 'active' | 'open' | 'preview' | 'dragged' | 'editable' | 'barred' | 'skin'>;

/** What the hand on the figure does: records at sites, draws a carried grade across them, or draws on the skin. */
export type HandMode = '' | 'drawing' | 'skinning';

function inView(marks: readonly LesionMark[], view: View): LesionMark[] {
  const ofArms = view.includes('arm') || view.includes('hand');
  return marks.filter(({ limb }) => view === 'whole' || limb.endsWith('leg') !== ofArms);
}

/** Everything the figure shows, as data. */
export function figureView(stage: StageView, hand: HandState): FigureView {
  const { view, examination, words, painting, earlier } = stage;
  const reading = readExamination(examination);
  const marks = marksOf(reading);
  const places = placesIn(view);
  const sites = new Map(
    places.map((place) => [placeKey(place), siteView(place, examination, words, painting, earlier)] as const),
  );
  const layout = layOut(view, stage.width, tallest(), (place) => ({
    name: words.map.siteShort(place.site),
    code: words.anatomy.codes[place.site],
    finding: sites.get(placeKey(place))?.finding ?? '',
  }));
  const collaterals = collateralsOf(reading.rule).filter(({ to }) => sites.has(placeKey(to)));
  return {
    ...hand,
    layout,
    collaterals,
    flow: drawnFlow(examination, marks),
    marks: inView(marks, view),
    sites,
    words,
  };
}

/** The figure with its hand: pointer, keys and focus are heard here, once for all sites. */
export function renderStage(
  view: FigureView,
  mode: HandMode,
  pointer: Hand,
  keydown: (event: KeyboardEvent) => void,
  focusin: (event: FocusEvent) => void,
): TemplateResult {
  return html`<div
      class="stage ${mode}"
      tabindex=${mode === 'skinning' ? -1 : nothing}
      @pointerdown=${pointer.down}
      @pointermove=${pointer.move}
      @pointerup=${pointer.up}
      @pointercancel=${pointer.cancel}
      @lostpointercapture=${pointer.cancel}
      @pointerleave=${pointer.leave}
      @click=${pointer.click}
      @contextmenu=${pointer.menu}
      @dragstart=${preventDefault}
      @touchmove=${{ handleEvent: pointer.touchMove, passive: false }}
      @keydown=${keydown}
      @focusin=${focusin}
    >
      ${renderFigure(view)}
    </div>
    ${view.layout.naming === 'codes' ? renderLegend(view.layout, view.words) : nothing}`;
}

function preventDefault(event: Event): void {
  event.preventDefault();
}
