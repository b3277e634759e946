import { PULSE_PLACES } from '../../anatomy/index.js';
import { type Examination, type Mark, unstatedPlaces } from '../../examination/index.js';
import type { Messages, Register } from '../../locale/index.js';
import { readExamination } from '../../localisation/index.js';
import { ruleLeads } from '../../statements/index.js';
import { drawnRecord } from '../drawn-record.js';
import type { Layout } from '../layout.js';
import { FIGURE_PAINT } from '../paint.js';
import type { Token } from '../palette.js';
import { placeRidges, smallRidges } from '../placed-ridges.js';
import { labelsOf, layOutSites, type SiteViews, sitesIn } from '../site-view.js';
import { markName, showsMark } from '../skin-view.js';
import { isPlateView } from '../plates/plate.js';
import { aroundPlate, type BodyView, clipOf, marksIn, showsArms, type View, VIEWS } from '../views.js';
import { digitsText, stillDigits } from './digits.js';
import { groundText, sharedGround } from './ground.js';
import { type Ink, inkOf, painted, type Scheme } from './ink.js';
import { placedLegend } from './legend.js';
import {
  captionsText,
  labelsText,
  leadersText,
  legendText,
  lesionsText,
  lettersText,
  numbersText,
  sitesText,
  skinText,
} from './parts.js';
import type { StillPlate } from './plate.js';
import { paperText, smallGlyphs, smallLayout, tinySigns } from './small.js';
import { group, tag, tenth, xmlText } from './xml.js';

/** How still pictures look that lie on one page. */
export interface FigureLook {
  /** The part of the body, or the plate; `whole` unless told otherwise. */
  readonly view?: View;
  /**
   * Width in px, 24 to 4096; 160 unless told otherwise, with names 760. Below 40 there are no arteries, no glyphs and no marks on the
   * skin: the stretch mark on the body, a dot at each site that is not as usual, square where the pulse is absent, and a ring in the
   * upper right corner unless every pulse of the view was stated.
   */
  readonly width?: number;
  /**
   * Colours for light or dark surroundings, or `page` for a picture placed into a page, whose `color-scheme` it follows; `light` unless
   * told otherwise.
   */
  readonly scheme?: Scheme;
  /** Colours of one's own, by the names that the custom properties `--pulse-map-*` have. */
  readonly colours?: Partial<Readonly<Record<Token, string>>>;
  /** Factor of the thickness of lines; 1 unless told otherwise. */
  readonly lines?: number;
}

/** Options of {@link figureSVG}. */
export interface FigureOptions extends FigureLook {
  /** BCP 47 tag of the words; English unless told otherwise. Other languages are registered by their module first. */
  readonly language?: string;
  /** Terms of the trade, or plain words where the language has them. */
  readonly register?: Register;
  /** Whether the sites carry names and findings, on paper and with a legend, for a picture that is read closely. */
  readonly names?: boolean;
  /** An earlier record of the patient, which the reading takes into account; with names it stands beside each site. */
  readonly earlier?: Examination;
  /** What the picture is called; else the name of the map with the date of the record. */
  readonly title?: string;
  /** Whether the page has the parts that pictures share, by {@link figureBody} with the same look. */
  readonly shared?: boolean;
}

/** Options as the elements give them, which have their words already. */
export type WordedOptions = Omit<FigureOptions, 'language' | 'register'> & {
  readonly words: Messages;
  /** Font family of names and letters. */
  readonly font?: string | undefined;
  /** The plate of the view, where it is one; without it the limb is shown that the plate is part of. */
  readonly plate?: StillPlate | undefined;
};

/** A picture with its size in px. */
export interface StillPicture {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

const SMALL = 160;
const LEAST = 24;
/** Below this width a glyph would be larger than the limb it stands on. */
const TINY = 40;
/** How much thinner the outlines of ridges are there. */
const FINE = 0.6;
/** Width from which all sites carry their full names, and the greatest height of a figure with names, in px. */
const NAMED = 760;
const TALLEST = 860;
/** Below this scale a figure unit is less than a third of a px. */
const COARSE = 0.34;
const LEGEND_GAP = 8;
/** Distance of points of a mark that a small picture does not tell apart, in px. */
const GRAIN = 2;
const FONT = 'system-ui, sans-serif';

function checked({ view = 'whole', width }: FigureLook, usual: number): { view: View; width: number } {
  if (!VIEWS.includes(view))
    throw new RangeError(`view: found "${String(view)}", expected ${VIEWS.join(', ')}`);
  if (width !== undefined && !(width >= LEAST && width <= 4096))
    throw new RangeError(`width: found ${String(width)}, expected a number from ${LEAST} to 4096`);
  return { view, width: width ?? usual };
}

function inkFor({ scheme = 'light', colours, lines }: FigureLook): Ink {
  return inkOf(scheme, colours, lines);
}

/** Beginning of the ids that pictures of a look share. */
function sharedPrefix(look: FigureLook, view: View, width: number): string {
  return `pm-${VIEWS.indexOf(view).toString(36)}${(look.scheme ?? 'light')[0]}${width}-`;
}

/** A short hash of a text (FNV-1a), for ids that differ from picture to picture and are the same every time. */
function hash(text: string): string {
  let value = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) value = Math.imul(value ^ text.charCodeAt(i), 0x01000193);
  return (value >>> 0).toString(36);
}

/** What a picture shows, in words: what the rule says, every site that is not as usual unless it has its name beside it, the skin. */
function described(
  examination: Examination,
  {
    sites,
    skin,
    digits,
    names,
    words,
    earlier,
  }: {
    sites: SiteViews;
    skin: readonly Mark[];
    /** What is recorded of fingers or toes. */
    digits: string | undefined;
    names: boolean;
    words: Messages;
    /** The record that the reading takes into account; the rule does not. */
    earlier: Examination | undefined;
  },
): string {
  const leads = ruleLeads(readExamination(examination, earlier).rule).map(words.rule.lead);
  const marked = skin.map((mark) => markName(mark, words));
  const tips = digits === undefined ? [] : [digits];
  if (names) return [...leads, ...marked, ...tips].join('\n');
  const loud = [...sites.values()].filter(({ weight }) => weight === 'loud').map(({ name }) => name);
  const total = PULSE_PLACES.length;
  const count = words.map.count(total - unstatedPlaces(examination).length, total, examination.scale);
  return [...leads, ...loud, ...marked, ...tips, count].join('\n');
}

/** What a picture is called: the map, the part of the body unless it is the whole, the date of the record. */
function called(view: View, { examinedAt }: Examination, { map }: Messages): string {
  return [map.name, view === 'whole' ? '' : map.views[view], map.when(examinedAt)].filter(Boolean).join(', ');
}

/** Within what the marks on the skin stay, in units of the drawing: the box of a plate, or the limb that stands alone. */
function skinClipOf({ plate }: Layout, limb: string | undefined): string | undefined {
  return plate ? `M0 0H${plate.size[0]}V${plate.size[1]}H0Z` : limb;
}

/** Marks on the skin, cut where the drawing ends, as on the map. */
function clippedSkin(text: string, clip: string | undefined, transform: string, id: string): string {
  if (!text || !clip) return text;
  const path = tag('clipPath', { id }, tag('path', { transform, d: clip }));
  return path + group({ 'clip-path': `url(#${id})` }, text);
}

/** The present picture of a record, whose words are given. */
export function stillPicture(examination: Examination, options: WordedOptions): StillPicture {
  const { words, names = false, earlier, shared = false, font = FONT } = options;
  const { view: asked, width } = checked(options, names ? NAMED : SMALL);
  const plate = options.plate?.view === asked ? options.plate : undefined;
  const body: BodyView = isPlateView(asked) ? aroundPlate(asked) : asked;
  const view = plate?.view ?? body;
  const tiny = width < TINY;
  const ink = inkFor(options);
  const sites = sitesIn(view, examination, names ? earlier : undefined, undefined, undefined, words);
  const labels = labelsOf(sites, words);
  const layout: Layout & { letterSize?: number } = names
    ? (plate?.layOut(width, TALLEST, labels) ?? layOutSites(body, width, TALLEST, sites, words))
    : (plate?.small(width) ?? smallLayout(body, width));
  const { scale, offsetX, offsetY } = layout;
  const drawn = drawnRecord(examination, earlier);
  const marks = marksIn(view, drawn.marks);
  const ridges = names ? placeRidges(marks, layout, earlier !== undefined) : smallRidges(marks, layout, tiny);
  const collaterals =
    plate || tiny ? [] : drawn.collaterals.filter(({ to }) => sites.has(`${to.side} ${to.site}`));
  const skin = (examination.marks ?? []).filter((mark: Mark) => showsMark(view, mark));
  const digits = stillDigits(layout, examination, words, names ? earlier : undefined);
  const shift = `translate(${tenth(offsetX)} ${tenth(offsetY)}) scale(${scale.toFixed(4)})`;
  const id = `pm-${hash(JSON.stringify([skin, view, width, options.scheme, names]))}`;
  const clip = plate ? undefined : clipOf(body);
  const how = {
    flow: drawn.flow,
    ink,
    px: 1 / scale,
    coarse: !names && scale < COARSE,
    shared: shared ? sharedPrefix(options, view, width) : undefined,
    bare: tiny,
  };
  const ground = plate?.ground({ ...how, id }) ?? groundText({ ...how, arms: showsArms(view) });
  const legend = names
    ? placedLegend(
        {
          layout,
          sites,
          ridges: ridges.filter(({ outline }) => outline !== ''),
          flow: drawn.flow.filter(({ piece }) => plate?.shows(piece) ?? true),
          collaterals,
          skin: new Set(skin.map(({ kind }) => kind)),
          digits: digits?.views,
          words,
        },
        examination.scale,
        LEGEND_GAP,
      )
    : { items: [], height: 0 };
  const height = Math.ceil(layout.height + legend.height);
  const ways = collaterals.map(({ d, to }) =>
    tag('path', { d }, `<title>${xmlText(words.map.collateral(to))}</title>`),
  );
  const title = options.title ?? called(view, examination, words);
  const text = tag(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      'font-family': font,
    },
    [
      `<title>${xmlText(title)}</title>`,
      `<desc>${xmlText(described(examination, { sites, skin, digits: digits?.said, names, words, earlier }))}</desc>`,
      names ? paperText(width, height, ink) : '',
      clip ? tag('clipPath', { id: `${id}-limb` }, tag('path', { d: clip })) : '',
      tag('g', { transform: shift, 'clip-path': clip && `url(#${id}-limb)` }, ground),
      tiny
        ? ''
        : clippedSkin(
            skinText(skin, layout, ink, words, (i) => `${id}-${i}`, names ? 0 : GRAIN),
            skinClipOf(layout, clip),
            shift,
            `${id}-skin`,
          ),
      leadersText(layout, ink),
      tiny ? '' : lettersText(layout.letters, ink, words, layout.letterSize),
      plate ? captionsText(layout, ink, words) : '',
      group({ transform: shift, ...painted(ink, [FIGURE_PAINT['.collateral']]) }, ways.join('')),
      tiny || !digits ? '' : digitsText(layout, digits, ink, names),
      lesionsText(ridges, ink, words, tiny ? FINE : 1),
      names ? labelsText(layout, sites, ink, words) : '',
      names
        ? sitesText(layout, sites, ink)
        : tiny
          ? tinySigns(layout, sites, ink)
          : smallGlyphs(layout, sites, ink),
      names ? numbersText(ridges, ink, words) : '',
      legendText(legend.items, ink, (i) => `${id}-legend-${i}`),
    ].join(''),
  );
  return { text, width, height };
}

/**
 * What still pictures of one look refer to when they are `shared`, as an SVG that shows nothing.
 * @param plate the plate of the view, where it is one
 */
export function stillBody(look: FigureLook, plate?: StillPlate): string {
  const { view: asked, width } = checked(look, SMALL);
  const body: BodyView = isPlateView(asked) ? aroundPlate(asked) : asked;
  const view = plate?.view ?? body;
  const { scale } = plate?.small(width) ?? smallLayout(body, width);
  const [prefix, ink] = [sharedPrefix(look, view, width), inkFor(look)];
  const defs = plate?.shared(prefix, ink, 1 / scale) ?? sharedGround(prefix, showsArms(view), ink, 1 / scale);
  return tag(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width: 0, height: 0, display: 'block', 'aria-hidden': 'true' },
    tag('defs', {}, defs),
  );
}
