import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  BARE,
  type OverAct,
  overAfter,
  readOver,
  readOverAct,
} from '../../../src/elements/pulse-lesson/over-state.js';

const share = fc.double({ min: 0, max: 1, noNaN: true }).map((n) => n + 0);
const anyPoint = fc.tuple(share, share);
const anyId = fc.constantFrom('screen 0', 'screen 1', 'desk 0');
const anyAct: fc.Arbitrary<OverAct> = fc.oneof(
  fc.boolean().map((on) => ({ kind: 'light' as const, on })),
  anyPoint.map((to) => ({ kind: 'at' as const, to })),
  fc.record({ kind: fc.constant('begin' as const), id: anyId, to: anyPoint }),
  fc.record({ kind: fc.constant('draw' as const), id: anyId, to: anyPoint }),
  fc.constant<OverAct>({ kind: 'wipe' }),
);
const sent = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('what lies over a slide', () => {
  it('is the same in a window that only hears what a hand did in another', () => {
    fc.assert(
      fc.property(fc.array(anyAct), (acts) => {
        const here = acts.reduce(overAfter, BARE);
        const there = acts.reduce((state, act) => overAfter(state, readOverAct(sent(act))!), BARE);
        expect(there).toEqual(here);
        expect(readOver(sent(here))).toEqual(here);
      }),
    );
  });

  it('has no ink after it was wiped, and a point of a wiped line draws none', () => {
    fc.assert(
      fc.property(fc.array(anyAct), fc.array(anyAct), (before, after) => {
        const wiped = overAfter(before.reduce(overAfter, BARE), { kind: 'wipe' });
        expect(wiped.strokes).toEqual([]);
        const late = after.filter(({ kind }) => kind !== 'begin').reduce(overAfter, wiped);
        expect(late.strokes).toEqual([]);
      }),
    );
  });

  it('keeps every line apart, by whom it is drawn', () => {
    const acts: OverAct[] = [
      { kind: 'begin', id: 'screen 0', to: [0, 0] },
      { kind: 'begin', id: 'desk 0', to: [1, 1] },
      { kind: 'draw', id: 'screen 0', to: [0.1, 0] },
      { kind: 'draw', id: 'desk 0', to: [0.9, 1] },
    ];
    expect(acts.reduce(overAfter, BARE).strokes.map(({ points }) => points)).toEqual([
      [
        [0, 0],
        [0.1, 0],
      ],
      [
        [1, 1],
        [0.9, 1],
      ],
    ]);
  });

  it('is not read from anything else, nor from places beyond the slide', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const act = readOverAct(value);
        if (act) expect(Object.keys(overAfter(BARE, act))).toContain('strokes');
        else expect(act).toBeUndefined();
        expect(readOver({ ...BARE, at: [value, 0] })).toEqual(
          typeof value === 'number' && value >= 0 && value <= 1 ? { ...BARE, at: [value, 0] } : undefined,
        );
      }),
    );
    for (const to of [[1.5, 0], [0, -0.1], [0], ['0', 0], null])
      for (const kind of ['at', 'begin', 'draw']) expect(readOverAct({ kind, id: 'a', to })).toBeUndefined();
    expect(readOverAct({ kind: 'begin', to: [0, 0] })).toBeUndefined();
    expect(readOver({ light: true, strokes: [{ id: 'a', points: [[2, 2]] }] })).toBeUndefined();
  });
});
