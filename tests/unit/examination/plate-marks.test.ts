import { describe, expect, it } from 'vitest';
import { FIGURE_WIDTH } from '../../../src/anatomy/index.js';
import {
  addMark,
  changeMark,
  emptyExamination,
  type Mark,
  markPointsOn,
  markRegions,
  moveMark,
  parseExamination,
  skinMarks,
} from '../../../src/examination/index.js';

const forefoot: Mark['points'] = [
  [800, 1380],
  [830, 1384],
  [826, 1410],
  [802, 1408],
];

describe('a mark on a plate', () => {
  const heel = [
    [450, 800],
    [540, 800],
    [500, 880],
  ] as const;
  const made = addMark(emptyExamination(), { kind: 'ulcer', on: { plate: 'left-sole', points: heel } });
  const [mark] = skinMarks(made) as [Mark];

  it('is kept where it was drawn, is named by it, and says where it lies on the figure', () => {
    expect(mark.on).toEqual({ plate: 'left-sole', points: heel });
    expect(markRegions(mark)).toEqual([{ region: 'heel', side: 'left', face: 'plantar' }]);
    expect(markRegions({ kind: mark.kind, points: mark.points })).toEqual([{ region: 'heel', side: 'left' }]);
    expect(parseExamination(made)).toMatchObject({ ok: true, value: { marks: [mark] } });
  });

  it('moves in units of its plate, to its edge, and on the figure with it', () => {
    const moved = skinMarks(moveMark(made, mark.id, -40, -600))[0] as Mark;
    expect(moved.on?.points).toEqual(heel.map(([x, y]) => [x - 40, y - 600]));
    expect(markRegions(moved)[0]).toMatchObject({ side: 'left', face: 'plantar' });
    expect(moved.points).not.toEqual(mark.points);
    const far = skinMarks(moveMark(made, mark.id, 5000, 0))[0] as Mark;
    expect(Math.max(...(far.on?.points ?? []).map(([x]) => x))).toBe(1000);
  });

  it('keeps its place when its kind or note changes, and leaves the plate for new points on the figure', () => {
    const noted = skinMarks(changeMark(made, mark.id, { kind: 'redness', note: 'dry' }))[0] as Mark;
    expect(noted).toEqual({ ...mark, kind: 'redness', note: 'dry' });
    const onFigure = skinMarks(changeMark(made, mark.id, { points: forefoot }))[0] as Mark;
    expect(onFigure).toEqual({ id: mark.id, kind: 'ulcer', points: forefoot });
  });

  it('is shown on its plate and on the figure, and a mark of the figure on the plate of the same face', () => {
    expect(markPointsOn(mark, 'left-sole')).toEqual(heel);
    expect(markPointsOn(mark, undefined)).toBe(mark.points);
    for (const plate of ['right-sole', 'left-foot', 'left-hand', 'legs-behind'] as const)
      expect(markPointsOn(mark, plate)).toBeUndefined();
    const drawn = skinMarks(addMark(emptyExamination(), { kind: 'ulcer', points: forefoot }))[0] as Mark;
    expect(markPointsOn(drawn, 'left-foot')).toHaveLength(forefoot.length);
    expect(markPointsOn(drawn, 'left-sole')).toBeUndefined();
  });

  it('is the same mirrored on the other side', () => {
    const right = heel.map(([x, y]) => [1000 - x, y] as const);
    const other = skinMarks(
      addMark(emptyExamination(), { kind: 'ulcer', on: { plate: 'right-sole', points: right } }),
    )[0] as Mark;
    expect(markRegions(other)).toEqual([{ region: 'heel', side: 'right', face: 'plantar' }]);
    other.points.forEach(([x, y], i) => {
      expect(x).toBeCloseTo(FIGURE_WIDTH - (mark.points[i]?.[0] ?? 0), 5);
      expect(y).toBeCloseTo(mark.points[i]?.[1] ?? 0, 5);
    });
  });

  it.each([
    [
      'a point off its plate',
      [
        [1, 5],
        [2, 801],
        [3, 9],
      ],
      'on.points',
      'on-plate',
    ],
    [
      'an area of two points',
      [
        [1, 5],
        [2, 8],
      ],
      'on',
      'area-points',
    ],
  ] as const)('is refused with %s', (_, points, at, code) => {
    const given = {
      format: 'pulse-map/1',
      scale: '0-3',
      marks: [{ ...mark, on: { plate: 'left-foot', points } }],
    };
    expect(parseExamination(given)).toMatchObject({
      ok: false,
      faults: [{ code: 'conflict', path: ['marks', 0, ...at.split('.')], expected: { code } }],
    });
  });

  it('needs points, and a plate that exists', () => {
    expect(() =>
      addMark(emptyExamination(), { kind: 'ulcer', on: { plate: 'left-sole', points: [] } }),
    ).toThrow(RangeError);
    expect(() =>
      addMark(emptyExamination(), { kind: 'ulcer', on: { plate: 'left-elbow' as never, points: heel } }),
    ).toThrow();
  });
});
