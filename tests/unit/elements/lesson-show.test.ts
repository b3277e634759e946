import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, isEmptyRecord, parseExamination } from '../../../src/examination/index.js';
import { anyExamination } from '../../tools/arbitraries.js';
import {
  act,
  OPENING,
  readShow,
  refitted,
  type Show,
  type ShowAct,
} from '../../../src/elements/pulse-lesson/show.js';

const STEPS = ['history', 'pulse right femoral', 'pulse left femoral', 'conclusion'];
const anyAct: fc.Arbitrary<ShowAct> = fc.oneof(
  fc.constantFrom<ShowAct>(
    'next',
    'back',
    'reveal',
    'black',
    'overview',
    'wave',
    'mark',
    'first',
    'last',
    'escape',
    'restart',
  ),
  fc.integer({ min: -3, max: 9 }).map((to) => ({ to })),
  fc.option(anyExamination, { nil: undefined }).map((marked) => ({ marked })),
);
const after = (acts: readonly ShowAct[], from: Show = OPENING): Show =>
  acts.reduce((show, what, i) => act(show, what, STEPS, 1000 + i), from);

describe('the show of a lesson', () => {
  it('is led from title to end by one key, which reveals each finding before it goes on', () => {
    const all: string[] = [];
    let show = OPENING;
    for (let i = 0; i < 2 * STEPS.length; i++) {
      const before = show;
      show = act(show, 'next', STEPS, 5);
      all.push(show.at === before.at ? `reveal ${STEPS[show.at - 1]}` : `go ${STEPS[show.at - 1]}`);
    }
    expect(all).toEqual(STEPS.flatMap((id) => [`go ${id}`, `reveal ${id}`]));
    expect(act(show, 'next', STEPS, 9)).toBe(show);
  });

  it('reveals nothing on the way back or by a jump', () => {
    fc.assert(
      fc.property(
        fc.array(anyAct),
        fc.constantFrom<ShowAct>('back', 'first', 'last', 'black', 'overview', { to: 3 }),
        (acts, what) => {
          const show = after(acts);
          expect(act(show, what, STEPS, 1).revealed).toEqual(show.revealed);
        },
      ),
    );
  });

  it('stays on the slides, reveals only steps, and counts every change once', () => {
    fc.assert(
      fc.property(fc.array(anyAct), anyAct, (acts, what) => {
        const show = after(acts);
        const next = act(show, what, STEPS, 7);
        expect(next.at).toBeGreaterThanOrEqual(0);
        expect(next.at).toBeLessThanOrEqual(STEPS.length);
        expect(new Set(next.revealed).size).toBe(next.revealed.length);
        expect(next.turn - show.turn).toBe(next === show ? 0 : 1);
      }),
    );
  });

  it('brings the picture back from black before anything else passes', () => {
    fc.assert(
      fc.property(fc.array(anyAct), fc.constantFrom<ShowAct>('next', 'back'), (acts, what) => {
        const show = { ...after(acts), black: true };
        expect(act(show, what, STEPS, 1)).toEqual({ ...show, black: false, turn: show.turn + 1 });
      }),
    );
  });

  it('begins its clock when the title is left, and again when asked', () => {
    expect(after(['black', 'black']).began).toBeUndefined();
    expect(act(OPENING, 'next', STEPS, 42).began).toBe(42);
    expect(after(['next', 'next', 'next']).began).toBe(1000);
    expect(act(after(['next']), 'restart', STEPS, 99).began).toBe(99);
  });

  it('is read back as it was written', () => {
    fc.assert(
      fc.property(fc.array(anyAct), (acts) => {
        const show = after(acts);
        expect(readShow(JSON.parse(JSON.stringify(show)), STEPS)).toEqual(show);
      }),
    );
  });

  it('keeps what the room marked through every other act, until that is wiped', () => {
    fc.assert(
      fc.property(fc.array(anyAct), anyAct, (acts, what) => {
        const show = after(acts);
        const next = act(show, what, STEPS, 7);
        if (typeof what === 'object' && 'marked' in what) {
          const marked = what.marked && !isEmptyRecord(what.marked) ? what.marked : undefined;
          expect(next.marked).toEqual(show.marked === undefined && next === show ? undefined : marked);
          expect({ ...next, marked: 0, turn: 0 }).toEqual({ ...show, marked: 0, turn: 0 });
        } else expect(next.marked).toBe(show.marked);
      }),
    );
  });

  it('shows one thing in place of the step at most, and a step key leads back to it', () => {
    fc.assert(
      fc.property(fc.array(anyAct), fc.constantFrom<ShowAct>('next', 'back'), (acts, what) => {
        const show = after(acts);
        const aside = [show.overview, show.wave, show.marking].filter(Boolean);
        expect(aside.length).toBeLessThanOrEqual(1);
        if (!aside.length || show.black) return;
        const next = act(show, what, STEPS, 7);
        expect(next).toEqual({ ...show, overview: false, wave: false, marking: false, turn: show.turn + 1 });
      }),
    );
  });

  it('takes marks from elsewhere only where they are a record', () => {
    fc.assert(
      fc.property(fc.anything(), (marked) => {
        const read = readShow({ ...OPENING, marked }, STEPS);
        if (read?.marked) expect(parseExamination(marked).ok).toBe(true);
        else expect(read === undefined || marked === undefined).toBe(true);
      }),
    );
    expect(readShow({ ...OPENING, marked: { format: 'pulse-map/1', pulses: 3 } }, STEPS)).toBeUndefined();
    expect(readShow({ ...OPENING, marked: emptyExamination() }, STEPS)).toBeUndefined();
  });

  it('is not read from anything else, nor from another lesson', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(readShow(value, STEPS)).toBeUndefined();
      }),
    );
    const show = after(['next', 'next', 'next']);
    expect(readShow(show, ['history'])).toBeUndefined();
    expect(readShow({ ...show, at: 1.5 }, STEPS)).toBeUndefined();
    expect(readShow({ ...show, began: 'now' }, STEPS)).toBeUndefined();
  });

  it('stays at its step when the lesson is rewritten, and reveals nothing that was hidden', () => {
    fc.assert(
      fc.property(fc.array(anyAct), fc.subarray(STEPS), (acts, left) => {
        const show = after(acts);
        const next = refitted(show, STEPS, left);
        const here = STEPS[show.at - 1];
        if (here !== undefined && left.includes(here)) expect(left[next.at - 1]).toBe(here);
        expect(next.at).toBeLessThanOrEqual(left.length);
        expect(next.revealed).toEqual(show.revealed.filter((id) => left.includes(id)));
        expect(readShow(next, left)).toEqual(next);
      }),
    );
  });
});
