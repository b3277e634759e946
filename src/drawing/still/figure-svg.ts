import { PULSE_PLACES } from '../../anatomy/index.js';
import { type Examination, type Mark, unstatedPlaces } from '../../examination/index.js';
import { type Messages, messagesFor, type Register } from '../../locale/index.js';
import { readByRule } from '../../localisation/index.js';
import { ruleLeads } from '../../statements/index.js';
import { drawnRecord } from '../drawn-record.js';
import type { Layout } from '../layout.js';
import { FIGURE_PAINT } from '../paint.js';
import type { Token } from '../palette.js';
import { placeRidges, smallRidges } from '../placed-ridges.js';
import { labelsOf, layOutSites, type SiteViews, sitesIn } from '../site-view.js';
import { showsMark } from '../skin-view.js';
import { isPlateView } from '../plates/plate.js';
import { aroundPlate, type BodyView, clipOf, marksIn, showsArms, type View, VIEWS } from '../views.js';
import { groundText, sharedGround } from './ground.js';
import { type Ink, inkOf, painted, type Scheme } from './ink.js';
import { placedLegend } from './legend.js';
import {
  labelsText,
  leadersText,
  legendText,
  lesionsText,
  lettersText,
  numbersText,
  sitesText,
  skinText,
} from './parts.js';
import { paperText, smallGlyphs, smallLayout } from './small.js';
import { group, tag, tenth, xmlText } from './xml.js';

/** How still pictures look that lie on one page. */
export interface FigureLook {
  /** The part of the body; `whole` unless told otherwise. A plate is shown as the limb that it is part of. */
  readonly view?: View;
  /** Width in px, 40 to 4096; 160 unless told otherwise, with names 760. */
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
};

/** A picture with its size in px. */
export interface StillPicture {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

const SMALL = 160;
/** Width from which all sites carry their full names, and the greatest height of a figure with names, in px. */
const NAMED = 760;
const TALLEST = 860;
/** Below this scale a figure unit is less than a third of a px. */
const COARSE = 0.34;
const LEGEND_GAP = 8;
export const FONT = 'system-ui, sans-serif';

/** A plate is shown as the limb that it is part of. */
function checked({ view = 'whole', width }: FigureLook, usual: number): { view: BodyView; width: number } {
  if (!VIEWS.includes(view))
    throw new RangeError(`view: found "${String(view)}", expected ${VIEWS.join(', ')}`);
  if (width !== undefined && !(width >= 40 && width <= 4096))
    throw new RangeError(`width: found ${String(width)}, expected a number from 40 to 4096`);
  return { view: isPlateView(view) ? aroundPlate(view) : view, width: width ?? usual };
}

function inkFor({ scheme = 'light', colours, lines }: FigureLook): Ink {
  return inkOf(scheme, colours, lines);
}

/** Beginning of the ids that pictures of a look share. */
function sharedPrefix(look: FigureLook, view: BodyView): string {
  return `pm-${showsArms(view) ? 'w' : 'l'}${(look.scheme ?? 'light')[0]}-`;
}

/** A short hash of a text (FNV-1a), for ids that differ from picture to picture and are the same every time. */
function hash(text: string): string {
  let value = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) value = Math.imul(value ^ text.charCodeAt(i), 0x01000193);
  return (value >>> 0).toString(36);
}

/** What was found, in words: what the rule says of it, with a picture that has no names every site that is not as usual. */
function described(examination: Examination, sites: SiteViews, names: boolean, words: Messages): string {
  const leads = ruleLeads(readByRule(examination)).map(words.rule.lead);
  if (names) return leads.join('\n');
  const loud = [...sites.values()].filter(({ weight }) => weight === 'loud').map(({ name }) => name);
  const total = PULSE_PLACES.length;
  const count = words.map.count(total - unstatedPlaces(examination).length, total, examination.scale);
  return [...leads, ...loud, count].join('\n');
}

/** The present picture of a record, whose words are given. */
export function stillPicture(examination: Examination, options: WordedOptions): StillPicture {
  const { words, names = false, earlier, shared = false, font = FONT } = options;
  const { view, width } = checked(options, names ? NAMED : SMALL);
  const ink = inkFor(options);
  const sites = sitesIn(view, examination, names ? earlier : undefined, undefined, undefined, words);
  const layout: Layout & { letterSize?: number } = names
    ? layOutSites(view, width, TALLEST, sites, words)
    : smallLayout(view, width);
  const { scale, offsetX, offsetY } = layout;
  const drawn = drawnRecord(examination, earlier);
  const marks = marksIn(view, drawn.marks);
  const ridges = names ? placeRidges(marks, layout, labelsOf(sites, words)) : smallRidges(marks, layout);
  const collaterals = drawn.collaterals.filter(({ to }) => sites.has(`${to.side} ${to.site}`));
  const skin = (examination.marks ?? []).filter((mark: Mark) => showsMark(view, mark));
  const shift = `translate(${tenth(offsetX)} ${tenth(offsetY)}) scale(${scale.toFixed(4)})`;
  const id = `pm-${hash(JSON.stringify([skin, view, width, options.scheme, names]))}`;
  const clip = clipOf(view);
  const ground = groundText({
    flow: drawn.flow,
    arms: showsArms(view),
    ink,
    px: 1 / scale,
    coarse: !names && scale < COARSE,
    shared: shared ? sharedPrefix(options, view) : undefined,
  });
  const legend = names
    ? placedLegend(
        {
          layout,
          sites,
          ridges,
          flow: drawn.flow,
          collaterals,
          skin: new Set(skin.map(({ kind }) => kind)),
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
  const title =
    options.title ?? [words.map.name, words.map.when(examination.examinedAt)].filter(Boolean).join(', ');
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
      `<desc>${xmlText(described(examination, sites, names, words))}</desc>`,
      names ? paperText(width, height, ink) : '',
      clip ? tag('clipPath', { id: `${id}-limb` }, tag('path', { d: clip })) : '',
      tag('g', { transform: shift, 'clip-path': clip && `url(#${id}-limb)` }, ground),
      skinText(skin, layout, ink, words, (i) => `${id}-${i}`),
      leadersText(layout, ink),
      lettersText(layout.letters, ink, words, layout.letterSize),
      group({ transform: shift, ...painted(ink, [FIGURE_PAINT['.collateral']]) }, ways.join('')),
      lesionsText(ridges, ink, words),
      names ? labelsText(layout, sites, ink, words) : '',
      names ? sitesText(layout, sites, ink) : smallGlyphs(layout, sites, ink),
      names ? numbersText(ridges, ink, words) : '',
      legendText(legend.items, ink, (i) => `${id}-legend-${i}`),
    ].join(''),
  );
  return { text, width, height };
}

/**
 * The present picture of a record as a small SVG document: body, arteries, what was found, likely blocks, with title and description in
 * words. For lists, timelines, print, letters and mail; needs no page and no style sheet.
 *
 * Many pictures on one page can share body and healthy arteries: place `figureBody(look)` on it once, and ask for each with
 * `{ ...look, shared: true }`. Ids are those of the content, so equal pictures have equal ids and others differ.
 * @param examination a record that was read
 * @returns SVG in XML; characters that XML cannot hold, in a note say, become U+FFFD
 * @throws RangeError for a view or width that is none
 */
export function figureSVG(examination: Examination, options: FigureOptions = {}): string {
  const { language = 'en', register, ...rest } = options;
  return stillPicture(examination, { ...rest, words: messagesFor(language, register) }).text;
}

/**
 * What still pictures of one look refer to when they are `shared`: an SVG that shows nothing, to be placed once, in the same document or
 * shadow tree.
 * @throws RangeError for a view or width that is none
 */
export function figureBody(look: FigureLook = {}): string {
  const { view, width } = checked(look, SMALL);
  const { scale } = smallLayout(view, width);
  const defs = sharedGround(sharedPrefix(look, view), showsArms(view), inkFor(look), 1 / scale);
  return tag(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width: 0, height: 0, display: 'block', 'aria-hidden': 'true' },
    defs,
  );
}
