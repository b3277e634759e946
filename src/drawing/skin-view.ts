import { onward, partOf, type SurfacePoint } from '../anatomy/index.js';
import { type Mark, MARK_FORMS, type MarkKind, markPointsOn, markRegions } from '../examination/index.js';
import type { Messages } from '../locale/index.js';
import type { Point } from './geometry.js';
import type { Layout } from './layout.js';
import { farSide, markShape, type MarkShape } from './skin-marks.js';
import { isPlateView, plateOf } from './plates/plate.js';
import { showsArms, showsPoint, type View } from './views.js';

/** Whether a mark lies on an arm and is hidden together with it. */
export function isMarkOfArm(mark: Mark): boolean {
  const [name] = markRegions(mark);
  return name !== undefined && partOf(name) === 'arm';
}

/**
 * The points of a mark where a view shows it, in units of the view; on an arm only with the arms, of the other limb not beside one that
 * stands alone, on a plate what it shows of the skin.
 */
export function markPointsIn(view: View, mark: Mark): readonly SurfacePoint[] | undefined {
  if (isPlateView(view)) return markPointsOn(mark, view);
  if (isMarkOfArm(mark) && !showsArms(view)) return undefined;
  return mark.points.some((point) => showsPoint(view, point)) ? mark.points : undefined;
}

/** Whether a view shows a mark. */
export function showsMark(view: View, mark: Mark): boolean {
  return markPointsIn(view, mark) !== undefined;
}

/** Whether a view shows a mark on the very drawing on which it was made, so that it can be moved there. */
export function isDrawnIn(view: View, { on }: Mark): boolean {
  return on?.plate === (isPlateView(view) ? view : undefined);
}

/** Whether a mark lies on a face of the body that the figure does not show: on a sole, or at the back of a leg. */
export function isMarkBehind(view: View, { on }: Mark): boolean {
  return !isPlateView(view) && on !== undefined && !['hand', 'foot'].includes(plateOf(on.plate).name);
}

/** The points of a line or contour without those nearer to the last than a distance; the first, the last and enough for a shape stay. */
function thinned(points: readonly Point[], distance: number): readonly Point[] {
  let at = points[0] as Point;
  const kept = points.filter(([x, y], i) => {
    const stays = i === 0 || i === points.length - 1 || Math.hypot(x - at[0], y - at[1]) >= distance;
    if (stays) at = [x, y];
    return stays;
  });
  return kept.length >= Math.min(points.length, 4) ? kept : points;
}

/**
 * The paths of a mark where it lies in a layout that shows it.
 * @param grain distance of points in px below which they are not told apart, as in a small picture
 */
export function placedMark(
  mark: Mark,
  { view, scale, offsetX, offsetY }: Pick<Layout, 'view' | 'scale' | 'offsetX' | 'offsetY'>,
  grain = 0,
): MarkShape {
  const own = markPointsIn(view, mark) ?? [];
  const points = thinned(
    own.map(([x, y]): Point => [x * scale + offsetX, y * scale + offsetY]),
    grain,
  );
  const middle = own[Math.floor(own.length / 2)];
  const far = isPlateView(view) && middle ? onward(view, middle) : farSide(mark.points);
  return markShape(mark.kind, points, far);
}

/** A mark in words, "Left forefoot: ulcer". */
export function markName(mark: Mark, { marks }: Messages): string {
  return marks.mark(mark.kind, markRegions(mark), mark.note);
}

const SAMPLES: Record<'area' | 'line', readonly Point[]> = {
  area: [
    [4, 9],
    [13, 3],
    [25, 7],
    [27, 16],
    [16, 21],
    [5, 17],
  ],
  line: [
    [3, 12],
    [15, 9],
    [27, 12],
  ],
};

/** A mark of a kind as a sample, in a box of 30 by 24. */
export function markSample(kind: MarkKind): MarkShape {
  return markShape(kind, SAMPLES[MARK_FORMS[kind] === 'area' ? 'area' : 'line']);
}
