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
import { memoizeLast } from '../../common/memoize-last.js';
import { reader } from '../../pulse-reading/reader.js';
import type { FigureView } from './render.js';
import { type Painting, type SiteView, siteView } from './site-view.js';

/** Lower bound of the figure's maximum height in px: high enough for a target of 44 px at every site. */
const TALL = 860;
/** Maximum height of the figure: a tall screen, such as one on a wall, is used. */
function tallest(around: number): number {
  return Math.max(TALL, window.innerHeight - around);
}

/** Room in px, both ways, from which on the figure grows as one piece, names and glyphs with it: on a wall they are read from afar. */
const WALL = 1000;
const MOST_ENLARGED = 2.5;

function enlargement(width: number, height: number): number {
  return Math.min(MOST_ENLARGED, Math.max(1, Math.min(width, height) / WALL));
}

/** What decides how the figure looks besides what the hand does on it just now. */
export interface FigureSource {
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

/** How the figure looks only while a hand is on it, and who draws on its skin. */
type Handled = Pick<FigureView, 'active' | 'open' | 'preview' | 'drag' | 'editable' | 'barred' | 'skin'>;

/** The room that a figure is laid out in, where it is not that of the element. */
export interface Frame {
  readonly width: number;
  /** Greatest height in px. */
  readonly height?: number;
  readonly view?: View;
}

/** The figure with no hand on it, as on paper. */
export function untouched(view: FigureView): FigureView {
  return { ...view, open: undefined, preview: undefined, drag: [] };
}

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

/** Makes everything the figure shows, as data. What did not change since the last time is the same object. */
export class FigureViews {
  readonly #sites = memoizeLast(sitesIn);
  readonly #layout = memoizeLast(layoutOf);
  readonly #marks = memoizeLast(inView);
  /** Asked once a width: a screen changes its height as its bars come and go, and the figure must not follow while one records. */
  readonly #tallest = memoizeLast((_width: number, around: number) => tallest(around));
  readonly #collaterals = memoizeLast((all: readonly Collateral[], sites: Sites) =>
    all.filter(({ to }) => sites.has(placeKey(to))),
  );

  view(source: FigureSource, hand: Handled): FigureView {
    const { view, examination, words, painting, earlier } = source;
    const { marks, flow, collaterals } = (reader.part?.drawnRecord ?? unread)(source.read);
    const sites = this.#sites(view, examination, earlier, painting?.keys, painting?.step, words);
    const height = source.height ?? this.#tallest(source.width, source.around);
    // It is laid out smaller, and fills its room all the same.
    const by = enlargement(source.width, height);
    return {
      ...hand,
      layout: this.#layout(view, source.width / by, (height + OVER_HEIGHT) / by - OVER_HEIGHT, sites, words),
      collaterals: this.#collaterals(collaterals, sites),
      flow,
      marks: this.#marks(marks, view),
      sites,
      words,
    };
  }
}
