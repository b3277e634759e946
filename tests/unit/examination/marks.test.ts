import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FIGURE_HEIGHT, FIGURE_WIDTH } from '../../../src/anatomy/index.js';
import {
  addMark,
  changeMark,
  clearPlace,
  emptyExamination,
  type Examination,
  fewestPoints,
  LONGEST_TEXT,
  type Mark,
  MARK_FORMS,
  MARK_KINDS,
  markRegions,
  skinMarks,
  MOST_MARKS,
  MOST_POINTS,
  moveMark,
  parseExamination,
  record,
  removeMarks,
  restNormal,
  setBruit,
  setPulse,
  startHistory,
  undo,
} from '../../../src/examination/index.js';
import { anyMark, anyNewMark } from '../../tools/arbitraries.js';
import { faultLine } from '../../tools/faults.js';

const base = { format: 'pulse-map/1', scale: '0-3' };
const forefoot: Mark['points'] = [
  [800, 1380],
  [830, 1384],
  [826, 1410],
  [802, 1408],
];
const ulcer = { id: 'm1', kind: 'ulcer', points: forefoot };
const points = (count: number): number[][] => Array.from({ length: count }, (_, i) => [700 + i / 10, 1100]);

function told(marks: unknown): string[] {
  const parsed = parseExamination({ ...base, marks }, { strict: true });
  return parsed.ok ? [] : parsed.faults.map(faultLine);
}

describe('a record with marks', () => {
  it.each<[string, unknown]>([
    ['no mark', []],
    ['an area', [ulcer]],
    [
      'a line of two points',
      [
        {
          id: 'a',
          kind: 'cold',
          points: [
            [690, 1140],
            [780, 1140],
          ],
        },
      ],
    ],
    [
      'a scar of three points with a note',
      [
        {
          id: 'a',
          kind: 'scar',
          points: [
            [690, 740],
            [700, 900],
            [705, 1000.5],
          ],
          note: 'vein taken',
        },
      ],
    ],
    [
      'the corners of the box',
      [
        {
          id: 'a',
          kind: 'pallor',
          points: [
            [0, 0],
            [FIGURE_WIDTH, 0],
            [FIGURE_WIDTH, FIGURE_HEIGHT],
          ],
        },
      ],
    ],
    ['the most points', [{ ...ulcer, points: points(MOST_POINTS) }]],
    ['the most marks', Array.from({ length: MOST_MARKS }, (_, i) => ({ ...ulcer, id: `m${i}` }))],
    ['the longest note', [{ ...ulcer, note: 'x'.repeat(LONGEST_TEXT) }]],
    ['one mark of each kind', MARK_KINDS.map((kind) => ({ ...ulcer, id: kind, kind }))],
  ])('takes %s', (_, marks) => {
    expect(told(marks)).toEqual([]);
    expect(parseExamination({ ...base, marks })).toEqual({ ok: true, value: { ...base, marks } });
  });

  it.each<[string, unknown, string]>([
    ['marks that are no list', {}, 'wrong-type at marks: {}, not list'],
    [
      'a kind that does not exist',
      [{ ...ulcer, kind: 'rash' }],
      `not-allowed at marks.0.kind: "rash", not ${MARK_KINDS.map((k) => `"${k}"`).join('|')}`,
    ],
    ['no id', [{ ...ulcer, id: undefined }], 'missing at marks.0.id: nothing, not text'],
    ['an empty id', [{ ...ulcer, id: '' }], 'not-allowed at marks.0.id: "", not at-least 1 characters'],
    ['the same id twice', [ulcer, ulcer], 'conflict at marks: '],
    [
      'a field that does not exist',
      [{ ...ulcer, colour: 'red' }],
      'unknown-field at marks.0.colour: "red", not id|kind|points|on|note',
    ],
    [
      'an area of two points',
      [{ ...ulcer, points: forefoot.slice(0, 2) }],
      'conflict at marks.0.points: [[800,1380],[830,1384]], not area-points',
    ],
    [
      'a line of one point',
      [{ id: 'a', kind: 'scar', points: [[1, 1]] }],
      'not-allowed at marks.0.points: [[1,1]], not at-least 2 entries',
    ],
    ['too many points', [{ ...ulcer, points: points(MOST_POINTS + 1) }], `not-allowed at marks.0.points: `],
    [
      'too many marks',
      Array.from({ length: MOST_MARKS + 1 }, (_, i) => ({ ...ulcer, id: `m${i}` })),
      'not-allowed at marks: ',
    ],
    [
      'a point left of the box',
      [
        {
          ...ulcer,
          points: [
            [-1, 5],
            [2, 5],
            [3, 9],
          ],
        },
      ],
      'not-allowed at marks.0.points.0.0: -1, not at-least 0 number',
    ],
    [
      'a point below the box',
      [
        {
          ...ulcer,
          points: [
            [1, 5],
            [2, FIGURE_HEIGHT + 1],
            [3, 9],
          ],
        },
      ],
      `not-allowed at marks.0.points.1.1: ${FIGURE_HEIGHT + 1}, not at-most ${FIGURE_HEIGHT} number`,
    ],
    [
      'a finer coordinate than a tenth',
      [
        {
          ...ulcer,
          points: [
            [1.25, 5],
            [2, 5],
            [3, 9],
          ],
        },
      ],
      'not-allowed at marks.0.points.0.0: 1.25, not one-decimal',
    ],
    [
      'a point in space',
      [
        {
          ...ulcer,
          points: [
            [1, 5, 6],
            [2, 5],
            [3, 9],
          ],
        },
      ],
      'not-allowed at marks.0.points.0: [1,5,6], not at-most 2 entries',
    ],
    ['an empty note', [{ ...ulcer, note: '' }], 'not-allowed at marks.0.note: "", not at-least 1 characters'],
  ])('refuses %s and says what and where', (_, marks, line) => {
    const lines = told(marks);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain(line);
  });
});

describe('addMark', () => {
  it('records the mark with an id of its own, its points to a tenth of a unit and within the box', () => {
    const next = addMark(emptyExamination(), {
      kind: 'scar',
      points: [
        [700.04, 900.06],
        [-5, 2000],
        [1300, -1],
      ],
    });
    expect(next.marks).toEqual([
      {
        id: 'm1',
        kind: 'scar',
        points: [
          [700, 900.1],
          [0, FIGURE_HEIGHT],
          [FIGURE_WIDTH, 0],
        ],
      },
    ]);
  });

  it('gives an id that no mark has, whatever ids came from elsewhere', () => {
    const marks = [
      { ...ulcer, id: 'm7' },
      { ...ulcer, id: 'other' },
    ] as Mark[];
    expect(
      addMark({ ...emptyExamination(), marks }, { kind: 'ulcer', points: forefoot }).marks?.at(-1)?.id,
    ).toBe('m8');
  });

  it('leaves a full record as it is', () => {
    const marks = Array.from({ length: MOST_MARKS }, (_, i) => ({ ...ulcer, id: `m${i}` })) as Mark[];
    const full = { ...emptyExamination(), marks };
    expect(addMark(full, { kind: 'ulcer', points: forefoot })).toBe(full);
  });

  it('throws with the kind and the count for too few and too many points', () => {
    expect(() =>
      addMark(emptyExamination(), {
        kind: 'ulcer',
        points: [
          [1, 1],
          [2, 2],
        ],
      }),
    ).toThrow(new RangeError('"ulcer" takes 3 to 200 points, found 2'));
    expect(() =>
      addMark(emptyExamination(), { kind: 'scar', points: points(MOST_POINTS + 1) as never }),
    ).toThrow(RangeError);
  });
});

const marked = (...marks: Partial<Mark>[]): Examination =>
  ({
    ...emptyExamination(),
    marks: marks.map((mark, i) => ({ ...ulcer, id: `m${i + 1}`, ...mark })),
  }) as Examination;

describe('changeMark', () => {
  it('changes what the patch names and nothing else', () => {
    const before = marked({ note: 'dry' }, {});
    expect(changeMark(before, 'm1', { kind: 'gangrene' }).marks).toEqual([
      { ...ulcer, kind: 'gangrene', note: 'dry' },
      { ...ulcer, id: 'm2' },
    ]);
    expect(changeMark(before, 'm1', { note: '' }).marks?.[0]).toEqual(ulcer);
  });

  it('returns the very same record where nothing changes', () => {
    const before = marked({});
    expect(changeMark(before, 'm1', { kind: 'ulcer' })).toBe(before);
    expect(changeMark(before, 'm9', { kind: 'scar' })).toBe(before);
  });

  it('does not make an area of a line with two points', () => {
    const before = marked({
      kind: 'cold',
      points: [
        [690, 1140],
        [780, 1140],
      ],
    });
    expect(() => changeMark(before, 'm1', { kind: 'ulcer' })).toThrow(RangeError);
  });
});

describe('moveMark', () => {
  it('keeps the shape, and stops at the edge of the box', () => {
    expect(moveMark(marked({}), 'm1', 5, -3).marks?.[0]?.points).toEqual(
      forefoot.map(([x, y]) => [x + 5, y - 3]),
    );
    const far = moveMark(marked({}), 'm1', 1e4, 1e4).marks?.[0]?.points as Mark['points'];
    expect(Math.max(...far.map(([x]) => x))).toBe(FIGURE_WIDTH);
    expect(Math.max(...far.map(([, y]) => y))).toBe(FIGURE_HEIGHT);
    expect(far.map(([x, y]) => [x - far[0]![0], y - far[0]![1]])).toEqual(
      forefoot.map(([x, y]) => [x - forefoot[0]![0], y - forefoot[0]![1]]),
    );
  });
});

describe('removeMarks', () => {
  it('takes the named ones away, and the field with the last', () => {
    const before = marked({}, {}, {});
    expect(removeMarks(before, 'm1', 'm3').marks).toEqual([{ ...ulcer, id: 'm2' }]);
    expect('marks' in removeMarks(before, 'm1', 'm2', 'm3')).toBe(false);
    expect(removeMarks(before, 'none')).toBe(before);
  });
});

describe('markRegions', () => {
  it('names what the mark covers by its form', () => {
    expect(markRegions({ kind: 'ulcer', points: forefoot })).toEqual([{ region: 'forefoot', side: 'left' }]);
    expect(
      markRegions({
        kind: 'cold',
        points: [
          [690, 1140],
          [790, 1140],
        ],
      }),
    ).toEqual([{ region: 'shin', side: 'left', third: 'mid' }]);
  });
});

describe('laws of marks', () => {
  const kindOf = fc.constantFrom(...MARK_KINDS);

  it('every mark that can be added can be read back, and undone', () => {
    fc.assert(
      fc.property(fc.array(anyNewMark, { maxLength: 8 }), (made) => {
        let history = startHistory(emptyExamination());
        for (const mark of made) history = record(history, addMark(history.present, mark));
        expect(parseExamination(JSON.parse(JSON.stringify(history.present)))).toEqual({
          ok: true,
          value: history.present,
        });
        expect(new Set(skinMarks(history.present).map(({ id }) => id)).size).toBe(made.length);
        for (let i = 0; i < made.length; i++) history = undo(history);
        expect(history.present).toEqual(emptyExamination());
      }),
    );
  });

  it('edits leave the given record and all other marks as they were', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(anyMark, { selector: ({ id }) => id, minLength: 1, maxLength: 5 }),
        kindOf,
        fc.nat(),
        (marks, kind, n) => {
          const before = { ...emptyExamination(), marks };
          const copy = structuredClone(before);
          const { id } = marks[n % marks.length] as Mark;
          const others = (e: Examination): readonly Mark[] => skinMarks(e).filter((mark) => mark.id !== id);
          const edits = [
            moveMark(before, id, 12.3, -4),
            removeMarks(before, id),
            changeMark(before, id, { note: 'n' }),
          ];
          if (marks[n % marks.length]!.points.length >= fewestPoints(kind))
            edits.push(changeMark(before, id, { kind }));
          for (const after of edits) {
            expect(others(after)).toEqual(others(before));
            expect(parseExamination(after)).toEqual({ ok: true, value: after });
          }
          expect(before).toEqual(copy);
        },
      ),
    );
  });

  it('nothing that records pulses touches marks', () => {
    const before = addMark(emptyExamination(), marked({}).marks![0]!);
    const femoral = { site: 'femoral', side: 'left' } as const;
    const felt = setBruit(setPulse(before, femoral, { grade: 'absent' }), femoral, { bruit: 'systolic' });
    expect(before.marks).toHaveLength(1);
    for (const after of [restNormal(before), felt, clearPlace(felt, femoral)]) {
      expect(after).not.toBe(before);
      expect(after.marks).toBe(before.marks);
    }
  });

  it('has a form for every kind', () => {
    expect(Object.keys(MARK_FORMS)).toEqual([...MARK_KINDS]);
  });
});
