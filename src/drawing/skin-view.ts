import { SKIN_REGIONS } from '../anatomy/index.js';
import { type Mark, MARK_FORMS, type MarkKind, markRegions } from '../examination/index.js';
import type { Messages } from '../locale/index.js';
import type { Point } from './geometry.js';
import type { Layout } from './layout.js';
import { farSide, markShape, type MarkShape } from './skin-marks.js';
import { isPlateView } from './plates/plate.js';
import { showsArms, type View } from './views.js';

/** Whether a mark lies on an arm and is hidden together with it. */
export function isMarkOfArm(mark: Mark): boolean {
  const region = markRegions(mark)[0]?.region;
  return region === 'fingers' || (region && region !== 'toes' && SKIN_REGIONS[region].of) === 'arm';
}

/** Whether a view shows a mark: one on an arm only with the arms. Plates have a skin of their own. */
export function showsMark(view: View, mark: Mark): boolean {
  if (isPlateView(view)) return false;
  return !isMarkOfArm(mark) || showsArms(view);
}

/** The paths of a mark where it lies in a layout. */
export function placedMark(
  mark: Mark,
  { scale, offsetX, offsetY }: Pick<Layout, 'scale' | 'offsetX' | 'offsetY'>,
): MarkShape {
  const points = mark.points.map(([x, y]): Point => [x * scale + offsetX, y * scale + offsetY]);
  return markShape(mark.kind, points, farSide(mark.points));
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
