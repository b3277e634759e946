import { nothing, svg, type SVGTemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import { isPulseSite, type Place, placeFromKey, type PlaceKey, placeKey } from '../../../anatomy/index.js';
import {
  clipOf,
  type ArteryPaths,
  type Collateral,
  type DrawnFlow,
  groundParts,
  healthyArteries,
  isHealthy,
  isPlateView,
  type Landmarks,
  type Layout,
  lesionTitle,
  type PlacedLabel,
  type PlacedRidges,
  type Point,
  showsArms,
  type SiteView,
  TARGET_RADIUS,
} from '../../../drawing/index.js';
import type { MarkKind } from '../../../examination/index.js';
import type { Messages } from '../../../locale/index.js';
import type { ShownMessages } from '../../../locale/shown.js';
import { glyphParts } from '../../common/glyph.js';
import { styled } from '../../common/styled.js';
import type { DrawingPoint } from '../hand/site-finder.js';
import type { Digits } from '../plate/digits.js';
import { plateKit } from '../plate/fetched.js';

/** Body and arteries are drawn in tenths of a figure unit. */
const UNITS_PER_PX = 10;

const number = (value: number): number => Math.round(value * 10) / 10;

function polyline(points: readonly Point[]): string {
  return `M${points.map(([x, y]) => `${number(x)} ${number(y)}`).join('L')}`;
}

/** Body and arteries. */
function bodyLayer({ flow, layout, landmarks, arteries }: FigureView): SVGTemplateResult {
  const arms = showsArms(layout.view);
  const drawn = arteries && !isHealthy(flow) ? arteries(flow, arms) : healthyArteries(arms);
  return svg`<g transform="scale(.1)">${groundParts(drawn, arms, landmarks?.landmarksOf(arms)).map(
    ({ name, d }) => {
      const part = name === 'body' ? 'body' : name.startsWith('artery') ? 'artery' : nothing;
      return svg`<path class=${name} part=${part} d=${d}></path>`;
    },
  )}</g>`;
}

/** The landmarks by which the open site is found, drawn to stand out. */
function helpLayer({ layout, open, landmarks }: FigureView): SVGTemplateResult | typeof nothing {
  const place = open && placeFromKey(open);
  const d =
    place &&
    (layout.plate
      ? plateKit.part?.helpPath(layout.plate, place)
      : landmarks?.landmarksFor(place.site, place.side));
  return d ? svg`<path class="helps" transform="scale(.1)" d=${d}></path>` : nothing;
}

function groundLayer(view: FigureView): SVGTemplateResult {
  const { plate } = view.layout;
  return plate && plateKit.part ? plateKit.part.renderPlate(plate, view.flow, view.layout) : bodyLayer(view);
}

/** The stretches on which lesions lie, as ridges beside the arteries. */
function lesions(ridges: readonly PlacedRidges[], words: Messages | undefined): SVGTemplateResult[] {
  return ridges.map(
    ({ mark, outline, feet }) =>
      svg`<g class=${mark.kind} data-lesion=${`${mark.limb} ${mark.kind}`}><title>${words && lesionTitle(mark, words)}</title><path class="ridge" d=${outline}></path><path class="feet" d=${feet}></path></g>`,
  );
}

/** Their numbers, over everything else: one for each stretch. */
function numbers(ridges: readonly PlacedRidges[], words: Messages | undefined): unknown[] {
  return ridges.map(({ mark: { strength, limb }, number: spot }) =>
    words && spot && strength !== undefined
      ? svg`<text class="percent" data-limb=${limb} x=${number(spot.x)} y=${number(spot.y + 5)} text-anchor=${spot.anchor}>${words.reading.percent(strength)}</text>`
      : nothing,
  );
}

/** Draws the marks on the skin. */
export interface FigureSkin {
  /** The marks, over the body and under the sites. */
  layer(layout: Layout): SVGTemplateResult | typeof nothing;
  /** Their kinds, for a legend. */
  kinds(): ReadonlySet<MarkKind>;
}

export interface FigureView {
  readonly layout: Layout;
  /** How many times larger than laid out it is shown. */
  readonly enlarged: number;
  /** Empty until it has been worked out: every artery is drawn as in health. */
  readonly flow: readonly DrawnFlow[];
  /** Draws arteries that are not as in health; missing until it has been fetched. */
  readonly arteries: ((flow: readonly DrawnFlow[], arms: boolean) => ArteryPaths) | undefined;
  /** Where the signs of a compared record stand; missing until it has been fetched, and so are they. */
  readonly earlierSpots?: ((layout: Layout) => ReadonlyMap<PlaceKey, string>) | undefined;
  /** Stretches on which lesions lie, as far as they belong to the view. */
  readonly ridges: readonly PlacedRidges[];
  /** Collaterals implied by the record. */
  readonly collaterals: readonly Collateral[];
  readonly sites: ReadonlyMap<PlaceKey, SiteView>;
  readonly active: PlaceKey;
  readonly open: PlaceKey | undefined;
  readonly preview: PlaceKey | undefined;
  /** Start and end of a drag that may mirror a finding; empty when there is none. */
  readonly drag: readonly DrawingPoint[];
  readonly editable: boolean;
  /** Disabled: no site can be focused. */
  readonly barred: boolean;
  readonly skin: FigureSkin;
  /** Draws fingers and toes on their plates; missing until what draws plates has been fetched. */
  readonly digits: Pick<Digits, 'layer' | 'seen'> | undefined;
  /** Draws the landmarks; missing until the later chunk has been fetched. */
  readonly landmarks:
    | {
        landmarksOf(arms: boolean): Landmarks;
        landmarksFor(site: Place['site'], side: Place['side']): string;
      }
    | undefined;
  readonly words: ShownMessages;
  /** Those of readings, too; missing until they have been fetched, and so is what they are for. */
  readonly allWords: Messages | undefined;
}

/** Site names, and below them the finding where the glyph alone does not show it. */
function labels({ layout, sites, words }: FigureView): SVGTemplateResult[] {
  const codes = layout.naming === 'codes';
  const text = (
    { key, anchor }: PlacedLabel,
    { x, y }: { readonly x: number; readonly y: number },
    said: string,
    kind: string,
  ): SVGTemplateResult =>
    svg`<text class="label ${sites.get(key)?.weight ?? ''}${kind}" data-place=${key} text-anchor=${anchor} x=${number(x)} y=${number(y + 5)} .textContent=${said}></text>`;
  const name = ({ site }: Place): string => (codes ? words.anatomy.codes[site] : words.map.siteShort(site));
  return [
    ...layout.labels.map((label) => text(label, label, name(label.place), '')),
    ...layout.labels.flatMap(
      (label) =>
        layout.findings.get(label.key)?.lines.map((line) => text(label, line, line.text, ' finding')) ?? [],
    ),
  ];
}

function glyphs(
  { place, shown, earlier, changed }: SiteView,
  { layout, earlierSpots }: FigureView,
): SVGTemplateResult {
  const now = glyphParts(shown, true, 'translate(-12 -12)');
  if (!earlier || !earlierSpots) return now;
  return svg`<g class="earlier ${changed ? 'changed' : ''}" transform=${earlierSpots(layout).get(placeKey(place)) ?? nothing}>${glyphParts(earlier, true)}</g>${now}`;
}

/** Lines from the sites to their labels: the open site's, which is emphasised, or all others. */
function leaders({ layout, open }: FigureView, ofOpen: boolean): string {
  return layout.labels
    .filter(({ key }) => (key === open) === ofOpen)
    .map(({ leader }) => polyline(leader))
    .join('');
}

/** What a plate shows, and its sides. */
function captionLayer({ layout: { captions = [], view }, words: { map } }: FigureView): SVGTemplateResult {
  return svg`<g class="captions" aria-hidden="true">${captions.map(({ word, x, y }) =>
    word === 'title'
      ? svg`<text class="title" x=${number(x)} y=${number(y)}>${map.views[view]}</text>`
      : svg`<text x=${number(x)} y=${number(y)} text-anchor="middle">${map.plates.captions[word]}</text>`,
  )}</g>`;
}

function letters({ layout, words }: FigureView): SVGTemplateResult[] {
  return layout.letters.map(
    ({ side, x, y }) =>
      svg`<text x=${number(x)} y=${y} text-anchor="middle">${words.anatomy.sideLetters[side]}</text>`,
  );
}

/** The drawing with its sites as buttons; one of them is the tab stop. */
export function renderFigure(view: FigureView): SVGTemplateResult {
  const { layout, ridges, words, allWords } = view;
  const shift = `translate(${number(layout.offsetX)} ${number(layout.offsetY)}) scale(${layout.scale.toFixed(4)})`;
  const clip = isPlateView(layout.view) ? undefined : clipOf(layout.view);
  // The drawing may be in the document twice, in another size for print; ids are private to the shadow tree.
  const clipId = clip && `limb-${layout.view}-${layout.width}-${layout.height}`;
  const grow = layout.glyphScale > 1 ? ` scale(${layout.glyphScale.toFixed(2)})` : '';
  return svg`<svg class="figure" part="figure" viewBox="0 0 ${layout.width} ${layout.height}" width=${layout.width} height=${layout.height}
      ${styled({ '--_px': (UNITS_PER_PX / layout.scale).toFixed(2) })} role="group" aria-label=${layout.plate ? words.map.views[layout.view] : words.map.figure} data-view=${layout.view}>
    ${clip ? svg`<clipPath id=${clipId}><path d=${clip}></path></clipPath>` : nothing}
    <g class="ground" transform=${shift} clip-path=${clipId ? `url(#${clipId})` : nothing} aria-hidden="true">${guard([view.flow, layout, view.landmarks], () => groundLayer(view))}${guard([layout, view.open, view.landmarks], () => helpLayer(view))}</g>
    ${view.skin.layer(layout)}
    <g class="leaders" part="leaders" aria-hidden="true"><path d=${guard([layout, view.open], () => leaders(view, false))}></path><path class="open" d=${guard([layout, view.open], () => leaders(view, true))}></path></g>
    <g class="letters" part="letters" aria-hidden="true">${guard([layout, words], () => letters(view))}</g>
    ${layout.captions ? guard([layout, words], () => captionLayer(view)) : nothing}
    <g class="collaterals" part="collaterals" transform=${shift}>${view.collaterals.map(
      ({ d, to }) => svg`<path class="collateral" d=${d}><title>${words.map.collateral(to)}</title></path>`,
    )}</g>
    <g class="lesions" part="blocks">${guard([ridges, allWords], () => lesions(ridges, allWords))}</g>
    <g class="labels" part="labels" aria-hidden="true">${guard([layout, view.sites, words], () => labels(view))}</g>
    ${view.digits?.layer(layout, view) ?? nothing}
    ${view.drag.length ? svg`<path class="drag" d=${polyline(view.drag.map(({ x, y }): Point => [x, y]))}></path>` : nothing}
    ${repeat(
      layout.sites,
      (site) => placeKey(site.place),
      ({ place, x, y }) => {
        const key = placeKey(place);
        const site = view.sites.get(key);
        if (!site) return nothing;
        const state = key === view.open ? 'open' : key === view.preview ? 'preview' : '';
        return svg`<g class="site ${state} ${isPulseSite(place.site) ? 'pulse' : 'listen'}" part="site" role="button" data-place=${key}
            tabindex=${view.barred ? nothing : key === view.active ? 0 : -1} aria-label=${site.name} aria-expanded=${key === view.open ? 'true' : 'false'}
            aria-haspopup="dialog" aria-disabled=${view.editable ? nothing : 'true'} transform="translate(${number(x)} ${number(y)})${grow}">
          <circle class="target" data-anchor=${key} r=${TARGET_RADIUS}></circle>
          <circle class="ring" r="19"></circle>
          ${glyphs(site, view)}
        </g>`;
      },
    )}
    <g class="numbers" aria-hidden="true">${guard([ridges, allWords], () => numbers(ridges, allWords))}</g>
  </svg>`;
}
