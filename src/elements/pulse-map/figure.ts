import { nothing, svg, type SVGTemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { type ArteryId, isPulseSite, levelOf, type PlaceKey, placeKey } from '../../anatomy/index.js';
import {
  AXIS,
  BLOCK_BAR,
  blockLength,
  closedPath,
  courseOf,
  type Depth,
  type DrawnFlow,
  type Layout,
  type LesionMark,
  mirrored,
  NARROWING,
  openPath,
  OUTLINE,
  showsArms,
  type Point,
  type PlacedLabel,
  sampleAt,
  STRETCHES,
  stretchPath,
  TARGET_RADIUS,
} from '../../drawing/index.js';
import type { Messages } from '../../locale/index.js';
import { glyphParts } from '../shared/glyph.js';
import type { DrawingPoint } from './site-finder.js';
import type { SiteView } from './site-view.js';

const number = (value: number): number => Math.round(value * 10) / 10;

interface Silhouette {
  readonly body: string;
  readonly head: string;
  readonly rods: readonly { readonly d: string; readonly width: number }[];
  readonly hints: readonly string[];
  readonly knees: readonly string[];
  readonly heart: string;
}

/** The body as one shape: half contours and their mirror images, with or without arms. */
function silhouette(arms: boolean): Silhouette {
  const half: Point[] = [...OUTLINE.neck, ...(arms ? OUTLINE.arm : []), ...OUTLINE.trunkAndLeg];
  const whole = (points: readonly Point[]): Point[] => {
    const back = mirrored(points, AXIS).reverse();
    return [...points, ...back.filter(([x], i) => !(x === AXIS && (i === 0 || i === back.length - 1)))];
  };
  const both = (points: readonly Point[], path: (p: readonly Point[]) => string): string[] => [
    path(points),
    path(mirrored(points, AXIS)),
  ];
  const digits = [...(arms ? OUTLINE.fingers : []), ...OUTLINE.toes];
  return {
    body: closedPath(whole(half)),
    head: closedPath(whole(OUTLINE.head)),
    rods: digits.flatMap(([x1 = 0, y1 = 0, x2 = 0, y2 = 0, width = 0]) =>
      [
        [x1, x2],
        [2 * AXIS - x1, 2 * AXIS - x2],
      ].map(([a, b]) => ({ d: `M${a} ${y1}L${b} ${y2}`, width })),
    ),
    hints: OUTLINE.hints.flatMap((points) => both(points, openPath)),
    knees: both(OUTLINE.knee, closedPath),
    heart: closedPath(OUTLINE.heart),
  };
}

const SILHOUETTES = new Map<boolean, Silhouette>();

function shapesFor(arms: boolean): Silhouette {
  const shapes = SILHOUETTES.get(arms) ?? silhouette(arms);
  SILHOUETTES.set(arms, shapes);
  return shapes;
}

function bodyLayer({ body, head, rods, hints }: Silhouette): SVGTemplateResult {
  const { ear } = OUTLINE;
  const solid = (rim: number): SVGTemplateResult => svg`
    <path d=${body}></path><path d=${head}></path>
    ${[ear.x, 2 * AXIS - ear.x].map((x) => svg`<ellipse cx=${x} cy=${ear.y} rx=${ear.rx} ry=${ear.ry}></ellipse>`)}
    ${rods.map(({ d, width }) => svg`<path class="rod" d=${d} stroke-width=${width + rim}></path>`)}`;
  return svg`<g class="rim">${solid(3.6)}</g><g class="flesh">${solid(0)}</g>
    <g class="hints">${hints.map((d) => svg`<path d=${d}></path>`)}</g>`;
}

/** One stretch of artery with one tone and one flow. */
interface Ribbon {
  readonly key: string;
  readonly depth: Depth;
  readonly flow: DrawnFlow['flow'];
  readonly d: string;
}

const RIBBONS = new Map<string, string>();

function ribbon(stretch: (typeof STRETCHES)[number], from: number, to: number, width: number): string {
  const key = `${stretch.piece.key} ${from} ${to} ${width}`;
  let d = RIBBONS.get(key);
  if (d === undefined) {
    d = stretchPath(stretch.piece, from, to, width);
    RIBBONS.set(key, d);
  }
  return d;
}

const REDUCED_WIDTH = 0.5;

/** Whether an artery is drawn in the arm, and so goes with it where the arm is left out. */
function ofArm(artery: ArteryId): boolean {
  const level = levelOf(artery, 'leg');
  return level === 'axillo-brachial' || level === 'forearm-hand';
}

function ribbons(flow: readonly DrawnFlow[], arms: boolean): Ribbon[] {
  return STRETCHES.filter((stretch) => arms || !ofArm(stretch.piece.artery)).flatMap((stretch) =>
    flow
      .filter((part) => part.piece === stretch.piece)
      .flatMap((part): Ribbon[] => {
        const from = Math.max(part.from, stretch.from);
        const to = Math.min(part.to, stretch.to);
        if (to - from < 1e-6) return [];
        const d = ribbon(stretch, from, to, part.flow === 'reduced' ? REDUCED_WIDTH : 1);
        return [{ key: `${stretch.piece.key} ${from}`, depth: stretch.depth, flow: part.flow, d }];
      }),
  );
}

const LAYERS: readonly Depth[] = ['behind', 'deep', 'trunk', 'near'];

/** Arteries by depth, those behind first. Empty ones are outlines drawn as one layer, so that their pieces join. */
function arteryLayer(flow: readonly DrawnFlow[], shapes: Silhouette, arms: boolean): SVGTemplateResult {
  const all = ribbons(flow, arms);
  const hollow = all.filter((r) => r.flow === 'none');
  const open = (depth: Depth): SVGTemplateResult =>
    svg`<g class="artery ${depth}">${all
      .filter((r) => r.flow !== 'none' && r.depth === depth)
      .map((r) => svg`<path d=${r.d}></path>`)}</g>`;
  const [behind, ...rest] = LAYERS.map(open);
  const [deep, trunk, near] = rest;
  return svg`${behind}<g class="knees">${shapes.knees.map((d) => svg`<path d=${d}></path>`)}</g>${deep}${trunk}
    <path class="heart" d=${shapes.heart}></path>
    <g class="hollow-rim">${hollow.map((r) => svg`<path d=${r.d}></path>`)}</g>
    <g class="hollow">${hollow.map((r) => svg`<path d=${r.d}></path>`)}</g>${near}`;
}

function lesionLayer(marks: readonly LesionMark[], layout: Layout, words: Messages): SVGTemplateResult {
  return svg`<g class="lesions">${marks.map((mark) => {
    const length = blockLength(mark.strength);
    if (length === 0) return nothing;
    const p = sampleAt(courseOf(mark.piece), mark.at);
    const x = number(p.x * layout.scale + layout.offsetX);
    const y = number(p.y * layout.scale + layout.offsetY);
    const angle = number((Math.atan2(p.ny, p.nx) * 180) / Math.PI);
    const percent = mark.strength === undefined ? '' : `${Math.round(mark.strength * 100)}%`;
    return svg`<g transform="translate(${x} ${y})" data-lesion=${`${mark.piece.key} ${mark.kind}`}>
      <title>${words.map.lesionMark(mark.kind, words.anatomy.piece(mark.piece.key), percent)}</title>
      <g transform="rotate(${angle})">${
        mark.kind === 'block'
          ? svg`<rect class="gap" x=${-length / 2} y=${-BLOCK_BAR.gap / 2} width=${length} height=${BLOCK_BAR.gap} rx="3"></rect>
              <rect class="bar grow" x=${-length / 2} y=${-BLOCK_BAR.width / 2} width=${length} height=${BLOCK_BAR.width} rx="1"></rect>`
          : svg`<path class="gap wedges" transform="rotate(90)" d=${NARROWING}></path><path class="bar grow" transform="rotate(90)" d=${NARROWING}></path>`
      }</g>
      ${percent ? svg`<text class="percent" x=${mark.limb.startsWith('right') ? -20 : 20} y="5" text-anchor=${mark.limb.startsWith('right') ? 'end' : 'start'}>${percent}</text>` : nothing}
    </g>`;
  })}</g>`;
}

export interface FigureView {
  readonly layout: Layout;
  readonly flow: readonly DrawnFlow[];
  readonly marks: readonly LesionMark[];
  readonly sites: ReadonlyMap<PlaceKey, SiteView>;
  readonly active: PlaceKey;
  readonly open: PlaceKey | undefined;
  readonly preview: PlaceKey | undefined;
  /** From where to where a drag goes that may mirror; empty when none. */
  readonly dragged: readonly DrawingPoint[];
  readonly editable: boolean;
  readonly words: Messages;
}

function labelText(label: PlacedLabel, view: SiteView, layout: Layout, words: Messages): SVGTemplateResult {
  const { anatomy } = words;
  const name =
    layout.naming === 'codes' ? anatomy.codes[label.place.site] : words.map.siteShort(label.place.site);
  return svg`<g class="label ${view.weight}" data-place=${label.key} transform="translate(${number(label.x)} ${number(label.y)})">
    <text text-anchor=${label.anchor} dy="5">${name}</text>
    ${view.finding && layout.naming === 'names' ? svg`<text class="finding" text-anchor=${label.anchor} dy="21">${view.finding}</text>` : nothing}
  </g>`;
}

/** The drawing with its sites as buttons; one of them is the tab stop. */
export function renderFigure(view: FigureView): SVGTemplateResult {
  const { layout, words } = view;
  const arms = showsArms(layout.view);
  const shapes = shapesFor(arms);
  const shift = `translate(${number(layout.offsetX)} ${number(layout.offsetY)}) scale(${layout.scale.toFixed(4)})`;
  const leader = (points: readonly Point[]): string =>
    `M${points.map(([x, y]) => `${number(x)} ${number(y)}`).join('L')}`;
  return svg`<svg class="figure" part="figure" viewBox="0 0 ${layout.width} ${layout.height}" width=${layout.width} height=${layout.height}
      role="group" aria-label=${words.map.figure} data-view=${layout.view}>
    <g transform=${shift} aria-hidden="true">${bodyLayer(shapes)}${arteryLayer(view.flow, shapes, arms)}</g>
    <g class="leaders" aria-hidden="true">${layout.labels.map(
      (label) => svg`<path class=${label.key === view.open ? 'open' : ''} d=${leader(label.leader)}></path>`,
    )}</g>
    <g class="letters" aria-hidden="true">${layout.letters.map(
      ({ side, x, y }) =>
        svg`<text x=${number(x)} y=${y} text-anchor="middle">${words.anatomy.sideLetters[side]}</text>`,
    )}</g>
    ${lesionLayer(view.marks, layout, words)}
    <g aria-hidden="true">${layout.labels.map((label) => {
      const site = view.sites.get(label.key);
      return site ? labelText(label, site, layout, words) : nothing;
    })}</g>
    ${view.dragged.length ? svg`<path class="drag" d=${leader(view.dragged.map(({ x, y }): Point => [x, y]))}></path>` : nothing}
    ${repeat(
      layout.sites,
      (site) => placeKey(site.place),
      ({ place, x, y }) => {
        const key = placeKey(place);
        const site = view.sites.get(key);
        if (!site) return nothing;
        const state = key === view.open ? 'open' : key === view.preview ? 'preview' : '';
        return svg`<g class="site ${state} ${isPulseSite(place.site) ? 'pulse' : 'listen'}" part="site" role="button" data-place=${key}
            tabindex=${key === view.active ? 0 : -1} aria-label=${site.name} aria-expanded=${key === view.open ? 'true' : 'false'}
            aria-haspopup="dialog" aria-disabled=${view.editable ? nothing : 'true'} transform="translate(${number(x)} ${number(y)})">
          <circle class="target" data-anchor=${key} r=${TARGET_RADIUS}></circle>
          <circle class="ring" r="19"></circle>
          ${site.earlier ? svg`<g class="earlier ${site.changed ? 'changed' : ''}" transform="translate(-29 3) scale(.66)">${glyphParts(site.earlier, true)}</g>` : nothing}
          <g transform="translate(-12 -12)">${glyphParts(site.shown, true)}</g>
        </g>`;
      },
    )}
  </svg>`;
}
