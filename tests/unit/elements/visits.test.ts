import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyExamination, type Examination } from '../../../src/examination/index.js';
import { scrollTo, stepOf, windowOf } from '../../../src/elements/common/window-of.js';
import { pairOf, pressed } from '../../../src/elements/limb-visits/chosen.js';
import { VisitLog } from '../../../src/elements/limb-visits/log.js';

const counts = fc.integer({ min: 0, max: 10_000 });

describe('the window of a list', () => {
  it('holds all that is in sight and little more, however far it is scrolled', () => {
    fc.assert(
      fc.property(
        counts,
        fc.integer({ min: 1, max: 2000 }),
        fc.integer({ min: 20, max: 300 }),
        fc.double({ min: -100, max: 4e6, noNaN: true }),
        (count, seen, item, scroll) => {
          const { from, to } = windowOf(scroll, seen, item, count);
          const most = Math.max(0, count * item - seen);
          const start = Math.min(Math.max(0, scroll), most);
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(count);
          if (count) {
            expect(from * item).toBeLessThanOrEqual(start);
            expect(to * item).toBeGreaterThanOrEqual(Math.min(count * item, start + seen));
          }
          expect(to - from).toBeLessThanOrEqual(Math.ceil(seen / item) + 8);
        },
      ),
    );
  });

  it('is scrolled so that the item asked for lies in sight', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9999 }),
        fc.integer({ min: 300, max: 2000 }),
        fc.integer({ min: 20, max: 300 }),
        fc.integer({ min: 0, max: 3e6 }),
        (at, seen, item, scroll) => {
          const to = scrollTo(at, scroll, seen, item);
          expect(to).toBeLessThanOrEqual(at * item);
          expect(to + seen).toBeGreaterThanOrEqual((at + 1) * item);
          expect(scrollTo(at, to, seen, item)).toBe(to);
        },
      ),
    );
  });

  it('is walked by keys without ever leaving it', () => {
    const keys = { onward: 'ArrowRight', back: 'ArrowLeft', page: 5 };
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 50 }),
        fc.array(fc.constantFrom('ArrowRight', 'ArrowLeft', 'PageUp', 'PageDown', 'Home', 'End')),
        (count, pressedKeys) => {
          let at = 0;
          for (const key of pressedKeys) {
            at = stepOf(key, at, count, keys)!;
            expect(at).toBeGreaterThanOrEqual(0);
            expect(at).toBeLessThan(count);
          }
        },
      ),
    );
    expect(stepOf('a', 3, 10, keys)).toBeUndefined();
  });
});

describe('the two that are compared', () => {
  const order = Array.from({ length: 6 }, (_, i) => ({ id: `v${i}`, examination: null }));

  it('are the last two that count, unless others were chosen', () => {
    expect(pairOf(order, () => true, undefined)).toEqual([4, 5]);
    expect(pairOf(order, (at) => at < 4, undefined)).toEqual([2, 3]);
    expect(pairOf(order, () => true, ['v3', 'v1'])).toEqual([1, 3]);
    expect(pairOf(order, (at) => at !== 3, ['v3', 'v1'])).toEqual([1]);
    expect(pairOf([], () => true, undefined)).toEqual([]);
  });

  it('are never more than two, and always hold the one pressed last unless it was let go', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...order.map(({ id }) => id)), { maxLength: 20 }), (presses) => {
        let chosen: readonly string[] = ['v4', 'v5'];
        let last: string | undefined;
        for (const id of presses) {
          const before = chosen;
          chosen = pressed(chosen, id, last);
          last = id;
          expect(chosen.length).toBeLessThanOrEqual(2);
          expect(chosen.includes(id)).toBe(!before.includes(id));
        }
      }),
    );
  });
});

describe('the log of visits', () => {
  const walked = (distance: number, more: Partial<Examination> = {}): Examination => ({
    ...emptyExamination(),
    history: { leg: { left: { symptom: 'claudication', distance } } },
    ...more,
  });
  const visits = Array.from({ length: 300 }, (_, i) => ({
    id: String(i),
    at: new Date(Date.UTC(2020, 0, 1 + i)).toISOString(),
    examination: i % 2 ? walked(100 + i) : JSON.stringify(walked(100 + i)),
  }));

  it('tells the same of a visit before its turn to be read as after it', () => {
    const log = new VisitLog(visits);
    const before = visits.map((_, at) => log.value('distance', 'left', at));
    while (log.readNext());
    expect(visits.map((_, at) => log.value('distance', 'left', at))).toEqual(before);
    expect(before[7]).toBe(107);
    expect(log.measures).toEqual(['distance']);
  });

  it('keeps few records at hand, however many were read', () => {
    const log = new VisitLog(visits);
    visits.forEach((_, at) => log.record(at));
    expect(visits.filter((_, at) => log.hasRecord(at)).length).toBe(64);
  });

  it('counts nothing that was entered in error, by word of the page or of the record itself', () => {
    const inError = walked(20, {
      amendments: [{ kind: 'entered-in-error', at: '2026-01-01T10:00Z', by: 'Dr X' }],
    });
    const log = new VisitLog([
      { id: 'a', examination: walked(100) },
      { id: 'b', examination: walked(110), enteredInError: true },
      { id: 'c', examination: JSON.stringify(inError) },
      { id: 'd', examination: inError },
      { id: 'e', examination: walked(120) },
    ]);
    expect([0, 1, 2, 3, 4].map(log.counts)).toEqual([true, false, false, false, true]);
    expect(log.before(4)).toBe(0);
    expect(log.changes(2)).toBeUndefined();
  });

  it('tells nothing of a record that this version cannot read, and does not fail on it', () => {
    const log = new VisitLog([
      { id: 'a', examination: walked(100) },
      { id: 'b', examination: '{"format":"pulse-map/9","scale":"0-3"}' },
      { id: 'c', examination: 'no record' },
      { id: 'd', examination: walked(90) },
    ]);
    while (log.readNext());
    expect([0, 1, 2, 3].map((at) => log.record(at) !== undefined)).toEqual([true, false, false, true]);
    expect(log.changes(3)).toBeUndefined();
    expect(log.value('distance', 'left', 1)).toBeUndefined();
  });
});
