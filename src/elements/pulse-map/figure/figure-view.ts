import { html, nothing, type TemplateResult } from 'lit';
import { type PlaceKey, placeKey } from '../../../anatomy/index.js';
import {
  type Collateral,
  drawnFlow,
  type DrawnRecord,
  type Layout,
  layOut,
  type LesionMark,
  OVER_HEIGHT,
  placesIn,
  type View,
} from '../../../drawing/index.js';
import { type Examination, remembered, type ScaleStep } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import { kept } from '../../common/kept.js';
import { reader } from '../../pulse-reading/reader.js';
import { type FigureView, renderFigure } from './render.js';
import { renderCodeLegend } from './code-legend.js';
import type { Hand } from '../hand/site-pointer.js';
import { type Painting, type SiteView, siteView } from './site-view.js';

/** Least greatest height of the figure in px: high enough for a target of 44 px at every site. */
const TALL = 860;
/** Greatest height of the figure: a tall screen, a wall say, is used. */
function tallest(around: number): number {
  return Math.max(TALL, window.innerHeight - around);
}

/** Room in px, both ways, from which on the figure grows as one piece, names and glyphs with it: on a wall they are read from afar. */
const WALL = 1000;
const MOST_ENLARGED = 2.5;

function enlargement(width: number, height: number): number {
  return Math.min(MOST_ENLARGED, Math.max(1, Math.min(width, height) / WALL));
}

/** What decides how the figure looks, beside what the hand is doing on it just now. */
export interface StageView {
  readonly view: View;
  /** Room for the figure in px. */
  readonly width: number;
  /** Greatest height of the figure in px, where it is not that of the screen. */
  readonly height: number | undefined;
  /** Height of what else is to be seen on the screen, in px. */
  readonly around: number;
  readonly examination: Examination;
  /** The record whose reading is drawn. */
  readonly read: Examination;
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

type Sites = ReadonlyMap<PlaceKey, SiteView>;

/** What is drawn of a record before anything can read it: flow as it is felt, no block. */
const unread = remembered((examination: Examination): DrawnRecord => ({
  marks: [],
  flow: drawnFlow(examination, []),
  collaterals: [],
}));

function sitesIn(
  view: View,
  examination: Examination,
  earlier: Examination | undefined,
  painted: readonly PlaceKey[] | undefined,
  step: ScaleStep | undefined,
  words: Messages,
): Sites {
  const painting = painted && step && { keys: painted, step };
  return new Map(
    placesIn(view).map(
      (place) => [placeKey(place), siteView(place, examination, words, painting, earlier)] as const,
    ),
  );
}

function layoutOf(view: View, width: number, height: number, sites: Sites, words: Messages): Layout {
  return layOut(view, width, height, (place) => ({
    name: words.map.siteShort(place.site),
    code: words.anatomy.codes[place.site],
    finding: sites.get(placeKey(place))?.finding ?? '',
  }));
}

/** Everything the figure shows, as data. What did not change since the last time is the very same object. */
export class Stage {
  readonly #sites = kept(sitesIn);
  readonly #layout = kept(layoutOf);
  readonly #marks = kept(inView);
  /** Asked once a width: a screen changes its height as its bars come and go, and the figure must not follow while one records. */
  readonly #tallest = kept((_width: number, around: number) => tallest(around));
  readonly #collaterals = kept((all: readonly Collateral[], sites: Sites) =>
    all.filter(({ to }) => sites.has(placeKey(to))),
  );

  view(stage: StageView, hand: HandState): FigureView {
    const { view, examination, words, painting, earlier } = stage;
    const { marks, flow, collaterals } = (reader.part?.drawnRecord ?? unread)(stage.read);
    const sites = this.#sites(view, examination, earlier, painting?.keys, painting?.step, words);
    const height = stage.height ?? this.#tallest(stage.width, stage.around);
    // It is laid out smaller, and fills its room all the same.
    const by = enlargement(stage.width, height);
    return {
      ...hand,
      layout: this.#layout(view, stage.width / by, (height + OVER_HEIGHT) / by - OVER_HEIGHT, sites, words),
      collaterals: this.#collaterals(collaterals, sites),
      flow,
      marks: this.#marks(marks, view),
      sites,
      words,
    };
  }
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
    ${view.layout.naming === 'codes' ? renderCodeLegend(view.layout, view.words) : nothing}`;
}

function preventDefault(event: Event): void {
  event.preventDefault();
}
