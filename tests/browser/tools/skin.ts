// The skin of the figure under a hand: points are given in units of the figure, whatever its size on the screen.
import type { PulseMap } from 'pulse-map/elements/pulse-map';
// Fetched beforehand, so that no test waits for the chunk that a map fetches after its first paint.
import '../../../src/elements/pulse-map/later.js';
import { regionShape, type SkinRegionId } from '../../../src/anatomy/index.js';
import {
  addMark,
  emptyExamination,
  type Examination,
  type Mark,
  MARK_FORMS,
  type MarkKind,
  skinMarks,
} from '../../../src/examination/index.js';
import { click, drag, type Point, type PointerKind } from '../../tools/real-input.js';
import { settled } from './map.js';
import { allByRole, byRole, readableText } from './perceive.js';

export function figureOf(map: PulseMap): SVGSVGElement {
  return map.shadowRoot?.querySelector('.figure') as SVGSVGElement;
}

/** Points of the figure as points of the window; the figure is brought into view first. */
export function onScreen(map: PulseMap, points: readonly Point[]): Point[] {
  const drawn = figureOf(map).querySelector('g') as SVGGElement;
  const at = (): Point[] => {
    const matrix = drawn.getScreenCTM() as DOMMatrix;
    return points.map(([x, y]) => {
      const p = new DOMPoint(x, y).matrixTransform(matrix);
      return [p.x, p.y];
    });
  };
  const ys = at().map(([, y]) => y);
  if (Math.min(...ys) < 0 || Math.max(...ys) > window.innerHeight)
    window.scrollBy({
      top: (Math.min(...ys) + Math.max(...ys) - window.innerHeight) / 2,
      behavior: 'instant',
    });
  return at();
}

/** A round stroke, nearly closed. */
export function round(cx: number, cy: number, r: number, corners = 14): Point[] {
  return Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
  });
}

export async function startDrawing(map: PulseMap, kind?: string): Promise<void> {
  await click(byRole(map, 'button', 'Draw on the skin'));
  await settled(map);
  if (kind) await pick(map, kind);
}

export async function pick(map: PulseMap, name: string): Promise<void> {
  await click(byRole(map, 'button', name));
  await settled(map);
}

export async function drawStroke(
  map: PulseMap,
  points: readonly Point[],
  kind: PointerKind = 'mouse',
): Promise<void> {
  await drag(onScreen(map, points), { kind });
  await settled(map);
}

export async function tapSkin(map: PulseMap, point: Point, kind: PointerKind = 'mouse'): Promise<void> {
  const [at] = onScreen(map, [point]);
  await click(at as Point, { kind });
  await settled(map);
}

export function marksIn(map: PulseMap): readonly Mark[] {
  return skinMarks(map.examination);
}

/** What the list under the figure says of each mark. */
export function listed(map: PulseMap): string[] {
  return [...(map.shadowRoot?.querySelectorAll('.marks li > span') ?? [])].map((row) => readableText(row));
}

/** The marks drawn on the figure now, by kind. */
export function drawnMarks(map: PulseMap): string[] {
  return [...figureOf(map).querySelectorAll<SVGGElement>('[part~=mark]')].map((mark) =>
    [...mark.classList].join(' ').replace(/^skin s-/, ''),
  );
}

/** The marks as buttons on the figure, which they are while one draws. */
export function markButton(map: PulseMap, name: string | RegExp): SVGGElement {
  return allByRole<SVGGElement>(map, 'button', name).find((button) =>
    button.matches('[part~=mark]'),
  ) as SVGGElement;
}

/** A made-up event of a pointer, for what no test browser can do with its own: eraser ends, palms, cancelled strokes. */
export function fake(map: PulseMap, type: string, point: Point, more: PointerEventInit = {}): PointerEvent {
  const [[clientX, clientY]] = onScreen(map, [point]) as [Point];
  const event = new PointerEvent(type, {
    bubbles: true,
    composed: true,
    cancelable: true,
    pointerId: 50,
    pointerType: 'pen',
    button: type === 'pointermove' ? -1 : 0,
    buttons: type === 'pointerup' ? 0 : 1,
    clientX,
    clientY,
    ...more,
  });
  figureOf(map).dispatchEvent(event);
  return event;
}

/** A made-up stroke through points. */
export async function fakeStroke(
  map: PulseMap,
  points: readonly Point[],
  more: PointerEventInit = {},
  last: 'pointerup' | 'pointercancel' | 'none' = 'pointerup',
): Promise<void> {
  const [first, ...rest] = points as [Point, ...Point[]];
  fake(map, 'pointerdown', first, more);
  for (const point of rest) fake(map, 'pointermove', point, { ...more, button: -1 });
  if (last !== 'none') fake(map, last, rest.at(-1) ?? first, { ...more, buttons: 0 });
  await settled(map);
}

/** A round stroke on the left forefoot, in units of the figure. */
export const LEFT_FOREFOOT = round(818, 1398, 22);

/** A record with marks of these points. */
export function marked(...marks: [MarkKind, readonly Point[], string?][]): Examination {
  return marks.reduce(
    (e, [kind, points, note]) => addMark(e, { kind, points, ...(note && { note }) }),
    emptyExamination(),
  );
}

/** A record with marks on these regions of the left. */
export function markedRegions(...marks: [MarkKind, SkinRegionId, string?][]): Examination {
  return marks.reduce((e, [kind, region, note]) => {
    return addMark(e, {
      kind,
      points: regionShape({ region, side: 'left' }, MARK_FORMS[kind]),
      ...(note && { note }),
    });
  }, emptyExamination());
}
