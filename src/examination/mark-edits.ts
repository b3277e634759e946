import {
  FIGURE_HEIGHT,
  FIGURE_WIDTH,
  onFigure,
  onPlate,
  PLATE_BOXES,
  PLATE_VIEWS,
  plateOf,
  plateRegionsOf,
  type PlateView,
  type SurfacePoint,
} from '../anatomy/index.js';
import { checkedText, checkedWord, compact, withFields } from './finish.js';
import { figureRegions } from './mark-names.js';
import { once } from './once.js';
import { skinMarks } from './queries.js';
import type { Patch } from './types/common.js';
import { fewestPoints, type Mark, MARK_FORMS, MARK_KINDS, MOST_MARKS, MOST_POINTS } from './types/marks.js';
import type { Examination } from './types/record.js';

/** What a mark covers, largest share first; empty when it lies off the skin. One drawn on a plate is named by the areas of the plate. */
export const markRegions = once((mark: Readonly<Pick<Mark, 'kind' | 'points' | 'on'>>) =>
  mark.on ? plateRegionsOf(mark.on.plate, mark.on.points, MARK_FORMS[mark.kind]) : figureRegions(mark),
);

/**
 * The points of a mark in units of a plate or of the whole figure; `undefined` where a plate does not show that face of that part. On
 * the figure every mark is shown.
 * @param plate without one, the figure
 */
export function markPointsOn(mark: Mark, plate: PlateView | undefined): readonly SurfacePoint[] | undefined {
  if (!plate || mark.on?.plate === plate) return plate ? mark.on?.points : mark.points;
  return onPlate(plate, mark.points, mark.on?.plate);
}

function within(value: number, most: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a point of a mark takes numbers, found ${value}`);
  return Math.round(Math.min(most, Math.max(0, value)) * 10) / 10;
}

function inBox(points: readonly SurfacePoint[], [width, height]: readonly [number, number]): Mark['points'] {
  return points.map(([x, y]) => [within(x, width), within(y, height)] as const);
}

const FIGURE_BOX = [FIGURE_WIDTH, FIGURE_HEIGHT] as const;

/** Where a mark is drawn, in the units of what it is drawn on. */
function drawnOn({ on, points = [] }: Pick<NewMark, 'on' | 'points'>): {
  readonly points: readonly SurfacePoint[];
  readonly box: readonly [number, number];
} {
  return on ? { points: on.points, box: PLATE_BOXES[plateOf(on.plate).name] } : { points, box: FIGURE_BOX };
}

/** @param fresh whether its place on the figure follows from where it was drawn on a plate */
function fitted(mark: Mark, fresh: boolean): Mark {
  const { id } = mark;
  const kind = checkedWord(mark.kind, MARK_KINDS, ['marks', id, 'kind']) as Mark['kind'];
  if (mark.on) checkedWord(mark.on.plate, PLATE_VIEWS, ['marks', id, 'on', 'plate']);
  const { points, box } = drawnOn(mark);
  if (points.length < fewestPoints(kind) || points.length > MOST_POINTS)
    throw new RangeError(
      `"${kind}" takes ${fewestPoints(kind)} to ${MOST_POINTS} points, found ${points.length}`,
    );
  const drawn = inBox(points, box);
  const on = mark.on && { ...mark.on, points: drawn };
  return compact({
    ...mark,
    points: !on ? drawn : fresh ? inBox(onFigure(on.plate, drawn), FIGURE_BOX) : mark.points,
    on,
    note: checkedText(mark.note, ['marks', id, 'note']),
  }) as Mark;
}

/** Marks that this version cannot show, as far as they say their ids. */
function carriedMarks({ carried = [] }: Examination): readonly { readonly id: string }[] {
  const values = carried.filter(({ path }) => path[0] === 'marks').map(({ value }) => value);
  return values.map((value) => ({ id: String((value as { readonly id?: string } | null)?.id) }));
}

function withMarks(examination: Examination, marks: readonly Mark[]): Examination {
  return withFields(examination, { marks: marks.length ? marks : undefined });
}

/** What a new mark is made of: its points on the figure, or those on a plate; the record gives it its id. */
export interface NewMark {
  readonly kind: Mark['kind'];
  /** In units of the figure; of a mark on a plate they follow from where it lies there. */
  readonly points?: readonly SurfacePoint[] | undefined;
  readonly on?: { readonly plate: PlateView; readonly points: readonly SurfacePoint[] } | undefined;
  readonly note?: string | undefined;
}

/**
 * Records a mark. Its points are moved into the box of the figure or plate and rounded to a tenth of a unit. A record full of marks stays
 * as it is.
 * @throws RangeError for too few or too many points, for points that are no numbers, and for too long a note
 */
export function addMark(examination: Examination, mark: NewMark): Examination {
  const marks = skinMarks(examination);
  const taken = [...marks, ...carriedMarks(examination)];
  const last = Math.max(0, ...taken.map(({ id }) => Number(/^m(\d{1,9})$/.exec(id)?.[1] ?? 0)));
  const made = fitted({ points: [], ...mark, id: `m${last + 1}` } as Mark, true);
  return marks.length + carriedMarks(examination).length < MOST_MARKS
    ? withMarks(examination, [...marks, made])
    : examination;
}

/**
 * Changes kind, note or place of a mark; an empty note goes. New points on the figure take the mark off its plate; an id that is not there
 * changes nothing.
 * @throws RangeError where the new kind needs more points than the mark has, and for what the record does not take
 */
export function changeMark(
  examination: Examination,
  id: string,
  patch: Patch<Omit<Mark, 'id'>>,
): Examination {
  const moved = patch.on ?? patch.points;
  return withMarks(
    examination,
    skinMarks(examination).map((mark) =>
      mark.id === id
        ? fitted(
            {
              ...mark,
              ...compact(patch),
              ...(moved && { on: patch.on }),
              ...('note' in patch && { note: patch.note }),
              id,
            } as Mark,
            moved !== undefined,
          )
        : mark,
    ),
  );
}

/** Moves a mark by units of the figure or plate on which it was drawn, no farther than the edge of its box; it keeps its shape there. */
export function moveMark(examination: Examination, id: string, dx: number, dy: number): Examination {
  const mark = skinMarks(examination).find((one) => one.id === id);
  if (!mark) return examination;
  const { points, box } = drawnOn(mark);
  const room = (at: 0 | 1, by: number): number => {
    const values = points.map((point) => point[at]);
    return Math.min(box[at] - Math.max(...values), Math.max(-Math.min(...values), by));
  };
  const [x, y] = [room(0, dx), room(1, dy)];
  const moved = points.map(([px, py]) => [px + x, py + y] as const);
  return changeMark(examination, id, mark.on ? { on: { ...mark.on, points: moved } } : { points: moved });
}

/** Takes marks away by their ids; ids that are not there change nothing. */
export function removeMarks(examination: Examination, ...ids: readonly string[]): Examination {
  return withMarks(
    examination,
    skinMarks(examination).filter(({ id }) => !ids.includes(id)),
  );
}
