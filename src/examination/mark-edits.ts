import {
  FIGURE_HEIGHT,
  FIGURE_WIDTH,
  type SkinName,
  regionsOf,
  type SurfacePoint,
} from '../anatomy/index.js';
import { checkedText, checkedWord, compact, withFields } from './finish.js';
import type { Patch } from './types/common.js';
import { fewestPoints, type Mark, MARK_FORMS, MARK_KINDS, MOST_MARKS, MOST_POINTS } from './types/marks.js';
import type { Examination } from './types/record.js';

/** The marks on the skin, in the order they were recorded. */
export function skinMarks({ marks }: Examination): readonly Mark[] {
  return marks ?? [];
}

const NAMES = new WeakMap<object, readonly SkinName[]>();

/** What a mark covers, largest share first; empty when it lies off the skin. */
export function markRegions(mark: Readonly<Pick<Mark, 'kind' | 'points'>>): readonly SkinName[] {
  const names = NAMES.get(mark) ?? regionsOf(mark.points, MARK_FORMS[mark.kind]);
  NAMES.set(mark, names);
  return names;
}

function within(value: number, most: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a point of a mark takes numbers, found ${value}`);
  return Math.round(Math.min(most, Math.max(0, value)) * 10) / 10;
}

function fitted(mark: Mark): Mark {
  const { points } = mark;
  const kind = checkedWord(mark.kind, MARK_KINDS, ['marks', mark.id, 'kind']) as Mark['kind'];
  if (points.length < fewestPoints(kind) || points.length > MOST_POINTS)
    throw new RangeError(
      `"${kind}" takes ${fewestPoints(kind)} to ${MOST_POINTS} points, found ${points.length}`,
    );
  return compact({
    ...mark,
    points: points.map(([x, y]) => [within(x, FIGURE_WIDTH), within(y, FIGURE_HEIGHT)] as const),
    note: checkedText(mark.note, ['marks', mark.id, 'note']),
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

/** What a new mark is made of; the record gives it its id. */
export interface NewMark {
  readonly kind: Mark['kind'];
  readonly points: readonly SurfacePoint[];
  readonly note?: string;
}

/**
 * Records a mark. Its points are moved into the figure's box and rounded to a tenth of a unit. A record full of marks stays as it is.
 * @throws RangeError for too few or too many points, for points that are no numbers, and for too long a note
 */
export function addMark(examination: Examination, mark: NewMark): Examination {
  const marks = skinMarks(examination);
  const taken = [...marks, ...carriedMarks(examination)];
  const last = Math.max(0, ...taken.map(({ id }) => Number(/^m(\d{1,9})$/.exec(id)?.[1] ?? 0)));
  const made = fitted({ ...mark, id: `m${last + 1}`, points: mark.points });
  return marks.length + carriedMarks(examination).length < MOST_MARKS
    ? withMarks(examination, [...marks, made])
    : examination;
}

/**
 * Changes kind, note or points of a mark; an empty note goes. An id that is not there changes nothing.
 * @throws RangeError where the new kind needs more points than the mark has, and for what the record does not take
 */
export function changeMark(
  examination: Examination,
  id: string,
  patch: Patch<Omit<Mark, 'id'>>,
): Examination {
  return withMarks(
    examination,
    skinMarks(examination).map((mark) =>
      mark.id === id
        ? fitted({ ...mark, ...compact(patch), ...('note' in patch && { note: patch.note }), id } as Mark)
        : mark,
    ),
  );
}

/** Moves a mark by units of the figure, no farther than the edge of its box; it keeps its shape. */
export function moveMark(examination: Examination, id: string, dx: number, dy: number): Examination {
  const mark = skinMarks(examination).find((one) => one.id === id);
  if (!mark) return examination;
  const room = (at: 0 | 1, most: number, by: number): number => {
    const values = mark.points.map((point) => point[at]);
    return Math.min(most - Math.max(...values), Math.max(-Math.min(...values), by));
  };
  const [x, y] = [room(0, FIGURE_WIDTH, dx), room(1, FIGURE_HEIGHT, dy)];
  return changeMark(examination, id, { points: mark.points.map(([px, py]) => [px + x, py + y]) });
}

/** Takes marks away by their ids; ids that are not there change nothing. */
export function removeMarks(examination: Examination, ...ids: readonly string[]): Examination {
  return withMarks(
    examination,
    skinMarks(examination).filter(({ id }) => !ids.includes(id)),
  );
}
