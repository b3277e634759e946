import { type Place, placeKey } from '../../anatomy/index.js';
import { type Mark, MARK_FORMS, type MarkKind } from '../../examination/index.js';
import type { Messages } from '../../locale/index.js';
import { sentence } from '../../locale/phrases.js';
import { earlierSpots } from '../earlier-spots.js';
import type { LesionMark } from '../flow.js';
import type { Point } from '../geometry.js';
import { MARK_BOXES, MARKS, RIDGE_SIGN } from '../glyphs.js';
import { LABEL_TYPE, type Layout } from '../layout.js';
import { lesionTitle } from '../lesion-title.js';
import { FIGURE_PAINT, GLYPH_PAINT, GROUND_PAINT, type Paint } from '../paint.js';
import { CAPTION_PAINT } from '../plates/paint.js';
import type { PlacedRidges } from '../placed-ridges.js';
import type { MarkShape } from '../skin-marks.js';
import { SKIN_PAINT } from '../skin-paint.js';
import { isMarkBehind, markName, markSample, placedMark } from '../skin-view.js';
import type { SiteViews } from '../site-view.js';
import { digitGlyphText } from './digits.js';
import { glyphText } from './glyph.js';
import { type Ink, painted, type Painted } from './ink.js';
import { type LegendSign, type PlacedItem, SIGN } from './legend.js';
import { group, pathOf, tag, tenth, xmlText } from './xml.js';

const polyline = (points: readonly Point[]): string =>
  `M${points.map(([x, y]) => `${tenth(x)} ${tenth(y)}`).join('L')}`;

const titleOf = (text: string): string => text && `<title>${xmlText(text)}</title>`;

const ridgePaint = (ink: Ink, kind: LesionMark['kind']): Painted =>
  painted(ink, [FIGURE_PAINT[kind === 'block' ? '.lesions .ridge' : '.lesions .narrowing .ridge']]);
const feetPaint = (ink: Ink): Painted => painted(ink, [FIGURE_PAINT['.lesions .feet']]);

/** @param fine of the lines, how much thinner they are: those of a tiny ridge would fill it */
export function lesionsText(ridges: readonly PlacedRidges[], ink: Ink, words: Messages, fine = 1): string {
  const thin = { ...ink, lines: ink.lines * fine };
  return ridges
    .map(({ mark, outline, feet }) =>
      group(
        {},
        titleOf(lesionTitle(mark, words)) +
          pathOf(outline, ridgePaint(thin, mark.kind)) +
          pathOf(feet, feetPaint(ink)),
      ),
    )
    .join('');
}

/** The numbers of the lesions. */
export function numbersText(ridges: readonly PlacedRidges[], ink: Ink, { reading }: Messages): string {
  const texts = ridges.map(({ mark: { strength }, number: spot }) =>
    spot && strength !== undefined
      ? tag(
          'text',
          { x: tenth(spot.x), y: tenth(spot.y + 5), 'text-anchor': spot.anchor },
          xmlText(reading.percent(strength)),
        )
      : '',
  );
  return group(painted(ink, [FIGURE_PAINT['.percent']], 1, 1), texts.join(''));
}

export function leadersText({ labels }: Layout, ink: Ink): string {
  if (labels.length === 0) return '';
  return pathOf(
    labels.map(({ leader }) => polyline(leader)).join(''),
    painted(ink, [FIGURE_PAINT['.leaders path']]),
  );
}

/** Letters of the sides, in px. */
export function lettersText(
  letters: Layout['letters'],
  ink: Ink,
  { anatomy }: Messages,
  size?: number,
): string {
  return group(
    {
      ...painted(ink, [FIGURE_PAINT['.letters']]),
      ...(size && { 'font-size': size }),
      'text-anchor': 'middle',
    },
    letters
      .map(({ side, x, y }) => tag('text', { x: tenth(x), y: tenth(y) }, xmlText(anatomy.sideLetters[side])))
      .join(''),
  );
}

const labelPaint = (ink: Ink): Painted => painted(ink, [FIGURE_PAINT['.labels']], 1, 1);

/** Names of the sites, and below them what was found. */
export function labelsText(layout: Layout, sites: SiteViews, ink: Ink, words: Messages): string {
  const name = ({ site }: Place): string =>
    layout.naming === 'codes' ? words.anatomy.codes[site] : words.map.siteShort(site);
  const texts = layout.labels.flatMap((label) => {
    const { key, place, anchor } = label;
    const weight = sites.get(key)?.weight;
    const line = (
      said: string,
      { x, y }: { readonly x: number; readonly y: number },
      size?: number,
    ): string =>
      tag(
        'text',
        {
          x: tenth(x),
          y: tenth(y + 5),
          'text-anchor': anchor === 'start' ? undefined : anchor,
          'font-size': size,
          'font-weight': weight === 'loud' ? 600 : undefined,
          ...(weight === 'quiet' && painted(ink, [FIGURE_PAINT['.label.quiet']])),
        },
        xmlText(said),
      );
    const found = layout.findings.get(key)?.lines ?? [];
    return [line(name(place), label), ...found.map((one) => line(one.text, one, LABEL_TYPE.finding))];
  });
  return group(labelPaint(ink), texts.join(''));
}

/** Every site with its glyph, called as its button is on the map. */
export function sitesText(layout: Layout, sites: SiteViews, ink: Ink): string {
  const grow = layout.glyphScale > 1 ? ` scale(${layout.glyphScale.toFixed(2)})` : '';
  return layout.sites
    .map(({ place, x, y }) => {
      const site = sites.get(placeKey(place));
      if (!site) return '';
      const before = site.earlier
        ? tag(
            'g',
            {
              transform: earlierSpots(layout).get(placeKey(place)),
              opacity: site.changed ? undefined : 0.75,
            },
            glyphText(site.earlier, ink, true),
          )
        : '';
      return tag(
        'g',
        { transform: `translate(${tenth(x)} ${tenth(y)})${grow}` },
        titleOf(site.name) +
          before +
          tag('g', { transform: 'translate(-12 -12)' }, glyphText(site.shown, ink, true)),
      );
    })
    .join('');
}

/** The name of a plate, and what else is said on it, in px. */
export function captionsText({ captions = [], view }: Layout, ink: Ink, { map }: Messages): string {
  const text = (said: string, more: Parameters<typeof tag>[1], paint: Paint): string =>
    tag('text', { ...more, ...painted(ink, [paint], 1, 1) }, xmlText(said));
  return captions
    .map(({ word, x, y }) => {
      const at = { x: tenth(x), y: tenth(y) };
      return word === 'title'
        ? text(map.views[view], at, CAPTION_PAINT['.captions .title'])
        : text(map.plates.captions[word], { ...at, 'text-anchor': 'middle' }, CAPTION_PAINT['.captions']);
    })
    .join('');
}

const SKIN: Readonly<Record<string, Paint>> = SKIN_PAINT;

function skinPart(part: string, kind: MarkKind, ink: Ink): Painted {
  const base = [SKIN_PAINT['.skin path'], SKIN[`.skin .${part}`] ?? {}, SKIN[`.s-${kind} .${part}`] ?? {}];
  return painted(ink, base, 1, 1);
}

/** The paths of a mark; the texture of an area is clipped by its outline. */
function skinPaths(
  kind: MarkKind,
  { d, teeth, hatch }: MarkShape,
  ink: Ink,
  id: string,
  halo: boolean,
): string {
  const path = (part: string, data = d, more = {}): string => {
    const paint = skinPart(part, kind, ink);
    const seen = paint.stroke !== undefined || paint.fill !== 'none';
    return seen ? pathOf(data, { ...paint, ...more }) : '';
  };
  const under = halo ? path('halo') : '';
  if (MARK_FORMS[kind] !== 'area') return under + path('edge') + path('teeth', teeth);
  const texture = path('texture', hatch, { 'clip-path': `url(#${id})` });
  const clip = texture && tag('clipPath', { id }, pathOf(d));
  return clip + under + path('fill') + texture + path('edge');
}

/**
 * The marks on the skin, each named.
 * @param grain distance of points in px below which they are not told apart
 */
export function skinText(
  marks: readonly Mark[],
  layout: Layout,
  ink: Ink,
  words: Messages,
  id: (index: number) => string,
  grain = 0,
): string {
  return marks
    .map((mark, i) =>
      tag(
        'g',
        { opacity: isMarkBehind(layout.view, mark) ? 0.6 : undefined },
        titleOf(markName(mark, words)) +
          skinPaths(mark.kind, placedMark(mark, layout, grain), ink, id(i), true),
      ),
    )
    .join('');
}

function signText(sign: LegendSign, ink: Ink, id: string): string {
  switch (sign.of) {
    case 'glyph':
      return tag(
        'g',
        { transform: `scale(${tenth((SIGN / 24) * 100) / 100})` },
        glyphText(sign.shown, ink, false),
      );
    case 'mark': {
      const [x = 0, y = 0, width = 1, height = 1] = MARK_BOXES[sign.mark];
      const scale = SIGN / Math.max(width, height);
      const left = (SIGN - width * scale) / 2 - x * scale;
      const top = (SIGN - height * scale) / 2 - y * scale;
      return pathOf(MARKS[sign.mark], {
        ...painted(ink, [GLYPH_PAINT['.mark']]),
        transform: `translate(${tenth(left)} ${tenth(top)}) scale(${scale.toFixed(3)})`,
      });
    }
    case 'lesion':
      return pathOf(RIDGE_SIGN.outline, ridgePaint(ink, sign.kind)) + pathOf(RIDGE_SIGN.feet, feetPaint(ink));
    case 'hollow':
      return pathOf(sign.d, { ...painted(ink, [GROUND_PAINT['.hollow']]), 'paint-order': undefined });
    case 'collateral':
      return pathOf(sign.d, painted(ink, [FIGURE_PAINT['.collateral']]));
    case 'digit':
      return tag(
        'g',
        { transform: `scale(${tenth((SIGN / 24) * 100) / 100})` },
        digitGlyphText(sign.kind, ink, false),
      );
    case 'skin':
      return tag(
        'g',
        { transform: 'scale(.8)' },
        skinPaths(sign.kind, markSample(sign.kind), ink, id, false),
      );
  }
}

export function legendText(items: readonly PlacedItem[], ink: Ink, id: (index: number) => string): string {
  const entries = items.map(({ sign, text, x, y, lead }, i) =>
    tag(
      'g',
      { transform: `translate(${tenth(x)} ${tenth(y)})` },
      (sign ? signText(sign, ink, id(i)) : '') +
        tag('text', { x: lead, y: 15, ...labelPaint(ink) }, xmlText(sentence(text))),
    ),
  );
  return entries.join('');
}
