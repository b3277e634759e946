import { placeKey } from '../../../anatomy/index.js';
import {
  aroundPlate,
  type Collateral,
  type DrawnRecord,
  isPlateView,
  labelsOf,
  type Layout,
  layOutSites,
  type LesionMark,
  marksIn,
  OVER_HEIGHT,
  type Painting,
  sitesIn,
  type SiteViews,
  type View,
} from '../../../drawing/index.js';
import type { Examination } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import type { ShownMessages } from '../../../locale/shown.js';
import { memoizeLast } from '../../common/memoize-last.js';
import { reader } from '../../pulse-reading/reader.js';
import { windowHeight } from '../crops.js';
import { plateFor, plateKit } from '../plate/fetched.js';
import type { FigureView } from './render.js';

/**
 * The figure is as high as the window allows, so that whole limbs are seen while one records, but no lower than this, in px: from here on
 * sites are 27 px apart, and every name and the buttons of the plates have their room. From 766 px on they are 44 px apart. A part of the
 * body has fewer sites for its size. A plate has few, and the row of buttons above it.
 */
const LEAST = { whole: 540, part: 500, plate: 440 } as const;
/** With that row, how much more stands around a figure. */
const WITH_PLATES = 1.5;
/** Maximum height of the figure in px. */
function tallest(around: number, view: View, above: number): number {
  return isPlateView(view)
    ? Math.max(LEAST.plate, windowHeight() - around * WITH_PLATES - above)
    : Math.max(LEAST[view === 'whole' ? 'whole' : 'part'], windowHeight() - around - above);
}

/**
 * From this size, in px, a drawing is scaled up, names and glyphs included, to be read from a distance: on a projector of 1920 by 1080, and
 * more so on a wall. The whole figure has more names for its size than its parts and the plates.
 */
const LARGE = { whole: { width: 1190, height: 765 }, part: { width: 1150, height: 660 } } as const;
const MOST_ENLARGED = 2.5;

function enlargement(view: View, width: number, height: number): number {
  const from = LARGE[view === 'whole' ? 'whole' : 'part'];
  return Math.min(MOST_ENLARGED, Math.max(1, Math.min(width / from.width, height / from.height)));
}

/** What decides how the figure looks besides what the hand does on it just now. */
export interface FigureSource {
  readonly view: View;
  /** Available width in px. */
  readonly width: number;
  /** Maximum height in px; by default it follows the screen. */
  readonly height: number | undefined;
  /** Height of everything else that should fit on the screen, in px. */
  readonly around: number;
  readonly examination: Examination;
  /** The record whose reading is drawn. */
  readonly read: Examination;
  readonly earlier: Examination | undefined;
  readonly painting: Painting | undefined;
  readonly words: ShownMessages;
  /** Those of readings, too; missing until they have been fetched. */
  readonly allWords: Messages | undefined;
}

/** The part of the view that depends on interaction, and what draws the skin. */
type Handled = Pick<
  FigureView,
  'active' | 'open' | 'preview' | 'drag' | 'editable' | 'barred' | 'skin' | 'digits' | 'landmarks'
>;

/** The size a figure is laid out for, when it is not that of the element. */
export interface Frame {
  readonly width: number;
  /** Maximum height in px. */
  readonly height?: number;
  readonly view?: View;
}

/** The figure without any trace of interaction, as on paper: fingers and toes only where any was looked at, as in other pictures. */
export function untouched(view: FigureView): FigureView {
  const digits = view.digits?.seen() && view.digits;
  return { ...view, open: undefined, preview: undefined, drag: [], digits };
}

/** What is drawn before the engine has arrived: body and arteries as in health. */
const UNREAD: DrawnRecord = { marks: [], flow: [], collaterals: [] };

/** A plate once it has been fetched; until then the limb that it is part of. */
function layoutOf(view: View, width: number, height: number, sites: SiteViews, words: ShownMessages): Layout {
  if (!isPlateView(view)) return layOutSites(view, width, height, sites, words);
  const plate = plateFor(view);
  return plate && plateKit.part
    ? plateKit.part.layOutPlate(plate, width, height, labelsOf(sites, words))
    : layOutSites(aroundPlate(view), width, height, sites, words);
}

/** Computes everything the figure shows, as data. Unchanged parts are the same objects as last time. */
export class FigureViews {
  readonly #sites = memoizeLast(sitesIn);
  readonly #layout = memoizeLast(layoutOf);
  readonly #ridges = memoizeLast((marks: readonly LesionMark[], layout: Layout, before: boolean) =>
    marks.length && reader.part ? reader.part.placeRidges(marksIn(layout.view, marks), layout, before) : [],
  );
  /**
   * Computed once per width and view: a phone's toolbars change the height of the window, and a red flag may be raised; the figure must
   * not follow while one records.
   */
  readonly #tallest = memoizeLast((_width: number, around: number, view: View) =>
    tallest(around, view, this.above(isPlateView(view))),
  );
  /** Ways round a block are sketched on the whole figure only. */
  readonly #collaterals = memoizeLast((all: readonly Collateral[], sites: SiteViews, layout: Layout) =>
    layout.plate ? [] : all.filter(({ to }) => sites.has(placeKey(to))),
  );

  /** @param above height of what stays over the tools, in px: a plate fits the window beneath the red flags, too */
  constructor(private readonly above: (plate: boolean) => number = () => 0) {}

  view(source: FigureSource, hand: Handled): FigureView {
    const { view, examination, words, allWords, painting, earlier } = source;
    const { marks, flow, collaterals } = reader.part ? reader.part.drawnRecord(source.read, earlier) : UNREAD;
    const sites = this.#sites(view, examination, earlier, painting?.keys, painting?.step, words);
    const height = source.height ?? this.#tallest(source.width, source.around, view);
    // Laid out smaller, then scaled up by the viewBox.
    const by = enlargement(view, source.width, height);
    const layout = this.#layout(
      view,
      source.width / by,
      (height + OVER_HEIGHT) / by - OVER_HEIGHT,
      sites,
      words,
    );
    return {
      ...hand,
      layout,
      enlarged: by,
      collaterals: this.#collaterals(collaterals, sites, layout),
      flow,
      arteries: reader.part?.arteryPaths,
      earlierSpots: reader.part?.earlierSpots,
      ridges: this.#ridges(marks, layout, earlier !== undefined),
      sites,
      words,
      allWords,
    };
  }
}
