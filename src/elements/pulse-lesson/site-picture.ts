import { html, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { type Place, PLACES, placeKey, type Side } from '../../anatomy/index.js';
import {
  type Crop,
  cropOf,
  drawnRecord,
  arteryPaths,
  groundParts,
  landmarksFor,
  landmarksOf,
  type PlateView,
  positionOf,
  shownFor,
  SITES_ON,
} from '../../drawing/index.js';
import { bruitAt, type Examination, pulseAt } from '../../examination/index.js';
import { isListeningSite, isPulseSite } from '../../anatomy/index.js';
import type { LessonAct, Lesson } from '../../lesson/index.js';
import type { Messages } from '../../locale/index.js';
import { glyphParts } from '../common/glyph.js';
import { styled } from '../common/styled.js';
import { plateFor, plateKit } from '../pulse-map/plate/fetched.js';

/** Width and height of the picture on the slide, in units of the slide. */
const PICTURE = { width: 860, height: 640 } as const;
/** Figure units across which a site is shown enlarged. */
const CLOSE = 400;
/** Sizes on the slide, in its units; 30 is well read from the last row. */
const LABEL = 30;
const RING = 46;
/** The letters of the sides. A low picture is set lower still beside a long list, by two thirds, and they stay readable. */
const LETTER = { high: 36, low: 46 } as const;
const GLYPH = 2.4;

/** The plate on which a site is drawn larger, where there is one. */
export function plateViewOf({ site, side }: Place): PlateView | undefined {
  if (side === 'midline' || site === 'adductor-canal') return undefined;
  const name = (['hand', 'foot', 'knee'] as const).find((one) => SITES_ON[one].includes(site));
  return name && `${side as Side}-${name}`;
}

export interface PictureView {
  readonly act: LessonAct | undefined;
  readonly lesson: Lesson;
  /** Only what was revealed. */
  readonly record: Examination;
  readonly messages: Messages;
  /** In slide units, where it is another than usual: lower where a list needs room below. */
  readonly height?: number;
}

interface Frame {
  readonly box: Crop;
  /** Slide units of one unit of the drawing. */
  readonly scale: number;
  readonly at: (place: Place) => { readonly x: number; readonly y: number } | undefined;
  readonly ground: SVGTemplateResult;
}

/** A box around a point with the shape of the picture. */
function around(x: number, y: number, width: number, tall: number = PICTURE.height): Crop {
  const height = (width * tall) / PICTURE.width;
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** A crop grown to the shape of the picture. */
function fitted({ x, y, width, height }: Crop, tall: number): Crop {
  const wide = Math.max(width, (height * PICTURE.width) / tall);
  return around(x + width / 2, y + height / 2, wide, tall);
}

function figureFrame(box: Crop, arms: boolean, record: Examination, target: Place | undefined): Frame {
  const { flow } = drawnRecord(record);
  const parts = groundParts(arteryPaths(flow, arms), arms, landmarksOf(arms));
  const helps = target && landmarksFor(target.site, target.side);
  return {
    box,
    scale: PICTURE.width / box.width,
    at: positionOf,
    ground: svg`<g transform="scale(.1)">${parts.map(({ name, d }) => svg`<path class=${name} d=${d}></path>`)}${
      helps ? svg`<path class="helps" d=${helps}></path>` : nothing
    }</g>`,
  };
}

function plateFrame(view: PlateView, record: Examination, target: Place): Frame | undefined {
  const plate = plateFor(view);
  const kit = plateKit.part;
  if (!plate || !kit) return undefined;
  const [width, height] = plate.size;
  const found = plate.positionOf(target) ?? [width / 2, height / 2];
  const wide = Math.min(width * 1.05, (height * 1.02 * PICTURE.width) / PICTURE.height) * 0.82;
  const box = around(found[0], found[1], wide);
  const layout = { view, width, height } as Parameters<typeof kit.renderPlate>[2];
  return {
    box,
    scale: PICTURE.width / box.width,
    at: (place) => {
      const at = plate.positionOf(place);
      return at && { x: at[0], y: at[1] };
    },
    ground: kit.renderPlate(plate, drawnRecord(record).flow, layout),
  };
}

/** The places that an act is about. */
export function targetsOf(act: LessonAct | undefined): readonly Place[] {
  if (act?.kind === 'pulse') return [act.place];
  return act?.kind === 'listen' ? PLACES.filter(({ site }) => site === act.site) : [];
}

function frameOf({ act, lesson, record, height = PICTURE.height }: PictureView): Frame {
  const targets = targetsOf(act);
  const [first] = targets;
  const armsOnly = !lesson.limbs.includes('leg');
  if (act?.kind === 'pulse' && first) {
    const view = plateViewOf(first);
    const plate = view && plateFrame(view, record, first);
    if (plate) return plate;
  }
  if (first) {
    const arms = isUpper(first);
    const points = targets.map(positionOf);
    const x = points.reduce((sum, point) => sum + point.x, 0) / points.length;
    const y = points.reduce((sum, point) => sum + point.y, 0) / points.length;
    const apart = Math.max(...points.map((point) => Math.abs(point.x - x)));
    return figureFrame(
      around(x, y, Math.max(CLOSE, 2 * apart + 240)),
      arms,
      record,
      act?.kind === 'pulse' ? first : undefined,
    );
  }
  if (lesson.limbs.length === 3) return figureFrame(fitted(cropOf('whole'), height), true, record, undefined);
  return figureFrame(fitted(cropOf(armsOnly ? 'arms' : 'legs'), height), armsOnly, record, undefined);
}

/** Sites above the diaphragm are drawn with the arms. */
function isUpper({ site }: Place): boolean {
  const { y } = positionOf({ site, side: 'right' } as Place);
  return !['abdominal-aorta', 'renal', 'iliac', 'femoral'].includes(site) && y < cropOf('arms').height;
}

const inside = ({ x, y, width, height }: Crop, at: { x: number; y: number }): boolean =>
  at.x > x && at.x < x + width && at.y > y && at.y < y + height;

/** Three fingertips beside each other along the artery, as they are laid on. */
function fingers(x: number, y: number, unit: number): SVGTemplateResult {
  return svg`<g class="fingers" transform="translate(${x} ${y}) scale(${unit})">${[-40, 0, 40].map(
    (dy) =>
      svg`<path d=${`M-22 ${dy}a17 17 0 0 1 0-34h0a17 17 0 0 1 0 34z`} transform="translate(118 17)"></path><path class="finger" d=${`M96 ${dy - 17}H230V${dy + 17}H96A17 17 0 0 1 96 ${dy - 17}Z`}></path>`,
  )}</g>`;
}

/** The plate or figure with the site enlarged and ringed, and what was revealed there. */
export function renderPicture(view: PictureView): TemplateResult {
  const { act, record, messages } = view;
  const frame = frameOf(view);
  const { box, scale } = frame;
  const unit = 1 / scale;
  const targets = targetsOf(act);
  const isTarget = (place: Place): boolean => targets.some((one) => placeKey(one) === placeKey(place));
  const known = PLACES.flatMap((place) => {
    const at = frame.at(place);
    if (!at || !inside(box, at)) return [];
    const pulse = isPulseSite(place.site) ? pulseAt(record, place) : undefined;
    const bruit = isListeningSite(place.site) ? bruitAt(record, place) : undefined;
    if (!pulse && !bruit && !isTarget(place)) return [];
    const shown = shownFor(pulse, bruit, record.scale, !isPulseSite(place.site));
    return [{ place, at, shown, target: isTarget(place), found: Boolean(pulse ?? bruit) }];
  });
  const size = unit * (targets.length ? GLYPH : 1.3);
  const name = targets[0] ? messages.map.siteTitle(targets[0]) : messages.map.figure;
  const letter = (view.height ?? PICTURE.height) < PICTURE.height ? LETTER.low : LETTER.high;
  const letterY = box.y + (letter + 8) * unit;
  const letters =
    act?.kind === 'pulse' && act.place.side !== 'midline' && plateViewOf(act.place)
      ? [{ side: act.place.side as Side, x: box.x + 28 * unit }]
      : [
          { side: 'right' as const, x: box.x + 28 * unit },
          { side: 'left' as const, x: box.x + box.width - 50 * unit },
        ];
  return html`<svg
    class="picture"
    viewBox=${[box.x, box.y, box.width, box.height].map((n) => n.toFixed(1)).join(' ')}
    role="img"
    aria-label=${name}
    ${styled({ '--_tall': String(view.height ?? PICTURE.height), '--_px': (10 * unit * 1.4).toFixed(3), '--_halo': 'var(--_body)' })}
  >
    <g class="ground">${frame.ground}</g>
    ${letters.map(({ side, x }) => svg`<text class="letter" x=${x} y=${letterY} font-size=${letter * unit}>${messages.anatomy.sideLetters[side]}</text>`)}
    ${known.map(
      ({ place, at, shown, target, found }) => svg`<g data-hear=${target ? placeKey(place) : nothing}>
      ${target ? svg`<circle class="ring" cx=${at.x} cy=${at.y} r=${RING * unit} stroke-width=${5 * unit}></circle>` : nothing}
      ${found ? svg`<g transform="translate(${at.x} ${at.y}) scale(${size}) translate(-12 -12)">${glyphParts(shown, true)}</g>` : nothing}
      ${target && act?.kind === 'pulse' && !found ? fingers(at.x, at.y, unit) : nothing}
      ${target ? svg`<text class="name" x=${at.x} y=${at.y - (RING + 16) * unit} text-anchor="middle" font-size=${LABEL * unit} stroke-width=${8 * unit}>${messages.map.siteShort(place.site)}</text>` : nothing}
    </g>`,
    )}
  </svg>`;
}
