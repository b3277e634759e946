import { isPulseSite, type Place, type PlaceKey, placeKey, type SiteId } from '../anatomy/index.js';
import {
  bruitAt,
  type BruitFinding,
  type Examination,
  isBruitLocked,
  isPulseLocked,
  isStated,
  pulseAt,
  type PulseFinding,
  type ScaleId,
  type ScaleStep,
} from '../examination/index.js';
import type { ShownMessages } from '../locale/shown.js';
import { type LabelText, type Layout, layOutNames, withFindings } from './layout.js';
import { type Shown, shownFor } from './shown.js';
import { type BodyView, placesIn, type View } from './views.js';
import { isUnknownAt, wordsAt } from './words-at.js';

/** How a site is drawn: its glyph, its names, and the weight of its label. */
export interface SiteView {
  readonly place: Place;
  readonly shown: Shown;
  /** Accessible name: the site and what is recorded there. */
  readonly name: string;
  /** The line under the site's name; empty when the glyph says it all. */
  readonly finding: string;
  /** What the compared record has there, and whether it has changed. */
  readonly earlier?: Shown | undefined;
  readonly changed?: boolean;
  readonly weight: 'quiet' | 'plain' | 'loud';
}

/** A stroke of the brush in progress: the sites it went over show its grade before it is recorded. */
export interface Painting {
  readonly keys: readonly PlaceKey[];
  readonly step: ScaleStep;
}

/** Sites at which nothing is recorded, as most are in most records: by language, then by scale and place. */
const BLANK = new WeakMap<ShownMessages, Map<string, SiteView>>();

export function siteView(
  place: Place,
  examination: Examination,
  words: ShownMessages,
  painting: Painting | undefined,
  earlier?: Examination,
): SiteView {
  const viewed = (): SiteView => viewOf(place, examination, words, painting, earlier);
  if (painting || earlier || pulseAt(examination, place) || bruitAt(examination, place)) return viewed();
  if (isUnknownAt(examination, place)) return viewed();
  let known = BLANK.get(words);
  if (!known) BLANK.set(words, (known = new Map()));
  const key = `${examination.scale} ${placeKey(place)}`;
  let view = known.get(key);
  if (!view) known.set(key, (view = viewed()));
  return view;
}

function viewOf(
  place: Place,
  examination: Examination,
  words: ShownMessages,
  painting: Painting | undefined,
  earlier?: Examination,
): SiteView {
  const { scale } = examination;
  const felt = isPulseSite(place.site);
  const recorded = pulseAt(examination, place);
  const painted = felt && painting?.keys.includes(placeKey(place));
  const pulse = painted
    ? {
        ...recorded,
        grade: painting?.step.grade,
        increased: painting?.step.increased,
        couldNotExamine: undefined,
      }
    : recorded;
  const bruit = bruitAt(examination, place);
  const loud =
    (pulse?.grade && pulse.grade !== 'normal') ||
    pulse?.thrill ||
    pulse?.expansile ||
    (bruit?.bruit && bruit.bruit !== 'none');
  const silent = felt ? words.examination.notExamined : words.map.notListened;
  const said = wordsAt(examination, place, words, pulse) || silent;
  const unknown = felt ? isPulseLocked(examination, place) : isBruitLocked(examination, place);
  const shown = shownFor(pulse, bruit, scale, !felt);
  const view: SiteView = {
    place,
    shown: unknown ? { ...shown, kind: 'unknown' } : shown,
    name: words.map.siteLabel(place, said),
    finding: words.map.findingShort(pulse, bruit, scale),
    weight: loud ? 'loud' : isStated(pulse) || bruit || unknown ? 'plain' : 'quiet',
  };
  return earlier
    ? compared(view, { pulse, bruit, said, unknown: isUnknownAt(examination, place) }, earlier, scale, words)
    : view;
}

interface Now {
  readonly pulse: PulseFinding | undefined;
  readonly bruit: BruitFinding | undefined;
  readonly said: string;
  /** Whether something here is not known, so that no change can be claimed. */
  readonly unknown: boolean;
}

/** Adds what the compared record has; a change is put into words and gives the label more weight. */
function compared(
  view: SiteView,
  now: Now,
  earlier: Examination,
  scale: ScaleId,
  words: ShownMessages,
): SiteView {
  const { place } = view;
  const pulse = pulseAt(earlier, place);
  const bruit = bruitAt(earlier, place);
  const known = isStated(pulse) || bruit?.bruit !== undefined;
  const felt = isStated(now.pulse);
  // Like is held against like: what was not felt or not heard then has not changed.
  const pulseDiffers =
    isStated(pulse) &&
    (now.pulse?.grade !== pulse?.grade || now.pulse?.couldNotExamine !== pulse?.couldNotExamine);
  // Where the pulse alone was felt today nobody says that a bruit has gone.
  const bruitDiffers =
    bruit?.bruit !== undefined && now.bruit?.bruit !== bruit.bruit && (now.bruit !== undefined || !felt);
  const changed = !now.unknown && !isUnknownAt(earlier, place) && (pulseDiffers || bruitDiffers);
  const before = wordsAt(earlier, place, words, pulse, ', ');
  return {
    ...view,
    earlier: known ? shownFor(pulse, bruit, scale, !isPulseSite(place.site)) : undefined,
    changed,
    ...(before && {
      name: words.map.siteLabel(place, `${now.said}; ${words.map.earlierFinding(before)}`),
    }),
    ...(changed && {
      weight: 'loud' as const,
      finding: words.map.changed(
        now.pulse,
        now.bruit,
        pulseDiffers ? pulse : undefined,
        bruitDiffers ? bruit : undefined,
        scale,
      ),
    }),
  };
}

/** The sites of a view by their keys. */
export type SiteViews = ReadonlyMap<PlaceKey, SiteView>;

/** Every site of a view. */
export function sitesIn(
  view: View,
  examination: Examination,
  earlier: Examination | undefined,
  painted: readonly PlaceKey[] | undefined,
  step: ScaleStep | undefined,
  words: ShownMessages,
): SiteViews {
  const painting = painted && step && { keys: painted, step };
  return new Map(
    placesIn(view).map(
      (place) => [placeKey(place), siteView(place, examination, words, painting, earlier)] as const,
    ),
  );
}

function namesOf(site: SiteId, { map, anatomy }: ShownMessages): Omit<LabelText, 'finding'> {
  return { name: map.siteShort(site), code: anatomy.codes[site] };
}

const findingAt = (sites: SiteViews, place: Place): string => sites.get(placeKey(place))?.finding ?? '';

/** The texts at each site: its name, and what was found there. */
export function labelsOf(sites: SiteViews, words: ShownMessages): (place: Place) => LabelText {
  return (place) => ({ ...namesOf(place.site, words), finding: findingAt(sites, place) });
}

/** Views laid out, by language, then by view and size. */
const LAID_OUT = new WeakMap<ShownMessages, Map<string, Layout>>();
/** A window that is made wider or narrower passes many sizes. */
const MOST_KEPT = 24;

/** A view with the names of its sites: the same for all maps of a size, and for every record. */
function named(view: BodyView, width: number, height: number, words: ShownMessages): Layout {
  let known = LAID_OUT.get(words);
  if (!known) LAID_OUT.set(words, (known = new Map()));
  const key = `${view} ${width} ${height}`;
  let layout = known.get(key);
  if (!layout) {
    if (known.size >= MOST_KEPT) known.clear();
    known.set(key, (layout = layOutNames(view, width, height, ({ site }) => namesOf(site, words))));
  }
  return layout;
}

/** Lays a view out with the names of its sites, and what was found there below them. */
export function layOutSites(
  view: BodyView,
  width: number,
  height: number,
  sites: SiteViews,
  words: ShownMessages,
): Layout {
  return withFindings(named(view, width, height, words), (place) => findingAt(sites, place));
}
